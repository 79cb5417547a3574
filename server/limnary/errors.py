"""Every error that the API answers: one tree, one handler, one shape (RFC 9457, application/problem+json).

LimnaryError                    500 internal
├── Damaged                     500 damaged
├── NewerData                   500 newer-data
├── BadRequest                  400 bad-request
├── KeyRefused                  401 key-unknown, key-revoked
├── NotAllowed                  403 not-allowed
├── NotFound                    404 not-found
├── Conflict                    409 conflict
│   ├── EpochChanged            409 epoch-changed (`epoch`)
│   └── LastOwner               409 last-owner
├── MembershipEnded             410 membership-ended
├── InviteSpent                 410 invite-spent
├── TooSlow                     408 too-slow
├── TooLarge                    413 too-large
├── WrongMedia                  415 media-type
├── Invalid                     422 invalid (`errors`)
├── SchemaUnknown               426 schema (`oldest`, `newest`)
├── TooManyAttempts             429 too-many-attempts
├── Busy                        503 busy
└── StorageFull                 507 storage-full

`type` is `/problems/NAME` and never changes; the words may.
"""

import errno
import logging
import sqlite3

from flask import Flask, Response, json
from werkzeug.exceptions import ClientDisconnected, HTTPException

from limnary.contracts import InvalidInput, UnknownCalculation

log = logging.getLogger("limnary")
LOCKED_RETRY_S = 5


class LimnaryError(Exception):
    """An error that the caller is told about. `extra` holds further members of the problem."""

    status = 500
    name = "internal"
    title = "Something went wrong on the server"

    def __init__(self, detail: str = "", headers: dict[str, str] | None = None, **extra):
        super().__init__(detail or self.title)
        self.detail = detail
        self.headers = headers or {}
        self.extra = extra


class Damaged(LimnaryError):
    """A file of the data is damaged or missing. In words for the terminal and for phones, which keep everything."""

    name, title = "damaged", "A file of this server's data is damaged: whoever runs the server must restore it"


class NewerData(LimnaryError):
    """A file of the data was migrated by a newer version: this one must not touch it."""

    name, title = "newer-data", "These data belong to a newer version of Limnary"


class BadRequest(LimnaryError):
    status, name, title = 400, "bad-request", "The request cannot be read"


class KeyRefused(LimnaryError):
    status, name, title = 401, "key-unknown", "This phone's key is not known here"

    def __init__(self, detail: str = "", *, revoked: bool = False):
        super().__init__(detail, headers={"WWW-Authenticate": 'Bearer realm="limnary"'})
        if revoked:
            self.name, self.title = "key-revoked", "This phone's key was revoked"


class NotAllowed(LimnaryError):
    status, name, title = 403, "not-allowed", "Your role in this room does not allow that"


class NotFound(LimnaryError):
    status, name, title = 404, "not-found", "There is nothing here"


class Conflict(LimnaryError):
    status, name, title = 409, "conflict", "This does not fit what is stored"


class EpochChanged(Conflict):
    name, title = "epoch-changed", "The room was restored from a backup: pull it from the start"


class LastOwner(Conflict):
    name, title = "last-owner", "A room needs an owner: make someone else an owner first"


class MembershipEnded(LimnaryError):
    status, name, title = 410, "membership-ended", "Your membership of this room has ended"


class InviteSpent(LimnaryError):
    status, name, title = 410, "invite-spent", "This invitation was used, withdrawn or is too old: ask for a new one"


class TooSlow(LimnaryError):
    status, name, title = 408, "too-slow", "The request did not arrive in time: send it again"


class TooLarge(LimnaryError):
    status, name, title = 413, "too-large", "The request is too large"


class WrongMedia(LimnaryError):
    status, name, title = 415, "media-type", "This kind of content is not taken here"


class Invalid(LimnaryError):
    status, name, title = 422, "invalid", "The input is not allowed"

    def __init__(self, errors: list[dict]):
        super().__init__(said(errors), errors=errors)


class SchemaUnknown(LimnaryError):
    status, name, title = 426, "schema", "The app on this phone and the server are of different ages: reload the app"


class TooManyAttempts(LimnaryError):
    status, name, title = 429, "too-many-attempts", "Too many attempts: wait a little"


class Busy(LimnaryError):
    status, name, title = 503, "busy", "The server is busy: try again in a few seconds"


class StorageFull(LimnaryError):
    status, name, title = 507, "storage-full", "The server's disk is full: nothing of this request was stored"


def said(errors: list[dict]) -> str:
    """The errors as one sentence, for clients that read only `detail`."""
    return "; ".join(f"{e['field']} {e['message']}".strip() for e in errors)


def problem(status: int, name: str, title: str, detail: str = "", headers: dict | None = None, **extra) -> Response:
    """The response for one problem."""
    body = {"type": f"/problems/{name}", "title": title, "status": status}
    if detail:
        body["detail"] = detail
    answer = Response(json.dumps({**body, **extra}), status=status, content_type="application/problem+json")
    answer.headers.update(headers or {})
    return answer


def install(app: Flask) -> None:
    """Answer every error of `app` as a problem."""
    app.register_error_handler(Exception, _answer)


_HTTP_NAMES = {
    400: ("bad-request", "The request cannot be read"),
    404: ("not-found", "There is nothing here"),
    405: ("method-not-allowed", "This address does not take that method"),
    413: ("too-large", "The request is too large"),
    415: ("media-type", "This kind of content is not taken here"),
}


def _answer(error: Exception) -> Response:
    if isinstance(error, LimnaryError):
        return problem(error.status, error.name, error.title, error.detail, error.headers, **error.extra)
    if isinstance(error, InvalidInput):
        return _answer(Invalid(error.errors))
    if isinstance(error, UnknownCalculation):
        return _answer(NotFound(f"There is no calculation named {error.args[0]!r}; GET /api/v1/calc lists them"))
    if is_full(error):
        return _answer(StorageFull())
    if is_locked(error):
        return _answer(Busy(headers={"Retry-After": str(LOCKED_RETRY_S)}))
    if is_damage(error):
        log.exception("a file of the data is damaged; `limnary check` tells which")
        return _answer(Damaged())
    if isinstance(error, ClientDisconnected):
        return _answer(TooSlow())
    if isinstance(error, HTTPException):
        return _http(error)
    log.exception("an error nobody foresaw")
    return problem(500, "internal", LimnaryError.title, "It has been written to the server's log.")


def _http(error: HTTPException) -> Response:
    if error.code is not None and error.code < 400:
        return error.get_response()  # a redirect
    name, title = _HTTP_NAMES.get(error.code, (f"http-{error.code}", error.name))
    headers = {k: v for k, v in error.get_headers() if k in ("Allow", "Retry-After")}
    return problem(error.code or 500, name, title, "", headers)


def is_full(error: BaseException) -> bool:
    """Whether the disk is full, or the file may not grow."""
    if isinstance(error, OSError):
        return error.errno in (errno.ENOSPC, errno.EDQUOT, errno.EFBIG)
    full = (sqlite3.SQLITE_FULL, sqlite3.SQLITE_IOERR)
    return isinstance(error, sqlite3.DatabaseError) and _code(error) in full


def is_locked(error: BaseException) -> bool:
    """Whether another process held a file for longer than this one waits."""
    return isinstance(error, sqlite3.DatabaseError) and _code(error) in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED)


def is_damage(error: BaseException) -> bool:
    """Whether SQLite found that a file is not whole, or is no database."""
    return isinstance(error, sqlite3.DatabaseError) and _code(error) in (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB)


def _code(error: sqlite3.DatabaseError) -> int:
    # Some errors that sqlite3 raises itself, such as text that is not UTF-8, have no code.
    return getattr(error, "sqlite_errorcode", 0) & 0xFF
