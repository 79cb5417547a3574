"""Phone and server write the same table of readings, to the letter."""

import json
import subprocess
from pathlib import Path

from hypothesis import given, settings
from hypothesis import strategies as st
from limnary.store.archive import readings_csv

PHONE = Path(__file__).parents[2] / "pwa/data/readings_csv.js"
RUN = """
const { readingsCsv } = await import(process.argv[1]);
let text = "";
for await (const part of process.stdin) text += part;
const table = ({ readings, tanks, people }) => readingsCsv(readings, tanks, (keeper) => people[keeper] ?? null);
process.stdout.write(JSON.stringify(JSON.parse(text).map(table)));
"""
WORDS = st.text(st.sampled_from("ab=+-@\t\r\n\",';é 1"), max_size=8)
READING = st.fixed_dictionaries(
    {
        "value": st.one_of(st.integers(-5, 100_000), st.sampled_from([0.1, 0.25, 1.5, 7.85, 12.125])),
        "parameter": st.sampled_from(["ph", "nitrite"]),
        "minute": st.integers(0, 59),
    },
    optional={"note": WORDS, "unit": st.sampled_from(["mg/L", "°C"]), "basis": st.sampled_from(["ion", "n"])},
)


@settings(max_examples=1, deadline=None)
@given(st.lists(st.tuples(WORDS, WORDS, st.lists(READING, max_size=6)), min_size=60, max_size=60))
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
    made = {"deleted": None, "restored": None, "made_by": "keeper-1"}
    rows = [{"id": tank["id"], "kind": "tank", "fields": {"name": tank_name}, **made}]
    for reading in readings:
        fields = {name: value for name, value in reading.items() if name != "id"}
        rows.append({"id": reading["id"], "kind": "reading", "fields": fields, **made})
    seen = [{**reading, "meta": {"made_by": "keeper-1"}} for reading in readings]
    return rows, {"readings": seen, "tanks": [tank], "people": people}
