"""free_ammonia against PHREEQC's own speciation (phreeqpython, database phreeqc.dat)."""

import pytest
from limnary.contracts import run
from phreeqpython import PhreeqPython


@pytest.fixture(scope="module")
def phreeqc():
    return PhreeqPython(database="phreeqc.dat")


def un_ionised(phreeqc, temperature_c, ph, sodium_chloride_mmol=0.0):
    """Share of NH3 in a trace of ammonia, and the ionic strength PHREEQC finds."""
    salt = {"Na": sodium_chloride_mmol, "Cl": f"{sodium_chloride_mmol} charge"} if sodium_chloride_mmol else {}
    water = phreeqc.add_solution({"units": "mmol/kgw", "temp": temperature_c, "pH": ph, "N(-3)": 1e-3, **salt})
    species = water.species
    return species["NH3"] / (species["NH3"] + species["NH4+"]), water.I


@pytest.mark.parametrize(
    ("temperature_c", "ph"), [(5, 8.0), (10, 7.5), (20, 8.0), (25, 7.0), (25, 8.0), (25, 9.0), (28, 8.0), (30, 7.0)]
)
def test_free_ammonia_in_thin_water(phreeqc, temperature_c, ph):
    share, _ = un_ionised(phreeqc, temperature_c, ph)
    got = run("free_ammonia", {"tan_mg_n_l": 1, "ph": ph, "temperature_c": temperature_c})
    assert got["fraction"] == pytest.approx(share, rel=0.005)


@pytest.mark.parametrize("salt_mmol", [1, 5, 10, 20])
def test_free_ammonia_falls_with_ionic_strength(phreeqc, salt_mmol):
    share, ionic_strength = un_ionised(phreeqc, 25, 8.0, salt_mmol)
    got = run(
        "free_ammonia",
        {"tan_mg_n_l": 1, "ph": 8, "temperature_c": 25, "ionic_strength_mol_l": ionic_strength},
    )
    assert got["fraction"] == pytest.approx(share, rel=0.012)
