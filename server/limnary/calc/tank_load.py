"""The nitrogen that a tank has to process, and the last tests that tell whether it does."""

from limnary.calc import acidity
from limnary.calc import belief as b
from limnary.calc import kinetics as k
from limnary.calc.free_ammonia import free_ammonia
from limnary.calc.tank_events import last_reading

WEEK_H = 168.0
QUICK = ("total_ammonia", "nitrite")


def load_of(c: dict, tank: dict, until_h: float, doses: list, feedings: list) -> dict:
    """Food a day and ammonia a day that were given up to `until_h`.

    Returns feed_g_day (the usual food or, where more, the recorded; None where neither is known) and
    dosed_mg_n_l_day (what doses of ammonia bring), both as in `regular`.
    """
    usual = tank.get("feed_g_day")
    if usual is None and "fish_g" in tank:
        usual = c["feed_of_fish"] * tank["fish_g"]
    recorded = regular([(one["at_h"], one["feed_g"]) for one in feedings], until_h)
    return {
        "feed_g_day": max(usual or 0.0, recorded) if usual is not None or recorded > 0.0 else None,
        "dosed_mg_n_l_day": regular([(one["at_h"], one["tan_mg_n_l"]) for one in doses], until_h),
    }


def regular(given: list[tuple[float, float]], until_h: float) -> float:
    """What (hour, amount) pairs of the week before `until_h` come to a day.

    Several stand for the days from first to last and one usual gap, at least a day; a single one for the week.

    >>> regular([(0, 2), (24, 2), (48, 2)], 50)
    2.0
    """
    week = sorted((at_h, amount) for at_h, amount in given if until_h - WEEK_H < at_h <= until_h)
    if not week:
        return 0.0
    total = sum(amount for _, amount in week)
    if len(week) == 1:
        return total / 7.0
    days = (week[-1][0] - week[0][0]) / 24.0 * len(week) / (len(week) - 1)
    return total / max(days, 1.0)


def per_gram_of(c: dict, tank: dict) -> float:
    """Total ammonia that a gram of food brings [mg N/L]."""
    return tank.get("protein_fraction", c["protein_fraction"]) * c["tan_per_protein"] * 1000.0 / tank["volume_l"]


def levels_of(c: dict, belief: b.Belief, limits: dict) -> tuple[float, float]:
    """(total ammonia, nitrite) [mg N/L] at which a load must be processed: `ready_mg_n_l`, or the limit if lower."""
    tan, nitrite = tan_limit(belief, limits), limits["nitrite_mg_n_l"]
    return min(c["ready_mg_n_l"], tan), min(c["ready_mg_n_l"], nitrite)


def tan_limit(belief: b.Belief, limits: dict) -> float:
    """The limit of free ammonia as total ammonia in this water [mg N/L]."""
    water = free_ammonia(tan_mg_n_l=1.0, ph=belief.ph, temperature_c=belief.temperature_c)
    return limits["nh3_mg_n_l"] / water["fraction"]


def untested_or_over(belief: b.Belief, limits: dict, readings: list) -> list[str]:
    """`untested` while ammonia or nitrite has no reading, `over_limit` while the last of either is over its limit."""
    last = {name: last_reading(readings, name, belief.at_h) for name in QUICK}
    allowed = {"total_ammonia": tan_limit(belief, limits), "nitrite": limits["nitrite_mg_n_l"]}
    over = any(read and read["mg_n_l"] > allowed[name] for name, read in last.items())
    return [*(["untested"] if None in last.values() else []), *(["over_limit"] if over else [])]


def tested_until(readings: list, now_h: float) -> float:
    """The hour up to which both ammonia and nitrite are tested; both must have a reading."""
    return min(last_reading(readings, name, now_h)["at_h"] for name in QUICK)


def processed_at_limits(c: dict, belief: b.Belief, limits: dict):
    """`kinetics.processed` of the belief at `levels_of` its limits, shape (N,) [mg N/L/day]."""
    return k.processed(belief.cloud, acidity.water_of(c, belief), c, *levels_of(c, belief, limits))
