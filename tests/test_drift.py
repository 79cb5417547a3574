"""The plain forecasts beside the equations: readings decide how much each counts."""

import numpy as np
import pytest
from limnary.calc import drift as plain
from limnary.calc import kinetics as k
from limnary.calc.tank_events import believed
from limnary.contracts import run

from tests.forecast_band import forecast_band

TANK = {"volume_l": 100, "temperature_c": 24, "ph": 7.4, "feed_g_day": 0.4, "planting": "light", "seeded": "none"}
STEPS = [0, 0.25, 0.5, 1, 2, 4, 8]


def reading(day, parameter, value):
    return {"at_h": 24.0 * day, "parameter": parameter, "value": value, "basis": "n", "steps": STEPS}


def after(readings, now_h, tank=TANK, **records):
    c = k.settings()
    return c, believed(c, tank, now_h, readings, **records)[0]


def test_before_a_second_reading_the_drift_counts_what_is_told_of_it():
    c, known = after([reading(1, "total_ammonia", 1), reading(1, "nitrite", 1)], 25)
    assert [known.drifts[row]["weight"] for row in (k.TAN, k.NITRITE)] == [c["drift_tan"], c["drift_nitrite"]]
    untold = {name: value for name, value in TANK.items() if name != "feed_g_day"}
    for tank, weight in (({**untold, "fish_g": 20}, c["drift_tan"]), (untold, c["drift_tan_unknown"])):
        assert after([reading(1, "total_ammonia", 1)], 25, tank)[1].drifts[k.TAN]["weight"] == weight


def test_the_drift_gains_where_a_level_stands_against_the_equations_and_loses_where_it_falls():
    dense = {**TANK, "seeded": "mature_media", "planting": "dense"}
    for levels, gains in (([2] * 6, True), ([2, 0], False)):
        c, found = after([reading(day, "nitrite", level) for day, level in enumerate(levels)], 121, dense)
        assert (found.drifts[k.NITRITE]["weight"] > c["drift_nitrite"]) is gains


def test_doses_and_changes_move_the_level_and_feedings_do_not():
    records = {
        "doses": [{"at_h": 30, "tan_mg_n_l": 3}],
        "changes": [{"at_h": 31, "fraction": 0.5, "source": {"tan_mg_n_l": 0.4, "nitrite_mg_n_l": 0.1}}],
        "feedings": [{"at_h": 32, "feed_g": 5}],
    }
    _, found = after([reading(1, "total_ammonia", 1), reading(1, "nitrite", 1)], 40, **records)
    assert found.drifts[k.TAN]["level"] == pytest.approx(0.5 * (1 + 3) + 0.5 * 0.4)
    assert found.drifts[k.NITRITE]["level"] == pytest.approx(0.5 * 1 + 0.5 * 0.1)


def test_a_copy_drifts_on_its_own():
    _, found = after([reading(1, "nitrite", 1)], 25)
    found.copy().drifts[k.NITRITE]["level"] = 9.0
    assert found.drifts[k.NITRITE]["level"] == 1.0


def test_an_old_reading_counts_half_as_much_each_day_after_three():
    c = k.settings()
    drift = {"level": 1.0, "at_h": 0.0, "weight": 0.4, "past_weight": 0.2, "doubted": False}
    for at_h, left in ((0, 1), (72, 1), (96, 0.5), (144, 0.125)):
        assert plain.weights_at(c, drift, at_h) == pytest.approx((0.4 * left, 0.2 * left))


def test_a_level_that_no_forecast_expected_counts_half_until_the_next_test():
    tank = {**TANK, "seeded": "mature_media"}
    zeros = [reading(day, "nitrite", 0) for day in range(1, 7)]
    for more, doubted in (([], False), ([4], True), ([4, 4], False)):
        readings = zeros + [reading(7 + i / 4, "nitrite", value) for i, value in enumerate(more)]
        c, found = after(readings, 184, tank)
        drift = found.drifts[k.NITRITE]
        assert drift["doubted"] is doubted
        counts = drift["weight"] / (2 if doubted else 1), drift["past_weight"]
        assert plain.weights_at(c, drift, drift["at_h"]) == counts


def test_the_levels_spread_with_time_around_the_last_one():
    c = k.settings()
    drift = {"level": 1.0, "offset": 0.25, "at_h": 0.0}
    for days, sd in ((0, c["reading_sd"]), (4, (c["reading_sd"] ** 2 + 4 * c["walk_drift"] ** 2) ** 0.5)):
        logs = np.log(plain.levels_at(c, drift, 24.0 * days) + 0.25)
        assert np.all(np.diff(logs) > 0) and np.mean(logs) == pytest.approx(np.log(1.25), abs=0.01)
        assert np.std(logs) == pytest.approx(sd, rel=0.05)
    assert plain.levels_at(c, {**drift, "level": 0.0}, 240)[0] == 0.0


def test_all_forecasts_together_are_between_each_alone():
    c = {**k.settings(), "reading_sd": 1e-3}
    draws = np.linspace(0.0, 1.0, 1001)
    drift = {"level": 4.0, "offset": 0.1, "at_h": 0.0, "past": [8.0, 2.0], "doubted": False}
    points = {
        weight: plain.mixed_band(c, draws, {**drift, "weight": weight, "past_weight": 0.0}, 0.0)
        for weight in (0.0, 0.3, 0.7, 1.0)
    }
    assert list(points[0.0].values()) == pytest.approx([0.1, 0.5, 0.9], abs=0.002)
    assert list(points[0.3].values()) == pytest.approx([0.1 / 0.7, 0.5 / 0.7, 4.0], abs=0.01)
    assert list(points[0.7].values()) == pytest.approx([0.1 / 0.3, 4.0, 4.0], abs=0.01)
    assert list(points[1.0].values()) == pytest.approx([4.0] * 3, abs=0.01)
    past = plain.mixed_band(c, draws, {**drift, "weight": 0.3, "past_weight": 0.4}, 0.0)
    # 0.3 of the draws below 1, then 2 with 0.2, the level with 0.3, 8 with 0.2
    assert list(past.values()) == pytest.approx([1 / 3, 2.0, 8.0], abs=0.01)


def test_the_past_gains_where_nitrite_comes_and_goes_between_two_tests():
    """Zero, 2, zero, 2: neither the equations nor the last reading expect it; what was read before does."""
    tank = {**TANK, "seeded": "mature_media"}
    values = [0, 0, 0, 2, 0, 2, 0, 2, 0]
    readings = [reading(1 + i / 2, "nitrite", value) for i, value in enumerate(values)]
    c, found = after(readings, 132, tank)
    drift = found.drifts[k.NITRITE]
    assert drift["past"] == values and drift["past_weight"] > c["past_nitrite"]
    low, middle, high = forecast_band(c, found, k.NITRITE)
    assert low == pytest.approx(0.0, abs=0.01) and middle < 1 and high == 2
    _, calm = after([reading(1 + i / 2, "nitrite", 0) for i in range(len(values))], 132, tank)
    assert forecast_band(c, calm, k.NITRITE)[2] < 0.1


def test_only_the_last_readings_are_the_past_and_ammonia_has_none():
    c = k.settings()
    names = ("nitrite", "total_ammonia")
    readings = [reading(day, name, day % 3) for day in range(1, 21) for name in names]
    _, found = after(readings, 500)
    assert found.drifts[k.NITRITE]["past"] == [day % 3 for day in range(21 - int(c["past_readings"]), 21)]
    assert found.drifts[k.TAN]["past_weight"] == 0.0
    untold = {name: value for name, value in TANK.items() if name != "feed_g_day"}
    assert after(readings, 500, untold)[1].drifts[k.NITRITE]["past_weight"] == 0.0


def test_a_stall_is_forecast_to_last_and_the_series_shows_it():
    """Nitrite stands at 2 mg N/L for days, though the equations see it gone by tomorrow."""
    tank = {**TANK, "seeded": "mature_media"}
    readings = [reading(day, "nitrite", 2) for day in range(3, 10)]
    c, found = after(readings, 9 * 24 + 24, tank)
    low, middle, high = forecast_band(c, found, k.NITRITE)
    assert low < 2 < high
    answer = run("outlook", {"tank": tank, "now_h": 9 * 24, "horizon_h": 24, "readings": readings})
    last = answer["series"][-1]["nitrite_mg_n_l"]
    assert [last[name] for name in ("p10", "p50", "p90")] == pytest.approx([low, middle, high], rel=0.05)


def test_plans_move_the_drift_in_the_series_too():
    readings = [reading(day, "total_ammonia", 2) for day in range(1, 9)]
    untold = {name: value for name, value in TANK.items() if name != "feed_g_day"}
    asked = {"tank": untold, "now_h": 193, "horizon_h": 24, "readings": readings}
    stays, halved = (
        run("outlook", {**asked, "changes": changes})["series"][-1]
        for changes in ([], [{"at_h": 200, "fraction": 0.5}])
    )
    name = "total_ammonia_mg_n_l"
    assert halved[name]["p50"] == pytest.approx(stays[name]["p50"] / 2, rel=0.15)
