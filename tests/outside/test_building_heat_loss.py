"""heater_power against heat-transfer correlations, the usual U value of single glazing, and IAPWS-95."""

import math

import pytest
from iapws import IAPWS95
from limnary.calc.tables import constants
from limnary.contracts import run
from scipy.constants import Stefan_Boltzmann
from scipy.integrate import solve_ivp

TANK = {"length_cm": 80, "width_cm": 35, "height_cm": 38, "temperature_c": 25, "room_c": 18}


def test_side_pane_is_single_glazing_with_water_behind():
    # Single glazing of 6 mm is tabled at 5.7 W/m2K (ISO 6946 resistances 0.13 inside, 0.04 outside; from memory).
    # Replacing the film of outdoor air by the film of water gives the tank's pane.
    side = run("heater_power", {**TANK, "glass_mm": 6})["side_w_m2_k"]
    assert 1 / (1 / side - 1 / 200 + 0.04) == pytest.approx(5.7, abs=0.05)


def test_surface_resistance_by_radiation_and_free_convection():
    # McAdams' short form for a vertical plate in air, 1.42 (dT/L)^(1/4) W/m2K, and radiation of glass (0.84 to 0.94).
    warmer_k, height_m, emissivity = 5, 0.4, 0.89
    mean_k = 273.15 + 21
    h = 1.42 * (warmer_k / height_m) ** 0.25 + 4 * emissivity * Stefan_Boltzmann * mean_k**3
    assert constants("tank_heat_loss")["side_m2_k_w"] == pytest.approx(1 / h, rel=0.1)


def test_resistance_under_a_lid_by_radiation_convection_and_dripping():
    # Dunkle 1961 (from memory): h_c = 0.884 (dT + (pw - pg) T / (268900 - pw))^(1/3); h_e = 16.273e-3 h_c dp/dT.
    water_k, lid_k = 298.15, 296.15
    at_water, at_lid = IAPWS95(T=water_k, x=1).P * 1e6, IAPWS95(T=lid_k, x=1).P * 1e6
    rise = water_k - lid_k + (at_water - at_lid) * water_k / (268900 - at_water)
    convection = 0.884 * rise ** (1 / 3)
    dripping = 16.273e-3 * convection * (at_water - at_lid) / (water_k - lid_k)
    radiation = 4 * 0.9 * Stefan_Boltzmann * ((water_k + lid_k) / 2) ** 3
    assert dripping == pytest.approx(3.5, rel=0.05)
    assert constants("tank_heat_loss")["under_lid_m2_k_w"] == pytest.approx(
        1 / (convection + dripping + radiation), rel=0.02
    )


def test_heat_of_water():
    expected = IAPWS95(T=298.15, P=0.101325).cp
    assert constants("tank_heat_loss")["heat_of_water_kj_kg_k"] == pytest.approx(expected, rel=0.001)


def test_heater_power_holds_the_temperature():
    """A tank heated with exactly the loss stays at its temperature; without power it cools at the stated rate."""
    got = run("heater_power", {**TANK, "reserve": 1, "water_l": 100})
    mass_kg, heat_j_kg_k = 99.7047, IAPWS95(T=298.15, P=0.101325).cp * 1000

    def loss_w(temperature_c):
        return run("heater_power", {**TANK, "temperature_c": temperature_c})["loss_w"]

    def change(power_w):
        return lambda _t, y: [(power_w - loss_w(y[0])) / (mass_kg * heat_j_kg_k)]

    held = solve_ivp(change(got["loss_w"]), (0, 6 * 3600), [25.0], rtol=1e-8)
    assert held.y[0, -1] == pytest.approx(25, abs=1e-4)
    cooled = solve_ivp(change(0), (0, 360), [25.0], rtol=1e-8)
    assert (25 - cooled.y[0, -1]) * 10 == pytest.approx(got["cooling_c_hour"], rel=0.02)


@pytest.mark.parametrize("open_fraction", [0, 0.05, 1])
def test_heater_power_covers_the_sum_of_its_parts(open_fraction):
    got = run("heater_power", {**TANK, "open_fraction": open_fraction})
    parts = got["glass_loss_w"] + got["top_loss_w"] + got["evaporation_w"]
    assert got["loss_w"] == pytest.approx(parts)
    assert got["heater_w"] % 5 == 0
    assert 0 <= got["heater_w"] - 1.25 * got["loss_w"] < 5
    by_hand = 2 * (0.80 + 0.35) * 0.38 * 7 / (1 / 200 + 0.006 + 0.13) + 0.28 * 7 / (1 / 200 + 0.006 + 0.31)
    assert math.isclose(got["glass_loss_w"], by_hand, rel_tol=1e-9)
