"""A small run of the belief on the independent virtual tank; `python -m tests.virtual_tank` is the full one."""

import re
from pathlib import Path

import pytest
from pace import PACE, by_pace

from tests.virtual_tank.scores import LIMITS, closed_loop, next_day_forecast, ready_date

FOLDER = Path(__file__).parent / "virtual_tank"
SEED = 41
LONG = pytest.mark.skipif(PACE != "long", reason="runs with tests/run --long")


def test_product_and_virtual_tank_know_nothing_of_each_other():
    product = Path(__file__).parents[1] / "server/limnary"
    assert not [path for path in product.rglob("*.py") if "virtual_tank" in path.read_text("utf-8")]
    assert not re.search(r"^(from|import) limnary", (FOLDER / "simulator.py").read_text("utf-8"), re.MULTILINE)


def test_next_day_forecast_beats_the_last_reading():
    found = next_day_forecast(by_pace(quick=10, usual=10, long=30), SEED)
    for name, figures in found.items():
        assert figures["gain"] >= 0.35, name
        assert 0.72 <= figures["held"] <= 0.92, name


@pytest.mark.parametrize(
    ("stocking", "water"), [("light", 1.8), pytest.param("heavy", 3.0, marks=LONG)], ids=["light", "heavy"]
)
def test_the_plan_keeps_tanks_under_the_limits(stocking, water):
    # so few tanks scatter widely: the real figures come from the full run
    count = by_pace(quick=6, usual=6, long=12)
    rule = closed_loop(count, SEED, stocking, "usual", LIMITS)
    plan = closed_loop(count, SEED, stocking, "plan", LIMITS)
    assert plan["over"] <= rule["over"] / 3
    assert plan["water"] <= water * rule["water"]


@LONG
def test_ready_date_holds_the_true_day():
    found = ready_date(16, SEED, days=31, every=10)
    assert found["held"] >= 0.65
    assert found["known"] >= 0.75
