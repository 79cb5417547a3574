"""`limnary import-readings`: reads a notebook as the phone does, and writes, repeats and takes it back as a whole."""

import json
import os
import subprocess
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from limnary import cli, notebook
from limnary.commands import data
from limnary.errors import BadRequest
from limnary.store import Store

ROOT = Path(__file__).parents[2]
NOW_MS = 1_780_000_000_000
TANKS = [{"id": "tank-0001", "water_l": 100}, {"id": "tank-0002", "water_l": 20}]
IDS = {"Schilfbecken": "tank-0001", "Moss": "tank-0002", "Old": ""}
GERMAN = (
    "Datum;Uhrzeit;Becken;NH4;Nitrit (NO2);Nitrat-N;pH;Temperatur;Wechsel (Liter);Futter (g);Futter;Bemerkung\n"
    "03.04.2026;08:15;Schilfbecken;0,25;0,05;1.234,5;7,2;24,5;;0,3;Flocken;frisch\n"
    "14.4.26;7.50;Moss;0;;;;;2,5;;;\n31.02.2026;;Moss;1;;;;;;;;\n01.04.2026;;Old;1;;;;;;;;\n01.04.2026;;Wer;1;;;;;;;;\n"
)
AMERICAN = (
    "Date\tTime\tTemp (°F)\tNitrate\tGallons changed\tFed (g)\n4/5/2026\t7:30 pm\t77\t20\t5\t0.2\n"
    "4/6/26\t12:05 am\t78.3\t<5 ppm\t0\t\n4/7/26\t12:05 am\t<78\t\t\t\n"
)
BROKEN = (
    'date,tank,nitrite,ph,change %\n2026-04-01,"Moss",0.1 mg/L,7,25%\n,Moss,1,1,\n2099-01-01,Moss,1,7,\n'
    "2026-04-02,Moss,x,999999,\n2026-04-02,Moss,,,\n"
)


@pytest.mark.parametrize("text", [GERMAN, AMERICAN, BROKEN])
def test_server_and_phone_read_a_notebook_alike(text):
    header, rows = notebook.cells(text)
    columns = notebook.recognised(header)
    said = notebook.units_said(header, columns)
    dates = notebook.date_order(notebook.cells_of(rows, columns, "date".__eq__))
    decimals = notebook.decimal_sign(notebook.cells_of(rows, columns, notebook.is_figure))
    choices = notebook.Choices(columns, dates or "mdy", decimals or "point", **said, tanks=IDS, one_tank="tank-0001")
    litres = {tank["id"]: tank["water_l"] for tank in TANKS}
    made, wrong = notebook.read_rows(rows, choices, litres, NOW_MS, ZoneInfo("Europe/Berlin"))
    given = {"text": text, "tanks": TANKS, "ids": IDS, "now": NOW_MS}
    done = subprocess.run(
        ["node", "tests/js/notebook_lines.js"],
        input=json.dumps(given),
        cwd=ROOT,
        env={**os.environ, "TZ": "Europe/Berlin"},
        capture_output=True,
        text=True,
        check=True,
    )
    assert json.loads(done.stdout) == {
        **{"columns": columns, "dates": dates, "decimals": decimals, "said": said},
        "made": [[one.row, one.kind, one.id, one.fields] for one in made],
        "wrong": [[one.row, one.column, one.code] for one in wrong],
    }
    assert made
    assert wrong


@pytest.fixture
def folder(tmp_path):
    store = Store(tmp_path / "data", lambda: NOW_MS)
    store.prepare()
    room = store.new_room("Fish room")["id"]
    store.write(room, [("tank", "tank-0001", "put", {"name": "Schilfbecken", "water_l": 100})])
    store.close()
    return tmp_path


def run(folder, capsys, text, *more):
    (folder / "book.csv").write_text(text, "utf-8")
    code = cli.main(["import-readings", str(folder / "book.csv"), "--data", str(folder / "data"), *more])
    captured = capsys.readouterr()
    return code, captured.out + captured.err


def kept(folder):
    store = Store(folder / "data", lambda: NOW_MS)
    room = data.room_of(store, None)
    found = {kind: len(store.records_of(room, kind)) for kind in ("tank", "reading", "water_change", "feeding")}
    store.close()
    return found


def test_a_notebook_is_shown_written_once_and_taken_back(folder, capsys):
    choices = ["--make", "Moss=20", "--leave-out", "Old", "--leave-out", "Wer", "--zone", "Europe/Berlin"]
    before = kept(folder)
    code, said = run(folder, capsys, GERMAN, *choices)
    assert code == 0
    assert "Nothing is written" in said
    assert "row 4: date “31.02.2026”: there is no such date or time; left out" in said
    assert kept(folder) == before
    assert run(folder, capsys, GERMAN, *choices, "--write")[0] == 0
    brought = kept(folder)
    assert brought == {"tank": 2, "reading": 6, "water_change": 1, "feeding": 1}
    assert "0 new, 9 here already" in run(folder, capsys, GERMAN, *choices, "--write")[1]
    assert kept(folder) == brought
    assert run(folder, capsys, GERMAN, *choices, "--take-back")[0] == 0
    assert kept(folder) == {"tank": 1, "reading": 0, "water_change": 0, "feeding": 0}
    assert run(folder, capsys, GERMAN, *choices, "--write")[0] == 0
    assert kept(folder) == brought


def test_what_can_be_read_two_ways_is_asked(folder, capsys):
    code, said = run(folder, capsys, AMERICAN, "--write")
    assert code == 1
    assert "--dates dmy or --dates mdy" in said
    assert "--basis nitrate=ion or --basis nitrate=n" in said
    assert kept(folder)["reading"] == 0
    assert "There is no time zone" in run(folder, capsys, GERMAN, "--make", "Moss=20", "--leave-out", "Old",
                                          "--leave-out", "Wer", "--zone", "Mars")[1]  # fmt: skip


def test_more_rows_than_are_taken_at_once_are_refused_in_words_and_never_cut_off():
    rows = "2026-04-01,7\n" * (notebook.MOST_ROWS + 1)
    with pytest.raises(BadRequest, match="At most 20000 rows at once, and there are 20001"):
        notebook.cells("date,ph\n" + rows)
    assert len(notebook.cells("date,ph\n" + rows[: -len("2026-04-01,7\n")])[1]) == notebook.MOST_ROWS


def test_a_quotation_mark_left_open_is_named_with_its_line():
    with pytest.raises(BadRequest, match=r"Line [0-9]+ cannot be read: .* is a quotation mark left open"):
        notebook.cells('date,ph\n"2026-04-01,7\n' + "2026-04-02,7\n" * 12_000)


def test_a_tank_that_the_import_made_stays_where_something_else_is_recorded(folder, capsys):
    text = "date,tank,ph\n2026-04-01,Moss,7\n2026-04-01,Bowl,7\n2026-04-01,Jar,7\n"
    made = ["--make", "Moss=20", "--make", "Bowl=5", "--make", "Jar=3"]
    assert run(folder, capsys, text, *made, "--write")[0] == 0
    store = Store(folder / "data", lambda: NOW_MS)
    room = data.room_of(store, None)
    ids = {one["name"]: one["id"] for one in store.records_of(room, "tank")}
    note = {"tank": ids["Moss"], "at": "2026-04-02T08:00:00.000Z", "text": "Leaks"}
    store.write(room, [("note", "note-0001", "put", note)])
    sheet = {"from_at": note["at"], "to_at": note["at"], "tanks": [ids["Bowl"]], "feed_every_days": 1}
    store.write(room, [("away_sheet", "away-0001", "put", sheet)])
    store.close()
    assert run(folder, capsys, text, *made, "--take-back")[0] == 0
    store = Store(folder / "data", lambda: NOW_MS)
    assert {one["name"] for one in store.records_of(room, "tank")} == {"Schilfbecken", "Moss", "Bowl"}
    store.close()


def test_less_than_a_kits_lowest_step_is_nothing_on_such_a_kit():
    header, rows = notebook.cells("date;NO2;pH\n01.04.2026;< 0,25 mg/L;7\n02.04.2026;0,5;<7\n")
    choices = notebook.Choices(notebook.recognised(header), "dmy", "comma", {}, one_tank="tank-0001")
    made, wrong = notebook.read_rows(rows, choices, {"tank-0001": 100}, NOW_MS, None)
    assert [(one.fields["parameter"], one.fields["value"], one.fields.get("steps")) for one in made] == [
        ("nitrite", 0, [0, 0.25]),
        ("ph", 7, None),
    ]
    assert [(one.row, one.column, one.code) for one in wrong] == [(3, "ph", "number")]


OWN_AT = "2026-04-01T08:00:00.000Z"
OWN_READINGS = [
    ("test_kit", "kits-0001", {"name": "Drops", "parameter": "nitrite", "entry": "steps", "steps": [0, 0.25]}),
    *[
        ("reading", f"read-000{i}", {"tank": "tank-0001", "at": OWN_AT, "parameter": "nitrite", "value": 0.25, **more})
        for i, more in enumerate([{"steps": [0, 0.25], "kit": "kits-0001", "basis": "ion"}, {"note": "=1+1, then"}])
    ],
    ("water_change", "chng-0001", {"tank": "tank-0001", "at": OWN_AT, "litres": 10, "fraction": 0.1}),
    ("feeding", "feed-0001", {"tank": "tank-0001", "at": OWN_AT, "feed_g": 0.2}),
]


def export(folder, capsys, name):
    assert cli.main(["export-csv", str(folder / name), "--data", str(folder / "data")]) == 0
    capsys.readouterr()
    return (folder / name / "reading.csv").read_bytes().decode()


def test_our_own_readings_come_back_unchanged(folder, capsys):
    store = Store(folder / "data", lambda: NOW_MS)
    room = data.room_of(store, None)
    store.write(room, [(kind, id, "put", fields) for kind, id, fields in OWN_READINGS])
    store.close()
    text = export(folder, capsys, "before")
    code, said = run(folder, capsys, text, "--write")
    assert (code, "2 records: 0 new, 2 here already" in said) == (0, True)
    assert export(folder, capsys, "after") == text
    assert "nothing is taken back" in run(folder, capsys, text, "--take-back")[1]
    for kind in ("water_change", "feeding"):
        table = (folder / "before" / f"{kind}.csv").read_bytes().decode()
        assert "1 records: 0 new, 1 here already" in run(folder, capsys, table, "--write")[1]
    # A room that has neither tank nor kit makes the tank and keeps ids and figures.
    other = folder / "other"
    other.mkdir()
    store = Store(other / "data", lambda: NOW_MS)
    store.prepare()
    room = store.new_room("Other room")["id"]
    store.close()
    code, said = run(other, capsys, text)
    assert (code, 'There is no tank "Schilfbecken"' in said) == (1, True)
    assert run(other, capsys, text, "--make", "Schilfbecken=100", "--write")[0] == 0
    store = Store(other / "data", lambda: NOW_MS)
    found = {one.pop("id"): one for one in store.records_of(room, "reading")}
    store.close()
    wanted = {id: {**fields} for kind, id, fields in OWN_READINGS if kind == "reading"}
    for id, one in found.items():
        wanted[id].pop("kit", None)
        assert {name: one[name] for name in wanted[id] if name != "tank"} == {
            name: value for name, value in wanted[id].items() if name != "tank"
        }
    assert set(found) == set(wanted)


def test_server_and_phone_read_our_own_table_alike():
    header = "at,tank,parameter,value,basis,unit,steps,kit,test,note,by,tank_id,id"
    lines = [
        '2026-04-01T08:00:00.000Z,Pool,nitrite,0.25,ion,,"[0,0.25]",kits-0001,test-0001,\'=1,Aino,tank-0001,read-0001',
        "2026-04-01T08:00:00.000Z,Moss,ph,7,,,,kits-0002,,,Aino,tank-0009,read-0002",
        "2026-04-01T08:00:00.000Z,Old,ph,7,,,,,,,Aino,tank-0008,read-0003",
        "2026-04-01T08:00:00.000Z,Who,ph,7,,,,,,,Aino,tank-0007,read-0004",
        "2026-04-31T08:00,Pool,ph,7,,,,,,,Aino,tank-0001,read-0005",
        "2099-04-01T08:00:00.000Z,Pool,ph,7,,,,,,,Aino,tank-0001,read-0006",
        "2026-04-01T08:00:00.000Z,Pool,ph,much,,,,,,,Aino,tank-0001,read-0007",
    ]
    text = "\r\n".join([header, *lines]) + "\r\n"
    header, rows = notebook.cells(text)
    assert notebook.own_kind(header) == "reading"
    made, wrong = notebook.read_own("reading", header, rows, IDS, {"tank-0001", "tank-0002"}, NOW_MS, {"kits-0001"})
    given = {"text": text, "tanks": TANKS, "ids": IDS, "now": NOW_MS, "kits": ["kits-0001"]}
    done = subprocess.run(
        ["node", "tests/js/notebook_lines.js"],
        input=json.dumps(given),
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    assert json.loads(done.stdout) == {
        "named": notebook.own_tanks_named(header, rows, {"tank-0001", "tank-0002"}),
        "made": [[one.row, one.kind, one.id, one.fields] for one in made],
        "wrong": [[one.row, one.column, one.code] for one in wrong],
    }
    assert [(one.id, one.fields["tank"], one.fields.get("kit")) for one in made] == [
        ("read-0001", "tank-0001", "kits-0001"),
        ("read-0002", "tank-0002", None),
    ]
    assert [(one.row, one.code) for one in wrong] == [(5, "tank"), (6, "date"), (7, "future"), (8, "range")]
