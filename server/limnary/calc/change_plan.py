"""The smallest water change now that keeps ammonia and nitrite under their limits until the next test."""

import math

from limnary.calc import kinetics as k
from limnary.calc.bands import band
from limnary.calc.change_trial import Trial
from limnary.calc.outlook import Watch, even, notes_of, recent_doubts, working_limits
from limnary.calc.tank_events import believed, last_reading


def change_plan(
    *,
    tank: dict,
    now_h: float,
    readings: list = (),
    changes: list = (),
    doses: list = (),
    feedings: list = (),
    source: dict | None = None,
    limits: dict | None = None,
    risk: float = 0.1,
    next_test_h: float = 24.0,
    max_fraction: float = 0.5,
    seed: int = 1,
) -> dict:
    """The fraction and litres to change now; the chance and peaks that then remain; what else to do.

    Parameters and returns: shared_schema/calc/change_plan.json; limits in mg N/L. Only ammonia and nitrite decide:
    nitrate harms over weeks, so it asks for a small change a week, and for none that harms at once.
    If no change of up to `max_fraction` is enough, the plan assumes half the food, then several changes. A change
    that raises the chance of passing a limit, or the time over one, is never advised.
    Raises Refusal reading_after_now. Source: the belief of `outlook`.

    >>> tank = dict(volume_l=90, temperature_c=24, ph=7.4, planting="none", seeded="none", feed_g_day=0.2)
    >>> plan = change_plan(tank=tank, now_h=0)
    >>> plan["fraction"], plan["enough"], plan["advice"]
    (0.0, True, ['no_change'])
    """
    c = k.settings()
    belief, plans, _ = believed(c, tank, now_h, readings, changes, doses, feedings, seed)
    return plan_of(c, belief, plans, tank, source, limits, risk, next_test_h, max_fraction, readings, changes)


def plan_of(
    c, belief, plans, tank, source, limits, risk, next_test_h, max_fraction, readings: list = (), changes: list = ()
) -> dict:
    """The answer of `change_plan` from a belief that has reached now."""
    trial = Trial(c, even(belief), plans, tank, source or {}, working_limits(tank, limits), risk, next_test_h)
    fraction, watch = trial.smallest(max_fraction)
    enough = trial.enough(watch)
    several = None
    if not enough:
        # Half the food is easier on tank, animals and keeper than more changes.
        trial.feed = c["lean_feed"]
        fraction, watch = trial.smallest(max_fraction)
        several = None if trial.enough(watch) else trial.several(fraction, watch)
    cause = None if enough else trial.cause(max_fraction, watch)
    routine = False
    if trial.enough(watch):
        slow = min(_nitrate_fraction(c, trial, readings, changes), max_fraction)
        if slow > fraction:
            tried = trial.run(slow)
            if trial.harms_no_more(tried, watch):
                fraction, watch, routine = slow, tried, True
            elif cause is None:
                cause = trial.worst_of_source(slow)
    return {
        "fraction": fraction,
        "litres": fraction * tank["volume_l"],
        "pass_chance": watch.chance(),
        "pass_chance_without": trial.run(0.0, feed=1.0).chance(),
        "enough": enough,
        "several": several,
        "cause": cause,
        "advice": _advice_of(trial, watch, fraction, enough, several, cause, routine),
        "peak": {f"{name}_mg_n_l": band(values) for name, values in watch.peaks.items()},
        "doubts": recent_doubts(c, belief),
        "notes": [*(["source_ph_unknown"] if fraction > 0.0 and trial.ph_matters() else []), *notes_of(c, belief)],
    }


def _nitrate_fraction(c: dict, trial: Trial, readings: list, changes: list) -> float:
    """The change that is still due this week to bring nitrate to its limit in `nitrate_weeks` weekly changes.

    x = 1 - ((limit - source) / (nitrate - source))^(1 / weeks), from `nitrate_least` to `nitrate_most`, in
    hundredths; what was changed in the last seven days counts. nitrate: as last tested, diluted by the changes since;
    without a test of the last `nitrate_stands_h` nothing is due.
    """
    now_h = trial.belief.at_h
    brought, limit = trial.source.get("nitrate_mg_n_l", 0.0), trial.limits["nitrate_mg_n_l"]
    last = last_reading(readings, "nitrate", now_h)
    if last is None or now_h - last["at_h"] > c["nitrate_stands_h"]:
        return 0.0
    nitrate = last["mg_n_l"]
    for change in sorted(changes, key=lambda one: one["at_h"]):
        if last["at_h"] <= change["at_h"] <= now_h:
            source = change.get("source", {}).get("nitrate_mg_n_l", 0.0)
            nitrate += change["fraction"] * (source - nitrate)
    if nitrate <= limit or nitrate <= brought:
        return 0.0
    share = max(limit - brought, 0.0) / (nitrate - brought)
    weekly = min(max(1.0 - share ** (1.0 / c["nitrate_weeks"]), c["nitrate_least"]), c["nitrate_most"])
    kept = math.prod(1.0 - change["fraction"] for change in changes if now_h - 168.0 < change["at_h"] <= now_h)
    due = 1.0 - (1.0 - weekly) / kept if kept > 0.0 else 0.0
    return math.ceil(due * 100 - 1e-9) / 100 if due >= c["nitrate_least"] - 1e-9 else 0.0


def _advice_of(
    trial: Trial,
    watch: Watch,
    fraction: float,
    enough: bool,
    several: dict | None,
    cause: str | None,
    routine: bool,
) -> list[str]:
    """Codes of what else to do; the effect of feeding or testing differently is tried on the belief first."""
    advice = []
    if cause:
        advice.append("source_is_the_cause")
    elif trial.source_over_limit():
        advice.append("source_over_limit")
    if routine:
        advice.append("nitrate_slowly")
    if enough:
        return advice if fraction or cause else [*advice, "no_change"]
    if trial.enough(watch):
        return [*advice, "feed_half"]
    if several:
        advice.append("several_changes")
        if several["pass_chance"] <= trial.risk:
            return [*advice, "feed_half"]
    if trial.enough(trial.run(fraction, feed=0.0)):
        advice.append("feed_nothing")
    else:
        advice.append("feed_less")
    if trial.enough(trial.run(fraction, hours=trial.hours / 2)):
        advice.append("test_at_half_time")
    else:
        advice.append("test_sooner")
    return advice
