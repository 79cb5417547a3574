"""Folds a whole row from an archive into a room, as if its ops had come again: later stamps win."""

import sqlite3

from limnary.stamps import Clamp
from limnary.store.change_log import as_row, write_row

_COUNTERS = "SELECT key, value FROM meta WHERE key IN ('seq', 'top_ms', 'top_counter')"


def merge_row(db: sqlite3.Connection, row: dict, now_ms: int) -> bool:
    """Whether anything changed. Who made the record and when stays as the archive says."""
    meta = {entry["key"]: int(entry["value"]) for entry in db.execute(_COUNTERS)}
    clamp = Clamp(meta["top_ms"], meta["top_counter"], now_ms)
    found = db.execute("SELECT * FROM records WHERE id = ?", [row["id"]]).fetchone()
    here = as_row(found) if found else {**row, "fields": {}, "stamps": {}, "deleted": None, "restored": None}
    changed = not found
    for name, stamp in row["stamps"].items():
        if stamp > here["stamps"].get(name, ""):
            here["fields"][name], here["stamps"][name], changed = row["fields"][name], clamp.accept(stamp), True
    for register in ("deleted", "restored"):
        if (row.get(register) or "") > (here[register] or ""):
            here[register], changed = clamp.accept(row[register]), True
    if changed:
        counters = {"seq": meta["seq"] + 1, "top_ms": clamp.ms, "top_counter": clamp.counter}
        db.executemany("UPDATE meta SET value = ? WHERE key = ?", [(str(v), k) for k, v in counters.items()])
        write_row(db, {**here, "seq": counters["seq"]})
    return changed
