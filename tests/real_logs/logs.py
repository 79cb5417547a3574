"""Loads the start-ups that keepers wrote down, as the records that the forecast takes."""

import json
from pathlib import Path

ION_PER_N = {"total_ammonia": 1.28786, "nitrite": 3.28443, "nitrate": 4.42664}
# The usual steps of colour kits, mg/L of the ion; a value that a keeper read between them is a step, too.
USUAL_STEPS = {
    "total_ammonia": (0, 0.25, 0.5, 1, 2, 4, 8),
    "nitrite": (0, 0.25, 0.5, 1, 2, 5),
    "nitrate": (0, 5, 10, 20, 40, 80, 160),
}


def load() -> list[dict]:
    """Each log as {id, input_known, tank, readings, doses, changes}, times in hours."""
    logs = json.loads(Path(__file__).with_name("keeper_logs.json").read_text("utf-8"))["logs"]
    return [_records(log) for log in logs]


def _records(log: dict) -> dict:
    readings, doses, changes = [], [], []
    for event in log["events"]:
        at_h, what, value = event["day"] * 24.0, event["what"], event["value"]
        if what == "dose":
            doses.append({"at_h": at_h, "tan_mg_n_l": value / ION_PER_N["total_ammonia"]})
        elif what == "change":
            changes.append({"at_h": at_h, "fraction": value})
        else:
            readings.append({"at_h": at_h, "parameter": what, "value": float(value), "basis": log["basis"]})
    if not log["meter"]:
        for reading in readings:
            if reading["parameter"] in USUAL_STEPS:
                reading["steps"] = _steps(reading["parameter"], readings)
    return {
        **{name: log[name] for name in ("id", "input_known", "tank")},
        "readings": readings,
        "doses": doses,
        "changes": changes,
    }


def _steps(parameter: str, readings: list[dict]) -> list[float]:
    read = {one["value"] for one in readings if one["parameter"] == parameter}
    return sorted(read | set(map(float, USUAL_STEPS[parameter])))
