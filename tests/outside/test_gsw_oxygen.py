"""oxygen_saturation against the Gibbs SeaWater library, Standard Methods' printed table and the standard atmosphere."""

import gsw
import pytest
from limnary.contracts import run


def saturation(**where):
    return run("oxygen_saturation", where)["saturation_mg_l"]


# gsw: the Benson and Krause data refitted by Garcia and Gordon, µmol/kg at one atmosphere, fresh water.
@pytest.mark.parametrize("temperature_c", range(0, 36))
def test_oxygen_saturation_within_a_thousandth(temperature_c):
    umol_kg = float(gsw.O2sol_SP_pt(0.0, temperature_c))
    kg_l = float(gsw.rho_t_exact(0.0, temperature_c, 0.0)) / 1000
    assert saturation(temperature_c=temperature_c) == pytest.approx(umol_kg * kg_l * 31.9988 / 1000, rel=1e-3)


# Standard Methods 4500-O, solubility in water exposed to water-saturated air at 101.325 kPa, chlorinity 0.
STANDARD_METHODS = {0: 14.621, 5: 12.770, 10: 11.288, 15: 10.084, 20: 9.092, 25: 8.263, 30: 7.559, 35: 6.949}


@pytest.mark.parametrize(("temperature_c", "printed"), STANDARD_METHODS.items())
def test_oxygen_saturation_as_printed(temperature_c, printed):
    assert saturation(temperature_c=temperature_c) == pytest.approx(printed, abs=0.0015)


# ISO 2533, pressure in kPa at altitudes in metres.
@pytest.mark.parametrize(("altitude_m", "kpa"), [(0, 101.325), (500, 95.461), (1000, 89.876), (2000, 79.501)])
def test_oxygen_saturation_at_an_altitude(altitude_m, kpa):
    got = run("oxygen_saturation", {"temperature_c": 25, "altitude_m": altitude_m})
    assert got["air_pressure_kpa"] == pytest.approx(kpa, rel=2e-4)
    assert got["saturation_mg_l"] == pytest.approx(saturation(temperature_c=25, pressure_kpa=kpa), rel=3e-4)


# The share of oxygen in moist air: beside Henry's law the saturation falls as (P - vapour pressure), to
# within the small theta terms. IAPWS gives the vapour pressure.
@pytest.mark.parametrize("pressure_kpa", [70, 85, 95, 108])
@pytest.mark.parametrize("temperature_c", [5, 20, 35])
def test_oxygen_saturation_follows_the_pressure_of_dry_air(temperature_c, pressure_kpa):
    from iapws.iapws97 import _PSat_T

    vapour = _PSat_T(temperature_c + 273.15) * 1000
    share = (pressure_kpa - vapour) / (101.325 - vapour)
    got = saturation(temperature_c=temperature_c, pressure_kpa=pressure_kpa)
    assert got / saturation(temperature_c=temperature_c) == pytest.approx(share, rel=5e-4)
