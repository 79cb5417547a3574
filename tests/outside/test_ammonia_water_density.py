"""starter_dose's density of household ammonia against a printed table and the ammonia-water equation of state."""

import warnings

import pytest
from iapws.ammonia import H2ONH3
from limnary.contracts import run
from scipy.optimize import brentq

# Specific gravity at 60 °F against per cent by mass, Cooley's Cyclopaedia of Practical Receipts,
# 6th edition (1880), table of solution of ammonia; water of 60 °F weighs 0.99904 kg/L.
COOLEY = {1.220: 0.995, 4.956: 0.98, 9.790: 0.96125, 15.502: 0.94, 19.691: 0.925, 24.019: 0.91, 28.492: 0.895}


def density_kg_l(percent: float) -> float:
    return run("starter_dose", {"volume_l": 1, "tan_mg_n_l": 1, "ammonia_percent": percent})["density_kg_l"]


@pytest.mark.parametrize(("percent", "gravity"), COOLEY.items())
def test_starter_dose_density_beside_the_printed_table(percent, gravity):
    assert density_kg_l(percent) == pytest.approx(gravity * 0.99904, rel=0.004)


@pytest.mark.parametrize("percent", [0.5, 2, 5, 10, 16, 24, 33])
def test_starter_dose_density_beside_the_equation_of_state(percent):
    # IAPWS guideline for ammonia-water mixtures (Tillner-Roth & Friend 1998), 20 °C, one atmosphere.
    ammonia, water = percent / 17.03026, (100 - percent) / 18.015268
    fraction = ammonia / (ammonia + water)
    state = H2ONH3()
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", RuntimeWarning)  # about the speed of sound, which we do not use
        expected = brentq(
            lambda density: state._prop(density, 293.15, fraction)["P"] - 0.101325,
            density_kg_l(percent) * 980,
            density_kg_l(percent) * 1020,
        )
    assert density_kg_l(percent) * 1000 == pytest.approx(expected, rel=0.005)
