"""One check for every way in: what no page could bear is refused by push, bring-back, import and phone alike."""

import io
import json
import subprocess
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from limnary.contracts import OPEN_CHARACTERS, OPEN_DEPTH, OPEN_ENTRIES, is_plain
from limnary.protocol.records import Refused, check_fields, kinds
from limnary.store.archive import ArchiveBroken
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


def row(fields: dict) -> dict:
    who = {"made_by": "someone", "changed_by": "someone"}
    when = dict.fromkeys(("made_at", "changed_at"), "2026-05-04T07:30:00.000Z")
    stamps = dict.fromkeys(fields, STAMP)
    return {
        "id": "tank-0001",
        "kind": "tank",
        "fields": fields,
        "stamps": stamps,
        "deleted": None,
        "restored": None,
    } | {
        **who,
        **when,
    }


def archive(fields: dict) -> str:
    head = {"format": "limnary-room", "version": 1, "room": {"name": "x"}, "people": {}}
    return "\n".join(json.dumps(line) for line in (head, row(fields)))


def by_the_phone(cases: list[dict]) -> list[bool]:
    """Whether the phone takes an archive with each."""
    from limnary.schema_files import shared_bundle

    asked = json.dumps({"shared": shared_bundle(), "cases": [archive(fields) for fields in cases]})
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
    assert by_the_phone([fields for fields, _ in EVERY.values()]) == [good for _, good in EVERY.values()]


TEXT = st.text(max_size=12) | st.sampled_from(["__proto__", "constructor", "a\x00", "toString", ""])
LEAF = TEXT | st.integers() | st.floats(allow_nan=False, allow_infinity=False) | st.booleans() | st.none()
OPEN = st.recursive(LEAF, lambda inner: st.lists(inner, max_size=6) | st.dictionaries(TEXT, inner, max_size=6))


@settings(max_examples=by_pace(quick=3, usual=8, long=80), deadline=None, derandomize=True, database=None,
          suppress_health_check=list(HealthCheck))  # fmt: skip
@given(st.lists(st.dictionaries(TEXT, OPEN, max_size=6), min_size=30, max_size=30))
def test_phone_and_server_judge_any_open_object_alike(drawn):
    cases = [measured(value) for value in drawn]
    ours = []
    for fields in cases:
        try:
            check_fields(kinds()["tank"], fields, new=True)
            ours.append(True)
        except Refused:
            ours.append(False)
    assert by_the_phone(cases) == ours == [is_plain(value) for value in drawn]
