"""salt_dose, salt by salt and ion by ion, against molar masses from molmass and periodictable."""

import re

import periodictable
import pytest
from limnary.contracts import contracts, run
from limnary.schema_files import read_folder
from molmass import Formula
from phreeqpython import PhreeqPython

SALTS = read_folder("tables")["salts"]
SPECIES = {"ca": "Ca", "mg": "Mg", "na": "Na", "k": "K", "cl": "Cl", "so4": "SO4", "no3": "NO3", "po4": "PO4"}
CARBONATES = {"hco3": 1, "co3": 2}
CASES = [(salt, ion, n) for salt, row in SALTS["rows"].items() for ion, n in row["gives"].items()]
LIBRARIES = {
    "molmass": lambda formula: Formula(formula).mass,
    "periodictable": lambda formula: periodictable.formula(formula).mass,
}


@pytest.fixture(params=LIBRARIES)
def mass(request):
    weigh = LIBRARIES[request.param]
    return lambda formula: weigh(re.sub(r"\.(\d+)H2O", r"(H2O)\1", formula))


@pytest.fixture(scope="module")
def phreeqc():
    return PhreeqPython(database="phreeqc.dat")


@pytest.mark.parametrize(("salt", "ion", "n"), CASES)
def test_salt_dose_by_molar_mass(mass, salt, ion, n):
    salt_mass = mass(SALTS["rows"][salt]["formula"])
    wanted = {"kh_dkh": 1} if ion in CARBONATES else {"ion": ion, "mg_l": 10}
    got = run("salt_dose", {"volume_l": 1000, "salt": salt, "raise": wanted})
    if ion in CARBONATES:
        expected = 2 * 10 / mass("CaO") / (n * CARBONATES[ion]) * salt_mass
    else:
        expected = 10 / (n * mass(SPECIES[ion])) * salt_mass
    assert got["grams"] == pytest.approx(expected, rel=2e-4)


@pytest.mark.parametrize("salt", [salt for salt, row in SALTS["rows"].items() if {"ca", "mg"} & set(row["gives"])])
def test_salt_dose_for_a_degree_of_general_hardness(mass, salt):
    got = run("salt_dose", {"volume_l": 1000, "salt": salt, "raise": {"gh_dgh": 1}})
    assert got["grams"] == pytest.approx(10 / mass("CaO") * mass(SALTS["rows"][salt]["formula"]), rel=2e-4)


# Every gram is accounted for: ions and crystal water make up the salt (potassium dihydrogen phosphate
# also holds two hydrogens).
@pytest.mark.parametrize("salt", SALTS["rows"])
def test_the_ions_make_up_the_salt(mass, salt):
    row = SALTS["rows"][salt]
    crystal_water = re.search(r"\.(\d+)H2O", row["formula"])
    parts = sum(n * SALTS["ions"][ion]["g_mol"] for ion, n in row["gives"].items())
    parts += int(crystal_water[1]) * mass("H2O") if crystal_water else 0
    parts += 2 * mass("H") if salt == "potassium_dihydrogen_phosphate" else 0
    assert parts == pytest.approx(row["g_mol"], rel=1e-4)
    assert row["g_mol"] == pytest.approx(mass(row["formula"]), rel=1e-4)


def test_the_contract_offers_every_salt_of_the_table():
    salt = next(field for field in contracts()["salt_dose"]["inputs"] if field["name"] == "salt")
    assert {c["value"]: c["label"] for c in salt["choices"]} == {k: row["label"] for k, row in SALTS["rows"].items()}


# PHREEQC dissolves the dose and finds the hardness or alkalinity that was asked for.
CHARGES = {"HCO3-": 1, "NaHCO3": 1, "CO3-2": 2, "NaCO3-": 2, "OH-": 1, "H+": -1}


@pytest.mark.parametrize(
    ("salt", "anhydrous", "wanted"),
    [
        ("magnesium_sulfate_heptahydrate", "MgSO4", {"gh_dgh": 4}),
        ("calcium_chloride_dihydrate", "CaCl2", {"gh_dgh": 6}),
        ("potassium_bicarbonate", "KHCO3", {"kh_dkh": 3}),
        ("sodium_carbonate", "Na2CO3", {"kh_dkh": 5}),
    ],
)
def test_salt_dose_dissolved_in_phreeqc(phreeqc, mass, salt, anhydrous, wanted):
    grams = run("salt_dose", {"volume_l": 1, "salt": salt, "raise": wanted})["grams"]
    water = phreeqc.add_solution({"units": "mmol/kgw", "temp": 25, "pH": 7})
    water.add(anhydrous, grams / mass(SALTS["rows"][salt]["formula"]) * 1000)
    if "gh_dgh" in wanted:
        found = (water.total("Ca") + water.total("Mg")) / (10 / 56.077)
    else:
        found = sum(1000 * water.species.get(name, 0) * n for name, n in CHARGES.items()) / (20 / 56.077)
    assert found == pytest.approx(next(iter(wanted.values())), rel=1e-3)


# A bottle of two salts: what a week's doses of it bring into each litre, by molar mass alone.
def test_nutrient_routine_by_molar_mass(mass):
    salts = [{"salt": "potassium_nitrate", "g": 30}, {"salt": "potassium_dihydrogen_phosphate", "g": 4}]
    asked = {"water_l": 96, "salts": salts, "stock_ml": 500, "dose_ml": 10, "doses_per_week": 3}
    week = run("nutrient_routine", asked)["week"]
    share = 10 / 500 * 3 * 1000 / 96
    assert week["no3_mg_l"] == pytest.approx(30 * share * mass("NO3") / mass("KNO3"), rel=2e-4)
    assert week["po4_mg_l"] == pytest.approx(4 * share * mass("PO4") / mass("KH2PO4"), rel=2e-4)
    potassium = (30 / mass("KNO3") + 4 / mass("KH2PO4")) * share * mass("K")
    assert week["k_mg_l"] == pytest.approx(potassium, rel=2e-4)
