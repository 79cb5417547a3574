"""Exchange through a still surface in oxygen_night against other published Schmidt numbers of oxygen in fresh water."""

import pytest
from limnary.calc.oxygen_night import schmidt_oxygen
from limnary.contracts import run


def wanninkhof_1992(t):
    """J. Geophys. Res. 97:7373, table A1, fresh water, 0 to 30 °C."""
    return 1800.6 - 120.10 * t + 3.7818 * t**2 - 0.047608 * t**3


def raymond_2012(t):
    """Limnol. Oceanogr. Fluids Environ. 2:41, table 1."""
    return 1568 - 86.04 * t + 2.142 * t**2 - 0.0216 * t**3


# Wanninkhof 2014 (Limnol. Oceanogr. Methods 12:351), its polynomial worked by hand.
@pytest.mark.parametrize(("t", "published"), [(15, 664), (20, 510), (25, 399), (28, 344), (30, 312)])
def test_schmidt_number_as_published(t, published):
    assert schmidt_oxygen(t) == pytest.approx(published, abs=0.6)


@pytest.mark.parametrize("t", [5, 10, 15, 20, 25, 30])
def test_schmidt_number_beside_older_works(t):
    assert schmidt_oxygen(t) == pytest.approx(wanninkhof_1992(t), rel=0.06)
    assert schmidt_oxygen(t) == pytest.approx(raymond_2012(t), rel=0.07)


# Cole, Caraco 1998: k600 of 2.07 cm/h without wind. At 20 °C, where Sc is 510: 2.07 (510/600)^(-2/3) = 2.307.
@pytest.mark.parametrize(("t", "cm_h"), [(20, 2.307), (25, 2.718)])
def test_exchange_of_a_windless_surface(t, cm_h):
    got = run("oxygen_night", {"water_l": 96, "surface_cm2": 2400, "temperature_c": t, "cover": "open"})
    assert got["exchange_cm_h"] == pytest.approx(cm_h, rel=0.001)


# A deficit of 2 mg/L at 25 °C lets about 54 mg of oxygen through each square metre in an hour.
def test_flux_at_a_deficit():
    got = run("oxygen_night", {"water_l": 96, "surface_cm2": 10000, "temperature_c": 25, "cover": "open"})
    assert got["exchange_cm_h"] / 100 * 1000 * 2 == pytest.approx(54, rel=0.02)
