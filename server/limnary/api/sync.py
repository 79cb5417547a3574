"""Push, pull and photos of one room."""

import re

from flask import Blueprint, Response, request

from limnary.api.forms import BRING_BACK, PUSH
from limnary.api.reading import body_bytes, body_fields, config, device, store
from limnary.contracts import MOST_ERRORS, InvalidInput
from limnary.errors import NotFound
from limnary.ids import utc
from limnary.protocol.records import is_id
from limnary.store.change_log import MOST_ROWS

blueprint = Blueprint("sync", __name__, url_prefix="/api/v1/rooms/<room>")
MOST_DAYS = 60
SHA256 = re.compile(r"[0-9a-f]{64}", re.ASCII)


@blueprint.post("/push")
def push(room: str):
    """Apply ops; one result each."""
    # Refuse strangers before reading the body; `Store.push` asks for the role again under the write lock.
    caller = device()
    store().role(room, caller)
    given = body_fields("push", PUSH)
    nameless = [
        {"field": f"ops.{at}.op", "message": "is needed", "allowed": "8 to 64 letters, digits, - or _"}
        for at, op in enumerate(given["ops"])
        if not is_id(op.get("op"))
    ]
    if nameless:
        raise InvalidInput(nameless[:MOST_ERRORS])
    results = store().push(room, caller, given["epoch"], given["ops"])
    return {"epoch": given["epoch"], "server_time": now(), "results": results}


@blueprint.post("/bring-back")
def bring_back(room: str):
    """Take rows that a restored server may lack; one result each."""
    caller = device()
    store().role(room, caller)
    given = body_fields("bring_back", BRING_BACK)
    named = (given.get("people") or {}).items()
    people = {keeper: name[:60] for keeper, name in named if is_id(keeper) and isinstance(name, str) and name.strip()}
    results = store().bring_back(room, caller, given["epoch"], given["rows"], people)
    return {"epoch": given["epoch"], "server_time": now(), "results": results}


@blueprint.get("/pull")
def pull(room: str):
    """Rows changed since a cursor; with `ahead_days`, what the Round needs first of those that follow."""
    caller = device()
    since, limit = _whole("since", 0, 2**53 - 1, 0), _whole("limit", 1, MOST_ROWS, 500)
    ahead_days = _whole("ahead_days", 1, MOST_DAYS, 30) if "ahead_days" in request.args else None
    epoch = request.args.get("epoch", "")
    page = store().pull(room, caller, epoch, since, limit, ahead_days)
    return {"epoch": epoch, "since": since, "server_time": now(), **page}


@blueprint.put("/blobs/<sha256>")
def put_photo(room: str, sha256: str):
    """Store a photo's bytes; repeating it changes nothing."""
    caller = device()
    store().role(room, caller)
    _hash(sha256)
    new = store().put_photo(room, caller, sha256, body_bytes(config().photo_limit_bytes))
    return {"sha256": sha256}, 201 if new else 200


@blueprint.get("/blobs/<sha256>")
def photo(room: str, sha256: str):
    """A photo's bytes, with a sandbox policy because they came from someone else's phone."""
    caller = device()
    store().role(room, caller)
    found = store().photo(room, caller, _hash(sha256))
    answer = Response(found["bytes"], content_type=found["media_type"])
    answer.headers["Content-Security-Policy"] = "default-src 'none'; sandbox"
    return answer


def now() -> str:
    """The server's time as text."""
    return utc(store().clock())


def _hash(text: str) -> str:
    if not SHA256.fullmatch(text):
        raise NotFound("A photo's address ends in 64 hexadecimal digits")
    return text


def _whole(name: str, least: int, most: int, default: int) -> int:
    text = request.args.get(name)
    if text is None:
        return default
    if not re.fullmatch(r"[0-9]{1,16}", text, re.ASCII) or not least <= int(text) <= most:
        takes = f"a whole number from {least} to {most}"
        raise InvalidInput([{"field": name, "message": f"must be {takes}", "allowed": takes}])
    return int(text)
