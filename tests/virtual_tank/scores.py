"""The scores of the belief on virtual tanks: forecast, water changes, ready date."""

from itertools import combinations

import numpy as np
from limnary.calc import kinetics as k
from limnary.calc.outlook import even
from limnary.calc.readiness import settled_band
from limnary.calc.tank_load import per_gram_of

from tests.forecast_band import forecast_band
from tests.virtual_tank.keepers import (
    TEST_HOUR,
    Believers,
    Kept,
    fishless_dose,
    half_daily,
    kit,
    patient_rule,
    usual_rule,
)
from tests.virtual_tank.oracle import futures
from tests.virtual_tank.simulator import ION_PER_N, MEQ_PER_DH, STALL_HELD_BACK, VirtualTanks

# The outlook looks this far for the day on which hardness is gone; a warning counts from two weeks before it.
KH_FAR_DAYS, KH_WARNED_DAYS, KH_SLACK_DAYS = 60, 14, 3
NEVER = {"p10": None, "p50": None, "p90": None}
BEYOND_H = 120 * 24.0
# Free ammonia 0.025 mg/L as NH3 and nitrite 0.1 mg N/L, in every virtual tank.
LIMITS = {"nh3_mg_n_l": 0.025 / 1.21589, "nitrite_mg_n_l": 0.1, "nitrate_mg_n_l": 10.0}
# No kit shows less [mg N/L]: a band of zeros holds a water of 0.002.
UNSEEN = 0.01
ROWS = {"total_ammonia": k.TAN, "nitrite": k.NITRITE}


def cared(tanks, day: int, seen: dict) -> tuple[np.ndarray, np.ndarray]:
    """Change water, or dose tanks without animals with ammonia; says how much (fraction, mg N/L).

    Every other tank is changed by the usual rule, the rest by the patient one, so that good and bad tanks both count.
    """
    nothing = np.zeros(tanks.count)
    if tanks.stocking == "none":
        dose = fishless_dose(seen)
        tanks.dose(dose)
        return nothing, dose
    fraction = np.where(np.arange(tanks.count) % 2 == 0, usual_rule(day, seen), patient_rule(day, seen))
    tanks.change(fraction)
    return fraction, nothing


def next_day_forecast(count: int, seed: int, days: int = 35, stocking: str = "mixed", **settings) -> dict:
    """Belief against "same as the last reading, diluted", a day ahead, measured on the true water.

    Cared for as `cared` says. Per parameter: mae, mae_same, gain, exactly and held (shares of true values inside the
    80 % band, and inside it to what a kit shows).
    """
    tanks = VirtualTanks(count, seed, stocking)
    believers = Believers(tanks, **settings)
    found = {name: {"error": [], "same": [], "held": [], "exactly": []} for name in ROWS}
    last = None
    tanks.run(TEST_HOUR)
    for day in range(days):
        believers.wait(tanks.hour)
        for name, row in ROWS.items() if last is not None else ():
            bands = np.array([forecast_band(believers.c, x, row) for x in believers.beliefs])
            truth = tanks.tan if name == "total_ammonia" else tanks.nitrite
            found[name]["error"].append(np.abs(bands[:, 1] - truth))
            found[name]["same"].append(np.abs(last[name] - truth))
            found[name]["held"].append((bands[:, 0] - UNSEEN <= truth) & (truth <= bands[:, 2] + UNSEEN))
            found[name]["exactly"].append((bands[:, 0] <= truth) & (truth <= bands[:, 2]))
        seen = kit(tanks)
        believers.test(day, seen)
        fraction, dose = cared(tanks, day, seen)
        believers.changed(tanks.hour, fraction)
        believers.dosed(tanks.hour, dose)
        last = {name: seen[name] / ION_PER_N[name] * (1 - fraction) for name in ROWS}
        last["total_ammonia"] = last["total_ammonia"] + dose
        tanks.run(24)
    return {
        name: {
            "mae": float(np.mean(lists["error"])),
            "mae_same": float(np.mean(lists["same"])),
            "gain": 1 - float(np.mean(lists["error"]) / np.mean(lists["same"])),
            "held": float(np.mean(lists["held"])),
            "exactly": float(np.mean(lists["exactly"])),
        }
        for name, lists in found.items()
    }


def closed_loop(
    count: int,
    seed: int,
    stocking: str,
    rule: str,
    limits: dict,
    *,
    risk: float = 0.1,
    days: int = 35,
    less_feed: bool = False,
    every_h: int = 24,
    price: float = np.inf,
    **settings,
) -> dict:
    """Keep `count` tanks for `days` by a rule; over: share of hours over a limit; water: tank volumes changed.

    `rule`: "usual", "half daily", "plan" or "oracle". The plan's keeper follows all of its advice: half the food on
    days when the plan asks for it, several changes a day when half the food is not enough. `lean_feed=1.0` is a plan
    that never asks for less food. With `less_feed` a rule's keeper halves the food on days when the rule changes half
    the water. The oracle asks the future every `every_h` and never feeds less; `price` is what an hour over a limit
    may cost [tank volumes]. lean: share of days with half the food; stalled: share of tanks that ever stalled.
    """
    tanks = VirtualTanks(count, seed, stocking)
    kept = Kept(tanks, limits, Believers(tanks, **settings) if rule == "plan" else None)
    kept.run(TEST_HOUR)
    for day in range(days):
        seen = kit(tanks)
        hours = 24 if day < days - 1 else 24 - TEST_HOUR
        kept.stalled |= tanks.stalled()
        if rule == "oracle":
            kept.oracle_day(hours, every_h, price)
            continue
        every = np.full(count, 24)
        if kept.believers:
            kept.believers.test(day, seen)
            fraction, every, less = kept.believers.advice(limits, risk)
        else:
            fraction = {"usual": usual_rule, "half daily": half_daily}[rule](day, seen)
            less = (fraction == 0.5) & less_feed
        kept.feed(less)
        kept.day(hours, fraction, every)
    return {
        "over": float(np.mean(kept.over)) / (24 * days),
        "water": float(np.mean(kept.water)),
        "lean": float(np.mean(kept.lean)) / days,
        "stalled": float(np.mean(kept.stalled)),
    }


def least_water(over: float, oracle: list[dict]) -> float | None:
    """The least water with which a run of the `oracle`, or two in turn, is over a limit in `over` of the hours."""
    points = sorted((run["over"], run["water"]) for run in oracle)
    mixed = (
        most + (least - most) * (over - few) / (many - few)
        for (few, most), (many, least) in combinations(points, 2)
        if few <= over <= many and few < many
    )
    return min(mixed, default=None)


def ready_date(
    count: int, seed: int, days: int = 45, first_day: int = 10, every: int = 5, stocking: str = "mixed", **settings
) -> dict:
    """How often the 80 % range of the ready date contains the true hour, from `first_day` on.

    held: that share, of tanks that are not ready yet; known: the share of ready tanks that the belief calls
    ready (its median is not later than now); width_days: the range's median width.
    """
    tanks = VirtualTanks(count, seed, stocking)
    believers = Believers(tanks, **settings)
    ready_h = np.full(count, np.inf)
    asked = []
    tanks.run(TEST_HOUR)
    for day in range(days + 25):
        ready_h[np.isinf(ready_h) & tanks.ready()] = tanks.hour
        seen = kit(tanks)
        if day < days:
            believers.test(day, seen)
            if day >= first_day and day % every == 0:
                loads = [tank["feed_g_day"] * per_gram_of(believers.c, tank) for tank in believers.tanks]
                bands = [
                    settled_band(believers.c, even(x), changes, LIMITS, load, load)
                    for x, changes, load in zip(believers.beliefs, believers.changes, loads, strict=True)
                ]
                asked.append((tanks.hour, bands))
        fraction, _ = cared(tanks, day, seen)
        if day < days:
            believers.changed(tanks.hour, fraction)
        tanks.run(24)
    held, known, width = [], [], []
    for hour, bands in asked:
        for i, found in enumerate(bands):
            first, middle, last = (np.inf if point is None else point for point in (found or NEVER).values())
            if ready_h[i] <= hour:
                known.append(middle <= hour)
            else:
                # a keeper reads days, so the range is widened to whole days
                held.append(first - 12 <= ready_h[i] <= last + 12)
                width.append((min(last, BEYOND_H) - min(first, BEYOND_H)) / 24)
    return {
        "held": float(np.mean(held)),
        "asked": len(held),
        "known": float(np.mean(known)),
        "width_days": float(np.median(width)),
    }


def stall_days(tanks, days: int = 30, care=None) -> dict:
    """On which day from now each tank's alkalinity is gone (below 1 dKH) and its nitrification held back.

    Held back is less than a tenth of what it would be at 4 dKH. Found on a copy of the truth, which lives through
    what will happen; infinite where it does not within `days`. `care(day, tanks)` may change or dose the copy every
    24 h, at first 24 h from now; nothing is done without.
    """
    ahead = futures(tanks, np.arange(tanks.count))
    found = {name: np.full(tanks.count, np.inf) for name in ("kh_gone_days", "held_back_days")}
    for hour in range(24 * days + 1):
        if hour:
            ahead.run(1)
        if hour and hour % 24 == 0 and care:
            care(hour // 24, ahead)
        now = (ahead.alkalinity_meq < MEQ_PER_DH, ahead.held_back() < STALL_HELD_BACK)
        for first, true in zip(found.values(), now, strict=True):
            first[np.isinf(first) & true] = hour / 24
    return found


def usual_care(tanks, day: int, seen: dict) -> tuple[np.ndarray, np.ndarray]:
    """As `cared`, but every tank with animals is changed by the usual rule."""
    if tanks.stocking == "none":
        return cared(tanks, day, seen)
    fraction = usual_rule(day, seen)
    tanks.change(fraction)
    return fraction, np.zeros(tanks.count)


def hardness_gone(count: int, seed: int, stocking: str, asked=(5, 10, 15, 20), **settings) -> list[tuple]:
    """In how many days carbonate hardness is gone, as (the truth, p10, p50, p90), inf beyond `KH_FAR_DAYS`.

    For each tank of at least 1 dKH on each day of `asked`, asked after the day's care, which goes on by `usual_care`:
    the truth is what `stall_days` would find then. All three points are inf where the outlook names no hour.
    """
    tanks = VirtualTanks(count, seed, stocking)
    believers = Believers(tanks, **settings)
    gone, told, found = [], {}, []
    tanks.run(TEST_HOUR)
    for day in range(max(asked) + KH_FAR_DAYS + 1):
        seen = kit(tanks)
        if day <= max(asked):
            believers.test(day, seen)
        fraction, dose = usual_care(tanks, day, seen)
        if day <= max(asked):
            believers.changed(tanks.hour, fraction)
            believers.dosed(tanks.hour, dose)
        if day in asked:
            told[day] = (tanks.hour, believers.hardness_gone())
        for _ in range(24):
            gone.append(tanks.alkalinity_meq < MEQ_PER_DH)
            tanks.run(1)
    for day, (hour, bands) in told.items():
        ahead = np.array(gone[24 * day : 24 * (day + KH_FAR_DAYS) + 1])
        truth = np.where(np.any(ahead, 0), np.argmax(ahead, 0) / 24, np.inf)
        for true_days, band in zip(truth, bands, strict=True):
            points = [np.inf if at_h is None else (at_h - hour) / 24 for at_h in (band or NEVER).values()]
            if true_days > 0:
                found.append((true_days, *points))
    return found


def hardness_figures(found: list[tuple]) -> dict:
    """What `hardness_gone` comes to.

    asked; dates: how many true dates; held: their share within p10 to p90, read in whole days; error_days: median of
    p50's distance from them where an hour was named, late_days: with its sign; soon: how many hardness leaves within
    `KH_WARNED_DAYS`, told: how many of them p50 puts no more than `KH_SLACK_DAYS` beyond those; warned: how many p50
    puts within them, vain: how many of those lose it more than `KH_SLACK_DAYS` beyond them.
    """
    truth, low, middle, high = np.array(found).T
    date = np.isfinite(truth)
    held = (low - 0.5 <= truth) & (truth <= high + 0.5)
    named = date & np.isfinite(middle)
    late = middle[named] - truth[named]
    soon, warned = truth <= KH_WARNED_DAYS, middle <= KH_WARNED_DAYS
    return {
        "asked": len(truth),
        "dates": int(np.sum(date)),
        "held": float(np.mean(held[date])) if np.any(date) else np.nan,
        "error_days": float(np.median(np.abs(late))) if np.any(named) else np.nan,
        "late_days": float(np.median(late)) if np.any(named) else np.nan,
        "soon": int(np.sum(soon)),
        "told": int(np.sum(soon & (middle <= KH_WARNED_DAYS + KH_SLACK_DAYS))),
        "warned": int(np.sum(warned)),
        "vain": int(np.sum(warned & (truth > KH_WARNED_DAYS + KH_SLACK_DAYS))),
    }


def stalls(count: int, seed: int, stocking: str, days: int = 35) -> dict:
    """Shares of the tanks, cared for as `cared` says, that a daily test met without alkalinity, held back or stalled.

    stalled_days: for how long the stalled ones were, together, on average.
    """
    tanks = VirtualTanks(count, seed, stocking)
    gone, held_back, stalled = [], [], []
    tanks.run(TEST_HOUR)
    for day in range(days):
        gone.append(tanks.alkalinity_meq < MEQ_PER_DH)
        held_back.append(tanks.held_back() < STALL_HELD_BACK)
        stalled.append(tanks.stalled())
        cared(tanks, day, kit(tanks))
        tanks.run(24)
    ever = np.any(stalled, 0)
    return {
        "kh_gone": float(np.mean(np.any(gone, 0))),
        "held_back": float(np.mean(np.any(held_back, 0))),
        "stalled": float(np.mean(ever)),
        "stalled_days": float(np.sum(stalled) / max(np.sum(ever), 1)),
    }
