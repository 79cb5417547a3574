"""acclimation against an FAO manual's times, PHREEQC's mixing and scipy's integration of the drip."""

import pytest
from limnary.contracts import run
from phreeqpython import PhreeqPython
from scipy.integrate import solve_ivp

BAG = {"bag_l": 1.5, "bag_temperature_c": 25, "tank_temperature_c": 25}
HARD = {**BAG, "bag_gh_dgh": 16, "tank_gh_dgh": 4}


# Somerville et al. 2014, FAO Fisheries and Aquaculture Technical Paper 589, section 7.5: float the sealed bag at
# least 15 minutes; adding tank water takes at least 15 more; beyond 0.5 pH "at least 24 hours".
@pytest.mark.parametrize(("ph_gap", "least_minutes"), [(0, 15), (0.3, 15), (0.5, 15), (0.6, 1440), (1.5, 1440)])
def test_acclimation_takes_the_manuals_time(ph_gap, least_minutes):
    got = run("acclimation", {**BAG, "bag_ph": 7.0 + ph_gap, "tank_ph": 7.0})
    assert got["mix_minutes"] >= least_minutes
    assert any("a day" in note for note in got["notes"]) is (least_minutes == 1440)


@pytest.mark.parametrize("gap_c", [1.5, 3, 5, 9])
def test_acclimation_floats_the_manuals_time(gap_c):
    got = run("acclimation", {**BAG, "bag_temperature_c": 25 - gap_c})
    assert got["float_minutes"] >= 15


@pytest.mark.parametrize("more", [{}, {"vessel_l": 4}])
def test_acclimation_drip_as_a_differential_equation(more):
    plan = run("acclimation", {**HARD, **more})["plan"]
    volume_l, gh, start = HARD["bag_l"], HARD["bag_gh_dgh"], 0.0
    for row in plan:
        volume_l -= row["pour_off_l"]
        flow = row["add_l"] / (row["minute"] - start)

        def change(_t, y, flow=flow):
            return [flow, flow * (HARD["tank_gh_dgh"] - y[1]) / y[0]]

        done = solve_ivp(change, (start, row["minute"]), [volume_l, gh], rtol=1e-10, atol=1e-12)
        (volume_l, gh), start = done.y[:, -1], row["minute"]
        assert gh == pytest.approx(row["gh_dgh"], rel=1e-7)


@pytest.mark.parametrize("method", ["drip", "steps"])
def test_acclimation_mixes_as_phreeqc_does(method):
    # Calcium chloride of 16 and 4 degrees (0.17848 mmol/L each), mixed step by step by PHREEQC.
    phreeqc = PhreeqPython(database="phreeqc.dat")
    water = {name: phreeqc.add_solution_simple({"CaCl2": gh * 0.17848}, 25) for name, gh in (("bag", 16), ("tank", 4))}
    now, litres = water["bag"], HARD["bag_l"]
    for row in run("acclimation", {**HARD, "method": method})["plan"]:
        kept = litres - row["pour_off_l"]
        litres = kept + row["add_l"]
        now = phreeqc.mix_solutions({now: kept / litres, water["tank"]: row["add_l"] / litres})
        assert now.total("Ca", "mmol") / 0.17848 == pytest.approx(row["gh_dgh"], rel=1e-6)


def test_acclimation_drops_of_the_pharmacopoeia():
    # European Pharmacopoeia 2.1.1 (from memory): 20 drops of water weigh 1 g at 20 °C.
    plan = run("acclimation", {**BAG, "bag_l": 1, "bag_ph": 8, "tank_ph": 7})["plan"]
    counted = [row for row in plan if "drops_s" in row]
    assert counted
    for row in counted:
        assert row["drops_s"] * 60 * 60 * 0.05 / 1000 == pytest.approx(row["add_l"], rel=1e-9)
