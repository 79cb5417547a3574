"""One check for every way in: what no page could bear is refused by push, bring-back, import and phone alike."""

import io
import json
import subprocess
from pathlib import Path

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from limnary.contracts import OPEN_CHARACTERS, OPEN_DEPTH, OPEN_ENTRIES, is_plain, pattern_of
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


GOOD = {
    "plain": TANK,
    "lines and tabs": {**TANK, "note": "one\r\n\ttwo"},
    "a name of every code": named("constructor __proto__ 🐟"),
    "measures": measured({"shape": "cuboid", "length_cm": 45, "list": [1, 2.5, None, True], "in": {"a": "b"}}),
    "deep": measured(nested(OPEN_DEPTH)),
    "said at a step": {**TANK, "setup_glass": {"state": "done", "said": {"shape": "cuboid"}}},
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
    "said at a step, too large": {**TANK, "setup_glass": {"state": "done", "said": {"length_cm": 10**400}}},
    "a step as text": {**TANK, "setup_glass": "done"},
}
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


def by_the_phone(archives: list[str]) -> list[bool]:
    """Whether the phone takes each archive."""
    asked = json.dumps({"shared": shared_bundle(), "cases": archives})
    node = ["node", "--input-type=module", "-e", SCRIPT, str(ROOT)]
    return json.loads(subprocess.run(node, input=asked, capture_output=True, text=True, check=True).stdout)


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
        return st.just({}) if spec.get("open") else good_fields(spec["fields"])
    return st.booleans() if kind == "boolean" else st.sampled_from([choice["value"] for choice in spec["choices"]])


def good_fields(specs: list[dict]) -> st.SearchStrategy:
    needed = {spec["name"]: good_value(spec) for spec in specs if spec.get("required")}
    more = {spec["name"]: good_value(spec) for spec in specs if not spec.get("required")}
    return st.fixed_dictionaries(needed, optional=more)


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
