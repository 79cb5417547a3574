"""Breathing of fish in oxygen_night against two abstracts: Clarke and Johnston 1999, Lucas and Priede 1992."""

from math import log

import pytest
from limnary.contracts import run

TANK = {"water_l": 96, "surface_cm2": 2400}


def mg_kg_h(mass_g, temperature_c):
    """Oxygen that one fish of `mass_g` consumes in oxygen_night, per kilogram of fish."""
    one_cm = {"count": 1, "length_cm": 1, "mass_a": 0.5, "mass_b": 3}
    # mass_a is bounded, so the mass is set by length: 0.5 g for each cubic centimetre of length.
    fish = {**one_cm, "length_cm": (mass_g / 0.5) ** (1 / 3)}
    got = run("oxygen_night", {**TANK, "temperature_c": temperature_c, "animals": [fish]})
    assert got["animals_g"] == pytest.approx(mass_g)
    return got["animals_mg_h"] / mass_g * 1000


# Clarke, Johnston 1999 (J. Anim. Ecol. 68:893), abstract: ln R50 = 15.7 - 5.02/T with T in thousand kelvin,
# mmol O2/h of a 50 g fish. Worked by hand with a molar mass of 31.9988.
@pytest.mark.parametrize(("temperature_c", "published"), [(15, 114.4), (25, 205.3), (30, 271.0)])
def test_fifty_gram_fish(temperature_c, published):
    assert mg_kg_h(50, temperature_c) == pytest.approx(published, rel=0.002)


# The same abstract: Q10 of 1.83 between species from 0 to 30 °C.
def test_q10():
    assert (mg_kg_h(50, 30) / mg_kg_h(50, 4)) ** (10 / 26) == pytest.approx(1.83, abs=0.03)


# The same abstract: species' mean exponent 0.79 with a standard error of 0.11, 0.80 over all.
def test_mass_exponent():
    exponent = 1 + log(mg_kg_h(10, 20) / mg_kg_h(1, 20)) / log(10)
    assert exponent == pytest.approx(0.79, abs=0.11)
    assert exponent == pytest.approx(0.80, abs=1e-6)


# Lucas, Priede 1992 (J. Fish Biol. 41:175), abstract: zebra danios of 0.43 to 0.55 g at 24 °C, mg O2/kg/h: standard
# 364, routine singly 421 (sd 58), routine grouped 560 (sd 78), at most 1223 (sd 157).
@pytest.mark.parametrize("mass_g", [0.43, 0.49, 0.55])
def test_zebra_danio(mass_g):
    rate = mg_kg_h(mass_g, 24)
    assert 421 < rate < 560
    assert 364 / rate == pytest.approx(0.75, abs=0.03), "the low end of the band is the standard rate"
    assert rate * 1.5 < 1223 + 157, "the high end stays under the greatest measured"
