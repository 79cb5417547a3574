"""The scores of the belief on virtual tanks: forecast, water changes, ready date."""

import numpy as np
from limnary.calc import kinetics as k
from limnary.calc.outlook import even
from limnary.calc.readiness import settled_band
from limnary.calc.tank_load import per_gram_of

from tests.forecast_band import forecast_band
from tests.virtual_tank.keepers import TEST_HOUR, Believers, fishless_dose, half_daily, kit, patient_rule, usual_rule
from tests.virtual_tank.simulator import ION_PER_N, VirtualTanks

NEVER = {"p10": None, "p50": None, "p90": None}
BEYOND_H = 120 * 24.0
# Free ammonia 0.025 mg/L as NH3 and nitrite 0.1 mg N/L, in every virtual tank.
LIMITS = {"nh3_mg_n_l": 0.025 / 1.21589, "nitrite_mg_n_l": 0.1, "nitrate_mg_n_l": 10.0}
# No kit shows less [mg N/L]: a band of zeros holds a water of 0.002.
UNSEEN = 0.01
ROWS = {"total_ammonia": k.TAN, "nitrite": k.NITRITE}


def next_day_forecast(count: int, seed: int, days: int = 35, stocking: str = "mixed", **settings) -> dict:
    """Belief against "same as the last reading, diluted", a day ahead, measured on the true water.

    Every other tank is changed by the usual rule, the rest by the patient one, so that good and bad
    tanks both count. Tanks without animals are dosed with ammonia instead. Per parameter: mae, mae_same, gain, held
    (share of true values inside the 80 % band, to what a kit shows).
    """
    tanks = VirtualTanks(count, seed, stocking)
    believers = Believers(tanks, **settings)
    found = {name: {"error": [], "same": [], "held": []} for name in ROWS}
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
        seen = kit(tanks)
        believers.test(tanks.hour, seen, with_nitrate=day % 7 == 0)
        fraction, dose = np.zeros(count), np.zeros(count)
        if stocking == "none":
            dose = fishless_dose(seen)
            tanks.dose(dose)
            believers.dosed(tanks.hour, dose)
        else:
            fraction = np.where(np.arange(count) % 2 == 0, usual_rule(day, seen), patient_rule(day, seen))
            tanks.change(fraction)
            believers.changed(tanks.hour, fraction)
        last = {name: seen[name] / ION_PER_N[name] * (1 - fraction) for name in ROWS}
        last["total_ammonia"] = last["total_ammonia"] + dose
        tanks.run(24)
    return {
        name: {
            "mae": float(np.mean(lists["error"])),
            "mae_same": float(np.mean(lists["same"])),
            "gain": 1 - float(np.mean(lists["error"]) / np.mean(lists["same"])),
            "held": float(np.mean(lists["held"])),
        }
        for name, lists in found.items()
    }


def closed_loop(
    count: int,
    seed: int,
    stocking: str,
    rule: str,
    limits: dict,
    risk: float = 0.1,
    days: int = 35,
    less_feed: bool = False,
    **settings,
) -> dict:
    """Keep `count` tanks for `days` by a rule; over: share of hours over a limit; water: tank volumes changed.

    `rule`: "usual", "half daily" or "plan". The plan's keeper follows all of its advice: half the food on days
    when the plan asks for it, several changes a day when half the food is not enough. `lean_feed=1.0` is a plan that
    never asks for less food. With `less_feed` a rule's keeper halves the food on days when the rule changes half
    the water. lean: share of days with half the food.
    """
    tanks = VirtualTanks(count, seed, stocking)
    believers = Believers(tanks, **settings) if rule == "plan" else None
    over, water, lean = np.zeros(count), np.zeros(count), np.zeros(count)

    def run(hours):
        truth = tanks.run(hours)
        nonlocal over
        over = over + np.sum((truth["nh3"] > limits["nh3_mg_n_l"]) | (truth["nitrite"] > limits["nitrite_mg_n_l"]), 0)

    def change(fraction):
        nonlocal water
        tanks.change(fraction)
        water = water + fraction
        if believers:
            believers.changed(tanks.hour, fraction)

    run(TEST_HOUR)
    for day in range(days):
        seen = kit(tanks)
        every_h = np.full(count, 24)
        if believers:
            believers.test(tanks.hour, seen, with_nitrate=day % 7 == 0)
            plans = believers.plan(limits, risk)
            several = [p["several"] or {"fraction_each": p["fraction"], "every_h": 24} for p in plans]
            fraction = np.array([one["fraction_each"] for one in several])
            every_h = np.array([round(one["every_h"]) for one in several])
            less = np.array([not p["enough"] for p in plans]) & (believers.c["lean_feed"] < 1.0)
        else:
            fraction = {"usual": usual_rule, "half daily": half_daily}[rule](day, seen)
            less = (fraction == 0.5) & less_feed
        tanks.feed_share = np.where(less, 0.5, 1.0)
        lean = lean + less
        change(fraction)
        last_h = 24 if day < days - 1 else 24 - TEST_HOUR
        hour = 0
        for at_h in sorted({*range(6, last_h, 6), *range(8, last_h, 8)}):
            run(at_h - hour)
            hour = at_h
            if np.any(at_h % every_h == 0):
                change(np.where(at_h % every_h == 0, fraction, 0.0))
        run(last_h - hour)
    return {
        "over": float(np.mean(over)) / (24 * days),
        "water": float(np.mean(water)),
        "lean": float(np.mean(lean)) / days,
    }


def ready_date(count: int, seed: int, days: int = 45, first_day: int = 10, every: int = 5, **settings) -> dict:
    """How often the 80 % range of the ready date contains the true hour, from `first_day` on.

    held: that share, of tanks that are not ready yet; known: the share of ready tanks that the belief calls
    ready (its median is not later than now); width_days: the range's median width.
    """
    tanks = VirtualTanks(count, seed, "mixed")
    believers = Believers(tanks, **settings)
    ready_h = np.full(count, np.inf)
    asked = []
    tanks.run(TEST_HOUR)
    for day in range(days + 25):
        ready_h[np.isinf(ready_h) & tanks.ready()] = tanks.hour
        seen = kit(tanks)
        if day < days:
            believers.test(tanks.hour, seen, with_nitrate=day % 7 == 0)
            if day >= first_day and day % every == 0:
                loads = [tank["feed_g_day"] * per_gram_of(believers.c, tank) for tank in believers.tanks]
                bands = [
                    settled_band(believers.c, even(x), changes, LIMITS, load, load)
                    for x, changes, load in zip(believers.beliefs, believers.changes, loads, strict=True)
                ]
                asked.append((tanks.hour, bands))
        fraction = np.where(np.arange(count) % 2 == 0, usual_rule(day, seen), patient_rule(day, seen))
        tanks.change(fraction)
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
