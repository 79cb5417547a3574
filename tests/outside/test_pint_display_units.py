"""Every factor of tables/units.json against pint's registry of units.

pint is a general-purpose library whose registry carries the international definitions; the check is of the
factors that free_ammonia, volume and every other form and result use on the phone to convert at display.
"""

import math
import warnings

import pint
import pytest
from limnary.schema_files import read_folder

TABLE = read_folder("tables")["units"]
UNITS = TABLE["units"]
# Our spelling, as printed beside a field, and pint's name of the same unit.
PINT = {
    "L": "liter", "ml": "milliliter", "US gal": "gallon", "UK gal": "imperial_gallon",
    "cm": "centimeter", "mm": "millimeter", "m": "meter", "in": "inch", "ft": "foot",
    "cm²": "centimeter**2", "m²": "meter**2", "in²": "inch**2", "ft²": "foot**2",
    "kg": "kilogram", "g": "gram", "lb": "pound",
    "kg/L": "kilogram/liter", "kg/m³": "kilogram/meter**3", "lb/ft³": "pound/foot**3",
    "°C": "degree_Celsius", "°F": "degree_Fahrenheit", "°C difference": "delta_degree_Celsius",
    "°F difference": "delta_degree_Fahrenheit",
    "°C/hour": "delta_degree_Celsius/hour", "°F/hour": "delta_degree_Fahrenheit/hour",
    "kPa": "kilopascal", "inHg": "inch_Hg", "lb/ft²": "force_pound/foot**2",
    "L/h": "liter/hour", "L/day": "liter/day", "US gal/h": "gallon/hour", "US gal/day": "gallon/day",
    "L/week": "liter/week", "US gal/week": "gallon/week", "UK gal/week": "imperial_gallon/week",
    "mm/day": "millimeter/day", "in/day": "inch/day", "cm/h": "centimeter/hour", "in/h": "inch/hour",
    "UK gal/h": "imperial_gallon/hour", "UK gal/day": "imperial_gallon/day",
}  # fmt: skip
# The inch of mercury is printed to seven figures in the guide, and pint multiplies out density and gravity.
RELATIVE = {"inHg": 2e-7}
BASE = {one["quantity"]: name for name, one in UNITS.items() if one["times"] == 1 and not {"shift", "over"} & set(one)}


@pytest.fixture(scope="module")
def registry():
    with warnings.catch_warnings():
        # pint may warn at its start about optional parts that are not installed.
        warnings.simplefilter("ignore")
        return pint.get_application_registry()


def in_base(value, unit):
    """The table's rule: (v + shift) × times / over."""
    return (value + unit.get("shift", 0)) * unit["times"] / unit.get("over", 1)


def test_every_unit_is_compared():
    assert set(PINT) == set(UNITS)
    assert {unit["quantity"] for unit in UNITS.values()} == set(BASE)


@pytest.mark.parametrize("name", sorted(UNITS))
@pytest.mark.parametrize("value", [0.0, 1.0, 77.0, 1234.5])
def test_factor(registry, name, value):
    expected = registry.Quantity(value, PINT[name]).to(PINT[BASE[UNITS[name]["quantity"]]]).magnitude
    assert math.isclose(in_base(value, UNITS[name]), expected, rel_tol=RELATIVE.get(name, 1e-12), abs_tol=1e-12)


def test_what_other_systems_show_measures_the_same_quantity():
    for own, others in TABLE["shown"].items():
        for other in others.values():
            assert UNITS[own]["quantity"] == UNITS[other]["quantity"]
