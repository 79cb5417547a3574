"""Applies a tank's records to the belief in order of time: readings, doses, feedings, water changes."""

import json
import math

from limnary.calc import acidity
from limnary.calc import belief as b
from limnary.calc.refusal import Refusal
from limnary.calc.tables import constants

# At the same hour a test comes before the dose, the feeding and the change that it led to.
_ORDER = {"reading": 0, "dose": 1, "feeding": 2, "change": 3}
_RANGE = {"ph": (4.0, 10.0), "temperature": (2.0, 40.0), "kh": (0.0, 60.0)}
_PER_N = {"total_ammonia": "nh4_per_n", "nitrite": "no2_per_n", "nitrate": "no3_per_n"}


def believed(
    c: dict,
    tank: dict,
    now_h: float,
    readings: list = (),
    changes: list = (),
    doses: list = (),
    feedings: list = (),
    seed: int = 1,
    kept: dict | None = None,
) -> tuple[b.Belief, list[dict], dict]:
    """(belief at `now_h`, records after `now_h`, state to keep for the next call).

    `kept` is that state from an earlier call. If it is of the same tank and only later records were added, the
    belief continues from there; otherwise it starts from the prior. Both give the same answer to the last digit.
    """
    events = ordered(c, now_h, readings, changes, doses, feedings)
    past = [event for event in events if event["at_h"] <= now_h]
    start = begins_h(c, now_h)
    # Chloride decides a limit; the belief does not depend on it.
    same_tank = json.dumps([{**tank, "chloride_mg_l": None}, seed, start], sort_keys=True)
    applied = [json.dumps(event, sort_keys=True) for event in past]
    if not kept or kept["tank"] != same_tank or applied[: len(kept["applied"])] != kept["applied"]:
        kept = {"tank": same_tank, "applied": [], "belief": b.prior(c, tank, seed, start)}
    if len(kept["applied"]) < len(applied):
        last = kept["belief"].copy()
        follow(c, last, tank, past[len(kept["applied"]) :], past[-1]["at_h"])
        kept = {"tank": same_tank, "applied": applied, "belief": last}
    belief = kept["belief"].copy()
    b.advance(c, belief, now_h)
    return belief, events[len(past) :], kept


def begins_h(c: dict, now_h: float) -> float:
    """The hour from which records count: the belief looks back 180 to 270 days, in whole 90-day blocks."""
    block = c["block_h"]
    return max(0.0, math.floor((now_h - c["look_back_h"]) / block) * block)


def ordered(c: dict, now_h: float, readings: list, changes: list, doses: list, feedings: list) -> list[dict]:
    """The records since `begins_h`, in order of time. Raises Refusal for a reading after `now_h` and for a pH,
    temperature or carbonate hardness that no tank has; other records after `now_h` are plans for later."""
    for index, reading in enumerate(readings):
        if reading["at_h"] > now_h:
            raise Refusal("reading_after_now", f"readings.{index}.at_h")
        for parameter, (low, high) in _RANGE.items():
            if reading["parameter"] == parameter and not low <= reading["value"] <= high:
                raise Refusal(f"{parameter}_reading", f"readings.{index}.value")
    kinds = (("reading", readings), ("dose", doses), ("feeding", feedings), ("change", changes))
    found = [{**record, "kind": kind} for kind, records in kinds for record in records]
    start = begins_h(c, now_h)
    return sorted(
        (event for event in found if event["at_h"] >= start),
        key=lambda event: (event["at_h"], _ORDER[event["kind"]]),
    )


def follow(c: dict, belief: b.Belief, tank: dict, events: list[dict], until_h: float, seen=None) -> None:
    """Advance the belief through `events` (all at or after its hour) to `until_h`, in place."""
    for event in events:
        if event["at_h"] > until_h:
            break
        b.advance(c, belief, event["at_h"], seen)
        apply(c, belief, tank, event)
    b.advance(c, belief, until_h, seen)


def apply(c: dict, belief: b.Belief, tank: dict, event: dict) -> None:
    """Apply one record to the belief, in place."""
    kind = event["kind"]
    if kind == "dose":
        b.add_ammonia(c, belief, event["tan_mg_n_l"])
    elif kind == "feeding":
        protein = event.get("protein_fraction", tank.get("protein_fraction", c["protein_fraction"]))
        belief.meal_n += event["feed_g"] * protein * c["tan_per_protein"] * 1000.0 / tank["volume_l"]
        belief.fed_until_h = event["at_h"] + c["meal_stands_for_h"]
    elif kind == "change":
        b.change_water(belief, event["fraction"], event.get("source", {}))
    elif event["parameter"] == "temperature":
        acidity.warm(belief, event["value"])
    elif event["parameter"] in ("ph", "kh"):
        acidity.observe(c, belief, event["parameter"], event["value"])
    else:
        value, steps = in_nitrogen(event)
        b.observe(c, belief, event["parameter"], value, steps)


def last_reading(readings: list, parameter: str, now_h: float) -> dict | None:
    """{at_h, mg_n_l} of the last reading of `parameter` up to `now_h`; None without one."""
    read = [one for one in readings if one["parameter"] == parameter and one["at_h"] <= now_h]
    if not read:
        return None
    last = sorted(read, key=lambda one: one["at_h"])[-1]
    return {"at_h": last["at_h"], "mg_n_l": in_nitrogen(last)[0]}


def in_nitrogen(reading: dict) -> tuple[float, list[float] | None]:
    """(value, steps) of a reading as mg N/L."""
    steps = reading.get("steps")
    if reading["basis"] == "n":
        return reading["value"], steps
    per_n = constants("nitrogen_species")[_PER_N[reading["parameter"]]]
    return reading["value"] / per_n, steps and [step / per_n for step in steps]
