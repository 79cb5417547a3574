"""Conversions and doses against molar masses from two independent libraries, molmass and periodictable."""

import periodictable
import pytest
from limnary.contracts import run
from molmass import Formula

LIBRARIES = {
    "molmass": lambda formula: Formula(formula).mass,
    "periodictable": lambda formula: periodictable.formula(formula).mass,
}


@pytest.fixture(params=LIBRARIES)
def mass(request):
    return LIBRARIES[request.param]


@pytest.mark.parametrize("species", ["NH3", "NH4", "NO2", "NO3"])
def test_nitrogen_units(mass, species):
    per_n = mass(species) / mass("N")
    from_n = run("nitrogen_units", {"value": 1, "species": species.lower(), "basis": "n"})
    from_ion = run("nitrogen_units", {"value": 1, "species": species.lower(), "basis": "ion"})
    assert from_n["as_ion_mg_l"] == pytest.approx(per_n, rel=1e-4)
    assert from_ion["as_n_mg_l"] == pytest.approx(1 / per_n, rel=1e-4)


def dose(**extra):
    return run("dechlorinator_dose", {"change_l": 1, "disinfectant_mg_l": 1, "disinfectant": "chlorine", **extra})


# NH2Cl, measured as Cl2, has one nitrogen for each Cl2. The libraries themselves differ by 1e-4 in chlorine.
def test_dechlorinator_dose_frees_the_nitrogen_of_chloramine(mass):
    got = dose(disinfectant="chloramine")["freed_ammonia_mg_n_l"]
    assert got == pytest.approx(mass("N") / mass("Cl2"), rel=2e-4)


# C6H8O6 + HOCl -> C6H6O6 + HCl + H2O: the field ratio must cover one molecule for each Cl2.
def test_dechlorinator_dose_ascorbic_acid_covers_the_reaction(mass):
    needed = mass("C6H8O6") / mass("Cl2")
    assert needed <= dose()["ascorbic_acid_mg"] <= 1.01 * needed


# Thiosulfate: one for each Cl2 gives sulfate and sulfur; two for each Cl2 stop at tetrathionate.
def test_dechlorinator_dose_thiosulfate_lies_between_its_reactions(mass):
    pentahydrate = mass("Na2S2O3") + 5 * mass("H2O")
    got = dose()
    assert got["thiosulfate_pentahydrate_safe_mg"] == pytest.approx(2 * pentahydrate / mass("Cl2"), rel=1e-3)
    assert 0.5 * pentahydrate / mass("Cl2") < got["thiosulfate_pentahydrate_mg"] < pentahydrate / mass("Cl2")
