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
    "4/6/26\t12:05 am\t78.3\t<5 ppm\t0\t\n"
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
    assert kept(folder) == {"tank": 2, "reading": 0, "water_change": 0, "feeding": 0}
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
