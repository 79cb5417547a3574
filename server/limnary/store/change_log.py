"""One room's change log: applies ops in order, each once, and answers what changed since.

Theory of operation (README.md in this folder explains each law and what it does not cover):

1. Every phone stamps its own writes. An op counts once, by its id.
2. For each field of a record, and for its tombstone, the value with the latest stamp wins. The order in which ops
   arrive does not matter.
3. No stamp stays far in the future. A stamp above the server's time + 60 s is clamped: moved back to that ceiling,
   above every stamp that the room has accepted there.
4. A clamped write keeps its place for ever. `moved` maps its stamp as written to its stamp as taken; it travels with
   the row, and with each edit by someone who saw the row. If two servers clamped one write differently, the earlier
   place counts, and the record is folded again from the log. A moved stamp from a phone is believed only where this
   server may have forgotten a clamp: between the backup and the restore.
5. A restore starts a new epoch. The phones then send again what the backup lacks, by the laws above.

A put sets fields; a del sets the tombstone, a restore sets the stamp that lifts it, and neither touches fields.
Events are insert-only: a second put must say the same, and a correction is a new record.
"""

import json
import sqlite3
from dataclasses import dataclass

from limnary.errors import EpochChanged
from limnary.ids import new_epoch, utc
from limnary.protocol.moved import learn, places
from limnary.protocol.records import Refused, check_envelope, check_fields, kinds
from limnary.protocol.stamps import AHEAD_MS, Clamp, parts
from limnary.store.folding import (
    as_begun,
    as_parts,
    as_row,
    as_text,
    begin_rows,
    blank,
    fold,
    parts_of,
    placed,
    stamps_of,
    write_rows,
)

MOST_ROWS = 1000
# Rows of one answer that runs ahead: 60 tanks tested daily for a month have fewer.
MOST_AHEAD = 8000


@dataclass(frozen=True)
class Author:
    """Who pushes: the keeper, the device, and the keeper's current role."""

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


def seq_of(connection: sqlite3.Connection) -> int:
    """The seq of the room's last change."""
    return int(connection.execute("SELECT value FROM meta WHERE key = 'seq'").fetchone()["value"])


def top_of(connection: sqlite3.Connection) -> int:
    """Milliseconds of the latest stamp that the room has accepted."""
    return int(connection.execute("SELECT value FROM meta WHERE key = 'top_ms'").fetchone()["value"])


def renew_epoch(connection: sqlite3.Connection, now_ms: int, replaced_top_ms: int) -> str:
    """Start a new epoch after a restore: every phone pulls from the start and sends again what the backup lacks.

    What the server clamped since the backup it has forgotten. Those clamps lie between the latest stamp of the
    backup and the ceiling of now (or the latest stamp of the room that is replaced, if the clock was set back).
    """
    epoch = new_epoch()
    span = [top_of(connection), max(now_ms + AHEAD_MS, replaced_top_ms) + 1]
    spans = [*_forgotten(connection), span][-MOST_RESTORES:]
    meta = {"epoch": epoch, FORGOTTEN: json.dumps(spans)}
    connection.executemany("INSERT OR REPLACE INTO meta (key, value) VALUES (?, ?)", meta.items())
    return epoch


# The spans of time, in ms, whose clamps this room has forgotten by a restore.
FORGOTTEN = "forgotten_clamps"
MOST_RESTORES = 20


def _forgotten(connection: sqlite3.Connection) -> list[list[int]]:
    row = connection.execute("SELECT value FROM meta WHERE key = ?", [FORGOTTEN]).fetchone()
    return json.loads(row["value"]) if row else []


def push(
    connection: sqlite3.Connection, ops: list[dict], author: Author, now_ms: int, trusting: bool = False
) -> list[dict]:
    """Apply ops in order and answer one result each. An op seen before gets its stored result.

    Only `ok` is stored: a refused op may be sent again once the keeper's role allows it.
    """
    log = Log(connection, author, now_ms, trusting)
    log.recall(ops)
    results = [log.take(op) for op in ops]
    log.save()
    return results


def check_epoch(connection: sqlite3.Connection, epoch: str) -> None:
    """Raise EpochChanged unless `epoch` is the room's."""
    current = epoch_of(connection)
    if epoch != current:
        raise EpochChanged(epoch=current)


def pull(connection: sqlite3.Connection, since: int, limit: int) -> dict:
    """Rows changed since a place, and where to go on; with `total`, the room's count of records, while more follow.

    `next` is the seq of the last row answered, not of the last stored.
    """
    found_rows = connection.execute(
        "SELECT * FROM records WHERE seq > ? ORDER BY seq LIMIT ?", [since, limit + 1]
    ).fetchall()
    rows = [as_row(row) for row in found_rows[:limit]]
    page = {"rows": rows, "next": rows[-1]["seq"] if rows else since, "more": len(found_rows) > limit}
    return page | {"total": _count(connection)} if page["more"] else page


def pull_ahead(connection: sqlite3.Connection, since: int, at_least: str) -> dict:
    """What a room's Round needs first, from anywhere after `since`: the place to go on from stays `since`.

    Rows of kinds that are no events, of stock, and of events since `at_least` (ISO 8601, UTC); the newest `MOST_AHEAD`.
    """
    events = [name for name, kind in kinds().items() if kind["event"] and name != "stock_change"]
    found_rows = connection.execute(
        "SELECT * FROM records WHERE seq > ? AND (kind NOT IN (SELECT value FROM json_each(?))"
        " OR json_extract(fields, '$.at') >= ?) ORDER BY seq DESC LIMIT ?",
        [since, json.dumps(events), at_least, MOST_AHEAD],
    )
    rows = [as_row(row) for row in found_rows]
    return {"rows": rows, "next": since, "more": False, "total": _count(connection)}


def _count(connection: sqlite3.Connection) -> int:
    return connection.execute("SELECT count(*) FROM records").fetchone()[0]


class Log:
    """The room's counters during one request, and the steps that a push and a merge share."""

    def __init__(self, connection: sqlite3.Connection, author: Author, now_ms: int, trusting: bool = False):
        """`trusting`: believe every moved stamp, as those of another server's archive."""
        meta = {row["key"]: row["value"] for row in connection.execute("SELECT key, value FROM meta")}
        self.connection, self.author = connection, author
        self.now_ms, self.now = now_ms, utc(now_ms)
        self.seq = int(meta["seq"])
        # The results of ops and the rows of records by id; None where there is none yet. A row may be `begun` instead.
        self.recalled: dict[str, dict | None] = {}
        self.rows: dict[str, dict | None] = {}
        # What `write_held` writes: records that begin and the last state of others, by id; ops as they were taken.
        self.begun: dict[str, tuple] = {}
        self.held_rows: dict[str, dict] = {}
        self.held_ops: list[tuple] = []
        self.clamp = Clamp(int(meta["top_ms"]), int(meta["top_counter"]), now_ms)
        self.trusting, self.forgotten = trusting, json.loads(meta.get(FORGOTTEN, "[]"))

    def save(self) -> None:
        """Write what is held, and the counters."""
        self.write_held()
        meta = {"seq": self.seq, "top_ms": self.clamp.ms, "top_counter": self.clamp.counter}
        self.connection.executemany("UPDATE meta SET value = ? WHERE key = ?", [(str(v), k) for k, v in meta.items()])

    def take(self, op: dict) -> dict:
        """Apply one op that `recall` has looked up, unless it was taken before; return its result."""
        return self.recalled[op["op"]] or self._apply(op)

    def _apply(self, op: dict) -> dict:
        try:
            kind = check_envelope(op, self.author.role)
            row = self.row(op["id"])
            fields = self._allowed_fields(op, kind, row)
        except Refused as no:
            return {"op": op["op"], "status": no.status, "reason": no.reason, "errors": no.errors}
        text = as_text(fields)
        if row or op["type"] != "put" or op.get("moved") or self.clamp.is_ahead(op["stamp"]):
            stamp, seq = self._merge(op, row or blank(op, self.author.keeper, self.now), fields)
        else:
            stamp, seq = self._begin(op, fields, text)
        return self.remember(op, text, stamp, seq)

    def write_held(self) -> None:
        """Write the records and ops of this request that are not written yet, all at once: one by one takes longer."""
        begin_rows(self.connection, self.begun.values())
        write_rows(self.connection, self.held_rows.values())
        self.connection.executemany(_LOG, self.held_ops)
        self.begun, self.held_rows, self.held_ops = {}, {}, []

    def recall(self, ops: list[dict]) -> None:
        """Read the results of all these ops and their records at once, before any of them is taken."""
        named = [op["op"] for op in ops]
        # CROSS makes SQLite look each name up; without it, SQLite may choose to read the whole table.
        of_these = "SELECT op, stamp, ops.seq FROM json_each(?) CROSS JOIN ops ON op = value"
        stored = self.connection.execute(of_these, [json.dumps(named)])
        self.recalled = dict.fromkeys(named) | {op: _result(op, stamp, seq) for op, stamp, seq in stored}
        new = [op.get("id") for op in ops if not self.recalled[op["op"]]]
        records = {record for record in new if isinstance(record, str)}
        of_these = "SELECT records.* FROM json_each(?) CROSS JOIN records ON records.id = value"
        stored = self.connection.execute(of_these, [json.dumps([*records])])
        self.rows = dict.fromkeys(records) | {row["id"]: {"moved": {}, **as_row(row)} for row in stored}

    def row(self, record: str) -> dict | None:
        """A record's row, with `moved` even if it is empty."""
        if record not in self.rows:
            if record in self.begun:
                self.rows[record] = as_begun(*self.begun[record])
            else:
                row = self.connection.execute("SELECT * FROM records WHERE id = ?", [record]).fetchone()
                self.rows[record] = {"moved": {}, **as_row(row)} if row else None
        return self.rows[record]

    def place(self, row: dict, stamp: str) -> str:
        """The stamp that is stored for `stamp`. If the clamp moved it back, the row's `moved` says so."""
        taken = self.clamp.accept(stamp)
        if taken != stamp:
            moved = row["moved"]
            moved |= {written: taken for written, place in moved.items() if place == stamp} | {stamp: taken}
        return taken

    def heard(self, row: dict, moved: dict[str, str]) -> dict[str, str]:
        """The moved stamps that count: those the row has, and those that this server may have made and forgotten.

        Any other would be a way to move the writes of others to an earlier place, where they lose.
        """
        counts = {}
        for written, taken in moved.items():
            here = row["moved"].get(written)
            if self._may_be_ours(taken):
                counts[written] = taken
            elif here:
                counts[written] = max(here, taken)
        return counts

    def _may_be_ours(self, taken: str) -> bool:
        return self.trusting or any(first <= parts(taken)[0] <= last for first, last in self.forgotten)

    def learn(self, row: dict, heard: dict[str, str]) -> None:
        """Move writes of this record to the earlier places that `heard` names, in the log and in the row."""
        earlier = learn(row["moved"], heard)
        if not earlier:
            return
        at = placed(row, earlier)
        row |= {name: at[name] for name in ("stamps", "deleted", "restored")}
        self.write_held()
        # Fold again from the log: a value that lost against the later place may win against the earlier one.
        for entry in self.connection.execute("SELECT * FROM ops WHERE id = ? ORDER BY rowid", [row["id"]]).fetchall():
            was = as_parts(entry)
            became = placed(was, earlier)
            if became != was:
                self._replace(entry, became, earlier)
            fold(row, became)

    def _replace(self, entry: sqlite3.Row, became: dict, earlier: dict[str, str]) -> None:
        stamp = earlier.get(entry["stamp"], entry["stamp"])
        fields = json.dumps(became) if entry["type"] == "row" else entry["fields"]
        self.recalled[entry["op"]] = _result(entry["op"], stamp, entry["seq"])
        self.connection.execute("UPDATE ops SET fields = ?, stamp = ? WHERE op = ?", [fields, stamp, entry["op"]])

    def _allowed_fields(self, op: dict, kind: dict, row: dict | None) -> dict:
        if row and row["kind"] != op["kind"]:
            raise Refused("invalid", "other-kind")
        if op["type"] != "put":
            return {}
        # A record whose tombstone arrived first has no fields yet.
        new = not row or not row["stamps"]
        fields = check_fields(kind, op["fields"], new)
        if kind["event"] and not new and any(row["fields"].get(name) != value for name, value in fields.items()):
            raise Refused("invalid", "insert-only")
        return fields

    def _begin(self, op: dict, fields: dict, text: str) -> tuple[str, int]:
        """Store a record that has only this put. Return the stamp and the seq."""
        record, stamp = op["id"], self.clamp.accept(op["stamp"])
        self.seq += 1
        stamps = stamp if fields else "{}"
        self.begun[record] = (record, op["kind"], self.seq, text, stamps, self.author.keeper, self.now)
        del self.rows[record]
        return stamp, self.seq

    def _merge(self, op: dict, row: dict, fields: dict) -> tuple[str, int]:
        """Fold this op into the record; return its stamp and seq, which increases only if something changed."""
        heard = self.heard(row, op.get("moved") or {})
        before = stamps_of(row)
        self.learn(row, heard)
        stamp = self.place(row, places(row["moved"], heard).get(op["stamp"], op["stamp"]))
        by, at = self.author.keeper, self.now
        made = {"made_by": by, "made_at": at} if op["type"] == "put" and not row["stamps"] else {}
        fold(row, parts_of(op["type"], fields, stamp))
        if row["seq"] and before == stamps_of(row):
            return stamp, row["seq"]
        return stamp, self.store({**row, **made, "changed_by": by, "changed_at": at})

    def store(self, row: dict) -> int:
        """Hold the row to be stored under the next seq; return that."""
        self.seq += 1
        row["seq"] = self.seq
        self.begun.pop(row["id"], None)
        self.rows[row["id"]] = self.held_rows[row["id"]] = row
        return self.seq

    def remember(self, op: dict, fields: str, stamp: str, seq: int) -> dict:
        """Hold an op as it was taken, to be logged under its id; return its result."""
        name, by = op["op"], self.author
        self.held_ops.append(
            (name, op["kind"], op["id"], op["type"], fields, stamp, op["schema"], by.keeper, by.device, self.now, seq)
        )
        self.recalled[name] = result = _result(name, stamp, seq)
        return result


def _result(op: str, stamp: str, seq: int) -> dict:
    """What is answered for an op that counts."""
    return {"op": op, "status": "ok", "stamp": stamp, "seq": seq}


_LOG = (
    "INSERT INTO ops (op, kind, id, type, fields, stamp, schema, keeper, device, at, seq)"
    " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"
)


def standing(connection: sqlite3.Connection, kind: str) -> list[dict]:
    """The fields of a kind's whole records that are not deleted, each with `id` and `changed_at`.

    A record of which only a tombstone or its lifting is known has no fields: nobody can read it.
    """
    required = [spec["name"] for spec in kinds()[kind]["fields"] if spec.get("required") and "when" not in spec]
    rows = connection.execute(
        "SELECT id, fields, changed_at FROM records"
        " WHERE kind = ? AND (deleted IS NULL OR deleted <= coalesce(restored, '')) ORDER BY id",
        [kind],
    )
    found_rows = [{**json.loads(row["fields"]), "id": row["id"], "changed_at": row["changed_at"]} for row in rows]
    return [row for row in found_rows if all(name in row for name in required)]


def authors(connection: sqlite3.Connection) -> dict[str, str]:
    """The names of authors who came with an archive or a brought-back row, by keeper id."""
    return {row["id"]: row["name"] for row in connection.execute("SELECT id, name FROM authors")}


def add_authors(connection: sqlite3.Connection, names: dict[str, str]) -> None:
    """Store names of authors by keeper id; a name that is known stays."""
    connection.executemany("INSERT INTO authors (id, name) VALUES (?, ?) ON CONFLICT (id) DO NOTHING", names.items())
