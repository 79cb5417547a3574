"""Every calculation has a contract, a Python twin, a JavaScript twin, vectors, provenance and an outside check."""

import ast
import json
import re
from datetime import datetime
from itertools import product
from pathlib import Path

import jsonschema
import pytest
from limnary.calc import calculation
from limnary.contracts import InvalidInput, contracts, load, run, schema_of
from limnary.schema_files import formats, read_folder, shared_schema_dir

ROOT = Path(__file__).parents[1]
NAMES = sorted(contracts())
PROVENANCE = {"published", "common practice", "from memory", "assumption"}
META = json.loads((shared_schema_dir() / "contract.schema.json").read_text("utf-8"))
CONTRACT = jsonschema.Draft202012Validator(META)
CASE = jsonschema.Draft202012Validator({**META["$defs"]["case"], "$defs": META["$defs"]})
RECORD_FIELDS = jsonschema.Draft202012Validator(
    {"type": "array", "items": {"$ref": "#/$defs/input"}, "$defs": META["$defs"]}
)


@pytest.mark.parametrize("validator", [CONTRACT, CASE, RECORD_FIELDS], ids=["contract", "case", "record fields"])
def test_the_schemas_of_the_contracts_are_schemas(validator):
    validator.check_schema(validator.schema)


def test_modules_mirror_file_by_file():
    python = {p.stem for p in (ROOT / "server/limnary/calc").glob("*.py")} - {"__init__"}
    javascript = {p.stem for p in (ROOT / "pwa/calc").glob("*.js")} - {"index", "first"}
    assert python == javascript


# Functions that only one language needs, with the reason. A class that is a plain object on the phone has its methods
# as functions there.
PLAIN_OBJECTS = {"Belief", "Water"}
ONLY_PHONE = {
    "blend_solver": {"faces": "itertools.product"},
    "belief": {"pick": "numpy picks by an array of indices"},
    "outlook": {"share_of": "numpy's mean"},
    "substrate": {"sum": "Python's own sum"},
    "tables": {"install": "the phone is handed its tables, Python reads them"},
}
JS_FUNCTION = re.compile(
    r"^(?:export )?(?:(?:async )?function\*? (\w+)|class (\w+)"
    r"|const (\w+) =\s+(?:async )?(?:\w+|\((?:[^()]|\([^()]*\))*\)) =>)",
    re.MULTILINE,
)


def python_functions(path: Path) -> set[str]:
    names = set()
    for node in ast.parse(path.read_text("utf-8")).body:
        if isinstance(node, ast.FunctionDef):
            names.add(node.name.removeprefix("_"))
        elif isinstance(node, ast.ClassDef):
            methods = {inner.name for inner in node.body if isinstance(inner, ast.FunctionDef)}
            names |= methods if node.name in PLAIN_OBJECTS else {node.name}
    return names


def js_functions(path: Path) -> set[str]:
    return {next(filter(None, found)) for found in JS_FUNCTION.findall(path.read_text("utf-8"))}


@pytest.mark.parametrize("module", sorted({p.stem for p in (ROOT / "server/limnary/calc").glob("*.py")} - {"__init__"}))
def test_twins_have_the_same_functions(module):
    python = python_functions(ROOT / f"server/limnary/calc/{module}.py")
    phone = js_functions(ROOT / f"pwa/calc/{module}.js")
    assert python <= phone
    assert phone - python == set(ONLY_PHONE.get(module, {}))


def test_the_phone_registers_every_contract():
    texts = [(ROOT / f"pwa/calc/{name}.js").read_text("utf-8") for name in ("first", "index")]
    listed = [re.search(r"calculations = \{(.*?)\}", text, re.DOTALL)[1] for text in texts]
    assert sorted(set(re.findall(r"\w+", " ".join(listed))) - {"first_calculations"}) == NAMES


def test_every_vector_file_has_a_contract():
    assert sorted(read_folder("vectors")) == NAMES


@pytest.mark.parametrize("name", NAMES)
def test_contract_is_whole(name):
    spec = contracts()[name]
    CONTRACT.validate(spec)
    assert spec["name"] == name
    assert calculation(name).__doc__, f"{name} has no docstring"
    assert (ROOT / f"pwa/calc/{name}.js").is_file()
    for path in spec["outside"]:
        assert (ROOT / path).is_file(), f"{name}: {path} is missing"
        assert re.search(rf"\b{name}\b", (ROOT / path).read_text("utf-8")), f"{path} never calls {name}"


@pytest.mark.parametrize("name", sorted(read_folder("records")))
def test_record_kind_is_whole(name):
    kind = read_folder("records")[name]
    assert kind["kind"] == name
    assert set(kind["written_by"]) <= {"owner", "keeper", "helper"}
    RECORD_FIELDS.validate(kind["fields"])
    for field in kind["fields"]:
        assert field.get("refers_to", name) in read_folder("records"), field["name"]


def test_a_time_is_one_that_every_clock_can_show():
    """A day that never comes stopped the calendar of the server and every page of the phone that showed it."""
    pattern = formats()["date-time"]["pattern"]
    for year in (1899, 1900, 1970, 2000, 2026, 2028, 2100, 2400, 2999, 3000):
        for month, day in product(range(14), (0, 1, 28, 29, 30, 31, 32)):
            date = f"{year}-{month:02}-{day:02}"
            try:
                real = 1900 <= datetime.fromisoformat(date).year <= 2999
            except ValueError:
                real = False
            assert bool(re.fullmatch(pattern, f"{date}T07:30:00.000Z")) == real, date
    for clock, real in (("23:59:59Z", True), ("24:00:00Z", False), ("07:60:00Z", False), ("07:30:60Z", False)):
        assert bool(re.fullmatch(pattern, f"2026-05-04T{clock}")) == real, clock


@pytest.mark.parametrize("name", sorted(read_folder("records")))
def test_each_time_of_a_record_says_its_format(name):
    for field in read_folder("records")[name]["fields"]:
        is_time = field["name"] == "at" or field["name"].endswith("_at")
        assert (field.get("format") == "date-time") == is_time, field["name"]
        if is_time:
            with pytest.raises(InvalidInput):
                load(schema_of([field], name), [field], {field["name"]: "2026-13-45T07:30:00.000Z"})


@pytest.mark.parametrize("name", NAMES)
def test_sources_and_cases_are_traceable(name):
    spec, vectors = contracts()[name], read_folder("vectors")[name]
    sources = read_folder("tables")["sources"]["sources"]
    assert vectors["contract"] == name
    assert len(vectors["cases"]) == vectors["count"] >= 3
    assert any("errors" in case for case in vectors["cases"]), "no vector shows what is refused"
    for key in spec["sources"]:
        assert sources[key]["provenance"] in PROVENANCE
    inputs = {field["name"] for field in spec["inputs"]}
    assert {field["beside"] for field in spec["inputs"] if "beside" in field} <= inputs
    ids = set()
    for case in [*spec["examples"], *vectors["cases"]]:
        CASE.validate(case)
        assert case["id"] not in ids
        ids.add(case["id"])
        if "source" in case:
            assert case["source"] in sources, f"{case['id']}: {case['source']} is not in sources.json"


@pytest.mark.parametrize("name", NAMES)
def test_answer_and_working_match_the_contract(name):
    spec = contracts()[name]
    declared = {output["name"] for output in spec["outputs"]}
    optional = {output["name"] for output in spec["outputs"] if output.get("optional")}
    shown = declared | {field["name"] for field in spec["inputs"]}
    for step in spec["working"]:
        assert set(re.findall(r"\{(\w+)\}", step)) <= shown, step
    for case in [*spec["examples"], *read_folder("vectors")[name]["cases"]]:
        if "expected" in case:
            got = set(run(name, case["input"])) - {"cautions", "notes", "sources"}
            assert declared - optional <= got <= declared, case["id"]


def test_a_caution_has_one_code_wherever_it_stands():
    codes: dict[str, str] = {}
    for name in NAMES:
        cautions = contracts()[name]["cautions"]
        assert len({one["code"] for one in cautions}) == len(cautions), f"{name} has a code twice"
        for one in cautions:
            assert codes.setdefault(one["text"], one["code"]) == one["code"], one["text"]


def test_every_constant_has_unit_source_and_provenance():
    sources = read_folder("tables")["sources"]["sources"]
    for key, group in read_folder("tables")["constants"]["groups"].items():
        assert group["provenance"] in PROVENANCE, key
        assert group["source"] in sources, key
        for name, entry in group["values"].items():
            assert set(entry) == {"value", "unit"}, f"{key}.{name}"
