"""Reads requests: JSON bodies, plain or gzip, within their limits, and the phone's key."""

import zlib

from flask import current_app, g, json, request
from gunicorn.http.errors import ParseException
from marshmallow import Schema
from werkzeug.exceptions import RequestEntityTooLarge

from limnary.contracts import InvalidInput, load, schema_of
from limnary.errors import BadRequest, KeyRefused, TooLarge, WrongMedia
from limnary.schema_files import messages


def store():
    """The store of this app."""
    return current_app.extensions["limnary_store"]


def config():
    """The settings of this app."""
    return current_app.extensions["limnary_config"]


def device() -> dict:
    """The device whose key came with the request; KeyRefused without one."""
    if "device" not in g:
        g.device = store().identify(_bearer())
    return g.device


def device_if_any() -> dict | None:
    """The device, or None if the request carries no key at all."""
    return device() if "Authorization" in request.headers else None


def _bearer() -> str:
    scheme, _, key = request.headers.get("Authorization", "").partition(" ")
    if scheme.lower() != "bearer" or not key.strip():
        raise KeyRefused("Send the phone's key as `Authorization: Bearer KEY`")
    return key.strip()


def body_bytes(limit: int) -> bytes:
    """The body, unpacked; TooLarge above `limit` on the wire or above the unpacked limit."""
    # One byte more than is taken: a chunked body has no length to refuse it by, and is cut there without a word.
    request.max_content_length = limit + 1
    try:
        raw = request.get_data(cache=False)
    except RequestEntityTooLarge:
        raise TooLarge(f"At most {limit} bytes are taken in one request") from None
    except ParseException as bad:
        raise BadRequest(f"The body's chunks cannot be read: {bad}") from None
    if len(raw) > limit:
        raise TooLarge(f"At most {limit} bytes are taken in one request")
    encoding = request.headers.get("Content-Encoding", "identity").strip().lower()
    if encoding in ("identity", ""):
        return raw
    if encoding != "gzip":
        raise WrongMedia("Content-Encoding may be gzip or absent")
    return _unpack(raw, config().unpacked_limit_bytes)


def _unpack(raw: bytes, limit: int) -> bytes:
    unpacker = zlib.decompressobj(wbits=31)
    try:
        out = unpacker.decompress(raw, limit + 1)
    except zlib.error:
        raise BadRequest("The body is not whole gzip") from None
    if len(out) > limit:
        raise TooLarge(f"At most {limit} bytes are taken once unpacked")
    if not unpacker.eof or unpacker.unused_data:
        raise BadRequest("The body is not whole gzip")
    return out


def body_json(limit: int | None = None) -> object:
    """The body as JSON, of at most `limit` bytes (packed or not) if there is one.

    NaN and infinity pass here, so that the check of the field can name them. The type must be said: a page of another
    origin cannot send `application/json` without the browser asking this server first.
    """
    if request.mimetype != "application/json":
        raise WrongMedia("Send JSON, with `Content-Type: application/json`")
    raw = body_bytes(limit or config().json_limit_bytes)
    if limit and len(raw) > limit:
        raise TooLarge(f"At most {limit} bytes are taken here once unpacked")
    try:
        value = json.loads(raw.decode("utf-8"))
        # Most bodies hold no backslash at all, which is the quicker question.
        if b"\\" in raw and b"\\u" in raw:
            json.dumps(value, ensure_ascii=False).encode("utf-8")  # refuses a lone surrogate, which is not text
    except (ValueError, RecursionError) as bad:
        reason = "it nests too deeply" if isinstance(bad, RecursionError) else str(bad)
        raise BadRequest(f"The body must be JSON in UTF-8: {reason}") from None
    return value


def body_fields(name: str, inputs: list[dict]) -> dict:
    """The body as an object of these fields, checked like a contract's input; InvalidInput."""
    payload = body_json()
    if not isinstance(payload, dict):
        raise InvalidInput([{"field": "", "message": messages()["not_body"], "allowed": messages()["allowed_body"]}])
    return load(_schema(name, inputs), inputs, payload)


_made: dict[str, Schema] = {}


def _schema(name: str, inputs: list[dict]) -> Schema:
    if name not in _made:
        _made[name] = schema_of(inputs, name)
    return _made[name]
