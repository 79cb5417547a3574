"""Nitrogen that plants take up in stocking_limit, against Reddy and DeBusk 1985 (J. Environ. Qual. 14:459)."""

import pytest
from limnary.contracts import run
from limnary.schema_files import read_folder

# The abstract's order of nitrogen removal in summer, outdoors in Florida, in rich water.
ORDER = [
    "Eichhornia crassipes",
    "Pistia stratiotes",
    "Hydrocotyle leucocephala",
    "Lemna minor",
    "Salvinia auriculata",
    "Spirodela polyrhiza",
    "Egeria densa",
]
# Two plants from the middle and the end of that order, mg N/m² a day; both figures are from memory.
LEMNA, EGERIA = 292, 125
PLANTS = read_folder("tables")["plants"]


def uptake_mg_m2_day(planting, floating_cover):
    tank = {"water_l": 300, "surface_cm2": 10000, "length_cm": 100, "temperature_c": 25}
    animals = [{"species": "Danio rerio", "count": 10}]
    return run("stocking_limit", {**tank, "animals": animals, "planting": planting, "floating_cover": floating_cover})[
        "plants_mg_n_day"
    ]


def test_the_fast_ones_are_rated_so():
    for name in ORDER:
        assert PLANTS["rows"][name]["uptake"] == "high", name
        assert PLANTS["rows"][name]["growth"] == "fast", name


@pytest.mark.parametrize("planting", ["light", "medium", "dense"])
def test_submerged_plants_take_less_than_egeria_outdoors(planting):
    assert 0.04 * EGERIA < uptake_mg_m2_day(planting, 0) < 0.5 * EGERIA


def test_floating_plants_take_a_part_of_what_they_take_outdoors():
    floating = uptake_mg_m2_day("none", 0.95) / 0.95
    assert 0.05 * LEMNA < floating < 0.25 * LEMNA


def test_floating_plants_come_before_submerged_ones():
    assert uptake_mg_m2_day("none", 0.95) > uptake_mg_m2_day("dense", 0)


def test_more_plants_take_more():
    rising = [uptake_mg_m2_day(planting, 0) for planting in ("none", "light", "medium", "dense")]
    assert rising == sorted(set(rising)) and rising[0] == 0


# Nielsen, Sand-Jensen 1991 (Aquat. Bot. 39:109), abstract: growth of 0.007 to 0.109 a day over 14 submerged species.
def test_growth_classes_span_the_measured_range():
    growth = PLANTS["classes"]["growth"]
    assert growth["range"] == [0.007, 0.109]
    assert growth["slow"][0] < 0.007 < growth["slow"][1]
    assert growth["fast"][0] < 0.109 <= growth["fast"][1]
