"""stocking_limit against two integrations by scipy: years of weekly changes, and the night at the limit."""

import numpy as np
import pytest
from limnary.contracts import run
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

TANK = {"water_l": 96, "surface_cm2": 2400, "length_cm": 80, "temperature_c": 25, "filter": "none", "cover": "open"}
DANIOS = [{"name": "danio", "count": 10, "length_cm": 4, "mass_a": 0.01, "mass_b": 3}]


@pytest.mark.parametrize(("fraction", "days", "ceiling", "source"), [(0.3, 7, 10, 1), (0.5, 14, 5, 0), (0.2, 3, 20, 6)])
def test_nitrate_peaks_at_the_ceiling(fraction, days, ceiling, source):
    routine = {
        "change_fraction": fraction,
        "every_days": days,
        "nitrate_ceiling_mg_n_l": ceiling,
        "source_nitrate_mg_n_l": source,
    }
    got = run("stocking_limit", {**TANK, **routine, "animals": DANIOS, "capacity_mg_n_day": 100000})
    assert got["nitrogen_by"] == "nitrate"
    # 1.2 % of mass a day, 42 % protein, 16 % nitrogen, 74 % of it ends as nitrate; plants take 0.3 mg/g of 60 g/m².
    made = got["nitrogen_g"] * 0.012 * 0.42 * 0.16 * 0.74 * 1000 - 60 * 0.24 * 0.3
    nitrate = float(source)
    for _ in range(400):
        solved = solve_ivp(lambda _, n: [made / 96], (0, days), [nitrate])
        peak = solved.y[0, -1]
        nitrate = peak * (1 - fraction) + source * fraction
    assert peak == pytest.approx(ceiling, rel=1e-6)


def dawn(grams_each_lot, lots):
    """Oxygen at dawn with `lots` lots of ten danios of 0.64 g; every figure is typed here independently."""
    schmidt = np.polyval([0.00086842, -0.10115, 4.8055, -124.34, 1745.1], 25)
    k_m_h = 2.07 * (schmidt / 600) ** (-2 / 3) / 100
    saturation = 8.263
    breathing = lots * 10 * 31.9988 * np.exp(15.7 - 5020 / 298.15) * (0.64 / 50) ** 0.8
    nitrifiers = lots * grams_each_lot * 0.012 * 0.42 * 0.092 * 1000 / 24 * 4.18
    plants = 60 * 0.24 * 0.5 * 0.75 * 1.07**5
    bottom = 0.5 * 1000 / 24 * 0.24 * 1.065**5

    def slope(_, oxygen):
        return (k_m_h * 0.24 * 1000 * (saturation - oxygen) - breathing - nitrifiers - plants - bottom) / 96

    return solve_ivp(slope, (0, 14), [saturation], rtol=1e-9, atol=1e-9).y[0, -1]


def test_oxygen_limit_is_where_the_integrated_night_ends_at_four():
    got = run("stocking_limit", {**TANK, "animals": DANIOS})
    lots = brentq(lambda lots: dawn(6.4, lots) - 4, 0, 100)
    assert got["oxygen_g"] == pytest.approx(lots * 6.4, rel=0.005)
    assert got["oxygen_low_g"] < got["oxygen_g"] < got["oxygen_high_g"]


def test_so_many_more_keep_the_low_end_of_oxygen_and_not_one_more():
    got = run("stocking_limit", {**TANK, "animals": DANIOS})
    grams = 0.64 * (10 + got["more"][0]["oxygen"])
    assert grams <= got["oxygen_low_g"] < grams + 0.64
    assert dawn(6.4, grams / 6.4) >= 4


def test_after_a_reading_at_dawn_only_what_more_animals_take_is_integrated():
    """6 mg/L at dawn with ten danios: as many more as bring the night down by 2 mg/L."""
    got = run("stocking_limit", {**TANK, "animals": DANIOS, "dawn_oxygen_mg_l": 6})
    lots = brentq(lambda more: dawn(6.4, 1) - dawn(6.4, 1 + more) - 2, 0, 100)
    assert got["oxygen_g"] == pytest.approx((1 + lots) * 6.4, rel=0.005)
