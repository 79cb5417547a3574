"""alkalinity_use against PHREEQC: nitric acid for ammonium, 2 for each, and waters mixed week after week."""

import pytest
from limnary.contracts import run
from molmass import Formula
from phreeqpython import PhreeqPython

MEQ_PER_DH = 2 * 10 / 56.077
N_G_MOL = Formula("N").mass


@pytest.fixture(scope="module")
def phreeqc():
    return PhreeqPython(database="phreeqc.dat")


def water(phreeqc, kh_dkh):
    alkalinity = kh_dkh * MEQ_PER_DH
    return phreeqc.add_solution({"units": "mmol/kgw", "pH": 7.5, "Na": alkalinity, "Alkalinity": alkalinity})


def kh_of(solution):
    """Carbonate hardness of what a titration to carbonic acid finds: charge of bicarbonate and carbonate."""
    species = solution.species
    charge = species["HCO3-"] + 2 * species["CO3-2"] + species["OH-"] - species["H+"]
    pairs = sum(amount for name, amount in species.items() if name in ("NaHCO3", "NaCO3-"))
    return (charge + pairs) * 1000 / MEQ_PER_DH


# Ammonium chloride becomes nitric and hydrochloric acid: NH4Cl + 2 O2 -> HNO3 + HCl + H2O.
@pytest.mark.parametrize("kh_dkh", [2, 5, 12])
@pytest.mark.parametrize("nitrogen_mg_n_l", [0.5, 2, 4])
def test_alkalinity_use_is_two_acids_for_each_ammonium(phreeqc, kh_dkh, nitrogen_mg_n_l):
    tank = water(phreeqc, kh_dkh)
    before = kh_of(tank)
    millimoles = nitrogen_mg_n_l / N_G_MOL
    tank.add("HNO3", millimoles, "mmol")
    tank.add("HCl", millimoles, "mmol")
    got = run("alkalinity_use", {"kh_dkh": kh_dkh, "nitrogen_mg_n_l_day": nitrogen_mg_n_l})
    assert got["kh_dkh_per_day"] == pytest.approx(before - kh_of(tank), rel=0.01)


def test_alkalinity_use_in_calcium_carbonate():
    got = run("alkalinity_use", {"kh_dkh": 10, "nitrogen_mg_n_l_day": 1})
    caco3_mg_l = got["kh_dkh_per_day"] * 10 * Formula("CaCO3").mass / Formula("CaO").mass
    assert caco3_mg_l == pytest.approx(7.14, abs=0.01)


def test_alkalinity_use_settles_where_repeated_changes_end(phreeqc):
    tank, source, weekly_mmol = water(phreeqc, 6), water(phreeqc, 8), 7 * 0.4 / N_G_MOL
    for _ in range(30):
        tank.add("HCl", 2 * weekly_mmol, "mmol")
        lowest = kh_of(tank)
        tank = phreeqc.mix_solutions({tank: 0.6, source: 0.4})
    asked = {"kh_dkh": 6, "nitrogen_mg_n_l_day": 0.4, "source_kh_dkh": 8, "change_fraction": 0.4, "every_days": 7}
    assert run("alkalinity_use", asked)["steady_kh_dkh"] == pytest.approx(lowest, rel=0.01)


def test_alkalinity_use_reaches_the_floor_when_simulated():
    """Hour by hour: the first hour at which the floor is passed."""
    asked = {"kh_dkh": 7, "nitrogen_mg_n_l_day": 1.5, "source_kh_dkh": 5, "change_fraction": 0.25, "every_days": 7}
    got = run("alkalinity_use", asked)
    level, hour = 7.0, 0
    while level > 1:
        hour += 1
        level -= got["kh_dkh_per_day"] / 24
        if hour % (7 * 24) == 0 and level > 1:
            level = 0.75 * level + 0.25 * 5
    assert got["days_to_floor"] * 24 == pytest.approx(hour, abs=1)
