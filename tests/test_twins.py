"""Python and JavaScript give the same answer to any input a contract admits, to 1e-9 relative."""

import math

import pytest
from drawn_inputs import inputs_of
from hypothesis import HealthCheck, given, settings
from limnary.commands.calc import answer
from limnary.contracts import contracts
from node_lines import NodeLines
from pace import by_pace

DRAWS = by_pace(quick=20, usual=150, long=500)


@pytest.fixture(scope="module")
def phone():
    made = NodeLines("calc_lines.js")
    yield made
    made.close()


# A contract whose answer is a simulation states its own tolerance (`twin_tolerance`) or a smaller
# number of draws (`twin_draws`), with the reason.
@pytest.mark.parametrize("name", sorted(contracts()))
def test_twins_agree(name, phone):
    spec = contracts()[name]
    tolerance = spec.get("twin_tolerance", 1e-9)

    @settings(
        max_examples=min(DRAWS, spec.get("twin_draws", DRAWS)),
        deadline=None,
        derandomize=True,
        database=None,
        suppress_health_check=list(HealthCheck),
    )
    @given(inputs_of(spec))
    def agree(payload):
        here, there = answer(name, payload), phone.ask({"name": name, "input": payload})
        if "error" in here:
            assert here["error"].get("errors") == there["error"].get("errors")
        else:
            same(here, there, tolerance, name)

    agree()


@pytest.mark.parametrize("name", ["free_ammonia", "water_blend"])
def test_twins_name_strange_fields_in_one_order(name, phone):
    strange = {key: 1 for key in ("zz", "b", "Z", "9", "", "__proto__", "\U0001f41f", "\ue000", "é")}
    payload = strange if name == "free_ammonia" else {"sources": [strange], "target": {}, "litres": 1}
    refused = answer(name, payload)["error"]["errors"]
    assert sum(error["message"] == "is not a field here" for error in refused) == len(strange)
    assert refused == phone.ask({"name": name, "input": payload})["error"]["errors"]


def test_twins_answer_finite_figures_and_no_zero_below_zero(phone):
    here = answer("nitrite_risk", {"nitrite_mg_n_l": -0.0, "chloride_mg_l": -0.0, "volume_l": 90})
    figures = [value for value in here.values() if isinstance(value, float)]
    assert figures
    assert all(math.copysign(1.0, value) == 1.0 for value in figures)
    for payload in (
        {"nitrite_mg_n_l": 1e-310, "chloride_mg_l": 100},
        {"nitrite_mg_n_l": 1e-12, "chloride_mg_l": 20000},
    ):
        for told in (answer("nitrite_risk", payload), phone.ask({"name": "nitrite_risk", "input": payload})):
            assert "chloride_per_nitrite" not in told


def test_twins_say_a_small_bound_alike(phone):
    payload = {"tank": {"volume_l": 90, "temperature_c": 24, "ph": 7}, "now_h": 0, "limits": {"nh3_mg_n_l": 0}}
    (refused,) = answer("outlook", payload)["error"]["errors"]
    assert refused["message"] == "must be from 0.000001 to 10 mg N/L"
    assert [refused] == phone.ask({"name": "outlook", "input": payload})["error"]["errors"]


def same(here, there, tolerance, path):
    if isinstance(here, bool) or here is None or isinstance(here, str):
        assert here == there, path
    elif isinstance(here, int | float):
        assert isinstance(there, int | float), path
        assert math.isclose(here, there, rel_tol=tolerance, abs_tol=1e-12), f"{path}: {here} != {there}"
    elif isinstance(here, dict):
        assert here.keys() == there.keys(), path
        for key in here:
            same(here[key], there[key], tolerance, f"{path}.{key}")
    else:
        assert len(here) == len(there), path
        for index, pair in enumerate(zip(here, there, strict=True)):
            same(*pair, tolerance, f"{path}.{index}")
