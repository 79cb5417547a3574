"""Phone and server write the same table of readings, byte for byte, and treat the same ones as corrected."""

import csv
import io
import json
import random
import subprocess
from pathlib import Path

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from limnary.store.archive import readings_csv

PHONE = Path(__file__).parents[2] / "pwa/data/readings_csv.js"
VIEW = PHONE.with_name("view.js")
SHOWN = """
const { show } = await import(process.argv[1]);
let text = "";
for await (const part of process.stdin) text += part;
const records = (rows) => new Map(rows.map((row) => [row.id, row]));
const seen = (rows) => show({ kind: "reading", fields: [] }, records(rows)).map(({ id }) => id).sort();
process.stdout.write(JSON.stringify(JSON.parse(text).map(seen)));
"""
RUN = """
const { readings_csv } = await import(process.argv[1]);
let text = "";
for await (const part of process.stdin) text += part;
const table = ({ readings, tanks, people }) => readings_csv(readings, tanks, (keeper) => people[keeper] ?? null);
process.stdout.write(JSON.stringify(JSON.parse(text).map(table)));
"""
WORDS = st.text(st.sampled_from("ab=+-@\uff1d\t\r\n\",';é 1"), max_size=8)
READING = st.fixed_dictionaries(
    {
        "value": st.one_of(st.integers(-5, 100_000), st.sampled_from([0.1, 0.25, 1.5, 7.85, 12.125])),
        "parameter": st.sampled_from(["ph", "nitrite"]),
        "minute": st.integers(0, 5),
    },
    optional={"note": WORDS, "unit": st.sampled_from(["mg/L", "°C"]), "basis": st.sampled_from(["ion", "n"])},
)


# The first example that hypothesis draws is always the emptiest one, so each of a few examples is twenty tables.
@settings(max_examples=8, deadline=None, derandomize=True, database=None, suppress_health_check=list(HealthCheck))
@given(st.lists(st.tuples(WORDS, WORDS, st.lists(READING, min_size=2, max_size=6)), min_size=20, max_size=20))
def test_phone_and_server_write_the_same_table(drawn):
    cases = [case(*one) for one in drawn]
    asked = json.dumps([phone for _, phone in cases])
    ran = subprocess.run(
        ["node", "--input-type=module", "-e", RUN, str(PHONE)], input=asked, capture_output=True, text=True, check=True
    )
    for (rows, phone), written in zip(cases, json.loads(ran.stdout), strict=True):
        assert written == readings_csv(rows, phone["people"])


def case(tank_name, keeper_name, drawn):
    people = {"keeper-1": keeper_name}
    tank = {"id": "tank-0001", "name": tank_name}
    readings = []
    for place, one in enumerate(sorted(drawn, key=lambda one: one["minute"])):
        fields = {name: value for name, value in one.items() if name != "minute"}
        fields |= {"tank": tank["id"], "at": f"2026-05-04T07:{one['minute']:02}:00.000Z"}
        readings.append({"id": f"reading-{place:03}", **fields})
    made = {"stamps": {}, "deleted": None, "restored": None, "made_by": "keeper-1"}
    rows = [{"id": tank["id"], "kind": "tank", "fields": {"name": tank_name}, **made}]
    for reading in readings:
        fields = {name: value for name, value in reading.items() if name != "id"}
        rows.append({"id": reading["id"], "kind": "reading", "fields": fields, **made})
    seen = [{**reading, "meta": {"made_by": "keeper-1"}} for reading in readings]
    return rows[::-1], {"readings": seen, "tanks": [tank], "people": people}


def test_phone_and_server_take_the_same_readings_for_corrected():
    chance = random.Random(20260504)
    # For each of seven readings: which one it corrects (0: none), when, and whether it was deleted and restored.
    choices = (range(8), range(4), (None, 1, 2), (None, 1, 2))
    drawn = [[[chance.choice(some) for some in choices] for _ in range(7)] for _ in range(400)]
    rooms = [[corrected(place, *one) for place, one in enumerate(room, 1)] for room in drawn]
    node = ["node", "--input-type=module", "-e", SHOWN, str(VIEW)]
    ran = subprocess.run(node, input=json.dumps(rooms), capture_output=True, text=True, check=True)
    seen = json.loads(ran.stdout)
    assert any(len(ids) < sum(row["deleted"] is None for row in rows) for ids, rows in zip(seen, rooms, strict=True))
    for rows, ids in zip(rooms, seen, strict=True):
        table = csv.DictReader(io.StringIO(readings_csv(rows, {})))
        assert sorted(line["id"] for line in table) == ids


def corrected(place, corrects, at, deleted, restored):
    fields = {"at": "2026-05-04T07:00:00.000Z", "tank": "tank-0001", "parameter": "ph", "value": place}
    fields |= {"supersedes": f"reading-{corrects}"} if corrects else {}
    stamp = {None: None, 1: "1767225600001-00000-a", 2: "1767225600002-00000-a"}
    registers = {"deleted": stamp[deleted], "restored": stamp[restored]}
    stamps = dict.fromkeys(fields, f"176722560000{at}-00000-a")
    return {
        "id": f"reading-{place}",
        "kind": "reading",
        "fields": fields,
        "stamps": stamps,
        **registers,
        "made_by": "k",
    }
