"""volume against the fluids library, scipy's integration, printed segment areas and the legal US gallon."""

import fluids
import pint
import pytest
from limnary.contracts import run
from scipy.integrate import quad

UNITS = pint.get_application_registry()


def litres(**measures):
    return run("volume", measures)["gross_l"]


# Circular segments, area / diameter^2 for depth / diameter: the partly-full-pipe table of hydraulics
# handbooks, four figures (from memory; reproduced by fluids below).
SEGMENTS = [(0.1, 0.0409), (0.2, 0.1118), (0.25, 0.1535), (0.3, 0.1982), (0.4, 0.2934), (0.5, 0.3927)]


@pytest.mark.parametrize(("depth", "printed"), SEGMENTS)
def test_volume_of_a_bow_is_a_circular_segment(depth, printed):
    diameter = 100.0
    chord = 2 * diameter * (depth * (1 - depth)) ** 0.5
    front = {"shape": "bow_front", "length_cm": chord, "bow_cm": depth * diameter, "height_cm": 10}
    segment_cm2 = (litres(**front, width_cm=30) * 1000 / 10) - chord * 30
    assert segment_cm2 / diameter**2 == pytest.approx(printed, abs=6e-5)
    assert segment_cm2 == pytest.approx(fluids.A_partial_circle(D=diameter, h=depth * diameter), rel=1e-9)


@pytest.mark.parametrize("glass_mm", [4, 8, 15])
@pytest.mark.parametrize(("length", "width", "bow"), [(80, 35, 8), (120, 40, 25), (45, 20, 22.5)])
def test_volume_of_a_bow_front_inside_its_glass(length, width, bow, glass_mm):
    glass = glass_mm / 10
    radius = (length**2 / 4 + bow**2) / (2 * bow)
    centre = width + bow - radius

    def depth(x):
        return centre + ((radius - glass) ** 2 - x**2) ** 0.5 - glass

    half = length / 2 - glass
    area, _ = quad(depth, -half, half, epsabs=1e-9)
    got = litres(shape="bow_front", length_cm=length, width_cm=width, bow_cm=bow, height_cm=40 + glass,
                 measures="outside", glass_mm=glass_mm)  # fmt: skip
    assert got == pytest.approx(area * 40 / 1000, rel=1e-6)


@pytest.mark.parametrize("glass_mm", [4, 8, 15])
def test_volume_of_round_tanks_inside_their_glass(glass_mm):
    glass, radius = glass_mm / 10, 45.0
    outside = {"height_cm": 50 + glass, "measures": "outside", "glass_mm": glass_mm}
    inner = radius - glass
    half = litres(shape="half_round", diameter_cm=2 * radius, **outside)
    assert half == pytest.approx(fluids.A_partial_circle(D=2 * inner, h=inner - glass) * 50 / 1000, rel=1e-9)
    area, _ = quad(lambda x: (inner**2 - x**2) ** 0.5 - glass, glass, (inner**2 - glass**2) ** 0.5, epsabs=1e-9)
    assert litres(shape="quarter_round", length_cm=radius, **outside) == pytest.approx(area * 50 / 1000, rel=1e-8)


@pytest.mark.parametrize("depth_cm", [3, 10, 17.5, 24])
def test_volume_of_a_bowl_is_a_cut_sphere(depth_cm):
    got = run("volume", {"shape": "bowl", "diameter_cm": 30, "height_cm": 24, "fill_height_cm": depth_cm})
    assert got["water_l"] == pytest.approx(fluids.V_partial_sphere(D=30, h=depth_cm) / 1000, rel=1e-12)
    half_width, _ = quad(lambda y: 2 * y, 0, (15**2 - (15 - depth_cm) ** 2) ** 0.5)
    assert got["surface_cm2"] == pytest.approx(3.141592653589793 * half_width, rel=1e-9)


def test_volume_of_a_hexagon_is_six_triangles():
    side = 40 / 3**0.5
    height_of_triangle = 20
    assert litres(shape="hexagon", width_cm=40, height_cm=50) == pytest.approx(
        6 * side * height_of_triangle / 2 * 50 / 1000
    )


# The US gallon is 231 cubic inches by law (NIST Handbook 44, appendix C): 22 x 14 x 12 in hold 16 gallons.
def test_volume_in_gallons():
    inch = (1 * UNITS.inch).to("cm").magnitude
    got = litres(shape="cuboid", length_cm=22 * inch, width_cm=14 * inch, height_cm=12 * inch)
    assert (got * UNITS.litre).to("US_liquid_gallon").magnitude == pytest.approx(16, rel=1e-9)
