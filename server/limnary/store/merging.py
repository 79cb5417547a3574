"""Folds whole rows from an archive, or from a phone after a restore, into a room as if their ops were sent again."""

import json
import sqlite3

from limnary.ids import uuid7
from limnary.protocol.moved import places
from limnary.protocol.records import Refused, check_row, kinds
from limnary.store.change_log import Author, Log
from limnary.store.folding import as_text, blank, fold


def bring_back(db: sqlite3.Connection, given: list[dict], author: Author, now_ms: int) -> list[dict]:
    """One result per row, named by its `ref`. An equal or later stamp here wins; the same row twice changes nothing.

    The row says who made the record; that it was `author` who brought the row is stored beside it.
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
    """Merge one row; return whether anything changed. The row says who made it and when, but never later than now."""
    here = log.row(row["id"]) or blank(row, row["made_by"], min(row["made_at"], log.now))
    before = json.dumps(here, sort_keys=True)
    heard = log.heard(here, row.get("moved") or {})
    log.learn(here, heard)
    said = _placed(log, here, row, places(here["moved"], heard))
    fold(here, said)
    if here["seq"] and json.dumps(here, sort_keys=True) == before:
        return False
    if row["changed_at"] > here["changed_at"]:
        here |= {"changed_by": row["changed_by"], "changed_at": min(row["changed_at"], log.now)}
    if brought:
        here |= brought
    _remember(log, row, said, log.store(here))
    return True


def _placed(log: Log, here: dict, row: dict, at: dict[str, str]) -> dict:
    """The row's values and stamps, each stamp at its place here. Stamps in the future keep their order."""
    stamps = {name: at.get(stamp, stamp) for name, stamp in row["stamps"].items()}
    registers = {name: at.get(row.get(name), row.get(name)) for name in ("deleted", "restored")}
    every = sorted({*stamps.values(), *filter(None, registers.values())})
    taken = {stamp: log.place(here, stamp) for stamp in every}
    moved = {name: taken.get(stamp) for name, stamp in registers.items()}
    return {"fields": row["fields"], "stamps": {name: taken[stamp] for name, stamp in stamps.items()}, **moved}


def _remember(log: Log, row: dict, said: dict, seq: int) -> None:
    """Log the row, so that its values are not lost when later ones overwrite them."""
    latest = max([*said["stamps"].values(), said["deleted"] or "", said["restored"] or ""])
    entry = {"kind": row["kind"], "id": row["id"], "type": "row", "schema": kinds()[row["kind"]]["schema"]}
    log.remember({**entry, "op": f"row-{uuid7(log.now_ms)}"}, as_text(said), latest, seq)
