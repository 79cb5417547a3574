"""feed_ration against a feeding trial with fish of a gram, and against energy through pint."""

import pytest
from limnary.contracts import run
from pint import get_application_registry

# Deyab and Hussein 2015 (abstract): red tilapia of 0.9 g in 80 L glass tanks, 12 weeks at 1, 3, 5 and 7 % of their
# mass a day. Growth rose up to 5 %; 27 °C is our reading of a warm-water trial, the abstract does not say.
RATES = (1, 3, 5, 7)
BEST = 5


@pytest.mark.parametrize("temperature_c", [25, 27, 29])
def test_feed_ration_within_the_rates_of_a_trial(temperature_c):
    one = {"length_cm": 3.5, "mass_a": 0.9 / 3.5**3, "mass_b": 3, "count": 15}
    got = run("feed_ration", {"temperature_c": temperature_c, "animals": [one]})
    assert got["animals_g"] == pytest.approx(15 * 0.9, rel=1e-6)
    per_cent = {name: got[f"{name}_g_day"] / got["animals_g"] * 100 for name in ("upkeep", "usual", "most")}
    # The least rate of the trial is about upkeep; nobody needs to feed for the fastest growth.
    assert RATES[0] * 0.7 < per_cent["upkeep"] < RATES[0] * 1.5
    assert RATES[0] < per_cent["usual"] < RATES[1]
    assert RATES[1] < per_cent["most"] < BEST


# The oxycalorific equivalent is 3.24 cal/mg of oxygen.
def test_feed_ration_balances_energy():
    unit = get_application_registry()
    got = run("feed_ration", {"temperature_c": 25, "animals": [{"species": "Danio rerio", "count": 12}]})
    burnt = got["oxygen_mg_day"] * unit.mg * 3.24 * unit.calorie / unit.mg
    eaten = got["upkeep_g_day"] * unit.g * 0.92 * 15 * unit.kilojoule / unit.g
    assert (burnt / eaten).to("").magnitude == pytest.approx(1, rel=1e-3)


# What larger and colder fish need for each gram is less: Clarke and Johnston's exponent and temperature law.
def test_feed_ration_falls_with_size_and_cold():
    def usual(length_cm, temperature_c):
        one = {"length_cm": length_cm, "shape": "fusiform"}
        return run("feed_ration", {"temperature_c": temperature_c, "animals": [one]})["usual_percent"]

    assert usual(2, 25) > 2 * usual(20, 25) > 0
    assert usual(5, 25) / usual(5, 15) == pytest.approx(1.83, abs=0.05)
