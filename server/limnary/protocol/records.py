"""Checks each op: its envelope, its fields by shared_schema/records, and whether the role may write the kind."""

import re
from functools import cache

from marshmallow import Schema

from limnary.contracts import InvalidInput, load, schema_of
from limnary.ids import is_time
from limnary.protocol.moved import MOST_MOVED, are_moved
from limnary.protocol.stamps import is_stamp
from limnary.schema_files import messages, read_folder

ID = re.compile(r"[A-Za-z0-9_-]{8,64}", re.ASCII)
TYPES = ("put", "del", "restore")
# A push holds up to 500 ops, each with errors of its own.
MOST_ERRORS_OF_OP = 10
_STAMP = "13 digits, 5 digits, device, as in 1767225600000-00000-phone"
_MOVED = (
    f"at most {MOST_MOVED} stamps as written, each with the earlier one of the same device that a server took it for"
)


class Refused(Exception):
    """One op is not applied: `status` is forbidden or invalid, `reason` a stable word."""

    def __init__(self, status: str, reason: str, errors: list[dict] | None = None):
        super().__init__(reason)
        self.status, self.reason, self.errors = status, reason, errors or []


@cache
def kinds() -> dict[str, dict]:
    """Every record kind by name."""
    return read_folder("records")


def is_id(value: object) -> bool:
    """Whether `value` may name an op or a record."""
    return isinstance(value, str) and ID.fullmatch(value) is not None


def versions() -> dict[str, list[int]]:
    """The oldest and the newest schema accepted of each kind. Kinds only gain optional fields."""
    return {name: [kind.get("oldest_schema", 1), kind["schema"]] for name, kind in kinds().items()}


def unknown_schema(ops: list[dict]) -> str | None:
    """The kind of the first op whose schema is not accepted here; None if there is none."""
    known = versions()
    for op in ops:
        bounds, schema = known.get(op.get("kind")) if isinstance(op.get("kind"), str) else None, op.get("schema")
        if bounds and type(schema) is int and not bounds[0] <= schema <= bounds[1]:
            return op["kind"]
    return None


def check_envelope(op: dict, role: str) -> dict:
    """The kind of a well-formed op that this role may write; Refused if it is neither."""
    errors = list(_envelope_errors(op))
    if errors:
        raise Refused("invalid", "envelope", errors)
    kind = kinds()[op["kind"]]
    if role not in kind["written_by"]:
        raise Refused("forbidden", "role")
    return kind


def check_fields(kind: dict, fields: dict, new: bool) -> dict:
    """The checked fields of a put; a null empties an optional field. Refused names each wrong field."""
    emptied = _emptied(kind, fields) if None in fields.values() else ()
    given = {name: value for name, value in fields.items() if name not in emptied} if emptied else fields
    try:
        values = load(_schema(kind["kind"]), kind["fields"], given, partial=not new)
    except InvalidInput as bad:
        raise Refused("invalid", "fields", bad.errors[:MOST_ERRORS_OF_OP]) from bad
    return {**values, **dict.fromkeys(emptied)} if emptied else values


def _emptied(kind: dict, fields: dict) -> set[str]:
    """The optional fields that a put empties by a null."""
    optional = {spec["name"] for spec in kind["fields"] if not spec.get("required")}
    return {name for name, value in fields.items() if value is None and name in optional}


def check_row(row: dict) -> dict:
    """The kind of a well-formed row; Refused if it is malformed."""
    errors = list(_row_errors(row))
    if errors:
        raise Refused("invalid", "envelope", errors)
    kind = kinds()[row["kind"]]
    check_fields(kind, row["fields"], new=bool(row["stamps"]))
    return kind


def _row_errors(row: dict):
    if not isinstance(row.get("kind"), str) or row["kind"] not in kinds():
        yield _wrong("kind", messages()["not_choice"], ", ".join(kinds()))
    if not is_id(row.get("id")):
        yield _wrong("id", messages()["not_text"], "8 to 64 letters, digits, - or _")
    fields, stamps = row.get("fields"), row.get("stamps")
    if not isinstance(fields, dict) or not isinstance(stamps, dict) or set(fields) != set(stamps):
        yield _wrong("fields", "and stamps must be objects of the same names", "two objects of the same names")
    every = list(stamps.values()) if isinstance(stamps, dict) else []
    every += [row[name] for name in ("deleted", "restored") if row.get(name) is not None]
    if not all(is_stamp(stamp) for stamp in every):
        yield _wrong("stamps", "must look like 1767225600000-00000-phone", _STAMP)
    if not are_moved(row.get("moved", {})):
        yield _wrong("moved", messages()["not_object"], _MOVED)
    for name in ("made_by", "changed_by"):
        if not isinstance(row.get(name), str) or len(row[name]) > 64:
            yield _wrong(name, messages()["not_text"], "up to 64 characters")
    for name in ("made_at", "changed_at"):
        if not is_time(row.get(name)):
            yield _wrong(name, messages()["not_text"], "a time in UTC, as in 2026-05-04T07:30:00.000Z")


@cache
def _schema(kind: str) -> Schema:
    return schema_of(kinds()[kind]["fields"], kind)


_NAMES = ("op", "kind", "id", "type", "fields", "stamp", "schema", "moved")
_KNOWN = frozenset(_NAMES)


def _envelope_errors(op: dict):
    of = op.get
    kind, type_, fields = of("kind"), of("type"), of("fields")
    if not isinstance(kind, str) or kind not in kinds():
        yield _wrong("kind", messages()["not_choice"], ", ".join(kinds()))
    if not is_id(of("id")):
        yield _wrong("id", messages()["not_text"], "8 to 64 letters, digits, - or _")
    if type_ not in TYPES:
        yield _wrong("type", messages()["not_choice"], ", ".join(TYPES))
    if not is_stamp(of("stamp")):
        yield _wrong("stamp", messages()["not_text"], _STAMP)
    if "moved" in op and not are_moved(op["moved"]):
        yield _wrong("moved", messages()["not_object"], _MOVED)
    if type(of("schema")) is not int:
        yield _wrong("schema", messages()["not_integer"], "a whole number")
    if type_ == "put" and not isinstance(fields, dict):
        yield _wrong("fields", messages()["not_object"], "an object with the kind's fields")
    if type_ in ("del", "restore") and fields not in (None, {}):
        yield _wrong("fields", messages()["unknown"], "no fields: only a put carries them")
    if not op.keys() <= _KNOWN:
        for name in op:
            if name not in _KNOWN:
                yield _wrong(name, messages()["unknown"], ", ".join(_NAMES))


def _wrong(field: str, message: str, takes: str) -> dict:
    return {"field": field, "message": message.format(choices=takes), "allowed": takes}
