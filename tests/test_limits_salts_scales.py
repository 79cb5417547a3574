"""Limits, salts and hardness scales: every value has a unit and a source."""

import pytest
from limnary.contracts import contracts
from limnary.schema_files import read_folder

TABLES = read_folder("tables")
SOURCES = TABLES["sources"]["sources"]
PROVENANCE = {"published", "common practice", "from memory", "assumption"}


@pytest.mark.parametrize(
    "entry", [*TABLES["limits"]["limits"].values(), TABLES["limits"]["nitrite_by_chloride"]], ids=lambda e: e["label"]
)
def test_every_limit_is_traceable(entry):
    assert entry["unit"] and entry["label"] and entry["note"]
    assert entry["source"] in SOURCES
    assert entry["provenance"] in PROVENANCE


def test_limits_by_chloride_rise():
    by_chloride = TABLES["limits"]["nitrite_by_chloride"]
    bounds = [step["chloride_to_mg_l"] for step in by_chloride["steps"]]
    assert bounds == sorted(set(bounds))
    steps = [*by_chloride["steps"], by_chloride["above"]]
    for column in ("mean_mg_n_l", "maximum_mg_n_l"):
        values = [step[column] for step in steps]
        assert values == sorted(set(values))
    assert all(step["mean_mg_n_l"] < step["maximum_mg_n_l"] for step in steps)


@pytest.mark.parametrize("name", ["salts", "hardness_scales"])
def test_table_is_traceable(name):
    assert TABLES[name]["provenance"] in PROVENANCE
    assert TABLES[name]["source"] in SOURCES


def test_every_salt_and_scale_has_its_unit():
    salts = TABLES["salts"]
    for entry in [*salts["rows"].values(), *salts["ions"].values(), *TABLES["hardness_scales"]["scales"].values()]:
        assert entry["unit"] and entry["label"]
    for row in salts["rows"].values():
        assert set(row["gives"]) <= set(salts["ions"])


def test_the_contract_offers_every_scale_of_the_table():
    unit = next(field for field in contracts()["hardness_units"]["inputs"] if field["name"] == "unit")
    scales = TABLES["hardness_scales"]["scales"]
    assert {c["value"]: c["label"] for c in unit["choices"]} == {key: scale["label"] for key, scale in scales.items()}
