"""carbon_dioxide against PHREEQC's own speciation (phreeqpython, database phreeqc.dat), within 1 %."""

from itertools import product

import pytest
from limnary.contracts import run
from phreeqpython import PhreeqPython

MEQ_PER_DH = 2 * 10 / 56.077  # 10 mg/L of CaO
CO2_MG_PER_MOL = 44_009
POINTS = list(product((5, 15, 20, 25, 30), (5.5, 6.0, 6.5, 7.0, 7.5, 8.0)))


@pytest.fixture(scope="module")
def phreeqc():
    return PhreeqPython(database="phreeqc.dat")


def co2_mg_l(phreeqc, ph, kh_dkh, temperature_c, gh_dgh):
    """CO2 of a water of that alkalinity and calcium; sodium or chloride makes up the charges."""
    alkalinity, calcium = kh_dkh * MEQ_PER_DH, gh_dgh * MEQ_PER_DH / 2
    water = {"units": "mmol/kgw", "temp": temperature_c, "pH": ph, "Alkalinity": alkalinity}
    if calcium:
        water["Ca"] = calcium
    if 2 * calcium > alkalinity:
        water["Cl"] = 2 * calcium - alkalinity
    elif alkalinity > 2 * calcium:
        water["Na"] = alkalinity - 2 * calcium
    made = phreeqc.add_solution(water)
    found = made.species["CO2"] * CO2_MG_PER_MOL
    made.forget()
    return found


@pytest.mark.parametrize("gh_for_each_kh", [0, 1, 2])
@pytest.mark.parametrize(("temperature_c", "ph"), POINTS)
def test_carbon_dioxide_within_one_per_cent(phreeqc, temperature_c, ph, gh_for_each_kh):
    for kh_dkh in (0.5, 1, 2, 4, 8, 15):
        tank = {"ph": ph, "kh_dkh": kh_dkh, "temperature_c": temperature_c, "gh_dgh": kh_dkh * gh_for_each_kh}
        assert run("carbon_dioxide", tank)["co2_mg_l"] == pytest.approx(co2_mg_l(phreeqc, **tank), rel=0.01), kh_dkh


# Above pH 8 hard water is mostly oversaturated with calcite and pairs dominate.
@pytest.mark.parametrize("gh_for_each_kh", [0, 1, 2])
@pytest.mark.parametrize("kh_dkh", [1, 4, 8])
def test_carbon_dioxide_in_alkaline_water(phreeqc, kh_dkh, gh_for_each_kh):
    tank = {"ph": 8.5, "kh_dkh": kh_dkh, "temperature_c": 25, "gh_dgh": kh_dkh * gh_for_each_kh}
    assert run("carbon_dioxide", tank)["co2_mg_l"] == pytest.approx(co2_mg_l(phreeqc, **tank), rel=0.01)


# The rule 3 x KH x 10^(7 - pH) is low against PHREEQC too, by the amount that we answer.
@pytest.mark.parametrize(("ph", "kh_dkh", "temperature_c"), [(6.0, 2, 25), (7.0, 4, 20), (7.0, 4, 30), (8.0, 8, 25)])
def test_how_far_the_rule_is_off(phreeqc, ph, kh_dkh, temperature_c):
    tank = {"ph": ph, "kh_dkh": kh_dkh, "temperature_c": temperature_c, "gh_dgh": kh_dkh}
    off = (3 * kh_dkh * 10 ** (7 - ph) / co2_mg_l(phreeqc, **tank) - 1) * 100
    got = run("carbon_dioxide", tank)
    assert got["rule_off_percent"] < -4
    assert got["rule_off_percent"] == pytest.approx(off, abs=1)
