"""One check for every way in: what no page could bear is refused by push, bring-back, import and phone alike."""

import io
import json
import runpy
import subprocess
from pathlib import Path

import pytest
from former_version import former_version
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from jsonschema import Draft202012Validator
from limnary.api.openapi import description
from limnary.contracts import (
    OPEN_CHARACTERS,
    OPEN_DEPTH,
    OPEN_ENTRIES,
    InvalidInput,
    contracts,
    is_plain,
    load,
    pattern_of,
    schema_of,
)
from limnary.protocol.records import Refused, check_fields, kinds
from limnary.schema_files import shared_bundle
from limnary.store.archive import ArchiveBroken, read
from pace import by_pace

ROOT = Path(__file__).parents[2]
TANK = {"name": "Long low tank", "water_l": 87.5}
STAMP = "1767225600000-00000-phone"


def nested(depth: int):
    return {"in": nested(depth - 1)} if depth else 1


def named(text: str) -> dict:
    return {**TANK, "name": text}


def measured(value: object) -> dict:
    return {**TANK, "measures": value}


def said(step: str, **what: object) -> dict:
    return {**TANK, f"setup_{step}": {"state": "done", "said": what}}


def in_one_field(**what: object) -> dict:
    """As apps wrote a plan until 2026-11-27."""
    return {**TANK, "setup": what}


GOOD = {
    "plain": TANK,
    "lines and tabs": {**TANK, "note": "one\r\n\ttwo"},
    "a name of every code": named("constructor __proto__ 🐟"),
    "measures": measured({"shape": "cuboid", "length_cm": 45, "list": [1, 2.5, None, True], "in": {"a": "b"}}),
    "deep": measured(nested(OPEN_DEPTH)),
    "said at a step": said("glass", shape="cuboid"),
    "fields that no kind describes": measured({"corner_radius_mm": 4, "panes": [{"side": "front", "mm": 8}]}),
    "a step that no kind describes": in_one_field(steps={"scape": "half", "place": "done"}, scape=["free", 1, None]),
    # A form made a number of any word of digits alone, also of a place that is called "12".
    "a place of digits": said("place", place=12),
    "a place": said("place", place="Cellar, left", stand_kg=0),
    # The keypad takes seven digits in the unit shown: here inches, and an app goes on from this step with any weight.
    "all that a keypad takes": said("place", stand_kg=9_999_999, glass_mm=253_999_974.6, footprint_width_cm=0),
    "a bag of nothing": said("substrate", bed="bare", cap_pack=0, nutrient_pack=9_999_999),
    "a kind that was taken back": said("stock", list=[{"species": "Danio margaritatus", "count": 0}]),
    "no litres counted": said("fill", plants_in=False, metered_l=0),
    "a cold room": in_one_field(steps={"warmth": "skipped"}, warmth={"room_c": -5, "cover": "open", "hours": 0.5}),
}
BAD = {
    "a NUL in text": named("a\x00b"),
    "an escape": named("a\x1bb"),
    "a delete": named("a\x7fb"),
    "measures of 400 digits": measured({"length_cm": 10**400}),
    "measures too large": measured({"length_cm": 1e16}),
    "measures as a list": measured([1]),
    "measures as text": measured("45 x 30"),
    "measures too deep": measured(nested(OPEN_DEPTH + 1)),
    "measures too many": measured({"list": [1] * (OPEN_ENTRIES + 1)}),
    "measures too long": measured({"text": "x" * (OPEN_CHARACTERS + 1)}),
    "measures with a control character": measured({"shape": "a\x00"}),
    "measures with one in a name": measured({"a\x01": 1}),
    "measures named __proto__": measured({"in": {"__proto__": 1}}),
    "said at a step, too large": said("glass", length_cm=10**400),
    "a step as text": {**TANK, "setup_glass": "done"},
}
# Each with the field that is named and what is allowed there.
LENGTH = ("measures.length_cm", "a number from 1 to 1000 cm")
PLANTS = {"species": "Vallisneria spiralis", "portions": 2}
MISTYPED = {
    "a length as text": (measured({"length_cm": "x"}), *LENGTH),
    "a length as an object": (measured({"length_cm": {}}), *LENGTH),
    "a length of yes": (measured({"length_cm": True}), *LENGTH),
    "no length": (measured({"length_cm": None}), *LENGTH),
    "a length below its range": (measured({"length_cm": 0}), *LENGTH),
    "a length without end": (measured({"length_cm": 10**400}), *LENGTH),
    "a length too deep": (measured({"length_cm": nested(100)}), *LENGTH),
    "no shape": (measured({"shape": "star"}), "measures.shape", "cuboid, bow_front"),
    "a shape as a list": (measured({"shape": ["cuboid"]}), "measures.shape", "cuboid, bow_front"),
    "a weight as text": (said("place", stand_kg="40"), "setup_place.said.stand_kg", "a number from 0 to 1000000000 kg"),
    "no cover": (said("warmth", cover=5), "setup_warmth.said.cover", "open, lid"),
    "half a bag": (said("substrate", support_bags=0.5), "setup_substrate.said.support_bags", "a whole number"),
    "plants as an object": (said("plants", list={}), "setup_plants.said.list", "a list of 0 to 200 entries"),
    "too many plants": (said("plants", list=[PLANTS] * 201), "setup_plants.said.list", "a list of 0 to 200 entries"),
    "a plant as text": (said("plants", list=["moss"]), "setup_plants.said.list.0", "an object of at most"),
    "a plant of no kind": (said("plants", list=[{"portions": 1}]), "setup_plants.said.list.0.species", "text of 1 to"),
    "a name too long": (said("plants", list=[{**PLANTS, "species": "x" * 81}]), "setup_plants.said.list.0.species", ""),
    "a yes as text": (said("fill", plants_in="yes"), "setup_fill.said.plants_in", "true or false"),
    "counts as null": (said("first_fish", counts=None), "setup_first_fish.said.counts", "an object of at most"),
    "a step half done": (in_one_field(steps={"place": "half"}), "setup.steps.place", "done, skipped"),
    "steps as a list": (in_one_field(steps=[]), "setup.steps", "an object of at most"),
    "a step of the older form": (
        in_one_field(hardscape={"wood_kg": "1"}),
        "setup.hardscape.wood_kg",
        "a number from 0",
    ),
}
BAD |= {name: fields for name, (fields, *_) in MISTYPED.items()}
EVERY = {**{name: (fields, True) for name, fields in GOOD.items()}, **{name: (f, False) for name, f in BAD.items()}}
SCRIPT = """
import { readFileSync } from "node:fs";
const { install } = await import(process.argv[1] + "/pwa/contracts.js");
const { ArchiveBroken, read_archive } = await import(process.argv[1] + "/pwa/data/archive.js");
const { shared, cases } = JSON.parse(readFileSync(0, "utf8"));
install(shared);
const taken = [];
for (const text of cases) {
  try {
    await read_archive(new TextEncoder().encode(text));
    taken.push(true);
  } catch (failed) {
    if (!(failed instanceof ArchiveBroken)) throw failed;
    taken.push(false);
  }
}
console.log(JSON.stringify(taken));
"""
ERRORS = """
import { readFileSync } from "node:fs";
const { check_fields, install, kind_of } = await import(process.argv[1] + "/pwa/contracts.js");
const { shared, cases } = JSON.parse(readFileSync(0, "utf8"));
install(shared);
console.log(JSON.stringify(cases.map((fields) => check_fields(kind_of("tank").fields, fields).errors)));
"""
WRITTEN = """
const { STEPS, field_of, figures_of, said_at } = await import(process.argv[1] + "/pwa/advice/setting_up.js");
const said = STEPS.map((step) => [step, figures_of(said_at({}, step))]);
const setup = { steps: Object.fromEntries(STEPS.map((step) => [step, "done"])), ...Object.fromEntries(said) };
const own = Object.fromEntries(said.map(([step, its]) => [field_of(step), { state: "done", said: its }]));
console.log(JSON.stringify([own, { setup }]));
"""


def row(fields: dict, kind: str = "tank", record: str = "tank-0001") -> dict:
    who = {"made_by": "someone", "changed_by": "someone"}
    when = dict.fromkeys(("made_at", "changed_at"), "2026-05-04T07:30:00.000Z")
    stamps = dict.fromkeys(fields, STAMP)
    return {
        "id": record,
        "kind": kind,
        "fields": fields,
        "stamps": stamps,
        "deleted": None,
        "restored": None,
    } | {
        **who,
        **when,
    }


def archive(fields: dict, kind: str = "tank") -> str:
    head = {"format": "limnary-room", "version": 1, "room": {"name": "x"}, "people": {}}
    return "\n".join(json.dumps(line) for line in (head, row(fields, kind)))


TANK_SCHEMA = schema_of(kinds()["tank"]["fields"], "tank")


def by_node(script: str, cases: list, root: Path = ROOT) -> list:
    asked = json.dumps({"shared": shared_bundle(), "cases": cases})
    node = ["node", "--input-type=module", "-e", script, str(root)]
    return json.loads(subprocess.run(node, input=asked, capture_output=True, text=True, check=True).stdout)


def by_the_phone(archives: list[str]) -> list[bool]:
    """Whether the phone takes each archive."""
    return by_node(SCRIPT, archives)


def errors_of(fields: dict) -> list[dict]:
    """What the server finds wrong with a tank's fields."""
    try:
        load(TANK_SCHEMA, kinds()["tank"]["fields"], fields)
    except InvalidInput as bad:
        return bad.errors
    return []


@pytest.mark.parametrize(("fields", "good"), EVERY.values(), ids=EVERY)
def test_every_way_into_the_server_takes_the_same(fish_room, fields, good):
    phone = fish_room.owner
    assert phone.results(phone.op("tank", fields))[0]["status"] == ("ok" if good else "invalid")
    back = {"epoch": fish_room.epoch, "rows": [{"ref": "a", "row": row(fields)}], "people": {}}
    brought = phone.call("POST", "/rooms/{room}/bring-back", back).json["results"][0]
    assert brought["status"] == ("ok" if good else "invalid")
    if good:
        fish_room.store.import_room(io.BytesIO(archive(fields).encode()))
    else:
        with pytest.raises(ArchiveBroken):
            fish_room.store.import_room(io.BytesIO(archive(fields).encode()))


def test_the_phone_takes_the_same():
    assert by_the_phone([archive(fields) for fields, _ in EVERY.values()]) == [good for _, good in EVERY.values()]


@pytest.mark.parametrize(("fields", "field", "allowed"), MISTYPED.values(), ids=MISTYPED)
def test_a_known_field_that_does_not_fit_is_named_with_what_is_allowed(fish_room, fields, field, allowed):
    phone = fish_room.owner
    (error,) = phone.results(phone.op("tank", fields))[0]["errors"]
    assert error["field"] == field
    assert error["allowed"].startswith(allowed)


def test_the_phone_names_the_same_field_in_the_same_words():
    # A number of 400 digits is infinite to JavaScript: other words, the same field.
    cases = [fields for name, (fields, *_) in MISTYPED.items() if name != "a length without end"]
    assert by_node(ERRORS, cases) == [errors_of(fields) for fields in cases]


def test_an_infinite_length_is_named():
    assert [error["field"] for error in errors_of(measured({"length_cm": float("inf")}))] == ["measures.length_cm"]


def test_the_description_of_the_api_takes_the_same():
    described = Draft202012Validator(description()["components"]["schemas"]["record_tank"])
    cases = {name: fields for name, fields in GOOD.items()} | {name: fields for name, (fields, *_) in MISTYPED.items()}
    assert {name: described.is_valid(fields) for name, fields in cases.items()} == {
        name: name in GOOD for name in cases
    }


def test_a_tank_is_measured_as_the_volume_calculation_takes_it():
    specs = {field["name"]: field for field in kinds()["tank"]["fields"]}
    bounds = ("name", "type", "unit", "min", "max", "choices")
    ours, its = specs["measures"]["fields"], contracts()["volume"]["inputs"]
    assert [[one.get(name) for name in bounds] for one in ours] == [[one.get(name) for name in bounds] for one in its]


def test_the_older_form_of_a_plan_takes_what_its_steps_take():
    specs = {field["name"]: field for field in kinds()["tank"]["fields"]}
    steps, *each = specs["setup"]["fields"]
    own = {name.removeprefix("setup_"): spec["fields"] for name, spec in specs.items() if name.startswith("setup_")}
    assert {one["name"]: one["fields"] for one in each} == {step: its[1]["fields"] for step, its in own.items()}
    assert {one["name"]: one["choices"] for one in steps["fields"]} == {
        step: its[0]["choices"] for step, its in own.items()
    }


def test_what_a_former_app_and_its_invented_room_wrote_is_taken(tmp_path):
    former = former_version(tmp_path)
    plans = by_node(WRITTEN, [], former)
    assert all(plans)
    scenario = runpy.run_path(str(former / "server/limnary/demo/scenario.py"))
    rooms = [scenario["PLAN"], {"measures": scenario["PLAN_GLASS"]}]
    rooms += [{"measures": tank.measures} for tank in scenario["TANKS"]]
    assert [errors_of({**TANK, **fields}) for fields in [*plans, *rooms]] == [[]] * (len(plans) + len(rooms))


TEXT = st.text(max_size=12) | st.sampled_from(["__proto__", "constructor", "a\x00", "toString", ""])
LEAF = TEXT | st.integers() | st.floats(allow_nan=False, allow_infinity=False) | st.booleans() | st.none()
OPEN = st.recursive(LEAF, lambda inner: st.lists(inner, max_size=6) | st.dictionaries(TEXT, inner, max_size=6))


# Longer lists are often more than hypothesis draws at once: it throws them away and begins anew, for minutes.
@settings(max_examples=by_pace(quick=3, usual=20, long=200), deadline=None, derandomize=True, database=None,
          suppress_health_check=list(HealthCheck))  # fmt: skip
@given(st.lists(st.dictionaries(TEXT, OPEN, max_size=6), min_size=5, max_size=5))
def test_phone_and_server_judge_any_open_object_alike(drawn):
    cases = [measured(value) for value in drawn]
    ours = []
    for fields in cases:
        try:
            check_fields(kinds()["tank"], fields, new=True)
            ours.append(True)
        except Refused:
            ours.append(False)
    assert by_the_phone(list(map(archive, cases))) == ours == [is_plain(value) for value in drawn]


def good_value(spec: dict) -> st.SearchStrategy:
    """What a field of this specification takes."""
    kind = spec["type"]
    if kind == "number":
        return st.floats(spec["min"], spec["max"])
    if kind == "integer":
        return st.integers(spec["min"], spec["max"])
    if kind == "text" and pattern_of(spec):
        return st.just(spec["example"])
    if kind == "text":
        longest = min(spec["max_length"], 20)
        return st.text("aé🐟 '=<\n", min_size=spec.get("min_length", 0), max_size=longest)
    if kind == "list":
        return st.lists(
            good_value(spec["item"]), min_size=spec["min_items"], max_size=min(spec["max_items"], spec["min_items"] + 1)
        )
    if kind == "object":
        return good_fields(spec["fields"])
    return st.booleans() if kind == "boolean" else st.sampled_from([choice["value"] for choice in spec["choices"]])


def good_fields(specs: list[dict]) -> st.SearchStrategy:
    needed = {spec["name"]: good_value(spec) for spec in specs if spec.get("required")}
    more = {spec["name"]: good_value(spec) for spec in specs if not spec.get("required")}
    return st.fixed_dictionaries(needed, optional=more)


def odd_value(spec: dict) -> st.SearchStrategy:
    """A value that this field may refuse, or of which an inner field may."""
    odd = LEAF | st.lists(LEAF, max_size=2) | st.dictionaries(TEXT, LEAF, max_size=2)
    if spec["type"] == "list":
        return odd | st.lists(odd_value(spec["item"]), max_size=2)
    if spec["type"] == "object":
        inner = {one["name"]: good_value(one) | odd_value(one) for one in spec["fields"]}
        return odd | st.fixed_dictionaries({}, optional=inner)
    return odd


OPEN_FIELDS = [spec for spec in kinds()["tank"]["fields"] if spec["name"].startswith(("measures", "setup"))]


@st.composite
def a_tank(draw, odd: bool) -> dict:
    """A tank with one object of which all or some inner fields are described."""
    spec = draw(st.sampled_from(OPEN_FIELDS))
    return {**TANK, spec["name"]: draw((odd_value if odd else good_value)(spec))}


@settings(max_examples=by_pace(quick=2, usual=8, long=100), deadline=None, derandomize=True, database=None,
          phases=[Phase.generate], suppress_health_check=list(HealthCheck))  # fmt: skip
@given(st.lists(a_tank(odd=False), min_size=10, max_size=10), st.lists(a_tank(odd=True), min_size=30, max_size=30))
def test_phone_and_server_name_the_same_errors_of_known_fields(good, odd):
    ours = [errors_of(fields) for fields in [*good, *odd]]
    assert ours[: len(good)] == [[]] * len(good)
    assert any(ours[len(good) :])
    assert by_node(ERRORS, [*good, *odd]) == ours


GOOD_FIELDS = {name: good_fields(kind["fields"]) for name, kind in kinds().items()}


@st.composite
def a_record(draw) -> tuple[str, dict]:
    """A record of any kind: as it should be, or with one field that is missing, strange or of any value."""
    kind = draw(st.sampled_from(sorted(kinds())))
    fields = draw(GOOD_FIELDS[kind])
    name = draw(st.sampled_from([spec["name"] for spec in kinds()[kind]["fields"]]) | TEXT)
    harm = draw(st.sampled_from(["none", "none", "missing", "any value"]))
    if harm == "missing":
        fields.pop(name, None)
    elif harm == "any value":
        # Here null would empty a field, which only an edit can do.
        fields[name] = draw((LEAF | st.lists(LEAF, max_size=2)).filter(lambda value: value is not None))
    return kind, fields


@settings(max_examples=by_pace(quick=1, usual=6, long=200), deadline=None, derandomize=True, database=None,
          phases=[Phase.generate], suppress_health_check=list(HealthCheck))  # fmt: skip
@given(st.lists(a_record(), min_size=25, max_size=25))
def test_every_way_judges_any_record_of_any_kind_alike(fish_room, drawn):
    phone, results = fish_room.owner, []
    ops = [phone.op(kind, fields) for kind, fields in drawn]
    pushed = phone.results(*ops)
    rows = [row(fields, kind, f"back-{op['id']}") for op, (kind, fields) in zip(ops, drawn, strict=True)]
    given_back = {"epoch": fish_room.epoch, "rows": [{"ref": one["id"], "row": one} for one in rows]}
    brought = phone.call("POST", "/rooms/{room}/bring-back", given_back).json["results"]
    for kind, fields in drawn:
        try:
            results.append(bool(read(io.BytesIO(archive(fields, kind).encode())).rows))
        except ArchiveBroken:
            results.append(False)
    statuses = [[one["status"] == "ok" for one in its] for its in (pushed, brought)]
    assert statuses == [results, results], [one for one in zip(drawn, pushed, brought, results, strict=True)]
    assert by_the_phone([archive(fields, kind) for kind, fields in drawn]) == results
    # Whatever was taken, the room can be read, exported and put into a calendar.
    assert set(phone.rows()) >= {op["id"] for op, taken in zip(ops, results, strict=True) if taken}
    assert phone.call("GET", "/rooms/{room}/export").status_code == 200
    calendar = phone.call("POST", "/rooms/{room}/calendar").json["link"].partition("/api/v1")[2]
    assert phone.call("GET", calendar).status_code == 200
