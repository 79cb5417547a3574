"""filled_weight and substrate against EN 1991-1-1 (Eurocode 1), Annex A as printed, and pint's pressure units."""

import pytest
from limnary.calc.tables import constants
from limnary.contracts import contracts, run
from pint import get_application_registry

unit = get_application_registry()
KN_M3_TO_KG_L = 1 / 9.80665

# EN 1991-1-1:2002 Tables A.6 and A.7, kN/m3 (as printed): sand 14 to 19, dry sand in bridges 15 to 16,
# loose gravel 15 to 16, gravel poured 15 to 20.
POURED = {"sand": (15.0, 16.0), "gravel": (15.0, 16.0)}


def test_glass_of_filled_weight():
    # Table A.5: glass in sheets 25 kN/m3. The box's glass agrees within the 2 % by which 2500 kg/m3 differs from it.
    got = run("filled_weight", {"length_cm": 80, "width_cm": 35, "height_cm": 40, "glass_mm": 8, "water_l": 0})
    glass_m3 = (80 * 35 * 40 - 78.4 * 33.4 * 39.2) / 1e6
    assert got["empty_tank_kg"] == pytest.approx(glass_m3 * 25 * 1000 * KN_M3_TO_KG_L, rel=0.021)


@pytest.mark.parametrize("material", POURED)
def test_poured_density_of_substrate(material):
    low, high = (bound * KN_M3_TO_KG_L for bound in POURED[material])
    layer = {"material": material, "front_cm": 10, "back_cm": 10}
    got = run("substrate", {"length_cm": 100, "width_cm": 100, "layers": [layer]})
    assert got["litres"] == pytest.approx(100)
    assert low <= got["kg"] / 100 <= high


@pytest.mark.parametrize("depth_m", [0.3, 0.4, 0.5, 0.6])
def test_pressure_of_filled_weight_is_the_head_of_water(depth_m):
    # p = rho g h, by pint; also in pounds per square foot, the unit of American floor loads.
    got = run(
        "filled_weight",
        {"tank_kg": 0, "water_l": depth_m * 1000, "footprint_length_cm": 100, "footprint_width_cm": 100},
    )
    head = 997.047 * unit.kilogram / unit.meter**3 * unit.standard_gravity * depth_m * unit.meter
    assert got["footprint_kpa"] == pytest.approx(head.to("kilopascal").magnitude, rel=1e-5)
    assert head.to("force_pound/foot**2").magnitude > 40


def test_filled_weight_never_calls_a_floor_safe():
    spec = contracts()["filled_weight"]
    words = " ".join([*(one["text"] for one in spec["cautions"]), *spec["notes"].values(), spec["uncertainty"]]).lower()
    assert "structural engineer" in words and "code" in words
    assert " safe" not in words


def test_floor_figure_in_american_units():
    # 30 psf for sleeping rooms, 40 psf for others, as the note says.
    low = (30 * unit.force_pound / unit.foot**2).to("kilopascal").magnitude
    high = (40 * unit.force_pound / unit.foot**2).to("kilopascal").magnitude
    assert low == pytest.approx(constants("floor")["dwelling_kpa"], rel=0.05)
    assert high == pytest.approx(2.0, rel=0.05)
