"""The real start-ups are read as they were written; `python -m tests.real_logs` judges the forecast on them."""

import pytest

from tests.real_logs.logs import load
from tests.real_logs.scores import replay, summary

LOGS = load()


def test_every_reading_after_the_first_is_forecast():
    rows = [row for log in LOGS for row in replay(log, draws=64)]
    counts = {
        (parameter, known): sum((row["parameter"], row["input_known"]) == (parameter, known) for row in rows)
        for parameter in ("total_ammonia", "nitrite")
        for known in (True, False)
    }
    assert list(counts.values()) == [37, 12, 34, 9]


def test_a_forecast_knows_nothing_of_its_reading_or_of_later_ones():
    log = LOGS[0]
    at_h = log["readings"][-1]["at_h"]
    changed = [{**one, "value": 0.25} if one["at_h"] == at_h else one for one in log["readings"]]
    first, second = (replay({**log, "readings": readings}, draws=64)[-1] for readings in (log["readings"], changed))
    assert first["p50"] == second["p50"] and first["read"] != second["read"]


def test_the_same_as_last_time_holds_the_doses_since_and_no_more_than_the_kit_shows():
    tank = {"volume_l": 100, "temperature_c": 25, "ph": 7.5, "planting": "none", "seeded": "none", "feed_g_day": 0}
    two = [{"at_h": h, "parameter": "total_ammonia", "value": 1.0, "basis": "n", "steps": [0, 1, 2]} for h in (0, 24)]
    log = {"id": "made up", "input_known": True, "tank": tank, "readings": two, "changes": []}
    for dose, error in ((0.5, 0.5), (3.0, 1.0)):
        (row,) = replay({**log, "doses": [{"at_h": 1, "tan_mg_n_l": dose}]}, draws=64)
        assert row["same"] == pytest.approx(error)


def test_the_summary_counts_misses_and_their_side():
    row = {"error": 1.0, "same": 2.0, "p50": 1.0, "read": 3.0}
    found = summary([{**row, "meets": True}, {**row, "meets": False}, {**row, "meets": False, "read": 0.5}])
    assert found == {"n": 3, "error": 1.0, "same": 2.0, "meets": pytest.approx(1 / 3), "above": 1, "missed": 2}
