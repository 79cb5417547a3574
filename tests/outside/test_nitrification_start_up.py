"""The outlook's ready date, from clean water, against what little is published on start-up times.

- 20 to 40 days by temperature and pH: a textbook of aquaculture engineering (Lekang; attribution from memory).
- one to six weeks by temperature: FAO Fisheries Technical Paper 589 (2014), glossary.
- six to eight weeks: Hager et al. 2021, A guide to aquaponics (Kentucky State University).
- about 70 days: an unseeded sand filter given 1 mg/L of ammonium above 12 °C (Water Supply 2024, 24:1207).
This also checks readiness in `change_plan` and `stock_headroom`, which use the same belief.
"""

import math

import pytest
from limnary.contracts import run

CLEAN = [{"at_h": 0, "parameter": name, "value": 0, "basis": "n"} for name in ("total_ammonia", "nitrite")]


def days_to_ready(temperature_c, ph=7.2, seeded="none"):
    tank = {"volume_l": 100, "temperature_c": temperature_c, "ph": ph, "feed_g_day": 0.6}
    tank |= {"planting": "none", "seeded": seeded}
    settled = run("outlook", {"tank": tank, "now_h": 0, "horizon_h": 24, "readings": CLEAN})["settled_h"]
    return [math.inf if hours is None else hours / 24 for hours in settled.values()]


@pytest.mark.parametrize("temperature_c", [18, 20, 22, 24, 26, 28])
@pytest.mark.parametrize("ph", [6.8, 7.2, 7.8])
def test_an_unseeded_tank_takes_one_to_eight_weeks(temperature_c, ph):
    first, middle, last = days_to_ready(temperature_c, ph)
    assert 7 <= middle <= 56
    assert first <= 40 and last >= 20, "the band must overlap the textbook's 20 to 40 days"


def test_a_sand_filter_in_the_cold_lies_at_the_end_of_the_band():
    first, middle, last = days_to_ready(12)
    assert first < middle < 70 <= 1.1 * last, "a bare filter without fish or plants is among the slow ones"


def test_warmth_and_old_material_hasten_and_acid_delays():
    assert days_to_ready(26)[1] < days_to_ready(22)[1] < days_to_ready(18)[1]
    assert days_to_ready(24, seeded="mature_media")[1] < days_to_ready(24, seeded="starter")[1] < days_to_ready(24)[1]
    assert days_to_ready(24, ph=6.4)[1] > days_to_ready(24, ph=7.2)[1]


def test_change_plan_and_stock_headroom_know_a_tank_that_is_not_ready():
    tank = {"volume_l": 100, "temperature_c": 22, "ph": 7.2, "feed_g_day": 0.6, "planting": "none", "seeded": "none"}
    headroom = run("stock_headroom", {"tank": tank, "now_h": 0, "readings": CLEAN})
    assert headroom["feed_g_day_now"]["p90"] < 0.06 < 0.5 < headroom["feed_g_day_in_14_days"]["p90"]
    assert run("change_plan", {"tank": tank, "now_h": 14 * 24})["pass_chance_without"] > 0.5
