"""Grams of animals that a tank's nitrogen allows: by what it processes, and by a ceiling on nitrate."""

from limnary.calc.doubt_band import doubt_band
from limnary.calc.tables import constants, table

# Indices of a (low, usual, high) triple.
LOW, USUAL, HIGH = 0, 1, 2
# Uncertain figures; each is varied alone.
NITROGEN_DOUBTS = ("capacity", "dry", "growth", "floating", "excretion")


def nitrogen_limit(given: dict) -> dict:
    """The answer of `nitrogen_room` for the usual figures, with low_g and high_g [g], the band of its limit."""
    usual = nitrogen_room(given)
    others = [nitrogen_room(given, doubt, place)["limit_g"] for doubt in NITROGEN_DOUBTS for place in (LOW, HIGH)]
    low, high = doubt_band(usual["limit_g"], others)
    return {**usual, "low_g": low, "high_g": high}


def plants_share(days: float) -> float:
    """Share of their uptake that plants reach so many days after planting: a quarter at first, all after four weeks.

    Cut and moved plants root and change their leaves before they grow. Assumption: a straight line.

    >>> plants_share(0), plants_share(14), plants_share(100)
    (0.25, 0.625, 1.0)
    """
    settling = constants("plants_settling")
    first = settling["first_share"]
    return first + (1 - first) * min(1.0, days / settling["full_after_days"])


def nitrogen_room(given: dict, doubt: str = "", place: int = USUAL) -> dict:
    """The nitrogen limit and its parts, with the figure named `doubt` at index `place` of its triple.

    processing = (capacity + plants) / TAN per gram;  nitrate = (changed + plants) / nitrate per gram

    `given` holds protein_g [g protein fed/g animal/day], bottom_m2 [m²], planting, maturity (classes),
    floating_cover [1], plants_share [1, share of their uptake that the plants have reached],
    capacity_mg_n_day [mg N/day or None] and changed_mg_n_day [mg N/day that water changes remove at the ceiling].
    Returns limit_g [g], by ("processing" or "nitrate"), tan_mg_n_g_day and nitrate_mg_n_g_day
    [mg N/g/day], capacity and plants [mg N/day].
    Sources: timmons_ebeling, jones_1931, nielsen_sandjensen_1991, reddy_debusk_1985.
    """
    place_of = {name: place if name == doubt else USUAL for name in NITROGEN_DOUBTS}
    classes, plants, shares = table("tank_classes"), constants("plant_nitrogen"), constants("nitrogen_shares")
    dry = classes["planting"]["classes"][given["planting"]]["dry_g_m2"][place_of["dry"]]
    growth = plants[("uptake_low_mg_g_day", "uptake_usual_mg_g_day", "uptake_high_mg_g_day")[place_of["growth"]]]
    afloat = plants[("floating_low_mg_m2_day", "floating_mg_m2_day", "floating_high_mg_m2_day")[place_of["floating"]]]
    taken_up = given["plants_share"] * given["bottom_m2"] * (dry * growth + given["floating_cover"] * afloat)
    capacity = given["capacity_mg_n_day"]
    if capacity is None:
        settled = classes["maturity"]["classes"][given["maturity"]]["nitrified_mg_n_m2_day"]
        capacity = settled[place_of["capacity"]] * given["bottom_m2"]
    excreted = (shares["excretion_low"], 1.0, shares["excretion_high"])[place_of["excretion"]]
    tan = given["protein_g"] * 1000 * constants("timmons_ebeling")["tan_per_protein"] * excreted
    fed = given["protein_g"] * 1000 * constants("feed_nitrogen")["n_per_protein"]
    nitrate = fed * shares[("nitrate_low", "nitrate_usual", "nitrate_high")[place_of["excretion"]]]
    processing_g = (capacity + taken_up) / tan
    nitrate_g = (max(0.0, given["changed_mg_n_day"]) + taken_up) / nitrate
    return {
        "limit_g": min(processing_g, nitrate_g),
        "by": "processing" if processing_g <= nitrate_g else "nitrate",
        "tan_mg_n_g_day": tan,
        "nitrate_mg_n_g_day": nitrate,
        "capacity": capacity,
        "plants": taken_up,
    }
