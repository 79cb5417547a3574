"""Replays a log: forecasts each reading from the records before it, beside "the same as last time"."""

import math

import numpy as np
from limnary.calc import kinetics as k
from limnary.calc.kit_reading import interval
from limnary.calc.tank_events import believed, in_nitrogen

from tests.forecast_band import forecast_band

ROWS = {"total_ammonia": k.TAN, "nitrite": k.NITRITE}


def replay(log: dict, seed: int = 1, **settings) -> list[dict]:
    """One row a reading of ammonia or nitrite, except the first of each.

    Each row: parameter, at_h, id, input_known, read, p10, p50, p90 [mg N/L]; error of the median and of "the same as
    last time", both as the kit would show them, so no more than its top step [mg N/L]; meets: whether the 80 % band
    touches the interval that the kit's step stands for.
    """
    c = {**k.settings(), **settings}
    found, last = [], {}
    for reading in sorted(log["readings"], key=lambda one: one["at_h"]):
        parameter = reading["parameter"]
        if parameter not in ROWS:
            continue
        value, steps = in_nitrogen(reading)
        at_h = reading["at_h"]
        if parameter in last:
            most = steps[-1] if steps else math.inf
            points = forecast(c, log, parameter, at_h, seed)
            low, high = interval(value, steps, 0.1, 0.15)
            meets = points[0] <= (math.inf if high is None else high) and points[2] >= (0.0 if low is None else low)
            found.append(
                {
                    "parameter": parameter,
                    "at_h": at_h,
                    "id": log["id"],
                    "input_known": log["input_known"],
                    "read": value,
                    **dict(zip(("p10", "p50", "p90"), points, strict=True)),
                    "error": abs(min(points[1], most) - value),
                    "same": abs(min(_same(log, last[parameter], parameter, at_h), most) - value),
                    "meets": meets,
                }
            )
        last[parameter] = {"at_h": at_h, "mg_n_l": value}
    return found


def _same(log: dict, last: dict, parameter: str, at_h: float) -> float:
    """What was read last, with the doses of ammonia since then [mg N/L]."""
    if parameter != "total_ammonia":
        return last["mg_n_l"]
    return last["mg_n_l"] + sum(d["tan_mg_n_l"] for d in log["doses"] if last["at_h"] <= d["at_h"] < at_h)


def forecast(c: dict, log: dict, parameter: str, at_h: float, seed: int) -> list[float]:
    """The 10, 50 and 90 % points [mg N/L] of a reading at `at_h`, from the records before that hour."""
    before = {name: [one for one in log[name] if one["at_h"] < at_h] for name in ("readings", "doses", "changes")}
    belief, _, _ = believed(c, log["tank"], at_h, **before, seed=seed)
    return forecast_band(c, belief, ROWS[parameter])


def summary(rows: list[dict]) -> dict:
    """n, mean error of the median and of "the same as last time" [mg N/L], share of bands that meet, misses above."""
    missed = [row for row in rows if not row["meets"]]
    return {
        "n": len(rows),
        "error": float(np.mean([row["error"] for row in rows])),
        "same": float(np.mean([row["same"] for row in rows])),
        "meets": 1 - len(missed) / len(rows),
        "above": sum(row["read"] > row["p50"] for row in missed),
        "missed": len(missed),
    }
