"""water_limits, nitrite_risk and toxicant_limits against official guidelines, as transcribed in data/."""

import csv
import re
from math import exp, log
from pathlib import Path

import pytest
from limnary.calc.tables import constants, table
from limnary.contracts import run

GUIDELINES = Path(__file__).parent / "data/water_quality_guidelines.csv"
STEP = re.compile(r"if \((?:(\d+) [≤<] )?Cl(?: ≤ (\d+))?\) \{ ([\d.]+) \}|if \((\d+) < Cl\) \{ ([\d.]+) \}")


def guideline(parameter: str, counted_as: str, publisher: str, level: str) -> tuple[str, str]:
    """Value or formula, and unit, of the one row that fits."""
    with GUIDELINES.open(encoding="utf-8", newline="") as lines:
        (row,) = (
            row
            for row in csv.DictReader(lines)
            if (row["parameter"], row["counted_as"], row["publisher"], row["level"])
            == (parameter, counted_as, publisher, level)
        )
    return row["value"], row["unit"]


def printed_steps(level: str) -> list[tuple[float, float]]:
    """(highest chloride, nitrite) of each printed step."""
    formula, unit = guideline("Nitrite", "as N", "BC Gov", level)
    assert unit == "mg/L"
    found = [(float(to or "inf"), float(value or last)) for _, to, value, _, last in STEP.findall(formula)]
    assert [to for to, _ in found] == [2, 4, 6, 8, 10, float("inf")]
    return found


@pytest.mark.parametrize("chloride_mg_l", [0, 1, 1.9, 2, 2.05, 3, 4, 4.1, 5, 6, 6.2, 7, 8, 8.01, 9, 10, 10.1, 50, 2000])
def test_nitrite_by_chloride_as_printed(chloride_mg_l):
    water = {"ph": 7, "temperature_c": 25, "chloride_mg_l": chloride_mg_l}
    limits = run("water_limits", water)
    risk = run("nitrite_risk", {"nitrite_mg_n_l": 0.05, "chloride_mg_l": chloride_mg_l})
    for level, ours, other in (
        ("Chronic", "nitrite_mg_n_l", "mean_limit_mg_n_l"),
        ("Acute", "nitrite_act_mg_n_l", "maximum_limit_mg_n_l"),
    ):
        printed = next(value for to, value in printed_steps(level) if chloride_mg_l <= to)
        assert limits[ours] == risk[other] == printed


# Where chloride is not known, ours is within the steps that most taps lie in, and above Canada's 0.060 mg N/L, which
# holds for waters of any chloride.
def test_unknown_chloride_beside_canadas_nitrite():
    value, unit = guideline("Nitrite", "as N", "CCME", "Chronic")
    ours = run("water_limits", {"ph": 7, "temperature_c": 25})["nitrite_mg_n_l"]
    assert unit == "ug/L"
    assert float(value) / 1000 < ours < 2 * float(value) / 1000


# Free ammonia at our limit is never far above Canada's 0.016 mg N/L (0.019 as NH3).
@pytest.mark.parametrize("ph", [6, 6.5, 7, 7.5, 8, 8.5, 9, 9.5])
@pytest.mark.parametrize("temperature_c", [5, 15, 25, 30])
def test_free_ammonia_of_water_limits_beside_canadas(ph, temperature_c):
    value, unit = guideline("Ammonia", "as N", "CCME", "Chronic")
    assert unit == "mg/L"
    assert run("water_limits", {"ph": ph, "temperature_c": temperature_c})["nh3_mg_n_l"] < 1.3 * float(value)


# The two limits to act on stand above those to keep, in every water that the contract takes.
@pytest.mark.parametrize("ph", [4, 5, 6, 6.5, 7, 7.5, 8, 9, 10])
@pytest.mark.parametrize("temperature_c", [0, 5, 7, 15, 25, 30, 40])
def test_water_limits_act_above_those_to_keep(ph, temperature_c):
    for chloride_mg_l in (0, 3, 5, 7, 9, 11):
        found = run("water_limits", {"ph": ph, "temperature_c": temperature_c, "chloride_mg_l": chloride_mg_l})
        assert found["tan_act_mg_n_l"] > 1.9 * found["tan_mg_n_l"]
        assert found["nitrite_act_mg_n_l"] > 2 * found["nitrite_mg_n_l"]


COPPER_US = re.compile(r"\{([\d.]+)e\^\{([\d.]+)\[ln\(hardness\)\]-([\d.]+)\} over 1000\}")
COPPER_CANADA = re.compile(r"([\d.]+)e\^\{([\d.]+)\[ln\(max\((\d+), min\(hardness, (\d+)\)\)\)\]-([\d.]+)\}")


@pytest.mark.parametrize("hardness", [10, 30, 82, 100, 150, 180, 300, 800])
def test_toxicant_limits_of_copper_as_printed(hardness):
    got = run("toxicant_limits", {"hardness_mg_caco3_l": hardness})
    for level, ours in (("Acute", "copper_acute_ug_l"), ("Chronic", "copper_chronic_ug_l")):
        formula, unit = guideline("Copper", "", "QC Gov", level)
        factor, slope, intercept = map(float, COPPER_US.fullmatch(formula).groups())
        printed_mg_l = factor * exp(slope * log(hardness) - intercept) / 1000
        assert unit == "mg/L"
        assert got[ours] == pytest.approx(printed_mg_l * 1000, rel=1e-6)
    formula, unit = guideline("Copper", "", "CCME", "Chronic")
    factor, slope, least, most, intercept = map(float, COPPER_CANADA.search(formula).groups())
    assert unit == "ug/L"
    printed = factor * exp(slope * log(max(least, min(hardness, most))) - intercept)
    assert got["copper_ccme_ug_l"] == pytest.approx(printed, rel=1e-6)
    assert 1.9 < printed < 4


# Rows of tables/limits.json, and how often the printed unit goes into ours.
@pytest.mark.parametrize(
    ("row", "printed", "per_unit"),
    [
        ("chloride_mg_l", ("Chloride", "", "CCME", "Chronic"), 1),
        ("chloride_acute_mg_l", ("Chloride", "", "CCME", "Acute"), 1),
        ("chlorine_mg_l", ("Chlorine", "", "USEPA", "Chronic"), 1000),
        ("chlorine_acute_mg_l", ("Chlorine", "", "USEPA", "Acute"), 1000),
        ("chlorine_ccme_mg_l", ("Chlorine", "", "CCME", "Chronic"), 1000),
        ("chlorine_ccme_mg_l", ("Chloramine", "", "CCME", "Chronic"), 1000),
        ("free_ammonia_ccme_mg_l", ("Ammonia", "as NH3", "CCME", "Chronic"), 1),
        ("nitrate_ccme_mg_n_l", ("Nitrate", "as N", "CCME", "Chronic"), 1000),
        ("nitrate_ccme_acute_mg_n_l", ("Nitrate", "as N", "CCME", "Acute"), 1000),
        ("nitrite_ccme_mg_n_l", ("Nitrite", "as N", "CCME", "Chronic"), 1000),
    ],
)
def test_limits_as_printed(row, printed, per_unit):
    value, unit = guideline(*printed)
    assert unit == ("ug/L" if per_unit == 1000 else "mg/L")
    assert table("limits")["limits"][row]["value"] == pytest.approx(float(value) / per_unit)


def test_toxicant_limits_never_above_either_countrys_chloride():
    got = run("toxicant_limits", {"gh_dgh": 8})
    for level, ours in (("Acute", "chloride_acute_mg_l"), ("Chronic", "chloride_chronic_mg_l")):
        printed = [float(guideline("Chloride", "", publisher, level)[0]) for publisher in ("CCME", "USEPA")]
        assert got[ours] == min(printed)


# "if (temperature ≤ 5) { 4.0 } else if (5 < temperature) { 3.0 }": warm water is the second figure.
@pytest.mark.parametrize(
    ("row", "over"), [("oxygen_day_mg_l", "1 day"), ("oxygen_week_mg_l", "7 day"), ("oxygen_month_mg_l", "30 day")]
)
def test_oxygen_limits_as_printed(row, over):
    with GUIDELINES.open(encoding="utf-8", newline="") as lines:
        (formula,) = (
            line["value"]
            for line in csv.DictReader(lines)
            if line["parameter"] == "Dissolved Oxygen" and "Other" in line["level"] and line["over"].startswith(over)
        )
    warm = float(re.search(r"5 < temperature\) \{ ([\d.]+)", formula)[1])
    assert table("limits")["limits"][row]["value"] == warm
    if over == "1 day":
        assert constants("epa_1986_oxygen")["day_minimum_mg_l"] == warm
