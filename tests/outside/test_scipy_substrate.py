"""substrate against numerical integration of the bed's shape, and the printed angle of repose (EN 1991-1-1)."""

import pytest
from limnary.contracts import run
from scipy.integrate import dblquad


@pytest.mark.parametrize(
    ("length_cm", "width_cm", "depths"),
    [(80, 35, [(2, 8)]), (120, 50, [(0, 5), (3, 3), (2.5, 9)]), (45, 28, [(4, 1)])],
)
def test_substrate_volume_is_the_integral_of_its_depth(length_cm, width_cm, depths):
    layers = [{"material": "sand", "front_cm": front, "back_cm": back} for front, back in depths]
    got = run("substrate", {"length_cm": length_cm, "width_cm": width_cm, "layers": layers})

    def depth_cm(y, _x):
        return sum(front + (back - front) * y / width_cm for front, back in depths)

    volume_cm3, _ = dblquad(depth_cm, 0, length_cm, 0, width_cm)
    assert got["litres"] * 1000 == pytest.approx(volume_cm3, rel=1e-9)


@pytest.mark.parametrize(("rise_cm", "steep"), [(17.0, False), (17.6, True)])
def test_substrate_slides_beyond_the_angle_of_repose_of_sand(rise_cm, steep):
    # EN 1991-1-1 Table A.7: sand 30 degrees; over 30 cm that is a rise of 17.3 cm.
    layer = {"material": "sand", "front_cm": 2, "back_cm": 2 + rise_cm}
    got = run("substrate", {"length_cm": 70, "width_cm": 30, "layers": [layer]})
    assert any("slide" in note for note in got["notes"]) is steep
    assert got["slope_deg"] == pytest.approx(30, abs=0.8)
