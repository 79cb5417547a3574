"""How many animals a tank can carry: by nitrogen, by oxygen at dawn, and by space."""

from math import floor

from limnary.calc.animals import mixture, resolve
from limnary.calc.oxygen_night import breathing_mg_h
from limnary.calc.stock_nitrogen import nitrogen_limit, plants_share
from limnary.calc.stock_oxygen import measured_limit, oxygen_limit
from limnary.calc.stock_room import company_more, long_enough, room_limit, surface_asked_cm2
from limnary.calc.tables import constants, table
from limnary.calc.tolerance import TOLERANCE


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
    plants_age_days: float | None = None,
    capacity_mg_n_day: float | None = None,
    feed_share_day: float = 0.012,
    feed_g_day: float | None = None,
    protein_fraction: float = 0.42,
    change_fraction: float = 0.3,
    every_days: float = 7.0,
    nitrate_ceiling_mg_n_l: float = 10.0,
    source_nitrate_mg_n_l: float = 1.0,
    least_mg_l: float = 4.0,
    dawn_oxygen_mg_l: float | None = None,
) -> dict:
    """How many more of each animal fit, and three limits in grams of grown animals, mixed as listed.

    nitrogen: the lesser of (capacity + plants) / TAN per gram, and, at the steady peak before each change,
    ((ceiling - source) f V / D + plants) / nitrate per gram; oxygen: the animals whose respiration, with that
    of the nitrifiers, leaves `least_mg_l` at dawn; room: surface / surface that each animal needs.
    By oxygen the low end of its band counts. Where the animals lie inside that band and no other limit is reached,
    nobody can tell: binding is "cannot_tell", and limit_g, more_g and the numbers by oxygen are None.

    Parameters: animals as in `resolve`, counted as grown; a count of 0 is an animal not bought yet. water_l [L],
    surface_cm2 [cm²], length_cm of the tank [cm], temperature_c [°C], altitude_m [m], dark_hours [h],
    planting, floating_cover, substrate, filter, cover as in `oxygen_night`; maturity (class), or
    capacity_mg_n_day [mg N/day] where it is known; plants_age_days since planting [days], by maturity if None;
    feed_share_day [g feed/g animal/day], or feed_g_day [g/day] for the animals present; protein_fraction [1];
    change_fraction [1] every_days [days]; nitrate_ceiling_mg_n_l and source_nitrate_mg_n_l [mg N/L]; least_mg_l
    oxygen at dawn [mg/L]; dawn_oxygen_mg_l [mg/L], read at dawn with the animals present, settles the doubt.
    Returns binding, `more` (a list of {name, more, count, nitrogen, oxygen, room, company, each_g, adult_cm,
    long_enough}), limit_g, present_g, more_g, the three limits with their bands [g] and the parts of the sums.
    Raises Refusal as `resolve` does. Sources: timmons_ebeling, jones_1931, reddy_debusk_1985,
    nielsen_sandjensen_1991, those of `oxygen_night`, and trade_stocking for room and company.

    >>> tank = {"water_l": 96, "surface_cm2": 2400, "length_cm": 80, "temperature_c": 25}
    >>> told = stocking_limit(animals=[{"species": "Trigonostigma heteromorpha", "count": 10}], **tank)
    >>> told["binding"], told["more"][0]["room"]
    ('oxygen', 7)
    """
    stock = resolve(animals)
    present_g = sum(one["count"] * one["adult_g"] for one in stock)
    share = feed_g_day / present_g if feed_g_day is not None and present_g > 0 else feed_share_day
    planted_days = table("tank_classes")["maturity"]["classes"][maturity]["from_days"]
    given = {
        "protein_g": share * protein_fraction,
        "bottom_m2": surface_cm2 / 10000,
        "planting": planting,
        "floating_cover": floating_cover,
        "plants_share": plants_share(planted_days if plants_age_days is None else plants_age_days),
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
        "evening_percent": None,
        "planting": planting,
        "floating_cover": floating_cover,
        "substrate": substrate,
        "filter": filter,
        "cover": cover,
    }
    each = [_asks_of(one, animal, tank, length_cm) for one, animal in zip(stock, animals, strict=True)]
    sums = _sums_of(stock, each, given, tank, least_mg_l, dawn_oxygen_mg_l)
    return {
        **_limits_said(sums),
        "more": [_more_of(one, asks, sums) for one, asks in zip(stock, each, strict=True)],
        "feed_g_day": share * present_g,
        "tan_mg_n_g_day": sums["nitrogen"]["tan_mg_n_g_day"],
        "nitrate_mg_n_g_day": sums["nitrogen"]["nitrate_mg_n_g_day"],
        "processed_mg_n_day": sums["nitrogen"]["capacity"],
        "plants_share": given["plants_share"],
        "plants_mg_n_day": sums["nitrogen"]["plants"],
        "changed_mg_n_day": given["changed_mg_n_day"],
        "spare_oxygen_mg_h": sums["oxygen"]["spare_mg_h"],
        "used_oxygen_mg_h": sums["used_mg_h"],
        "used_surface_cm2": sums["used_cm2"],
        "notes": _notes(stock, each, sums, given),
    }


def _sums_of(
    stock: list[dict], each: list[dict], given: dict, tank: dict, least_mg_l: float, dawn_mg_l: float | None
) -> dict:
    """The three limits of the mixture, what the animals present use of each, and which limit binds."""
    nitrogen = nitrogen_limit(given)
    # Oxygen that oxidises the ammonia of one gram of animals; their own respiration comes on top.
    oxidising_mg_h_g = nitrogen["tan_mg_n_g_day"] / 24 * constants("ebeling_2006")["oxygen_per_n"]
    lot = _lot_of(mixture(stock), each)
    used = _lot_of([one["count"] for one in stock], each)
    used_mg_h = used["mg_h"] + used["g"] * oxidising_mg_h_g
    if dawn_mg_l is None:
        oxygen = oxygen_limit(tank, lot, oxidising_mg_h_g, least_mg_l)
    else:
        here = {"g": used["g"], "mg_h": used_mg_h}
        oxygen = measured_limit(tank, lot, oxidising_mg_h_g, least_mg_l, here, dawn_mg_l)
    room = room_limit(tank["surface_cm2"], lot)
    return {
        "present_g": used["g"],
        "nitrogen": nitrogen,
        "oxygen": oxygen,
        "oxygen_read": dawn_mg_l is not None,
        "room": room,
        "oxidising_mg_h_g": oxidising_mg_h_g,
        "used_mg_h": used_mg_h,
        "used_cm2": used["cm2"],
        "free_g": nitrogen["limit_g"] - used["g"],
        "free_mg_h": oxygen["sure_mg_h"] - used_mg_h,
        "free_cm2": tank["surface_cm2"] - used["cm2"],
        "binding": _binding(used["g"], nitrogen["limit_g"], oxygen, room["limit_g"]),
    }


def _binding(present_g: float, nitrogen_g: float, oxygen: dict, room_g: float | None) -> str:
    """Which limit binds first; "cannot_tell" where oxygen's band leaves it open whether it is passed."""
    others = {"nitrogen": nitrogen_g, **({} if room_g is None else {"room": room_g})}
    least = min(others, key=others.get)
    if oxygen["low_g"] <= present_g < oxygen["high_g"]:
        return least if others[least] <= present_g else "cannot_tell"
    return "oxygen" if oxygen["low_g"] < others[least] else least


def _limit_of(sums: dict) -> float | None:
    """The limit that binds [g], by oxygen its low end; None where nobody can tell."""
    binding = sums["binding"]
    return None if binding == "cannot_tell" else sums[binding]["low_g" if binding == "oxygen" else "limit_g"]


def _limits_said(sums: dict) -> dict:
    """The limits as the answer names them."""
    nitrogen, oxygen, room, limit_g = sums["nitrogen"], sums["oxygen"], sums["room"], _limit_of(sums)
    return {
        "binding": sums["binding"],
        "limit_g": limit_g,
        "present_g": sums["present_g"],
        "more_g": None if limit_g is None else max(0.0, limit_g - sums["present_g"]),
        "nitrogen_g": nitrogen["limit_g"],
        "nitrogen_low_g": nitrogen["low_g"],
        "nitrogen_high_g": nitrogen["high_g"],
        "nitrogen_by": nitrogen["by"],
        "oxygen_g": oxygen["limit_g"],
        "oxygen_low_g": oxygen["low_g"],
        "oxygen_high_g": oxygen["high_g"],
        "room_g": room["limit_g"],
        "room_low_g": room["low_g"],
        "room_high_g": room["high_g"],
    }


def _asks_of(one: dict, animal: dict, tank: dict, length_cm: float) -> dict:
    """What one grown animal needs from the tank, and how many more of its kind it bears."""
    row = one["row"] or {}
    return {
        "g": one["adult_g"],
        "mg_h": breathing_mg_h(one["adult_g"], tank["temperature_c"]),
        "cm2": surface_asked_cm2(one),
        "fits": long_enough(one, length_cm),
        "company": company_more(one, animal.get("temperament", row.get("temperament", "peaceful"))),
        "group": row.get("group_min", 1),
    }


def _lot_of(counts: list[float], each: list[dict]) -> dict:
    """What `counts` of each need together; the lot fits if every animal in it fits."""
    pairs = list(zip(counts, each, strict=True))
    asked = {what: sum(count * asks[what] for count, asks in pairs) for what in ("g", "mg_h", "cm2")}
    return {**asked, "fits": all(asks["fits"] for count, asks in pairs if count > 0)}


def _more_of(one: dict, asks: dict, sums: dict) -> dict:
    """How many more of one animal fit by each limit if no other kind is added; None by what nobody can tell."""
    cannot_tell = sums["binding"] == "cannot_tell"
    needs_mg_h = asks["mg_h"] + asks["g"] * sums["oxidising_mg_h_g"]
    by = {
        "nitrogen": _whole(sums["free_g"] / asks["g"]),
        "oxygen": None if cannot_tell else _whole(sums["free_mg_h"] / needs_mg_h),
        "room": None if asks["cm2"] <= 0 else _whole(sums["free_cm2"] / asks["cm2"]) if asks["fits"] else 0,
        "company": asks["company"],
    }
    limit_g = _limit_of(sums)
    over = limit_g is not None and sums["present_g"] > limit_g
    fit = 0 if over else min(number for number in by.values() if number is not None)
    # A kind comes as a whole group or not at all.
    more = 0 if one["count"] == 0 and fit < asks["group"] else fit
    return {
        "name": one["name"],
        "more": None if cannot_tell and more > 0 else more,
        "count": one["count"],
        **by,
        "each_g": one["adult_g"],
        "adult_cm": one["adult_cm"],
        "long_enough": asks["fits"],
    }


def _whole(number: float) -> int:
    """Whole animals that still fit, at least 0."""
    return max(0, floor(number + TOLERANCE))


def _notes(stock: list[dict], each: list[dict], sums: dict, given: dict) -> list[str]:
    present_g, oxygen, limit_g = sums["present_g"], sums["oxygen"], _limit_of(sums)
    over = limit_g is not None and present_g > limit_g
    young = given["capacity_mg_n_day"] is None and given["maturity"] != "mature"
    small = any(0 < one["count"] < asks["group"] for one, asks in zip(stock, each, strict=True))
    found = {
        "over_limit": over and not (young and sums["binding"] == "nitrogen"),
        "over_while_young": over and young and sums["binding"] == "nitrogen",
        "look_at_dawn": oxygen["low_g"] <= present_g < oxygen["high_g"],
        "no_oxygen_to_spare": oxygen["high_g"] <= 0 and not sums["oxygen_read"],
        "tank_too_short": not all(asks["fits"] for asks in each),
        "not_mature": young,
        "plants_settling": given["plants_share"] < 1 and (given["planting"] != "none" or given["floating_cover"] > 0),
        "source_at_ceiling": given["changed_mg_n_day"] <= 0,
        # Where there are too many already, nobody is told to fill up a group.
        "group_small": not over and small,
    }
    return [code for code, holds in found.items() if holds]
