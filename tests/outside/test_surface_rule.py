"""The space that stocking_limit gives fish, against the trade's old rules in inches (pint for the units)."""

import pint
import pytest
from limnary.contracts import run

UNITS = pint.get_application_registry()
TANK = {"water_l": 200, "surface_cm2": 4000, "length_cm": 100, "temperature_c": 22, "filter": "internal"}


def surface_asked_cm2(species):
    return run("stocking_limit", {**TANK, "animals": [{"species": species, "count": 1}]})["used_surface_cm2"]


# Common practice: 12 square inches of surface for each inch of a small warm-water fish.
@pytest.mark.parametrize(
    ("species", "length_cm"),
    [("Danio rerio", 5), ("Trigonostigma heteromorpha", 4.5), ("Corydoras paleatus", 7), ("Poecilia reticulata", 4)],
)
def test_twelve_square_inches_an_inch(species, length_cm):
    rule = (12 * UNITS.inch**2 / UNITS.inch * length_cm * UNITS.cm).to("cm**2").magnitude
    assert surface_asked_cm2(species) == pytest.approx(rule, rel=0.02)


# Common practice: 30 square inches for each inch of a cool-water fish, such as goldfish. Ours follows from bulk.
def test_thirty_square_inches_an_inch_of_goldfish():
    rule = (30 * UNITS.inch**2 / UNITS.inch * 25 * UNITS.cm).to("cm**2").magnitude
    assert surface_asked_cm2("Carassius auratus") == pytest.approx(rule, rel=0.25)
    assert surface_asked_cm2("Carassius auratus") > rule, "never less room than the rule gives it"


# Common practice: a pair of grown angelfish wants some 60 cm of length, an oscar 120 cm.
@pytest.mark.parametrize(("species", "length_cm"), [("Pterophyllum scalare", 60), ("Astronotus ocellatus", 120)])
def test_length_to_swim(species, length_cm):
    def enough(length):
        got = run("stocking_limit", {**TANK, "length_cm": length, "animals": [{"species": species, "count": 1}]})
        return got["more"][0]["long_enough"]

    assert enough(length_cm)
    assert not enough(length_cm - 1)
