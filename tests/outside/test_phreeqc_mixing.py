"""dilution against PHREEQC's own mixing of solutions (phreeqpython, database vitens.dat)."""

import pytest
from limnary.contracts import run
from phreeqpython import PhreeqPython


@pytest.fixture(scope="module")
def phreeqc():
    return PhreeqPython(database="vitens.dat")


def water(phreeqc, chloride_mg_l):
    return phreeqc.add_solution({"units": "mg/kgw", "Cl": chloride_mg_l, "Na": f"{chloride_mg_l} charge"})


@pytest.mark.parametrize("fractions", [[0.25], [0.5, 0.5], [0.1, 0.3, 0.2, 0.6]])
@pytest.mark.parametrize(("before_mg_l", "source_mg_l"), [(80, 0.5), (60, 20), (10, 45)])
def test_dilution_is_mixing(phreeqc, before_mg_l, source_mg_l, fractions):
    tank, source = water(phreeqc, before_mg_l), water(phreeqc, source_mg_l)
    for fraction in fractions:
        tank = phreeqc.mix_solutions({tank: 1 - fraction, source: fraction})
    got = run("dilution", {"before_mg_l": before_mg_l, "source_mg_l": source_mg_l, "fractions": fractions})
    assert got["after_mg_l"] == pytest.approx(tank.total("Cl", units="mg"), rel=1e-3)


def test_dilution_settles_where_repeated_mixing_ends(phreeqc):
    tank, source, weekly_rise = water(phreeqc, 5.0), water(phreeqc, 10.0), 14.0
    for _ in range(30):
        chloride = tank.total("Cl", units="mg") + weekly_rise
        tank = phreeqc.mix_solutions({water(phreeqc, chloride): 0.7, source: 0.3})
    got = run(
        "dilution",
        {"before_mg_l": 5, "source_mg_l": 10, "load_mg_l_day": 2, "every_days": 7, "routine_fraction": 0.3},
    )
    assert got["settles_after_mg_l"] == pytest.approx(tank.total("Cl", units="mg"), rel=2e-3)
    assert got["settles_before_mg_l"] == pytest.approx(tank.total("Cl", units="mg") + weekly_rise, rel=2e-3)


# Two bicarbonate waters, mixed as water_blend answers, have the wanted alkalinity and calcium.
def test_water_blend_poured_in_phreeqc(phreeqc):
    per_dh = 10 / 56.077
    hard = phreeqc.add_solution({"units": "mmol/kgw", "pH": 7.5, "Ca": 16 * per_dh, "Alkalinity": 32 * per_dh})
    soft = phreeqc.add_solution({"units": "mmol/kgw", "pH": 6.5, "Ca": 1 * per_dh, "Alkalinity": 2 * per_dh})
    sources = [{"gh_dgh": 16, "kh_dkh": 16}, {"gh_dgh": 1, "kh_dkh": 1}]
    got = run("water_blend", {"sources": sources, "target": {"gh_dgh": 6}, "litres": 1})
    mixed = phreeqc.mix_solutions(dict(zip((hard, soft), got["litres"], strict=True)))
    assert mixed.total("Ca") / per_dh == pytest.approx(6, rel=2e-3)
    assert got["reached"]["kh_dkh"] == pytest.approx(6)


# A year of days: what evaporates leaves its chloride, what replaces it brings its own, a week's change of 30 %.
@pytest.mark.parametrize(("evaporates", "top_up"), [(0, 0), (0.01, 0), (0.01, 40)])
def test_steady_routine_is_where_a_year_ends(phreeqc, evaporates, top_up):
    source, chloride = water(phreeqc, 10), 5.0
    for day in range(1, 50 * 7 + 1):
        concentrated = chloride / (1 - evaporates) if evaporates else chloride
        parts = {water(phreeqc, concentrated): 1 - evaporates}
        if evaporates:
            parts[water(phreeqc, top_up)] = evaporates
        chloride = phreeqc.mix_solutions(parts).total("Cl", units="mg") + 1.5
        if day % 7 == 0:
            before = chloride
            chloride = phreeqc.mix_solutions({water(phreeqc, chloride): 0.7, source: 0.3}).total("Cl", units="mg")
    asked = {"add_mg_l_day": 1.5, "change_fraction": 0.3, "every_days": 7, "source_mg_l": 10}
    got = run("steady_routine", asked | {"evaporation_fraction_day": evaporates, "top_up_mg_l": top_up})
    assert got["before_change_mg_l"] == pytest.approx(before, rel=2e-3)
    assert got["after_change_mg_l"] == pytest.approx(chloride, rel=2e-3)


# A salt bath of 1 g/L: after each change the dose again brings the chloride back; then changes wash it out.
@pytest.mark.parametrize("fraction", [0.2, 0.5])
def test_bath_dose_holds_and_clears(phreeqc, fraction):
    asked = {"water_l": 60, "days": 9, "wanted_g_l": 1, "change_fraction": fraction, "every_days": 3}
    got = run("bath_dose", asked)
    per_gram = 35.45 / 58.44 * 1000
    wanted = got["dose_g"] / 60 * per_gram
    tank, pure = water(phreeqc, wanted), water(phreeqc, 0)
    for _ in range(got["changes"]):
        tank = phreeqc.mix_solutions({tank: 1 - fraction, pure: fraction})
        chloride = tank.total("Cl", units="mg") + got["again_g"] / 60 * per_gram
        assert chloride == pytest.approx(wanted, rel=1e-3)
        tank = water(phreeqc, chloride)
    for _ in range(got["changes_to_clear"]):
        before = tank.total("Cl", units="mg")
        tank = phreeqc.mix_solutions({tank: 1 - fraction, pure: fraction})
    assert tank.total("Cl", units="mg") <= 0.05 * wanted < before


# Sodium chloride's chloride stands for any ion that a week's doses bring: 40 weeks with a change of 30 % each.
def test_nutrient_routine_settles_where_repeated_mixing_ends(phreeqc):
    asked = {"water_l": 60, "salts": [{"salt": "sodium_chloride", "g": 1}], "doses_per_week": 2}
    got = run("nutrient_routine", asked | {"change_fraction": 0.3, "every_days": 7})
    chloride = 0.0
    for _ in range(40):
        before = chloride + got["week"]["cl_mg_l"]
        mixed = phreeqc.mix_solutions({water(phreeqc, before): 0.7, water(phreeqc, 0): 0.3})
        chloride = mixed.total("Cl", units="mg")
    assert got["settles"]["cl_mg_l"] == pytest.approx(before, rel=2e-3)
