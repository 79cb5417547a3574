"""hardness_units against definitions of the scales, worked with pint's units and two sets of atomic weights."""

import periodictable
import pint
import pytest
from limnary.contracts import run
from molmass import Formula

UNITS = pint.get_application_registry()
LIBRARIES = {
    "molmass": lambda formula: Formula(formula).mass,
    "periodictable": lambda formula: periodictable.formula(formula).mass,
}


@pytest.fixture(params=LIBRARIES)
def mmol_l(request):
    """mmol/L of hardness for one unit of each scale, from its definition."""
    mass = LIBRARIES[request.param]
    grain = (1 * UNITS.grain).to("mg").magnitude
    imperial, us = ((1 * gallon).to("litre").magnitude for gallon in (UNITS.imperial_gallon, UNITS.US_liquid_gallon))
    return {
        "dh": 10 / mass("CaO"),
        "ppm_caco3": 1 / mass("CaCO3"),
        "mmol_l": 1.0,
        "meq_l": 0.5,
        "fh": 10 / mass("CaCO3"),
        "clark": grain / imperial / mass("CaCO3"),
        "gpg": grain / us / mass("CaCO3"),
        "ca_mg_l": 1 / mass("Ca"),
        "mg_mg_l": 1 / mass("Mg"),
        "hco3_mg_l": 0.5 / mass("HCO3"),
    }


ANSWERED = ("dh", "ppm_caco3", "mmol_l", "meq_l", "fh", "clark", "gpg")
SCALES = (*ANSWERED, "ca_mg_l", "mg_mg_l", "hco3_mg_l")


@pytest.mark.parametrize("unit", SCALES)
def test_hardness_units_by_definition(mmol_l, unit):
    got = run("hardness_units", {"value": 7, "unit": unit})
    for scale in ANSWERED:
        assert got[scale] == pytest.approx(7 * mmol_l[unit] / mmol_l[scale], rel=3e-5), scale


# As encyclopaedias and water-treatment texts print them: 17.85 ppm for a German degree, 17.12 for a US grain,
# 14.25 for an English degree, 10 for a French one.
@pytest.mark.parametrize(("unit", "ppm"), [("dh", 17.85), ("gpg", 17.12), ("clark", 14.25), ("fh", 10)])
def test_hardness_units_as_handbooks_print_them(unit, ppm):
    assert run("hardness_units", {"value": 1, "unit": unit})["ppm_caco3"] == pytest.approx(ppm, abs=0.005)
