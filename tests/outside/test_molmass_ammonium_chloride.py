"""starter_dose against atomic weights: molmass and periodictable."""

import periodictable
import pytest
from limnary.contracts import run
from molmass import Formula


@pytest.mark.parametrize(("volume_l", "tan_mg_n_l"), [(63, 1), (100, 2), (240, 0.5)])
def test_starter_dose_as_ammonium_chloride(volume_l, tan_mg_n_l):
    got = run("starter_dose", {"volume_l": volume_l, "tan_mg_n_l": tan_mg_n_l})
    by_molmass = Formula("NH4Cl").mass / Formula("N").mass
    by_periodictable = periodictable.formula("NH4Cl").mass / periodictable.N.mass
    for ratio in (by_molmass, by_periodictable):
        assert got["ammonium_chloride_g"] == pytest.approx(volume_l * tan_mg_n_l * ratio / 1000, rel=1e-4)


@pytest.mark.parametrize(("percent", "density_kg_l"), [(5, 0.977), (9.5, 0.96), (25, 0.907)])
def test_starter_dose_as_household_ammonia(percent, density_kg_l):
    got = run(
        "starter_dose",
        {"volume_l": 100, "tan_mg_n_l": 2, "ammonia_percent": percent, "ammonia_density_kg_l": density_kg_l},
    )
    moles_wanted = 100 * 2 / 1000 / Formula("N").mass
    moles_per_ml = density_kg_l * percent / 100 / Formula("NH3").mass
    assert got["household_ammonia_ml"] == pytest.approx(moles_wanted / moles_per_ml, rel=1e-4)


def test_starter_dose_against_a_worked_molarity():
    # Worked from Perry's Chemical Engineers' Handbook (7th ed., table 2-32): 25 % ammonia of 0.907 g/cm3
    # is 13.3 mol/L.
    got = run("starter_dose", {"volume_l": 1000, "tan_mg_n_l": 14.007, "ammonia_percent": 25})
    assert 1000 / got["household_ammonia_ml"] == pytest.approx(13.3, rel=0.003)
