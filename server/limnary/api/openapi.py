"""The API's own description (OpenAPI 3.1), made from the contracts, the record kinds and the API's forms."""

from functools import cache
from importlib.metadata import PackageNotFoundError, version

from apispec import APISpec
from flask import Blueprint

from limnary.api import forms
from limnary.api.json_schema import input_schema, object_schema, value_schema
from limnary.contracts import contracts
from limnary.protocol.records import ID, TYPES, kinds, versions
from limnary.protocol.stamps import STAMP

blueprint = Blueprint("openapi", __name__)


@blueprint.get("/api/v1/openapi.json")
def openapi():
    """The OpenAPI document."""
    return description()


@cache
def description() -> dict:
    """The OpenAPI document, built once."""
    spec = APISpec(
        title="Limnary",
        version=_version(),
        openapi_version="3.1.0",
        info={"description": "Figures and records for keepers of planted freshwater tanks. Calculations need no key."},
        servers=[{"url": "/"}],
    )
    spec.components.security_scheme("key", {"type": "http", "scheme": "bearer"})
    _problem(spec)
    for name, contract in contracts().items():
        _calculation(spec, name, contract)
    for name, kind in kinds().items():
        schema = {**object_schema(kind["fields"]), "title": kind["title"], "description": kind["purpose"]}
        spec.components.schema(f"record_{name}", schema)
    for path, operations in _paths().items():
        spec.path(path=path, operations=operations, parameters=_path_parameters(path))
    return spec.to_dict()


def _version() -> str:
    try:
        return version("limnary")
    except PackageNotFoundError:
        return "0"


def _problem(spec: APISpec) -> None:
    text = {"type": "string"}
    error = {"type": "object", "properties": {"field": text, "message": text, "allowed": text}}
    members = {"type": text, "title": text, "status": {"type": "integer"}, "detail": text}
    spec.components.schema(
        "problem",
        {
            "type": "object",
            "description": "RFC 9457 problem details",
            "required": ["type", "title", "status"],
            "properties": {**members, "errors": {"type": "array", "items": error}},
        },
    )
    content = {"application/problem+json": {"schema": {"$ref": "#/components/schemas/problem"}}}
    spec.components.response("problem", {"description": "Refused, and why", "content": content})


def _calculation(spec: APISpec, name: str, contract: dict) -> None:
    outputs = {output["name"]: value_schema({**output, "bare": True}) for output in contract["outputs"]}
    notes = {"type": "array", "items": {}}
    answer = {
        "type": "object",
        "properties": {**outputs, "cautions": notes, "notes": notes, "sources": notes},
        "required": ["cautions", "notes", "sources"],
    }
    spec.components.schema(f"{name}_input", input_schema(contract))
    spec.components.schema(f"{name}_answer", answer)
    examples = {case["id"]: {"value": case["input"]} for case in contract["examples"]}
    body = {"schema": {"$ref": f"#/components/schemas/{name}_input"}, "examples": examples}
    operation = {
        "operationId": f"calc_{name}",
        "summary": contract["title"],
        "description": contract["purpose"],
        "tags": ["calculations"],
        "requestBody": {"required": True, "content": {"application/json": body}},
        "responses": {
            "200": _json("The answer", {"$ref": f"#/components/schemas/{name}_answer"}),
            **_refusals(400, 413, 415, 422),
        },
    }
    one = {
        "operationId": f"contract_{name}",
        "summary": f"{contract['title']}: the contract",
        "tags": ["calculations"],
        "responses": {"200": _json("The contract", {"type": "object"})},
    }
    spec.path(path=f"/api/v1/calc/{name}", operations={"get": one, "post": operation})


def _paths() -> dict[str, dict]:
    room = "/api/v1/rooms/{room}"
    return {
        "/healthz": {"get": _operation("healthz", "Whether the server is well", key=False)},
        "/api/v1/calc": {"get": _operation("calculations", "Every calculation", key=False)},
        "/api/v1/join": {"post": _operation("join", "Enter a room by an invitation", forms.JOIN, 201, None)},
        "/api/v1/join/code": {
            "post": _operation("join_code", "The secret that a short code stands for", forms.JOIN_CODE, key=None)
        },
        "/api/v1/me": {"get": _operation("me", "Who this phone is")},
        "/api/v1/rooms": {"post": _operation("new_room", "A room of one's own", forms.ROOM, 201)},
        room: {"patch": _operation("rename_room", "Rename a room (owner)", forms.ROOM)},
        f"{room}/people": {"get": _operation("people", "Members and their phones")},
        f"{room}/people/{{keeper}}": {
            "patch": _operation("set_role", "Another role (owner)", forms.ROLE),
            "delete": _operation("end_membership", "End a membership, or leave", status=204),
        },
        f"{room}/invites": {
            "get": _operation("invites", "Open invitations (owner)"),
            "post": _operation("invite", "Make an invitation (owner)", forms.INVITE, 201),
        },
        f"{room}/invites/{{invitation}}/code": {
            "post": _operation("short_code", "A short code to type for a link, open ten minutes", forms.CODE, 201)
        },
        f"{room}/invites/{{invitation}}": {"delete": _operation("withdraw", "Close an invitation (owner)", status=204)},
        f"{room}/upkeep": {"get": _operation("upkeep", "The server's daily backups, and what is wrong (owner)")},
        f"{room}/calendar": {
            "get": _operation("calendar_held", "Since when this keeper has a calendar link"),
            "post": _operation("make_calendar", "A calendar link of one's own, in place of the former", status=201),
            "delete": _operation("revoke_calendar", "Close one's own calendar link", status=204),
        },
        "/api/v1/calendar.ics": {
            "get": {
                **_bytes(_operation("calendar", "The tasks as a calendar", key=False), {"text/calendar": {}}, 404),
                "parameters": [{"name": "key", "in": "query", "required": True, "schema": {"type": "string"}}],
            }
        },
        "/api/v1/devices/{device}": {"delete": _operation("revoke", "Revoke a phone's key", status=204)},
        f"{room}/push": {"post": _with_ops(_operation("push", "Apply writes, each once", forms.PUSH))},
        f"{room}/bring-back": {
            "post": _operation("bring_back", "Give a restored server the rows it lacks", forms.BRING_BACK)
        },
        f"{room}/pull": {"get": {**_operation("pull", "Rows changed since a cursor"), "parameters": _PULL}},
        f"{room}/export": {"get": _bytes(_operation("export", "The room's archive"), {"application/zip": {}})},
        f"{room}/blobs/{{sha256}}": {
            "get": _bytes(_operation("photo", "A photo's bytes"), _PHOTO),
            "put": {**_operation("put_photo", "Keep a photo's bytes", status=201), "requestBody": _PHOTO_BODY},
        },
    }


_PHOTO = {kind: {} for kind in ("image/jpeg", "image/png", "image/webp")}
_PHOTO_BODY = {"required": True, "content": _PHOTO}
_PULL = [
    {"name": "epoch", "in": "query", "required": True, "schema": {"type": "string"}},
    {"name": "since", "in": "query", "schema": {"type": "integer", "minimum": 0, "maximum": 2**53 - 1, "default": 0}},
    {"name": "limit", "in": "query", "schema": {"type": "integer", "minimum": 1, "maximum": 1000, "default": 500}},
    {"name": "ahead_days", "in": "query", "schema": {"type": "integer", "minimum": 1, "maximum": 60}},
]


def _bytes(operation: dict, content: dict, *refused: int) -> dict:
    """The operation with an answer of these media types, and with these refusals."""
    answer = {"description": "The bytes", "content": content}
    return {**operation, "responses": {**operation["responses"], **_refusals(*refused), "200": answer}}


def _op() -> dict:
    """One write of a push. What is wrong with one is told in its result, so the rest of the push counts."""
    known = versions().values()
    schemas = {"minimum": min(oldest for oldest, _ in known), "maximum": max(newest for _, newest in known)}
    properties = {
        **{name: {"type": "string", "pattern": f"^(?:{ID.pattern})$"} for name in ("op", "id")},
        "kind": {"enum": list(kinds())},
        "type": {"enum": list(TYPES)},
        "fields": {"type": "object", "description": "The fields that a put sets: `record_KIND` describes them"},
        "stamp": {"type": "string", "pattern": f"^(?:{STAMP.pattern})$"},
        "schema": {"type": "integer", **schemas},
        "moved": {"type": "object", "description": "Stamps as written: the earlier ones that a server took them for"},
    }
    needed = ["op", "kind", "id", "type", "stamp", "schema"]
    return {"type": "object", "properties": properties, "required": needed, "additionalProperties": False}


def _with_ops(operation: dict) -> dict:
    body = operation["requestBody"]["content"]["application/json"]["schema"]
    body["properties"]["ops"]["items"] = _op()
    return operation


def _operation(name: str, summary: str, fields: list | None = None, status: int = 200, key: bool | None = True) -> dict:
    """One operation; `key` is True (required), None (optional) or False (ignored)."""
    answer = {"description": "Done"} if status == 204 else _json("The answer", {"type": "object"})
    out = {"operationId": name, "summary": summary, "responses": {str(status): answer}}
    if fields is not None:
        content = {"application/json": {"schema": object_schema(fields)}}
        out["requestBody"] = {"required": True, "content": content}
    if key is not False:
        out["security"] = [{"key": []}] if key else [{}, {"key": []}]
        out["responses"] |= _refusals(400, 401, 403, 404, 409, 410, 413, 415, 422, 426, 429)
    return out


def _refusals(*statuses: int) -> dict:
    return {str(status): {"$ref": "#/components/responses/problem"} for status in statuses}


def _json(words: str, schema: dict) -> dict:
    return {"description": words, "content": {"application/json": {"schema": schema}}}


def _path_parameters(path: str) -> list[dict]:
    names = [part[1:-1] for part in path.split("/") if part.startswith("{")]
    return [{"name": name, "in": "path", "required": True, "schema": {"type": "string"}} for name in names]
