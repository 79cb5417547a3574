"""dechlorinator_dose against the American Water Works Association's field guide, Tables 7-2 and 7-5."""

import molmass
import pint
import pytest
from limnary.contracts import run

UNITS = pint.get_application_registry()
# Agent: mg for each mg of chlorine; pounds for 100,000 US gallons at 1 mg/L; kg for 100 m3 at 1 mg/L.
ASCORBIC_ACID = (2.5, 2.08, 0.25)
SODIUM_THIOSULFATE = (1.9, 1.58, 0.19)
CALCIUM_THIOSULFATE = 1.22


def grams(litres):
    got = run("dechlorinator_dose", {"change_l": litres, "disinfectant": "chlorine", "disinfectant_mg_l": 1})
    return got["ascorbic_acid_mg"] / 1000, got["thiosulfate_pentahydrate_mg"] / 1000


def test_dechlorinator_dose_per_milligram():
    ascorbic, thiosulfate = grams(1)
    assert ascorbic * 1000 == pytest.approx(ASCORBIC_ACID[0], abs=0.005)
    assert thiosulfate * 1000 == pytest.approx(SODIUM_THIOSULFATE[0], abs=0.005)


def test_dechlorinator_dose_in_pounds_for_a_reservoir():
    litres = (10_000 * UNITS.US_liquid_gallon).to("litre").magnitude
    ascorbic, thiosulfate = ((10 * g * UNITS.gram).to("pound").magnitude for g in grams(litres))
    assert ascorbic == pytest.approx(ASCORBIC_ACID[1], abs=0.01)
    assert thiosulfate == pytest.approx(SODIUM_THIOSULFATE[1], abs=0.01)


def test_dechlorinator_dose_in_kilograms_for_100_cubic_metres():
    ascorbic, thiosulfate = grams(100_000)
    assert ascorbic / 1000 == pytest.approx(ASCORBIC_ACID[2], abs=0.005)
    assert thiosulfate / 1000 == pytest.approx(SODIUM_THIOSULFATE[2], abs=0.005)


# The table names no hydrate. Compared with calcium thiosulfate, which gives the same ion, only the pentahydrate fits.
def test_dechlorinator_dose_reads_the_table_as_pentahydrate():
    calcium, anhydrous = molmass.Formula("CaS2O3").mass, molmass.Formula("Na2S2O3").mass
    pentahydrate = anhydrous + 5 * molmass.Formula("H2O").mass
    printed = SODIUM_THIOSULFATE[0] / CALCIUM_THIOSULFATE
    assert abs(printed - pentahydrate / calcium) < 0.2 * abs(printed - anhydrous / calcium)


# Laboratories remove chlorine from samples with 7.0 mg of the pentahydrate for each mg (a supplier's
# technical note, 2017): an upper bound that is always enough.
def test_dechlorinator_dose_safe_bound_is_laboratory_practice():
    got = run("dechlorinator_dose", {"change_l": 0.5, "disinfectant": "chlorine", "disinfectant_mg_l": 2})
    assert got["thiosulfate_pentahydrate_safe_mg"] == pytest.approx(7.0)
