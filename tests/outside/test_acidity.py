"""The outlook's hardness, pH and inhibition against PyCO2SYS, stoichiometry by molmass, and printed limits.

Park and Bae 2009 (Process Biochemistry 44:631, abstract): free ammonia of 290 to 1600 and 46 µM, free nitrous acid of
12 and 1.7 to 6.8 µM halve the rates of ammonia and of nitrite oxidisers. Biesterfeld et al. 2003 (Water Environment
Research 75:196, abstract): a nitrifying film is impaired at 40 mg CaCO3/L and less, and unaffected at 45 and more.
Hiatt and Grady 2008: nothing grows beyond 50 and 57 °C.
"""

import math
import warnings

import numpy as np
import pytest
from limnary.calc import kinetics as k
from limnary.calc.tank_events import believed
from molmass import Formula

with warnings.catch_warnings():
    warnings.simplefilter("ignore")  # the library's own imports warn on newer versions of what it uses
    import PyCO2SYS

C = k.settings()
N = Formula("N").mass
CACO3 = Formula("CaCO3").mass
# A German degree is 10 mg of CaO a litre.
CACO3_MG_L_DKH = 10 * CACO3 / Formula("CaO").mass
NEUTRAL = k.Water(np.ones(1), 1.0, 1.0, 1.0, np.zeros(1), np.zeros(1))


def one_draw(**rows):
    """A cloud of one draw without bacteria and plants, but for `rows`, named as in kinetics."""
    cloud = np.zeros((k.ROWS, 1))
    cloud[[k.INPUT, k.APPETITE, k.TOLERANCE, k.HALF_1, k.HALF_2]] = 1.0
    cloud[k.KH] = 10.0
    for name, value in rows.items():
        cloud[getattr(k, name)] = value
    return cloud


def after(days, cloud, base=0.0, water=NEUTRAL):
    """The cloud after `days` in steps of 3 h."""
    for _ in range(round(days * 8)):
        k.step(cloud, 1 / 8, base, 0.0, water, C)
    return cloud


@pytest.mark.parametrize("temperature_c", [15, 20, 25, 30])
@pytest.mark.parametrize("kh_dkh", [0.3, 1.0, 3.0, 8.0, 15.0])
def test_ph_follows_from_hardness_and_carbon_dioxide(kh_dkh, temperature_c):
    """With carbonate and water, which ours leaves out or counts simply; without activities (fresh water)."""
    co2_mg_l = np.geomspace(0.2, 200, 25)
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        found = PyCO2SYS.sys(
            par1=2000 * kh_dkh * CACO3_MG_L_DKH / CACO3,
            par1_type=1,
            par2=co2_mg_l / Formula("CO2").mass * 1000,
            par2_type=8,
            salinity=0,
            temperature=temperature_c,
            opt_k_carbonic=8,
        )
    theirs = found["pH_free"]
    ours = k.ph_of_water(np.full(25, kh_dkh), co2_mg_l, temperature_c)
    usual = (theirs >= 5.5) & (theirs <= 8.5)
    assert np.sum(usual) >= 8
    assert np.max(np.abs(ours - theirs)[usual]) < 0.05


def test_hardness_and_carbon_dioxide_are_found_again_from_the_ph():
    kh_dkh, co2_mg_l = np.array([0.05, 1.0, 5.0, 20.0]), 12.0
    ph = k.ph_of_water(kh_dkh, np.full(4, co2_mg_l), 25.0)
    assert k.co2_of_water(ph, kh_dkh, 25.0) == pytest.approx(np.full(4, co2_mg_l))
    assert k.kh_of_water(ph, co2_mg_l, 25.0) == pytest.approx(kh_dkh)


def test_a_milligram_of_nitrogen_nitrified_takes_7_14_of_calcium_carbonate():
    per_mg_n = 2 * (CACO3 / 2) / N
    assert per_mg_n == pytest.approx(7.14, abs=0.01)
    assert per_mg_n / CACO3_MG_L_DKH == pytest.approx(0.400, abs=0.001)
    cloud = after(10, one_draw(TAN=2.0, CAPACITY_1=5.0, CAPACITY_2=5.0))
    nitrified = 2.0 - cloud[k.TAN, 0]
    assert nitrified > 1.99
    assert (10.0 - cloud[k.KH, 0]) / nitrified == pytest.approx(per_mg_n / CACO3_MG_L_DKH, rel=0.001)


def test_nitrite_is_as_sour_as_nitrate():
    """NH4+ + 1.5 O2 -> NO2- + 2 H+ + H2O; nitrite to nitrate frees no acid."""
    cloud = after(10, one_draw(TAN=2.0, CAPACITY_1=5.0))
    assert cloud[k.NITRITE, 0] == pytest.approx(2.0 - cloud[k.TAN, 0])
    assert 10.0 - cloud[k.KH, 0] == pytest.approx(cloud[k.NITRITE, 0] * 7.14 / CACO3_MG_L_DKH, rel=0.002)


def test_what_plants_take_of_the_food_as_ammonia_costs_nothing():
    """Protein to ammonium gives one equivalent, its uptake takes one: only ammonium that is left counts."""
    cloud = after(20, one_draw(UPTAKE=0.3), base=0.2)
    assert cloud[k.TAN, 0] < 0.5
    one_each = CACO3 / 2 / N / CACO3_MG_L_DKH
    assert cloud[k.KH, 0] == pytest.approx(10.0 + one_each * cloud[k.TAN, 0], rel=1e-4)


def test_nitrate_that_plants_take_gives_one_equivalent_back():
    cloud = after(20, one_draw(NITRATE=4.0, UPTAKE=0.1))
    taken = 4.0 - cloud[k.NITRATE, 0]
    assert taken > 1.5
    assert (cloud[k.KH, 0] - 10.0) / taken == pytest.approx(CACO3 / 2 / N / CACO3_MG_L_DKH, rel=0.001)


def slowed(row, tan, nitrite, share_nh3=0.0, share_hno2=0.0, **rows):
    """The rate of a group at these concentrations, as a share of that without free ammonia and nitrous acid."""

    def rate(nh3, hno2):
        water = k.Water(np.ones(1), 1.0, 1.0, 0.0, np.full(1, nh3), np.full(1, hno2))
        growth = {f"GROWTH_{row}": 1.0, f"CAPACITY_{row}": 1e-6}
        cloud = one_draw(TAN=tan, NITRITE=nitrite, **growth, **rows)
        k.step(cloud, 1e-3, 0.0, 0.0, water, C)
        return cloud[getattr(k, f"CAPACITY_{row}"), 0] - 1e-6

    return rate(share_nh3, share_hno2) / rate(0.0, 0.0)


@pytest.mark.parametrize(("row", "micromolar"), [(1, math.sqrt(290 * 1600)), (2, 46)])
def test_free_ammonia_halves_a_rate_at_the_printed_concentration_where_food_abounds(row, micromolar):
    nh3_mg_n_l = micromolar * N / 1000
    rows = {"tan": 1000.0, "nitrite": 1000.0, "HALF_1": 1e-3, "HALF_2": 1e-3}
    assert slowed(row, **rows, share_nh3=nh3_mg_n_l / 1000) == pytest.approx(0.5, rel=0.005)
    assert slowed(row, **rows, share_nh3=nh3_mg_n_l / 1000, TOLERANCE=2.0) == pytest.approx(2 / 3, rel=0.005)
    scarce = {"tan": 1000.0, "nitrite": 1000.0, "HALF_1": 1e6, "HALF_2": 1e6}
    assert slowed(row, **scarce, share_nh3=nh3_mg_n_l / 1000) > 0.99  # uncompetitive


@pytest.mark.parametrize("half", [1e-3, 1e3])
@pytest.mark.parametrize(("row", "micromolar"), [(1, 12), (2, math.sqrt(1.7 * 6.8))])
def test_free_nitrous_acid_halves_a_rate_at_the_printed_concentration(row, micromolar, half):
    hno2_mg_n_l = micromolar * N / 1000
    rows = {"tan": 10.0, "nitrite": 10.0, "HALF_1": half, "HALF_2": half}
    assert slowed(row, **rows, share_hno2=hno2_mg_n_l / 10) == pytest.approx(0.5, rel=0.005)
    assert slowed(row, **rows, share_hno2=hno2_mg_n_l / 10, TOLERANCE=2.0) == pytest.approx(2 / 3, rel=0.005)


def test_a_film_wants_more_than_40_and_no_more_than_45_mg_of_calcium_carbonate():
    caco3_mg_l = np.array([10.0, 25.0, 40.0, 45.0, 60.0, 300.0])
    growth = k.activity(C, k.conditions(C, 20.0, np.full(6, 7.5)), caco3_mg_l / CACO3_MG_L_DKH)
    assert growth[3:] == pytest.approx(growth[5])
    assert growth[0] < growth[1] < growth[2] < growth[3]
    ph = np.array([6.9, 7.5, 8.0])
    soft, enough = (k.activity(C, k.conditions(C, 20.0, ph), np.full(3, kh / CACO3_MG_L_DKH)) for kh in (20, 45))
    assert soft / enough == pytest.approx((soft / enough)[0])  # whatever the pH


def test_bacteria_do_not_die_out_of_the_equations_where_hardness_is_gone():
    assert np.all(k.activity(C, k.conditions(C, 20.0, np.array([4.5, 9.8])), np.zeros(2)) > 0)


def test_many_bacteria_take_no_more_alkalinity_than_there_is():
    """But for the least activity, which the equations keep."""
    cloud = after(1, one_draw(TAN=50.0, CAPACITY_1=50.0, KH=2.0))
    at_least = C["least_activity"] * 50.0 * 7.14 / CACO3_MG_L_DKH
    assert -at_least <= cloud[k.KH, 0] < 0.5


def test_readings_that_no_water_fits_leave_figures_of_water():
    """A pH and hardness that contradict each other, week after week, must not drive the draws without end."""
    tank = {"volume_l": 50, "temperature_c": 25, "ph": 6.4, "kh_dkh": 0, "feed_g_day": 0.5, "seeded": "starter"}
    tank |= {"planting": "none"}
    readings = [{"at_h": 168.0 * i, "parameter": "ph", "value": 4.2 if i % 2 else 9.8} for i in range(12)]
    readings += [{"at_h": 168.0 * i + 1, "parameter": "kh", "value": 60 if i % 2 else 0} for i in range(12)]
    belief, _, _ = believed(C, tank, 2000.0, readings)
    assert np.all(np.isfinite(belief.cloud)) and math.isfinite(belief.ph)
    assert np.all((belief.cloud[k.CO2] > 0) & (belief.cloud[k.CO2] <= 300))


def test_warmth_is_1_at_20_degrees_held_down_in_heat_and_nothing_grows_beyond_the_end():
    assert k.warmth(C, 20.0) == pytest.approx((1.0, 1.0))
    for group in (0, 1):
        over_published = [k.warmth(C, at_c)[group] / C[f"theta_growth_{group + 1}"] ** (at_c - 20) for at_c in (33, 40)]
        assert over_published[1] < 0.75 * over_published[0] < 0.75
    assert k.warmth(C, 25.0)[0] > 1.0
    assert k.warmth(C, 47.0)[0] < k.warmth(C, 40.0)[0]
    assert k.warmth(C, 50.0)[0] == k.warmth(C, 65.0)[0] == 0.0
    assert k.warmth(C, 57.0)[1] == k.warmth(C, 65.0)[1] == 0.0


def test_pka_of_nitrous_acid_is_near_the_handbooks():
    """pKa of 3.25 to 3.4 at 25 °C in handbooks (from memory): half of the nitrite is acid there."""
    ph = np.array([3.25, 3.4])
    share = k.conditions(C, 25.0, ph).share_hno2
    assert share[1] > 0.45 and share[0] < 0.65
