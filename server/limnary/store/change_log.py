"""One room's change log: applies ops in order, each once, and answers what changed since.

A put sets each named field if its stamp is later than the field's (last writer wins by field).
A del sets the tombstone register, a restore the register that lifts it; neither touches fields.
Events are insert-only: a second put must say the same, a correction is a new record.
"""

import json
import sqlite3
from dataclasses import dataclass

from limnary.errors import EpochChanged
from limnary.ids import new_epoch, utc
from limnary.records import Refused, check_envelope, check_fields
from limnary.stamps import Clamp

MOST_ROWS = 1000


@dataclass(frozen=True)
class Author:
    """Who pushes: the keeper, the device, the role at this moment."""

    keeper: str
    device: str
    role: str


def found(connection: sqlite3.Connection) -> str:
    """Give a new room's file its first epoch."""
    epoch = new_epoch()
    meta = {"epoch": epoch, "seq": 0, "top_ms": 0, "top_counter": 0}
    connection.executemany("INSERT INTO meta (key, value) VALUES (?, ?)", [(k, str(v)) for k, v in meta.items()])
    return epoch


def epoch_of(connection: sqlite3.Connection) -> str:
    """The room's epoch."""
    return connection.execute("SELECT value FROM meta WHERE key = 'epoch'").fetchone()["value"]


def renew_epoch(connection: sqlite3.Connection) -> str:
    """After a restore: every phone must pull from the start and send again what the backup lacks."""
    epoch = new_epoch()
    connection.execute("UPDATE meta SET value = ? WHERE key = 'epoch'", [epoch])
    return epoch


def push(connection: sqlite3.Connection, ops: list[dict], author: Author, now_ms: int) -> list[dict]:
    """Apply ops in order and answer one result each. An op seen before gets its stored result.

    Only `ok` is stored: a refused op may be sent again once the keeper's role allows it.
    """
    log = _Log(connection, author, now_ms)
    results = [log.take(op) for op in ops]
    log.save()
    return results


def check_epoch(connection: sqlite3.Connection, epoch: str) -> None:
    """EpochChanged unless `epoch` is the room's."""
    current = epoch_of(connection)
    if epoch != current:
        raise EpochChanged(epoch=current)


def pull(connection: sqlite3.Connection, since: int, limit: int) -> dict:
    """Rows changed after `since`, oldest first; `next` is the last row's seq, never the greatest there is."""
    found_rows = connection.execute(
        "SELECT * FROM records WHERE seq > ? ORDER BY seq LIMIT ?", [since, limit + 1]
    ).fetchall()
    rows = [as_row(row) for row in found_rows[:limit]]
    return {"rows": rows, "next": rows[-1]["seq"] if rows else since, "more": len(found_rows) > limit}


def as_row(row: sqlite3.Row) -> dict:
    """A stored record as the protocol's row."""
    out = dict(row)
    return {**out, "fields": json.loads(out["fields"]), "stamps": json.loads(out["stamps"])}


class _Log:
    """The room's counters during one push."""

    def __init__(self, connection: sqlite3.Connection, author: Author, now_ms: int):
        meta = {row["key"]: row["value"] for row in connection.execute("SELECT key, value FROM meta")}
        self.connection, self.author, self.now = connection, author, utc(now_ms)
        self.seq = int(meta["seq"])
        self.clamp = Clamp(int(meta["top_ms"]), int(meta["top_counter"]), now_ms)

    def save(self) -> None:
        meta = {"seq": self.seq, "top_ms": self.clamp.ms, "top_counter": self.clamp.counter}
        self.connection.executemany("UPDATE meta SET value = ? WHERE key = ?", [(str(v), k) for k, v in meta.items()])

    def take(self, op: dict) -> dict:
        known = self.connection.execute("SELECT result FROM ops WHERE op = ?", [op["op"]]).fetchone()
        if known:
            return json.loads(known["result"])
        try:
            kind = check_envelope(op, self.author.role)
            row = self._row(op["id"])
            fields = self._allowed_fields(op, kind, row)
        except Refused as no:
            return {"op": op["op"], "status": no.status, "reason": no.reason, "errors": no.errors}
        stamp = self.clamp.accept(op["stamp"])
        result = {"op": op["op"], "status": "ok", "stamp": stamp, "seq": self._merge(op, row, fields, stamp)}
        self._remember(op, fields, stamp, result)
        return result

    def _row(self, record: str) -> dict | None:
        row = self.connection.execute("SELECT * FROM records WHERE id = ?", [record]).fetchone()
        return as_row(row) if row else None

    def _allowed_fields(self, op: dict, kind: dict, row: dict | None) -> dict:
        if row and row["kind"] != op["kind"]:
            raise Refused("invalid", "other-kind")
        if op["type"] != "put":
            return {}
        # A tombstone that came before its record holds no fields yet.
        new = not row or not row["stamps"]
        fields = check_fields(kind, op["fields"], new)
        if kind["event"] and not new and any(row["fields"].get(name) != value for name, value in fields.items()):
            raise Refused("invalid", "insert-only")
        return fields

    def _merge(self, op: dict, row: dict | None, fields: dict, stamp: str) -> int:
        """The record with this op folded in; its seq moves on only if something changed."""
        row = row or self._blank(op)
        before = (dict(row["stamps"]), row["deleted"], row["restored"])
        if op["type"] == "put" and not row["stamps"]:
            row["made_by"], row["made_at"] = self.author.keeper, self.now
        for name, value in fields.items():
            if stamp > row["stamps"].get(name, ""):
                row["fields"][name], row["stamps"][name] = value, stamp
        register = {"del": "deleted", "restore": "restored"}.get(op["type"])
        if register and stamp > (row[register] or ""):
            row[register] = stamp
        if row["seq"] and before == (row["stamps"], row["deleted"], row["restored"]):
            return row["seq"]
        self.seq += 1
        row |= {"seq": self.seq, "changed_by": self.author.keeper, "changed_at": self.now}
        write_row(self.connection, row)
        return self.seq

    def _blank(self, op: dict) -> dict:
        who = {"made_by": self.author.keeper, "made_at": self.now, "changed_by": "", "changed_at": ""}
        empty = {"fields": {}, "stamps": {}, "deleted": None, "restored": None}
        return {"id": op["id"], "kind": op["kind"], "seq": 0, **empty, **who}

    def _remember(self, op: dict, fields: dict, stamp: str, result: dict) -> None:
        self.connection.execute(
            "INSERT INTO ops (op, kind, id, type, fields, stamp, schema, keeper, device, at, result)"
            " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            [
                *(op["op"], op["kind"], op["id"], op["type"], json.dumps(fields), stamp, op["schema"]),
                *(self.author.keeper, self.author.device, self.now, json.dumps(result)),
            ],
        )


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
)
_WRITE = f"INSERT OR REPLACE INTO records ({', '.join(COLUMNS)}) VALUES ({', '.join('?' * len(COLUMNS))})"


def write_row(connection: sqlite3.Connection, row: dict) -> None:
    """Store one row whole."""
    out = {**row, "fields": json.dumps(row["fields"]), "stamps": json.dumps(row["stamps"])}
    connection.execute(_WRITE, [out[name] for name in COLUMNS])


def standing(connection: sqlite3.Connection, kind: str) -> list[dict]:
    """The fields of a kind's records that are not deleted, each with `id` and `changed_at`."""
    rows = connection.execute(
        "SELECT id, fields, changed_at FROM records"
        " WHERE kind = ? AND (deleted IS NULL OR deleted <= coalesce(restored, '')) ORDER BY id",
        [kind],
    )
    return [{**json.loads(row["fields"]), "id": row["id"], "changed_at": row["changed_at"]} for row in rows]
