"""closed_water against gas and water in balance in PHREEQC, and against measured breathing (scipy)."""

from math import log10

import pytest
from limnary.calc.oxygen_night import breathing_mg_h
from limnary.contracts import run
from molmass import Formula
from phreeqpython import PhreeqPython
from scipy.integrate import solve_ivp

MEQ_PER_DH = 2 * 10 / 56.077
O2_MG_MMOL, CO2_MG_MMOL, N_MG_MMOL = (Formula(name).mass for name in ("O2", "CO2", "N"))
FISH = [{"species": "Paracheirodon innesi", "count": 10}]


@pytest.fixture(scope="module")
def phreeqc():
    return PhreeqPython(database="vitens.dat")


# The water's carbon dioxide, pH and free ammonia after the breathing that we count, in a gas of the same volume.
@pytest.mark.parametrize("air_l", [0.0, 2.0, 4.0])
@pytest.mark.parametrize(("ph", "kh_dkh", "temperature_c"), [(7.2, 4, 24), (6.6, 2, 20), (8.0, 10, 28)])
def test_closed_water_in_balance_with_its_gas(phreeqc, ph, kh_dkh, temperature_c, air_l):
    asked = {"water_l": 1, "air_l": air_l, "temperature_c": temperature_c, "animals": FISH, "ph": ph, "kh_dkh": kh_dkh}
    got = run("closed_water", asked)
    oxygen_mmol = got["animals_mg_h"] * min(got["hours"], 48) / O2_MG_MMOL
    ammonia_mmol = got["tan_then_mg_n_l"] / N_MG_MMOL
    assert ammonia_mmol == pytest.approx(0.2 * oxygen_mmol, rel=1e-3)
    alkalinity = kh_dkh * MEQ_PER_DH
    start = {"units": "mmol/kgw", "temp": temperature_c, "pH": ph, "Na": alkalinity, "Alkalinity": alkalinity}
    water = phreeqc.add_solution(start)
    water.add("CO2", 0.9 * oxygen_mmol, "mmol")
    water.add("Amm", ammonia_mmol, "mmol")
    if air_l:
        gas = phreeqc.add_gas({"CO2(g)": 0, "N2(g)": 1}, pressure=1, volume=air_l, fixed_pressure=False)
        water.interact(gas)
        # PHREEQC lets the volume follow the pressure. Both last beyond 48 h, so that no more is breathed.
        assert got["hours"] > 48
        got = run("closed_water", asked | {"air_l": gas.volume})
        assert got["hours"] > 48
    species = water.species
    assert got["ph_then"] == pytest.approx(water.pH, abs=0.02)
    assert got["co2_then_mg_l"] == pytest.approx(species["CO2"] * CO2_MG_MMOL * 1000, rel=0.02)
    assert 0.97 < got["nh3_then_mg_n_l"] / (species["Amm"] * N_MG_MMOL * 1000) < 1.12


# Air holds about thirty times the oxygen of the water below it: PHREEQC's solubility instead of Benson and Krause's.
@pytest.mark.parametrize(("temperature_c", "vapour_kpa"), [(10, 1.228), (20, 2.339), (30, 4.247)])
def test_closed_water_counts_the_oxygen_of_its_air(phreeqc, temperature_c, vapour_kpa):
    asked = {"water_l": 1, "temperature_c": temperature_c, "animals": FISH, "least_mg_l": 0}
    own = run("closed_water", asked)["oxygen_mg"]
    of_air = run("closed_water", asked | {"air_l": 1})["oxygen_mg"] - own
    oxygen_kpa = 0.20946 * (101.325 - vapour_kpa)
    water = phreeqc.add_solution({"temp": temperature_c})
    water.equalize(["O2(g)"], [log10(oxygen_kpa / 101.325)])
    assert own == pytest.approx(water.species["O2"] * O2_MG_MMOL * 1000, rel=0.01)
    gas_mg_l = oxygen_kpa / (8.314462618 * (temperature_c + 273.15)) * O2_MG_MMOL * 1000
    assert of_air == pytest.approx(gas_mg_l, rel=0.001)


def test_closed_water_lasts_until_the_limit_when_breathed_down():
    """The oxygen of water and gas, breathed down with the law of Clarke and Johnston, minute by minute."""
    asked = {"water_l": 2, "air_l": 1, "temperature_c": 25, "animals": FISH, "least_mg_l": 4, "start_percent": 80}
    got = run("closed_water", asked)
    mass_g = got["animals_g"] / 10
    capacity = 2 + 1 * 0.20946 * (101.325 - 3.169) / (8.314462618 * 298.15) * 31998.8 / 8.263
    start = (2 * 0.8 * 8.263 + (capacity - 2) * 8.263) / capacity

    def limit(_, level):
        return level[0] - 4

    limit.terminal = True
    rate = 10 * breathing_mg_h(mass_g, 25) / capacity
    found = solve_ivp(lambda *_: [-rate], (0, 1000), [start], events=limit, max_step=1)
    assert got["hours"] == pytest.approx(found.t_events[0][0], rel=1e-3)


# Ten neon tetras in a litre under twice as much air: shops pack about so for a day or two (common practice).
def test_closed_water_beside_how_shops_pack():
    got = run("closed_water", {"water_l": 1, "air_l": 2, "temperature_c": 24, "animals": FISH})
    assert 24 < got["hours_low"] < got["hours"] < 7 * 24
    assert 1 < got["hours_still"] < 6
