"""water_after_change against PHREEQC: waters mixed as a closed vessel, then brought back to the tank's own CO2.

phreeqpython, database vitens.dat, where ammonia (Amm) stays ammonia: phreeqc.dat would oxidise it in the mixture.
"""

import pytest
from limnary.contracts import run
from phreeqpython import PhreeqPython

MEQ_PER_DH = 2 * 10 / 56.077
N_G_MOL = 14.007
# ph, kh_dkh, temperature_c, tan_mg_n_l of the tank, the same of the new water, the fraction changed
CHANGES = [
    (6.2, 1, 24, 4, 7.6, 10, 20, 0, 0.5),
    (6.2, 1, 24, 8, 7.6, 10, 20, 0, 0.1),
    (7.0, 4, 25, 2, 8.0, 8, 15, 0.6, 0.3),
    (8.2, 12, 28, 0.5, 6.8, 1, 10, 0, 0.5),
    (7.5, 6, 22, 0, 7.0, 3, 22, 0, 0.25),
    (6.5, 2, 25, 20, 7.8, 20, 25, 0, 0.5),
    (8.0, 20, 25, 1, 7.2, 20, 12, 0, 0.5),
    (8.5, 4, 28, 1, 8.3, 6, 25, 0.2, 0.4),
    (6.8, 3, 23, 0.3, 8.8, 0.5, 5, 0, 0.9),
]


@pytest.fixture(scope="module")
def phreeqc():
    return PhreeqPython(database="vitens.dat")


def water(phreeqc, ph, kh_dkh, temperature_c, tan_mg_n_l, calcium):
    """A water of that alkalinity, balanced by sodium or by calcium; ammonia as its chloride."""
    alkalinity, ammonia = kh_dkh * MEQ_PER_DH, tan_mg_n_l / N_G_MOL
    made = {"units": "mmol/kgw", "temp": temperature_c, "pH": ph, "Alkalinity": alkalinity}
    made |= {"Ca": alkalinity / 2} if calcium else {"Na": alkalinity}
    return phreeqc.add_solution(made | ({"Amm": ammonia, "Cl": ammonia} if ammonia else {}))


def free_mg_n_l(solution):
    return solution.species.get("Amm", 0) * N_G_MOL * 1000


def both(phreeqc, change, calcium):
    """(ph, nh3) of PHREEQC at once and settled, and our answer."""
    *waters, fraction = change
    tank, source = (water(phreeqc, *one, calcium) for one in (waters[:4], waters[4:]))
    mixed = phreeqc.mix_solutions({tank: 1 - fraction, source: fraction})
    at_once = mixed.pH, free_mg_n_l(mixed)
    assert mixed.temperature == pytest.approx((1 - fraction) * waters[2] + fraction * waters[6], abs=0.01)
    mixed.change_temperature(waters[2])
    mixed.equalize(["CO2(g)"], [tank.si("CO2(g)")])
    settled = mixed.pH, free_mg_n_l(mixed)
    names = ("ph", "kh_dkh", "temperature_c", "tan_mg_n_l")
    asked = dict(zip([*names, *(f"source_{name}" for name in names)], waters, strict=True))
    return at_once, settled, run("water_after_change", asked | {"fraction": fraction})


@pytest.mark.parametrize("change", CHANGES)
def test_water_after_change_is_mixing(phreeqc, change):
    at_once, settled, got = both(phreeqc, change, calcium=False)
    assert got["ph"] == pytest.approx(at_once[0], abs=0.01)
    assert got["ph_settled"] == pytest.approx(settled[0], abs=0.01)
    # We count free ammonia without ionic strength, as the limits do: never below PHREEQC's by more than the pH's error.
    for ours, theirs in ((got["nh3_mg_n_l"], at_once[1]), (got["nh3_settled_mg_n_l"], settled[1])):
        assert 0.99 * theirs <= ours <= 1.1 * theirs


# All hardness as calcium: its pairs hold carbon, which moves the pH where carbon dioxide and carbonate meet.
@pytest.mark.parametrize("change", CHANGES)
def test_water_after_change_with_calcium(phreeqc, change):
    at_once, settled, got = both(phreeqc, change, calcium=True)
    assert got["ph"] == pytest.approx(at_once[0], abs=0.15)
    assert got["ph_settled"] == pytest.approx(settled[0], abs=0.02)
