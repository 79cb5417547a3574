"""nitrogen_load against stoichiometry recomputed with molmass, and the published nitrogen factor of protein."""

import pytest
from limnary.calc.tables import constants
from limnary.contracts import run
from molmass import Formula

# Ebeling, Timmons, Bisogni 2006 (Aquaculture 257:346), whole nitrification with growth; from memory.
LEFT = {"NH4": 1.0, "O2": 1.83, "HCO3": 1.97}
RIGHT = {"C5H7O2N": 0.0244, "NO3": 0.976, "H2O": 2.90, "CO2": 1.86}
N = Formula("N").mass


def atoms(side: dict, element: str) -> float:
    return sum(
        share * (Formula(name).composition()[element].count if element in Formula(name).composition() else 0)
        for name, share in side.items()
    )


@pytest.mark.parametrize("element", ["C", "N", "O", "H"])
def test_the_equation_balances(element):
    # Each coefficient is rounded to three figures by itself; carbon is off by 0.6 %.
    assert atoms(LEFT, element) == pytest.approx(atoms(RIGHT, element), rel=0.01)


def test_nitrogen_load_oxidation_by_atomic_weights():
    got = run("nitrogen_load", {"feed_g_day": 10, "protein_fraction": 0.4, "volume_l": 200})
    assert got["oxygen_mg_day"] / got["tan_mg_n_day"] == pytest.approx(1.83 * Formula("O2").mass / N, rel=0.001)
    caco3_mg_l = got["tan_mg_n_l_day"] * 1.97 * Formula("CaCO3").mass / 2 / N
    cao_mg_l_per_degree = 10 * Formula("CaCO3").mass / Formula("CaO").mass
    assert got["kh_drop_dkh_day"] == pytest.approx(caco3_mg_l / cao_mg_l_per_degree, rel=0.001)
    nitrate = got["tan_mg_n_l_day"] * 0.976 * Formula("NO3").mass / N
    assert got["nitrate_mg_l_day"] == pytest.approx(nitrate, rel=1e-4)


def test_oxygen_stays_under_the_limit_without_growth():
    # NH4 + 2 O2 -> NO3: 4.57 g O2 for each g N is the textbook maximum.
    ceiling = 2 * Formula("O2").mass / N
    assert ceiling == pytest.approx(4.57, abs=0.005)
    assert 0.85 * ceiling < constants("ebeling_2006")["oxygen_per_n"] < ceiling


def test_nitrogen_load_factor_of_timmons_and_ebeling():
    # 0.16 N in protein x 0.80 assimilated x 0.80 excreted x 0.90 as ammonia (from memory).
    got = run("nitrogen_load", {"feed_g_day": 1, "protein_fraction": 1, "volume_l": 1})
    assert got["tan_mg_n_day"] / 1000 == pytest.approx(0.16 * 0.8 * 0.8 * 0.9, rel=0.002)


def test_uneaten_protein_by_the_factor_of_jones_1931():
    # USDA Circular 183: protein = 6.25 x nitrogen.
    got = run("nitrogen_load", {"feed_g_day": 1, "protein_fraction": 1, "volume_l": 1, "uneaten_fraction": 1})
    assert got["tan_mg_n_day"] == pytest.approx(1000 / 6.25)
