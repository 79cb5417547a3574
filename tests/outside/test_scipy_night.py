"""oxygen_night against the same night integrated by scipy, with saturation from gsw (TEOS-10)."""

import gsw
import numpy as np
import pytest
from limnary.contracts import run
from scipy.integrate import solve_ivp

NIGHTS = [
    {"water_l": 96, "surface_cm2": 2400, "temperature_c": 25, "cover": "open", "dark_hours": 14},
    {"water_l": 45, "surface_cm2": 1350, "temperature_c": 22, "cover": "lid", "dark_hours": 10, "planting": "dense"},
    {"water_l": 180, "surface_cm2": 4000, "temperature_c": 28, "cover": "open", "dark_hours": 16, "planting": "none"},
    {"water_l": 20, "surface_cm2": 900, "temperature_c": 18, "cover": "open", "dark_hours": 24, "floating_cover": 0.5},
]
# Grams of dry plant for each square metre, as the planting classes say.
DRY = {"none": 0, "light": 20, "medium": 60, "dense": 150}
# Oxygen at lights out as a share of saturation, as the classes say.
EVENING = {"none": 1.0, "light": 1.0, "medium": 1.0, "dense": 1.15}
FISH = [{"count": 6, "length_cm": 4, "mass_a": 0.01, "mass_b": 3}]


def saturation_mg_l(temperature_c):
    """Oxygen in fresh water at one atmosphere, from gsw's µmol/kg."""
    density = gsw.rho(0, gsw.CT_from_t(0, temperature_c, 0), 0)
    return gsw.O2sol_SP_pt(0, temperature_c) * density / 1000 * 31.9988 / 1000


def slope(oxygen, night):
    """dC/dt [mg/L/h]; every figure is typed here independently."""
    t, area_m2 = night["temperature_c"], night["surface_cm2"] / 1e4
    schmidt = np.polyval([0.00086842, -0.10115, 4.8055, -124.34, 1745.1], t)
    k_m_h = 2.07 * (schmidt / 600) ** (-2 / 3) / 100 * (0.35 if night["cover"] == "lid" else 1)
    taken_in = k_m_h * area_m2 * (1 - night.get("floating_cover", 0)) * (saturation_mg_l(t) - oxygen) * 1000
    fish = 6 * 31.9988 * np.exp(15.7 - 5020 / (t + 273.15)) * (0.64 / 50) ** 0.8
    plants = DRY[night.get("planting", "medium")] * area_m2 * 0.5 * 0.75 * 1.07 ** (t - 20)
    bottom = 0.5 * 1000 / 24 * area_m2 * 1.065 ** (t - 20)
    return (taken_in - fish - plants - bottom) / night["water_l"]


@pytest.mark.parametrize("night", NIGHTS)
def test_the_night_integrated(night):
    got = run("oxygen_night", {**night, "animals": FISH})
    solved = solve_ivp(
        lambda _, oxygen: slope(oxygen, night),
        (0, night["dark_hours"]),
        [saturation_mg_l(night["temperature_c"]) * EVENING[night.get("planting", "medium")]],
        rtol=1e-9,
        atol=1e-9,
    )
    assert got["dawn_mg_l"] == pytest.approx(solved.y[0, -1], rel=0.002, abs=0.005)
    assert got["lowest_mg_l"] == pytest.approx(solved.y[0].min(), rel=0.002, abs=0.005)


def test_the_hour_the_limit_is_passed():
    night = {
        "water_l": 45,
        "surface_cm2": 1350,
        "temperature_c": 26,
        "cover": "lid",
        "dark_hours": 14,
        "planting": "dense",
    }
    got = run("oxygen_night", {**night, "animals": FISH, "least_mg_l": 6})

    def passed(_, oxygen):
        return oxygen[0] - 6

    passed.terminal = True
    solved = solve_ivp(
        lambda _, oxygen: slope(oxygen, night),
        (0, 14),
        [saturation_mg_l(26) * EVENING["dense"]],
        events=passed,
        rtol=1e-9,
        atol=1e-9,
    )
    assert got["hours_to_limit"] == pytest.approx(solved.t_events[0][0], rel=0.005)
