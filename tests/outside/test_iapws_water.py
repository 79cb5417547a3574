"""Water's density, vapour pressure and latent heat, as filled_weight and evaporation use them, against IAPWS-95."""

import pytest
from iapws import IAPWS95
from limnary.calc.water_properties import density_kg_m3, latent_heat_kj_kg, saturation_kpa
from limnary.contracts import run


@pytest.mark.parametrize("temperature_c", [4, 10, 15, 18, 20, 22, 24, 25, 26, 28, 30, 32, 35])
def test_density_of_filled_weight(temperature_c):
    expected = IAPWS95(T=temperature_c + 273.15, P=0.101325).rho
    got = run(
        "filled_weight",
        {
            "tank_kg": 0,
            "water_l": 1000,
            "temperature_c": temperature_c,
            "footprint_length_cm": 100,
            "footprint_width_cm": 100,
        },
    )
    assert got["water_kg"] == pytest.approx(expected, abs=0.002)
    assert density_kg_m3(temperature_c) == got["density_kg_m3"]


@pytest.mark.parametrize("temperature_c", range(2, 46, 4))
def test_vapour_pressure(temperature_c):
    expected = IAPWS95(T=temperature_c + 273.15, x=1).P * 1000
    assert saturation_kpa(temperature_c) == pytest.approx(expected, rel=0.003)


@pytest.mark.parametrize("temperature_c", range(2, 46, 4))
def test_latent_heat(temperature_c):
    steam, water = IAPWS95(T=temperature_c + 273.15, x=1), IAPWS95(T=temperature_c + 273.15, x=0)
    assert latent_heat_kj_kg(temperature_c) == pytest.approx(steam.h - water.h, rel=0.0005)
