"""Every record that stands as tables for a spreadsheet, one a kind: the twin of `pwa/data/tables_csv.js`."""

import csv
import io
import json

from limnary.protocol.corrections import is_gone, superseded
from limnary.protocol.records import kinds
from limnary.store.archive import as_cell


def tables(rows: list[dict], people: dict[str, str]) -> dict[str, str]:
    """CSV (RFC 4180) by file name: one file a kind of which there are records, and `columns.csv`.

    `rows` are all rows of a room, tombstones too; `people` are names by keeper id.
    """
    whole = {kind: [row for row in rows if row["kind"] == kind and row["fields"]] for kind in sorted(kinds())}
    names = {row["id"]: row["fields"].get("name", "") for row in whole["tank"] if not is_gone(row)}
    described, files = [["file", "column", "label", "unit"]], {}
    for kind, own in whole.items():
        fields = {one["name"]: one for one in kinds()[kind]["fields"] if one["name"] != "supersedes"}
        hidden = superseded(own) if kinds()[kind].get("event") else set()
        standing = [row for row in own if not is_gone(row) and row["id"] not in hidden and _is_whole(row, fields)]
        if not standing:
            continue
        columns = [*fields, "by", *(["tank_id"] if "tank" in fields else []), "id"]
        for name in columns:
            about = fields.get(name, {})
            described.append([kind, name, about.get("label", ""), about.get("unit", "")])
        lines = [_cells(row, columns, names, people) for row in sorted(standing, key=_by_time)]
        files[f"{kind}.csv"] = _csv([columns, *lines])
    return {"columns.csv": _csv(described), **files}


def _is_whole(row: dict, fields: dict[str, dict]) -> bool:
    return all(name in row["fields"] for name, field in fields.items() if field.get("required") and "when" not in field)


def _by_time(row: dict) -> tuple[str, str]:
    return row["fields"].get("at", ""), row["id"]


def _cells(row: dict, columns: list[str], names: dict[str, str], people: dict[str, str]) -> list[str]:
    fields = row["fields"]
    own = {
        **{name: _cell(fields.get(name)) for name in columns},
        **{"by": as_cell(people.get(row["made_by"], "")), "id": row["id"]},
    }
    if "tank" in columns:
        own |= {"tank": as_cell(names.get(fields.get("tank"), "")), "tank_id": _cell(fields.get("tank"))}
    return [own[name] for name in columns]


def _cell(value: object) -> str:
    """A figure or a yes as it is, text made harmless, a list or an object as JSON."""
    if value is None:
        return ""
    if isinstance(value, str):
        return as_cell(value)
    text = json.dumps(value, ensure_ascii=False, separators=(",", ":"))
    return as_cell(text) if isinstance(value, list | dict) else text


def _csv(lines: list[list[str]]) -> str:
    out = io.StringIO()
    csv.writer(out).writerows(lines)
    return out.getvalue()
