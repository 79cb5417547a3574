"""Everything as CSV: one file a kind, the same from phone and server, harmless in a spreadsheet."""

import csv
import io
import json
import subprocess
from pathlib import Path

from limnary import cli
from limnary.schema_files import read_folder
from limnary.store import Store
from limnary.store.tables import tables

ROOT = Path(__file__).parents[2]
NOW_MS = 1_780_000_000_000
AT = "2026-05-04T07:30:00.000Z"
OWN = {"deleted": None, "restored": None, "made_by": "keeper-1", "stamps": {}}
PEOPLE = {"keeper-1": "-Aino"}
READ = {"tank": "tank-0001", "parameter": "nitrite", "value": 0.25, "at": AT}
RECORDS = [
    ("tank", "tank-0001", {"name": "=Moss, left", "water_l": 40, "resting": True, "measures": {"length_cm": 45.5}}),
    ("reading", "read-0001", {**READ, "value": 0.5}),
    ("reading", "read-0002", {**READ, "supersedes": "read-0001", "steps": [0, 0.25], "basis": "ion"}),
    ("reading", "read-0003", {**READ, "at": "2026-05-03T07:30:00.000Z", "note": '@said "so"\nand went'}),
    ("water_change", "chng-0001", {"tank": "tank-0001", "at": AT, "litres": 10, "fraction": 0.25}),
    ("feeding", "feed-0001", {"tank": "tank-0001", "at": AT, "feed_g": 0.2, "food": "+flakes"}),
    ("dose", "dose-0001", {"tank": "tank-0001", "at": AT, "what": "Bottle", "amount": 2, "unit": "ml"}),
]
RUN = """
const { tables } = await import("./pwa/data/tables_csv.js");
const { readFileSync } = await import("node:fs");
const { kinds, records, people } = JSON.parse(readFileSync(0, "utf8"));
const all = (kind) => records.filter((one) => one.kind === kind);
const made = tables({ kinds, all, name_of: (keeper) => people[keeper] ?? null });
process.stdout.write(JSON.stringify(Object.fromEntries(made.map(({ name, text }) => [name, text]))));
"""


def rows():
    return [{"kind": kind, "id": id, "fields": fields, **OWN} for kind, id, fields in RECORDS]


def read(text):
    return list(csv.DictReader(io.StringIO(text, newline="")))


def test_one_file_a_kind_with_what_stands_oldest_first():
    files = tables(
        [*rows(), {"kind": "dose", "id": "gone-0001", "fields": RECORDS[-1][2], **OWN, "deleted": "9"}], PEOPLE
    )
    assert sorted(files) == [
        *("columns.csv", "dose.csv", "feeding.csv", "reading.csv", "tank.csv", "water_change.csv"),
    ]
    assert [one["id"] for one in read(files["reading.csv"])] == ["read-0003", "read-0002"]
    assert [one["id"] for one in read(files["dose.csv"])] == ["dose-0001"]
    (change,) = read(files["water_change.csv"])
    assert {name: change[name] for name in ("at", "litres", "fraction", "tank_id", "by")} == {
        **{"at": AT, "litres": "10", "fraction": "0.25", "tank_id": "tank-0001", "by": "'-Aino"},
    }
    assert all(line.endswith("\r\n") for line in files["dose.csv"].splitlines(keepends=True))


def test_no_cell_begins_a_formula():
    files = tables(rows(), PEOPLE)
    cells = [cell for text in files.values() for line in read(text) for cell in line.values()]
    assert [cell for cell in cells if cell and cell[0] in "=+-@\t\r"] == []
    assert read(files["tank.csv"])[0]["name"] == "'=Moss, left"
    assert read(files["feeding.csv"])[0]["food"] == "'+flakes"


def test_every_column_is_described_with_its_unit():
    files = tables(rows(), PEOPLE)
    described = {(one["file"], one["column"]): one["unit"] for one in read(files.pop("columns.csv"))}
    assert set(described) == {(name[:-4], column) for name, text in files.items() for column in read(text)[0]}
    assert described["water_change", "litres"] == "L"
    assert described["feeding", "feed_g"] == "g"


def test_the_phone_writes_the_same_tables():
    hidden = {"read-0001"}
    shown = [
        {**fields, "kind": kind, "id": id, "meta": {"made_by": "keeper-1"}}
        for kind, id, fields in RECORDS
        if id not in hidden
    ]
    given = json.dumps({"kinds": read_folder("records"), "records": shown, "people": PEOPLE})
    ran = subprocess.run(
        ["node", "--input-type=module", "-e", RUN], input=given, cwd=ROOT, capture_output=True, text=True, check=True
    )
    assert json.loads(ran.stdout) == tables(rows(), PEOPLE)


def test_the_command_writes_them_into_a_new_folder_only(tmp_path, capsys):
    store = Store(tmp_path / "data", lambda: NOW_MS)
    store.prepare()
    room = store.new_room("Fish room")["id"]
    store.write(room, [(kind, id, "put", fields) for kind, id, fields in RECORDS])
    store.close()
    target = tmp_path / "tables"
    asked = ["export-csv", str(target), "--data", str(tmp_path / "data")]
    assert cli.main(asked) == 0
    assert "6 files are in" in capsys.readouterr().out
    assert [one["id"] for one in read((target / "reading.csv").read_bytes().decode())] == ["read-0003", "read-0002"]
    assert cli.main(asked) == 1
    assert "must be a folder that is new or empty" in capsys.readouterr().err
