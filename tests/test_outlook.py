"""The outlook's behaviour: it names a mere prior, wide bands and doubts, drops no record, and can be resumed."""

import itertools

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from limnary.calc import acidity, belief
from limnary.calc import kinetics as k
from limnary.calc.belief import advance, observe, prior, resample
from limnary.calc.kit_reading import interval
from limnary.calc.tank_events import believed
from limnary.contracts import InvalidInput, contracts, run

TANK = {"volume_l": 100, "temperature_c": 24, "ph": 7.4, "feed_g_day": 0.4, "planting": "light", "seeded": "none"}
STEPS = [0, 0.25, 0.5, 1, 2, 4, 8]


def reading(day, parameter, value):
    return {"at_h": 24.0 * day, "parameter": parameter, "value": value, "basis": "ion", "steps": STEPS}


def quiet(days):
    return [reading(day, parameter, 0) for day in days for parameter in ("total_ammonia", "nitrite")]


def notes(answer, name="outlook"):
    return {code for code, words in contracts()[name]["notes"].items() if words in answer["notes"]}


def width(answer, parameter="nitrite_mg_n_l", at=-1):
    band = answer["series"][at][parameter]
    return band["p90"] - band["p10"]


def test_without_readings_it_is_called_what_is_usual():
    assert "prior_only" in notes(run("outlook", {"tank": TANK, "now_h": 240}))


def test_few_readings_are_said_and_more_narrow_the_bands():
    none = run("outlook", {"tank": TANK, "now_h": 241})
    few = run("outlook", {"tank": TANK, "now_h": 241, "readings": quiet([10])})
    many = run("outlook", {"tank": TANK, "now_h": 241, "readings": quiet(range(1, 11))})
    assert "few_readings" in notes(few)
    assert not notes(many) & {"few_readings", "prior_only"}
    assert width(many) < width(few) < width(none)


def test_a_contradicting_reading_is_doubted_and_not_dropped():
    readings = [*quiet(range(1, 10)), reading(10, "nitrite", 4)]
    tank = {**TANK, "seeded": "mature_media"}
    before = run("outlook", {"tank": tank, "now_h": 240, "readings": readings[:-1]})
    after = run("outlook", {"tank": tank, "now_h": 240, "readings": readings})
    assert "doubted" not in notes(before) and "doubted" in notes(after)
    (doubt,) = after["doubts"]
    assert (doubt["parameter"], doubt["at_h"]) == ("nitrite", 240)
    assert doubt["expected_p90_mg_n_l"] < 0.1 < doubt["value_mg_n_l"]
    assert after["now"]["nitrite_mg_n_l"]["p90"] > 0.5 > after["now"]["nitrite_mg_n_l"]["p10"], "both held possible"


def test_the_next_reading_decides_between_accident_and_wrong_test():
    tank = {**TANK, "seeded": "mature_media"}
    start = [*quiet(range(1, 10)), reading(10, "nitrite", 4)]
    again, calm = ([*start, reading(10.1, "nitrite", value)] for value in (4, 0))
    confirmed = run("outlook", {"tank": tank, "now_h": 243, "readings": again})["now"]["nitrite_mg_n_l"]
    cleared = run("outlook", {"tank": tank, "now_h": 243, "readings": calm})["now"]["nitrite_mg_n_l"]
    assert confirmed["p10"] > 0.7
    assert cleared["p90"] < 0.2


def test_nitrite_that_stands_high_again_and_again_is_not_forecast_as_gone():
    """Bacteria can stall: a doubted reading puts their number in doubt, not only the water of that hour."""
    tank = {**TANK, "seeded": "mature_media"}
    high = [reading(10 + half / 2, "nitrite", 4) for half in range(4)]
    asked = {"tank": tank, "now_h": 11.5 * 24, "horizon_h": 12, "readings": [*quiet(range(1, 10)), *high]}
    half_a_day_later = run("outlook", asked)["series"][-1]["nitrite_mg_n_l"]
    assert half_a_day_later["p50"] > 0.6 and half_a_day_later["p90"] > 1


def test_a_doubt_is_said_for_three_days_only():
    readings = [*quiet(range(1, 10)), reading(10, "nitrite", 4), *quiet(range(11, 15))]
    tank = {**TANK, "seeded": "mature_media"}
    assert run("outlook", {"tank": tank, "now_h": 14 * 24, "readings": readings})["doubts"] == []


FIRST = [reading(0, "total_ammonia", 0.5), reading(0, "nitrite", 0.25)]


def test_a_first_reading_is_where_the_belief_begins():
    """A tank that has just been entered may have any past, so a first reading is not doubted."""
    for value in (0.25, 1, 4):
        answer = run("outlook", {"tank": TANK, "now_h": 0, "readings": [reading(0, "total_ammonia", value)]})
        low, high = interval(value / 1.288, [step / 1.288 for step in STEPS], 0.25 / 1.288, 0.083)
        assert answer["doubts"] == []
        assert low * 0.75 < answer["now"]["total_ammonia_mg_n_l"]["p50"] < high * 1.25


def test_the_luck_of_the_draw_does_not_decide_on_the_first_day():
    asked = {"tank": TANK, "now_h": 0, "readings": FIRST}
    chances = [run("change_plan", {**asked, "seed": seed})["pass_chance_without"] for seed in range(1, 9)]
    assert max(chances) - min(chances) < 0.15


def test_a_dose_or_a_change_before_the_first_reading_stays_in_the_water():
    none = {"tank": TANK, "now_h": 1, "readings": [{**FIRST[0], "at_h": 1}]}
    dosed = {**none, "readings": [{**FIRST[0], "at_h": 1, "value": 0}], "doses": [{"at_h": 0.5, "tan_mg_n_l": 3}]}
    assert run("outlook", dosed)["doubts"] != []
    changed = {**none, "readings": [{**FIRST[0], "at_h": 1, "value": 8}], "changes": [{"at_h": 0.5, "fraction": 0.9}]}
    assert run("outlook", none)["doubts"] == []
    assert run("outlook", changed)["doubts"] != []


def test_a_planned_change_is_followed():
    readings = [reading(10, "total_ammonia", 1), reading(10, "nitrite", 4)]
    calm = run("outlook", {"tank": TANK, "now_h": 240, "horizon_h": 24, "readings": readings})
    plan = [{"at_h": 246, "fraction": 0.5}]
    changed = run("outlook", {"tank": TANK, "now_h": 240, "horizon_h": 24, "readings": readings, "changes": plan})
    at_249 = [row["at_h"] for row in calm["series"]].index(249)
    before, after = (x["series"][at_249]["nitrite_mg_n_l"]["p50"] for x in (calm, changed))
    assert after == pytest.approx(before / 2, rel=0.15)


def test_records_older_than_nine_months_do_not_count_and_newer_do():
    old, new = 9000.0, 20000.0
    base = run("outlook", {"tank": TANK, "now_h": new})
    with_old = run("outlook", {"tank": TANK, "now_h": new, "readings": [{**reading(0, "nitrite", 4), "at_h": old}]})
    with_new = run("outlook", {"tank": TANK, "now_h": new, "readings": [{**reading(0, "nitrite", 4), "at_h": new}]})
    assert with_old["now"] == base["now"] != with_new["now"]


NITRITE_RISES = [reading(9, "total_ammonia", 0.5), reading(9, "nitrite", 0.5), reading(10, "nitrite", 1)]


def test_plan_is_the_smallest_and_less_water_breaks_the_risk():
    asked = {"tank": TANK, "now_h": 240, "readings": NITRITE_RISES, "limits": {"nitrite_mg_n_l": 0.45}}
    plan = run("change_plan", asked)
    assert plan["enough"] and 0 < plan["fraction"] < 0.5
    assert plan["pass_chance"] <= 0.1 < plan["pass_chance_without"]
    less = run("change_plan", {**asked, "max_fraction": plan["fraction"] - 0.03})
    assert not less["enough"]


def test_a_smaller_risk_and_a_later_test_take_more_water():
    asked = {"tank": TANK, "now_h": 240, "readings": NITRITE_RISES, "limits": {"nitrite_mg_n_l": 0.4}}
    usual, careful = (run("change_plan", {**asked, "risk": risk})["fraction"] for risk in (0.3, 0.2))
    later = run("change_plan", {**asked, "risk": 0.3, "next_test_h": 48})["fraction"]
    assert careful > usual < later


def test_chloramine_in_the_new_water_counts():
    """Water that brings 1 mg N/L makes a change against ammonia useless, so the plan does not ask for one."""
    tank = {**TANK, "ph": 8.2, "feed_g_day": 0.1}
    asked = {"tank": tank, "now_h": 72, "readings": [reading(3, "total_ammonia", 0.5)]}
    clean = run("change_plan", asked)
    dirty = run("change_plan", {**asked, "source": {"tan_mg_n_l": 1.0}})
    assert clean["fraction"] > 0 and clean["cause"] is None
    assert (dirty["fraction"], dirty["cause"]) == (0, "total_ammonia") and not dirty["enough"]
    assert dirty["advice"][0] == "source_is_the_cause"


def test_when_no_change_is_enough_it_says_what_then():
    readings = [
        reading(day, p, v)
        for day, a, n in ((8, 2, 2), (9, 1, 4), (10, 1, 4))
        for p, v in (("total_ammonia", a), ("nitrite", n))
    ]
    plan = run("change_plan", {"tank": {**TANK, "feed_g_day": 2.0}, "now_h": 240, "readings": readings})
    assert not plan["enough"] and plan["fraction"] == 0.5
    assert {"feed_less", "feed_nothing"} & set(plan["advice"])
    assert {"test_sooner", "test_at_half_time"} & set(plan["advice"])


def test_half_the_food_is_asked_for_where_half_of_the_water_is_not_enough():
    """More than half of the water with the usual food, 0.43 with half of it. If less is enough, the food stays."""
    asked = {"tank": {**TANK, "ph": 8.0, "feed_g_day": 1.2}, "now_h": 96}
    asked["readings"] = [
        {"at_h": 24 * day, "parameter": p, "value": v}
        for day, a, n in ((2, 0.25, 0), (3, 0.5, 0), (4, 0.5, 0.05))
        for p, v in (("total_ammonia", a), ("nitrite", n))
    ]
    mild, strict = (
        run("change_plan", {**asked, "limits": {"nh3_mg_n_l": limit, "nitrite_mg_n_l": 0.3}}) for limit in (0.04, 0.03)
    )
    assert mild["enough"] and mild["fraction"] > 0 and mild["advice"] == []
    assert not strict["enough"] and strict["advice"] == ["feed_half"]
    assert strict["fraction"] < 0.5 and strict["pass_chance"] <= 0.1


def test_half_the_food_is_asked_for_before_several_changes():
    asked = {"tank": {**TANK, "feed_g_day": 1.2}, "now_h": 312}
    asked["readings"] = [
        reading(day, p, v) for day in range(8, 14) for p, v in (("total_ammonia", 0.25), ("nitrite", 0.5))
    ]
    asked["changes"] = [{"at_h": 24 * day + 1, "fraction": 0.5} for day in range(8, 13)]
    found = {limit: run("change_plan", {**asked, "limits": {"nitrite_mg_n_l": limit}}) for limit in (0.3, 0.26, 0.18)}
    assert found[0.3]["enough"]
    assert found[0.26]["advice"] == ["feed_half"]
    assert found[0.26]["pass_chance"] <= 0.1 < found[0.26]["pass_chance_without"]
    assert not found[0.26]["enough"] and found[0.26]["several"] is None
    assert "several_changes" in found[0.18]["advice"]
    each = found[0.18]["several"]["fraction_each"]
    assert each <= 0.5 and round(each * 100) == pytest.approx(each * 100)


@pytest.mark.parametrize(("next_test_h", "most"), [(7.9, None), (8, 2), (12, 3), (24, 4)])
def test_several_changes_are_offered_at_least_four_hours_apart(next_test_h, most):
    readings = [reading(day, p, 4) for day in (8, 9, 10) for p in ("total_ammonia", "nitrite")]
    plan = run("change_plan", {"tank": TANK, "now_h": 240, "readings": readings, "next_test_h": next_test_h})
    assert not plan["enough"] and ("several_changes" in plan["advice"]) == (most is not None)
    if most:
        assert plan["several"]["count"] == most
        assert plan["several"]["every_h"] == pytest.approx(next_test_h / most) and plan["several"]["every_h"] >= 4
    else:
        assert plan["several"] is None


def test_source_over_the_limit_is_said():
    asked = {"tank": TANK, "now_h": 24, "source": {"nitrate_mg_n_l": 12}}
    asked["readings"] = [{"at_h": 24, "parameter": "nitrate", "value": 14, "basis": "n"}]
    plan = run("change_plan", asked)
    assert plan["advice"] == ["source_over_limit", "nitrate_slowly"] and plan["enough"]
    assert 0 < plan["fraction"] <= 1 / 3


def test_bacteria_that_grow_show_in_headroom():
    readings = [{**one, "value": 0} for day in (10, 19) for one in quiet([day])]
    later = run("stock_headroom", {"tank": TANK, "now_h": 480, "readings": readings})
    now = run("stock_headroom", {"tank": TANK, "now_h": 24, "readings": quiet([0.1, 0.5])})
    assert later["feed_g_day_now"]["p50"] > now["feed_g_day_now"]["p50"] > 0
    assert later["fish_g_now"]["p50"] == pytest.approx(later["feed_g_day_now"]["p50"] / 0.012)


def test_headroom_promises_no_more_than_twice_what_zeros_show():
    asked = {"tank": {**TANK, "seeded": "mature_media"}, "now_h": 337, "readings": quiet(range(1, 15))}
    told = run("stock_headroom", asked)
    assert {told[f"feed_g_day_{when}"]["p90"] for when in ("now", "in_7_days", "in_14_days")} == {0.8}
    nothing = {
        "untested": [one for one in asked["readings"] if one["parameter"] == "nitrite"],
        "no_load": asked["readings"],
    }
    for note, readings in nothing.items():
        tank = {**asked["tank"], "feed_g_day": 0} if note == "no_load" else asked["tank"]
        told = run("stock_headroom", {**asked, "tank": tank, "readings": readings})
        assert told["fish_g_now"]["p90"] == 0 and note in notes(told, "stock_headroom")


def test_carbonate_hardness_counts_from_where_it_was_measured():
    measured = {"parameter": "kh", "value": 1}

    def capacity(now_h, *readings):
        tank = {**TANK, "planting": "none", "seeded": "starter"}
        asked = {"tank": tank, "now_h": now_h, "readings": [*quiet(range(1, 8)), *readings]}
        return run("outlook", asked)["capacity_mg_n_day"]["p50"]

    late, at_first = {**measured, "at_h": 200}, {**measured, "at_h": 0}
    assert capacity(240, late) < 0.7 * capacity(240) and capacity(240, at_first) < 0.7 * capacity(240)
    # What grew before the test, grew in water with enough.
    assert capacity(200, at_first) < 0.7 * capacity(199)


@pytest.mark.parametrize(
    "wrong",
    [
        {"at_h": 49},
        {"parameter": "ph", "value": 1},
        {"parameter": "temperature", "value": 60},
        {"parameter": "kh", "value": 61},
    ],
)
def test_impossible_readings_are_refused_by_name(wrong):
    readings = [reading(1, "nitrite", 0), {**reading(2, "nitrite", 0), **wrong}]
    with pytest.raises(InvalidInput) as no:
        run("outlook", {"tank": TANK, "now_h": 48, "readings": readings})
    assert no.value.errors[0]["field"].startswith("readings.1.")


def test_going_on_from_the_last_record_changes_no_digit():
    c = k.settings()
    readings = [reading(day, p, v) for day in range(1, 20) for p, v in (("total_ammonia", 0.5), ("nitrite", day / 10))]
    changes = [{"at_h": 24.0 * day, "fraction": 0.3} for day in (5, 9, 12)]
    kept = None
    for day in range(6, 21):
        past = [r for r in readings if r["at_h"] <= 24.0 * day]
        resumed, _, kept = believed(c, TANK, 24.0 * day + 1, past, changes, kept=kept)
        anew, _, _ = believed(c, TANK, 24.0 * day + 1, past, changes)
        assert np.array_equal(resumed.cloud, anew.cloud) and np.array_equal(resumed.weight, anew.weight)
        assert resumed.position == anew.position


def test_a_corrected_record_is_followed_anew():
    c = k.settings()
    readings = quiet(range(1, 8))
    *_, kept = believed(c, TANK, 200, readings)
    corrected = [*readings[:-1], {**readings[-1], "value": 2}]
    resumed, *_ = believed(c, TANK, 200, corrected, kept=kept)
    anew, *_ = believed(c, TANK, 200, corrected)
    assert np.array_equal(resumed.cloud, anew.cloud)
    shorter, *_ = believed(c, TANK, 200, readings[:-2], kept=kept)
    assert np.array_equal(shorter.cloud, believed(c, TANK, 200, readings[:-2])[0].cloud)


def test_resampling_keeps_mean_and_spread_of_the_unknowns():
    c = k.settings()
    belief = prior(c, TANK, 1, 0.0)
    before = np.log(belief.cloud[k.CAPACITY_1])
    resample(c, belief)
    after = np.log(belief.cloud[k.CAPACITY_1])
    assert np.mean(after) == pytest.approx(np.mean(before), abs=0.1)
    assert np.std(after) == pytest.approx(np.std(before), rel=0.05)


@settings(max_examples=60, deadline=None, derandomize=True, database=None)
@given(st.sampled_from(["total_ammonia", "nitrite", "nitrate"]), st.floats(0, 1000), st.booleans())
def test_any_reading_leaves_a_proper_belief(parameter, value, stepped):
    c = {**k.settings(), "draws": 128}
    belief = prior(c, TANK, 3, 0.0)
    observe(c, belief, parameter, value, STEPS if stepped else None)
    assert np.all(np.isfinite(belief.cloud)) and np.all(belief.cloud[:3] > 0)
    assert np.sum(belief.weight) == pytest.approx(1)


@given(st.lists(st.integers(0, 400).map(lambda quarter: quarter / 4), min_size=2, max_size=9, unique=True), st.data())
def test_a_kit_leaves_no_gap_between_its_steps(steps, data):
    """Every true value is in exactly one step's interval."""
    truth = data.draw(st.floats(0, 200))
    bounds = [interval(step, steps, 0.1, 0.1) for step in steps]
    inside = [(low is None or truth >= low) and (high is None or truth < high) for low, high in bounds]
    assert sum(inside) == 1


@pytest.mark.parametrize("now_h", [0.44228388888888887, 0.24461527777777778, 24.001])
def test_the_look_ahead_ends_where_steps_add_up_slightly_short_of_it(monkeypatch, now_h):
    """In doubles 0.442... + 240 steps of 12 h is less than 0.442... + 2880 h: the loop must end there all the same."""
    steps = itertools.count(1)

    def counted(*arguments):
        assert next(steps) < 2000
        return advance(*arguments)

    monkeypatch.setattr(belief, "advance", counted)
    cold = {**TANK, "feed_g_day": 5, "temperature_c": 8, "ph": 5.5}
    answer = run("outlook", {"tank": cold, "now_h": now_h})
    assert answer["settled_h"] is None or answer["settled_h"]["p90"] is None


@pytest.mark.parametrize("gap_h", [0.9e-9, 1.1e-9, 2e-9, 2.9e-9, 3.1e-9])
@pytest.mark.parametrize("name", ["outlook", "change_plan", "stock_headroom"])
def test_records_any_moment_apart_are_followed(name, gap_h):
    meals = [{"at_h": 24.0, "feed_g": 1.0}, {"at_h": 24.0 + gap_h, "feed_g": 1.0}]
    assert run(name, {"tank": TANK, "now_h": 48, "feedings": meals})["notes"]


def test_a_plan_acts_once_where_the_steps_end_slightly_before_it():
    def ammonia(at_h):
        told = run("outlook", {"tank": TANK, "now_h": 21.000000000000004, "doses": [{"at_h": at_h, "tan_mg_n_l": 8.0}]})
        return told["series"][-1]["total_ammonia_mg_n_l"]

    assert ammonia(24.000000000000004) == pytest.approx(ammonia(24.0), rel=1e-6)


@pytest.mark.parametrize("stop_h", [24 - 1e-8, 24 - 1e-10, 24 - 4e-15, 24.0, 24 + 4e-15, 24 + 1e-8])
def test_the_unknowns_wander_once_at_each_half_day_wherever_one_stops(stop_h):
    c = k.settings()
    straight, stopped = (prior(c, {**TANK, "planting": "light", "seeded": "none"}, 1, 0.0) for _ in range(2))
    advance(c, straight, 30.0)
    for until_h in (stop_h, 30.0):
        advance(c, stopped, until_h)
    assert stopped.position == straight.position


@pytest.mark.parametrize(("most", "nitrite"), [(0.375, 0.12), (0.475, 0.15)])
def test_the_smallest_change_is_found_below_any_most(most, nitrite):
    """A maximum between two hundredths must not hide the hundredth below it, as rounding the maximum would."""
    readings = [{"at_h": 47, "parameter": "nitrite", "value": nitrite, "basis": "n"}]
    plan = run("change_plan", {"tank": TANK, "now_h": 48, "readings": readings, "max_fraction": most})
    free = run("change_plan", {"tank": TANK, "now_h": 48, "readings": readings})
    assert plan["fraction"] == free["fraction"] < most


@pytest.mark.parametrize(("ph", "temperature_c", "chloride"), [(6.2, 24, None), (7.4, 25, 1), (8.4, 28, 30)])
def test_the_limits_left_out_are_those_of_water_limits(ph, temperature_c, chloride, monkeypatch):
    """While the pH stands still; where it moves, they move with it."""
    monkeypatch.setattr(acidity, "settle", lambda belief: None)
    tank = {
        **TANK,
        "ph": ph,
        "temperature_c": temperature_c,
        **({} if chloride is None else {"chloride_mg_l": chloride}),
    }
    asked = {"tank": tank, "now_h": 241, "readings": [reading(10, "total_ammonia", 1), reading(10, "nitrite", 0.25)]}
    water = {name: tank[name] for name in ("ph", "temperature_c", "chloride_mg_l") if name in tank}
    found = run("water_limits", water)
    limits = {name: found[name] for name in ("nh3_mg_n_l", "nitrite_mg_n_l", "nitrate_mg_n_l")}
    for name in ("outlook", "change_plan"):
        assert run(name, asked) == run(name, {**asked, "limits": limits})


OVER = st.fixed_dictionaries(
    {
        "ph": st.sampled_from([6.2, 6.8, 7.4, 8.2]),
        "ammonia": st.sampled_from([0, 0.25, 1, 4]),
        "nitrite": st.sampled_from([0, 0.25, 1, 4]),
        "feed": st.sampled_from([0.1, 0.4, 1.5]),
    }
)


def drawn_tank(drawn):
    tank = {**TANK, "ph": drawn["ph"], "kh_dkh": 2, "feed_g_day": drawn["feed"]}
    readings = [
        reading(day, parameter, drawn[name])
        for day in (8, 9, 10)
        for parameter, name in (("total_ammonia", "ammonia"), ("nitrite", "nitrite"))
    ]
    return {"tank": tank, "now_h": 241, "readings": readings}


@settings(max_examples=12, deadline=None, derandomize=True, database=None)
@given(OVER, st.sampled_from([0, 0.3, 1]), st.sampled_from([0, 0.2]), st.sampled_from([None, 7.8]))
def test_no_plan_raises_the_chance_of_harm_or_takes_more_than_half(drawn, tan, nitrite, ph):
    source = {"tan_mg_n_l": tan, "nitrite_mg_n_l": nitrite, **({} if ph is None else {"ph": ph, "kh_dkh": 8})}
    asked = drawn_tank(drawn)
    plan = run("change_plan", {**asked, "source": source})
    assert plan["pass_chance"] <= plan["pass_chance_without"]
    assert plan["litres"] <= 50 and (plan["several"] or {"fraction_each": 0})["fraction_each"] <= 0.5
    if plan["fraction"] == 0 and not plan["enough"]:
        assert plan["cause"] and plan["advice"][0] == "source_is_the_cause"


@settings(max_examples=12, deadline=None, derandomize=True, database=None)
@given(OVER)
def test_more_clean_water_raises_no_chance(drawn):
    asked = drawn_tank(drawn)
    later = [
        run("outlook", {**asked, "horizon_h": 24, "changes": [{"at_h": 241, "fraction": fraction}]})["pass_chance"]
        for fraction in (0, 0.2, 0.5)
    ]
    for less, more in itertools.pairwise(later):
        assert all(more[name] <= less[name] for name in less)


@settings(max_examples=8, deadline=None, derandomize=True, database=None)
@given(st.sampled_from([0.05, 0.2]), st.sampled_from([6.8, 7.4]), st.sampled_from(["light", "medium"]))
def test_two_days_without_a_new_record_ask_for_litres_alike(feed, ph, planting):
    tank = {**TANK, "feed_g_day": feed, "ph": ph, "planting": planting, "seeded": "mature_media"}
    readings = [*quiet(range(1, 9)), reading(9, "nitrite", 0.25), reading(9, "total_ammonia", 0.25)]
    litres = [
        run("change_plan", {"tank": tank, "now_h": 24 * day + 1, "readings": readings})["litres"] for day in (9, 10, 11)
    ]
    assert max(abs(b - a) for a, b in itertools.pairwise(litres)) <= 10


def test_ready_needs_a_load_tests_of_both_and_both_under_their_limits():
    tank = {**TANK, "seeded": "mature_media"}
    asked = {"tank": tank, "now_h": 241, "readings": quiet(range(1, 11))}
    assert run("outlook", asked)["settled_h"]["p50"] == 241
    one = [each for each in asked["readings"] if each["parameter"] == "nitrite"]
    over = [*asked["readings"], reading(10.02, "nitrite", 1)]
    for note, wrong in {
        "untested": {"readings": one},
        "over_limit": {"readings": over},
        "no_load": {"tank": {**tank, "feed_g_day": 0}},
    }.items():
        told = run("outlook", {**asked, **wrong})
        assert told["settled_h"] is None and note in notes(told)
    planned = run("outlook", {**asked, "tank": {**tank, "feed_g_day": 0}, "planned_feed_g_day": 20})
    assert planned["settled_h"] is None or planned["settled_h"]["p50"] is None or planned["settled_h"]["p50"] > 241


def test_water_that_lifts_the_ph_of_sour_water_is_named_as_the_reason():
    asked = {"tank": {**TANK, "ph": 6.2, "kh_dkh": 1}, "now_h": 121}
    asked["readings"] = [reading(day, "total_ammonia", 8) for day in (3, 4, 5)]
    unknown, hard = (run("change_plan", {**asked, "source": source}) for source in ({}, {"ph": 7.8, "kh_dkh": 10}))
    assert not unknown["enough"] and unknown["fraction"] > 0 and "source_ph_unknown" in notes(unknown, "change_plan")
    assert hard["fraction"] < 0.5 and hard["cause"] == "ph" and "source_ph_unknown" not in notes(hard, "change_plan")
    assert hard["peak"]["nh3_mg_n_l"]["p50"] < 0.025


def test_nitrate_alone_asks_for_a_third_at_most_and_for_no_less_food():
    tank = {**TANK, "seeded": "mature_media", "feed_g_day": 0.1}
    for value, high in ((11, 0.1), (40, 0.33), (200, 0.33)):
        readings = [*quiet(range(1, 15)), {"at_h": 336, "parameter": "nitrate", "value": value, "basis": "n"}]
        plan = run("change_plan", {"tank": tank, "now_h": 337, "readings": readings})
        assert 0.1 <= plan["fraction"] <= high and plan["enough"]
        assert plan["advice"] == ["nitrate_slowly"]
