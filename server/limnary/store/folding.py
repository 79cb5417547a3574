"""A record's row: how an op is folded into it field by field, and how it is stored.

The later stamp wins. A del sets the tombstone, a restore sets the stamp that lifts it; neither touches fields.
"""

import json
import sqlite3
from collections.abc import Iterable

# Without the search for values that contain themselves: what came as JSON cannot.
as_text = json.JSONEncoder(check_circular=False).encode


def as_row(row: sqlite3.Row) -> dict:
    """A stored record as the protocol's row."""
    out = dict(row)
    moved, by, at = json.loads(out.pop("moved")), out.pop("brought_by"), out.pop("brought_at")
    # Few rows have these members; the others leave them out.
    seldom = ({"moved": moved} if moved else {}) | ({"brought_by": by, "brought_at": at} if by else {})
    fields = json.loads(out["fields"])
    return {**out, "fields": fields, "stamps": _stamps(out["stamps"], fields), **seldom}


def blank(record: dict, keeper: str, at: str) -> dict:
    """An empty row for a record that is not stored yet."""
    who = {"made_by": keeper, "made_at": at, "changed_by": "", "changed_at": ""}
    empty = {"fields": {}, "stamps": {}, "deleted": None, "restored": None, "moved": {}}
    return {"id": record["id"], "kind": record["kind"], "seq": 0, **empty, **who}


def stamps_of(row: dict) -> tuple:
    """The part of a row that shows whether it changed: its stamps and its moved stamps."""
    return dict(row["stamps"]), row["deleted"], row["restored"], dict(row["moved"])


def parts_of(type: str, fields: dict, stamp: str) -> dict:
    """What one op sets in its record: `{fields, stamps, deleted, restored}`."""
    said = {"fields": fields, "stamps": dict.fromkeys(fields, stamp), "deleted": None, "restored": None}
    return said | ({"del": {"deleted": stamp}, "restore": {"restored": stamp}}.get(type) or {})


def as_parts(entry: sqlite3.Row) -> dict:
    """What a log entry sets in its record; an entry of type `row` was logged in this form."""
    fields = json.loads(entry["fields"])
    return fields if entry["type"] == "row" else parts_of(entry["type"], fields, entry["stamp"])


def placed(said: dict, earlier: dict[str, str]) -> dict:
    """The same with each stamp at its earlier place, where one is known."""
    stamps = {name: earlier.get(stamp, stamp) for name, stamp in said["stamps"].items()}
    registers = {name: earlier.get(said[name], said[name]) for name in ("deleted", "restored")}
    return {"fields": said["fields"], "stamps": stamps, **registers}


def fold(row: dict, said: dict) -> None:
    """Fold what was said of a record into its row, in place: the later stamp wins, field by field."""
    for name, stamp in said["stamps"].items():
        if stamp > row["stamps"].get(name, ""):
            row["fields"][name], row["stamps"][name] = said["fields"][name], stamp
    for register in ("deleted", "restored"):
        if (said[register] or "") > (row[register] or ""):
            row[register] = said[register]


COLUMNS = (
    "id",
    "kind",
    "seq",
    "fields",
    "stamps",
    "deleted",
    "restored",
    "made_by",
    "made_at",
    "changed_by",
    "changed_at",
    "moved",
    "brought_by",
    "brought_at",
)
_WRITE = f"INSERT OR REPLACE INTO records ({', '.join(COLUMNS)}) VALUES ({', '.join('?' * len(COLUMNS))})"


# To bind half as many values takes a fifth off SQLite's time for a push.
_BEGIN = (
    "INSERT INTO records (id, kind, seq, fields, stamps, made_by, made_at, changed_by, changed_at)"
    " VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?6, ?7)"
)


def write_rows(connection: sqlite3.Connection, rows: Iterable[dict]) -> None:
    """Store rows whole."""
    connection.executemany(_WRITE, map(_values, rows))


def begin_rows(connection: sqlite3.Connection, rows: Iterable[tuple]) -> None:
    """Store new records, each of one put: id, kind, seq, the texts of its fields and its stamps, keeper, time."""
    connection.executemany(_BEGIN, rows)


def as_begun(id: str, kind: str, seq: int, fields: str, stamps: str, keeper: str, at: str) -> dict:
    """The row that `begin_rows` stores."""
    said = json.loads(fields)
    row = blank({"id": id, "kind": kind}, keeper, at) | {"changed_by": keeper, "changed_at": at}
    return row | {"seq": seq, "fields": said, "stamps": _stamps(stamps, said)}


def _values(row: dict) -> tuple:
    fields, stamps, moved = as_text(row["fields"]), _stamps_text(row["stamps"]), row["moved"]
    made, changed = (row["made_by"], row["made_at"]), (row["changed_by"], row["changed_at"])
    start = (row["id"], row["kind"], row["seq"], fields, stamps, row["deleted"], row["restored"], *made, *changed)
    return *start, as_text(moved) if moved else "{}", row.get("brought_by"), row.get("brought_at")


def _stamps_text(stamps: dict[str, str]) -> str:
    """The stamp alone where all fields have the same, as in most records; else an object by field."""
    different = set(stamps.values())
    return different.pop() if len(different) == 1 else as_text(stamps)


def _stamps(text: str, fields: dict) -> dict[str, str]:
    """The stamps by field that `_stamps_text` wrote: every field of a record has one."""
    return json.loads(text) if text.startswith("{") else dict.fromkeys(fields, text)
