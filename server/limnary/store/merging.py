"""Folds whole rows into a room, from an archive or from a phone after a restore, as if their ops had come again."""

import json
import sqlite3

from limnary.ids import uuid7
from limnary.moved import places
from limnary.records import Refused, check_row, kinds
from limnary.store.change_log import Author, Log
from limnary.store.folding import blank, fold


def bring_back(db: sqlite3.Connection, given: list[dict], author: Author, now_ms: int) -> list[dict]:
    """One result a row, by its `ref`. What stands here as new or newer stays; a row that came before changes nothing.

    Who made the record is what the row says; that `author` said so is kept beside it.
    """
    log = Log(db, author, now_ms)
    results = [{"ref": one["ref"], **_bring(log, one["row"])} for one in given]
    log.save()
    return results


def _bring(log: Log, row: dict) -> dict:
    try:
        kind = check_row(row)
        if log.author.role not in kind["written_by"]:
            raise Refused("forbidden", "role")
        here = log.row(row["id"])
        if here and here["kind"] != row["kind"]:
            raise Refused("invalid", "other-kind")
        if kind["event"] and here and any(here["fields"].get(name, was) != was for name, was in row["fields"].items()):
            raise Refused("invalid", "insert-only")
    except Refused as no:
        return {"status": no.status, "reason": no.reason, "errors": no.errors}
    merge_row(log, row, brought={"brought_by": log.author.keeper, "brought_at": log.now})
    return {"status": "ok"}


def merge_row(log: Log, row: dict, brought: dict | None = None) -> bool:
    """Whether anything changed. Who made the record and when stays as the row says, but never after now."""
    here = log.row(row["id"]) or blank(row, row["made_by"], min(row["made_at"], log.now))
    before = json.dumps(here, sort_keys=True)
    heard = row.get("moved") or {}
    log.learn(here, heard)
    said = _placed(log, here, row, places(here["moved"], heard))
    fold(here, said)
    if here["seq"] and json.dumps(here, sort_keys=True) == before:
        return False
    if row["changed_at"] > here["changed_at"]:
        here |= {"changed_by": row["changed_by"], "changed_at": min(row["changed_at"], log.now)}
    if brought:
        here |= brought
    _remember(log, row, said, {"status": "ok", "seq": log.store(here)})
    return True


def _placed(log: Log, here: dict, row: dict, at: dict[str, str]) -> dict:
    """What the row says, its stamps where they belong here. Those in the future keep their order."""
    stamps = {name: at.get(stamp, stamp) for name, stamp in row["stamps"].items()}
    registers = {name: at.get(row.get(name), row.get(name)) for name in ("deleted", "restored")}
    every = sorted({*stamps.values(), *filter(None, registers.values())})
    taken = {stamp: log.place(here, stamp) for stamp in every}
    moved = {name: taken.get(stamp) for name, stamp in registers.items()}
    return {"fields": row["fields"], "stamps": {name: taken[stamp] for name, stamp in stamps.items()}, **moved}


def _remember(log: Log, row: dict, said: dict, result: dict) -> None:
    """Log the row, so that what it said outlives what overwrites it."""
    latest = max([*said["stamps"].values(), said["deleted"] or "", said["restored"] or ""])
    entry = {"kind": row["kind"], "id": row["id"], "type": "row", "schema": kinds()[row["kind"]]["schema"]}
    log.remember({**entry, "op": f"row-{uuid7(log.now_ms)}"}, {"fields": said, "stamp": latest}, result)
