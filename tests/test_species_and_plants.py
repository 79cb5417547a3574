"""The species and plants tables: complete rows, values in range, provenance for every column."""

import pytest
from limnary.schema_files import read_folder

PROVENANCE = {"published", "common practice", "from memory", "assumption"}
TABLES = read_folder("tables")
SPECIES, PLANTS, SOURCES = TABLES["species"], TABLES["plants"], TABLES["sources"]["sources"]
FISH_ONLY = {"family", "shape"}
LIMITS = {"temperature_c": (3, 35), "ph": (4, 9.5), "gh_dgh": (0, 40)}


def explanations():
    """Every explanation of a value in these tables: (where, explanation)."""
    for name, table, groups in (
        ("species", SPECIES, ("columns", "mass_laws", "shape_columns", "invertebrate_columns", "family_columns")),
        ("plants", PLANTS, ("columns", "classes")),
    ):
        for group in groups:
            for key, entry in table[group].items():
                yield f"{name}.{group}.{key}", entry


@pytest.mark.parametrize(("where", "entry"), list(explanations()))
def test_every_value_is_traceable(where, entry):
    assert entry["provenance"] in PROVENANCE, where
    if entry["provenance"] == "published":
        assert entry["source"] in SOURCES, where
    if "source" in entry:
        assert entry["source"] in SOURCES, where


def test_as_many_rows_as_promised():
    assert len(SPECIES["rows"]) >= 80
    assert {row["kind"] for row in SPECIES["rows"].values()} >= {"fish", "shrimp", "snail"}
    assert len(PLANTS["rows"]) >= 60


@pytest.mark.parametrize("key", list(SPECIES["rows"]))
def test_species_row(key):
    row, columns = SPECIES["rows"][key], SPECIES["columns"]
    needed = set(columns) - {"mass_of"} - (set() if row["kind"] == "fish" else FISH_ONLY)
    assert needed <= set(row) <= set(columns)
    for name, column in columns.items():
        for value in row.get(name, []) if name == "traits" else [row[name]] if name in row else []:
            assert "values" not in column or value in column["values"], name
    for name, (low, high) in LIMITS.items():
        assert low <= row[name][0] < row[name][1] <= high, name
    assert 1 <= row["length_cm"] <= 60
    assert row["group_min"] >= (5 if row["social"] == "shoal" and row["length_cm"] < 4 else 1)
    assert row["social"] != "solitary" or row["group_min"] == 1


@pytest.mark.parametrize("key", list(SPECIES["rows"]))
def test_mass_law_is_the_one_it_names(key):
    row = SPECIES["rows"][key]
    law = row["mass_from"]
    assert law in SPECIES["mass_laws"]
    assert ("mass_of" in row) == (law == "relative" or key == "Xiphophorus hellerii")
    pair = {"a": row["a"], "b": row["b"]}
    if law == "family":
        family = SPECIES["families"][row["family"]]
        assert pair == {"a": family["a"], "b": family["b"]}
    elif law == "shape":
        shape = SPECIES["shapes"][row["shape"]]
        assert pair == {"a": shape["a"], "b": shape["b"]}
    elif law == "relative" and row["mass_of"] in SPECIES["rows"]:
        relative = SPECIES["rows"][row["mass_of"]]
        assert pair == {"a": relative["a"], "b": relative["b"]}
    elif law == "guess":
        assert row["kind"] != "fish"


@pytest.mark.parametrize("key", list(PLANTS["rows"]))
def test_plant_row(key):
    row, columns = PLANTS["rows"][key], PLANTS["columns"]
    assert set(row) == set(columns)
    for name, column in columns.items():
        assert "values" not in column or row[name] in column["values"], name
    assert 3 <= row["temperature_c"][0] < row["temperature_c"][1] <= 32
    assert (row["position"] == "floating") >= (row["form"] == "floating")


def test_plant_classes_rise():
    for name in ("growth", "light"):
        low, middle, high = (PLANTS["classes"][name][level] for level in PLANTS["columns"][name]["values"])
        assert low[0] < low[1] <= middle[0] < middle[1] <= high[0] < high[1]
    uptake = PLANTS["classes"]["uptake"]
    assert 0 < uptake["low"] < uptake["medium"] < uptake["high"]


def test_every_place_asks_for_animals_alike():
    """The fields that describe an animal are the same in every contract that takes animals."""
    asked = {
        name: next(field for field in spec["inputs"] if field["name"] == "animals")["item"]["fields"]
        for name, spec in read_folder("calc").items()
        if any(field["name"] == "animals" for field in spec["inputs"])
    }
    shortest = min(asked.values(), key=len)
    for name, fields in asked.items():
        assert fields[: len(shortest)] == shortest, name


def test_choices_are_the_classes_of_the_tables():
    """A choice that a table has figures for offers exactly the table's classes, in its words."""
    offered = {}
    for spec in read_folder("calc").values():
        offered |= {
            (spec["name"], field["name"]): {one["value"]: one["label"] for one in field["choices"]}
            for field in spec["inputs"]
            if field["name"] in TABLES["tank_classes"] and field["type"] == "choice"
        }
    for (contract, name), choices in offered.items():
        if contract in ("oxygen_night", "stocking_limit", "compatibility"):
            classes = TABLES["tank_classes"][name]["classes"]
            assert choices == {key: entry["label"] for key, entry in classes.items()}, contract


@pytest.mark.parametrize("name", [name for name in TABLES["tank_classes"] if name != "purpose"])
def test_tank_classes_are_whole(name):
    group = TABLES["tank_classes"][name]
    assert group["provenance"] in PROVENANCE and group["unit"]
    assert group.get("source") in (None, *SOURCES)
    for entry in group["classes"].values():
        low, usual, high = entry[group["column"]]
        assert 0 <= low <= usual <= high
