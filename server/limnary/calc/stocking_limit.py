"""How many animals a tank can carry: by nitrogen, by oxygen at dawn, and by space."""

from math import floor, sqrt

from limnary.calc.animals import mixture, resolve
from limnary.calc.oxygen_night import DOUBTS, HIGH, LOW, USUAL, breathing_mg_h, others_at_dawn_mg_h, still_night
from limnary.calc.stock_nitrogen import NITROGEN_DOUBTS, nitrogen_room
from limnary.calc.stock_room import long_enough, surface_asked_cm2
from limnary.calc.tables import constants


def stocking_limit(
    *,
    animals: list[dict],
    water_l: float,
    surface_cm2: float,
    length_cm: float,
    temperature_c: float,
    altitude_m: float = 0.0,
    dark_hours: float = 14.0,
    planting: str = "medium",
    floating_cover: float = 0.0,
    substrate: str = "sand",
    filter: str = "none",
    cover: str = "lid",
    maturity: str = "mature",
    capacity_mg_n_day: float | None = None,
    feed_share_day: float = 0.012,
    feed_g_day: float | None = None,
    protein_fraction: float = 0.42,
    change_fraction: float = 0.3,
    every_days: float = 7.0,
    nitrate_ceiling_mg_n_l: float = 10.0,
    source_nitrate_mg_n_l: float = 1.0,
    least_mg_l: float = 4.0,
) -> dict:
    """Three limits in grams of grown animals, mixed as listed, and how many more of each animal fit.

    nitrogen: the lesser of (capacity + plants) / TAN per gram, and, at the steady peak before each change,
    ((ceiling - source) f V / D + plants) / nitrate per gram; oxygen: the animals whose respiration, with that
    of the nitrifiers, leaves `least_mg_l` at dawn; room: surface / surface that each animal needs.

    Parameters: animals as in `resolve`, counted as grown; a count of 0 is an animal not bought yet. water_l [L],
    surface_cm2 [cm²], length_cm of the tank [cm], temperature_c [°C], altitude_m [m], dark_hours [h],
    planting, floating_cover, substrate, filter, cover as in `oxygen_night`; maturity (class), or
    capacity_mg_n_day [mg N/day] where it is known; feed_share_day [g feed/g animal/day], or feed_g_day
    [g/day] for the animals present; protein_fraction [1]; change_fraction [1] every_days [days];
    nitrate_ceiling_mg_n_l and source_nitrate_mg_n_l [mg N/L]; least_mg_l oxygen at dawn [mg/L].
    Returns present_g, the three limits with their bands [g], binding, limit_g, more_g, `more` (a list of
    {name, count, each_g, adult_cm, nitrogen, oxygen, room, more, long_enough}) and the parts of the sums.
    Raises Refusal as `resolve` does. Sources: timmons_ebeling, jones_1931, reddy_debusk_1985,
    nielsen_sandjensen_1991, those of `oxygen_night`, and trade_stocking for room.

    >>> tank = {"water_l": 96, "surface_cm2": 2400, "length_cm": 80, "temperature_c": 25}
    >>> told = stocking_limit(animals=[{"species": "Trigonostigma heteromorpha", "count": 10}], **tank)
    >>> told["binding"], told["more"][0]["room"]
    ('room', 7)
    """
    stock = resolve(animals)
    present_g = sum(one["count"] * one["adult_g"] for one in stock)
    share = feed_g_day / present_g if feed_g_day is not None and present_g > 0 else feed_share_day
    nitrogen = {
        "protein_g": share * protein_fraction,
        "bottom_m2": surface_cm2 / 10000,
        "planting": planting,
        "floating_cover": floating_cover,
        "maturity": maturity,
        "capacity_mg_n_day": capacity_mg_n_day,
        "changed_mg_n_day": (nitrate_ceiling_mg_n_l - source_nitrate_mg_n_l) * change_fraction * water_l / every_days,
    }
    tank = {
        "water_l": water_l,
        "surface_cm2": surface_cm2,
        "temperature_c": temperature_c,
        "altitude_m": altitude_m,
        "dark_hours": dark_hours,
        "evening_percent": 100.0,
        "planting": planting,
        "floating_cover": floating_cover,
        "substrate": substrate,
        "filter": filter,
        "cover": cover,
    }
    usual = nitrogen_room(nitrogen)
    # Oxygen that oxidises the ammonia of one gram of animals; their own respiration comes on top.
    oxidising_mg_h_g = usual["tan_mg_n_g_day"] / 24 * constants("ebeling_2006")["oxygen_per_n"]
    each = [_asks_of(one, temperature_c, length_cm) for one in stock]
    lot = _lot_of(mixture(stock), each)
    spare_mg_h = others_at_dawn_mg_h(still_night(tank), least_mg_l)
    nitrogen_g, oxygen_g = usual["limit_g"], _oxygen_g_of(tank, lot, oxidising_mg_h_g, least_mg_l)
    nitrogen_low_g, nitrogen_high_g = _band(
        nitrogen_g,
        [nitrogen_room(nitrogen, doubt, place)["limit_g"] for doubt in NITROGEN_DOUBTS for place in (LOW, HIGH)],
    )
    oxygen_low_g, oxygen_high_g = _band(
        oxygen_g,
        [
            _oxygen_g_of(tank, lot, oxidising_mg_h_g, least_mg_l, doubt, place)
            for doubt in DOUBTS
            for place in (LOW, HIGH)
        ],
    )
    room_g = None
    if lot["cm2"] > 0:
        room_g = surface_cm2 / lot["cm2"] * lot["g"] if lot["fits"] else 0.0
    limits = {"nitrogen": nitrogen_g, "oxygen": oxygen_g, **({} if room_g is None else {"room": room_g})}
    binding = min(limits, key=limits.get)
    used = _lot_of([one["count"] for one in stock], each)
    free = {
        "g": nitrogen_g - present_g,
        "mg_h": spare_mg_h - used["mg_h"] - present_g * oxidising_mg_h_g,
        "cm2": surface_cm2 - used["cm2"],
    }
    practice = constants("room_practice")
    return {
        "present_g": present_g,
        "limit_g": limits[binding],
        "more_g": max(0.0, limits[binding] - present_g),
        "binding": binding,
        "nitrogen_g": nitrogen_g,
        "nitrogen_low_g": nitrogen_low_g,
        "nitrogen_high_g": nitrogen_high_g,
        "nitrogen_by": usual["by"],
        "oxygen_g": oxygen_g,
        "oxygen_low_g": oxygen_low_g,
        "oxygen_high_g": oxygen_high_g,
        "room_g": room_g,
        "room_low_g": None if room_g is None else room_g / practice["low_factor"],
        "room_high_g": None if room_g is None else room_g * practice["high_factor"],
        "more": [_more_of(one, asks, free, oxidising_mg_h_g) for one, asks in zip(stock, each, strict=True)],
        "feed_g_day": share * present_g,
        "tan_mg_n_g_day": usual["tan_mg_n_g_day"],
        "nitrate_mg_n_g_day": usual["nitrate_mg_n_g_day"],
        "processed_mg_n_day": usual["capacity"],
        "plants_mg_n_day": usual["plants"],
        "changed_mg_n_day": nitrogen["changed_mg_n_day"],
        "spare_oxygen_mg_h": spare_mg_h,
        "used_oxygen_mg_h": used["mg_h"] + present_g * oxidising_mg_h_g,
        "used_surface_cm2": used["cm2"],
        "notes": [
            code
            for code, holds in {
                "over_limit": present_g > limits[binding],
                "no_oxygen_to_spare": spare_mg_h <= 0,
                "tank_too_short": not all(asks["fits"] for asks in each),
                "not_mature": capacity_mg_n_day is None and maturity != "mature",
                "source_at_ceiling": nitrogen["changed_mg_n_day"] <= 0,
                "group_small": any(one["row"] and 0 < one["count"] < one["row"]["group_min"] for one in stock),
            }.items()
            if holds
        ],
    }


def _asks_of(one: dict, temperature_c: float, length_cm: float) -> dict:
    """What one grown animal needs from the tank."""
    return {
        "g": one["adult_g"],
        "mg_h": breathing_mg_h(one["adult_g"], temperature_c),
        "cm2": surface_asked_cm2(one),
        "fits": long_enough(one, length_cm),
    }


def _lot_of(counts: list[float], each: list[dict]) -> dict:
    """What `counts` of each need together; the lot fits if every animal in it fits."""
    pairs = list(zip(counts, each, strict=True))
    asked = {what: sum(count * asks[what] for count, asks in pairs) for what in ("g", "mg_h", "cm2")}
    return {**asked, "fits": all(asks["fits"] for count, asks in pairs if count > 0)}


def _oxygen_g_of(
    tank: dict, lot: dict, oxidising_mg_h_g: float, least_mg_l: float, doubt: str = "", place: int = USUAL
) -> float:
    """Mass of the lot [g] that leaves `least_mg_l` at dawn after its respiration and its ammonia's oxidation."""
    breath = constants("animal_breathing")
    rate = (breath["night_low"], breath["night_usual"], breath["night_high"])
    breathing = lot["mg_h"] * rate[place if doubt == "animals" else USUAL]
    spare = others_at_dawn_mg_h(still_night(tank, doubt, place), least_mg_l)
    return max(0.0, spare) / (breathing + lot["g"] * oxidising_mg_h_g) * lot["g"]


def _band(usual: float, others: list[float]) -> tuple[float, float]:
    """(low, high): the deviations of figures varied alone, combined as the root of their squares."""
    below = sqrt(sum((other - usual) ** 2 for other in others if other < usual))
    above = sqrt(sum((other - usual) ** 2 for other in others if other > usual))
    return max(0.0, usual - below), usual + above


def _more_of(one: dict, asks: dict, free: dict, oxidising_mg_h_g: float) -> dict:
    """How many more of one animal fit by each limit if no other kind is added."""
    by = {
        "nitrogen": _whole(free["g"] / asks["g"]),
        "oxygen": _whole(free["mg_h"] / (asks["mg_h"] + asks["g"] * oxidising_mg_h_g)),
        "room": None if asks["cm2"] <= 0 else _whole(free["cm2"] / asks["cm2"]) if asks["fits"] else 0,
    }
    return {
        "name": one["name"],
        "count": one["count"],
        "more": min(number for number in by.values() if number is not None),
        **by,
        "each_g": one["adult_g"],
        "adult_cm": one["adult_cm"],
        "long_enough": asks["fits"],
    }


def _whole(number: float) -> int:
    """Whole animals that still fit, at least 0."""
    return max(0, floor(number + 1e-9))
