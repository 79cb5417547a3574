"""Every refusal has one shape: RFC 9457 problem details with a stable type."""

import gzip
import json
import socket

import pytest
from limnary.headers import HEADERS
from started_server import RealServer

JSON = {"content_type": "application/json"}
AMMONIA = "/api/v1/calc/free_ammonia"
GOOD = b'{"tan_mg_n_l": 1, "ph": 8, "temperature_c": 25}'
TOO_BIG = b'{"note": "' + b"a" * 2_000_000 + b'"}'
DEEP = b"[" * 100_000

CASES = {
    "unknown page": ("GET", "/api/v1/nothing", {}, 404, "not-found"),
    "unknown calculation": ("POST", "/api/v1/calc/nothing", {"data": GOOD, **JSON}, 404, "not-found"),
    "unknown contract": ("GET", "/api/v1/calc/nothing", {}, 404, "not-found"),
    "missing file": ("GET", "/nothing.js", {"headers": {"Accept": "text/html"}}, 404, "not-found"),
    "climbing path": ("GET", "/../pyproject.toml", {}, 404, "not-found"),
    "file for developers": ("GET", "/package.json", {}, 404, "not-found"),
    "no authority": ("GET", "/authority.crt", {}, 404, "not-found"),
    "wrong method": ("DELETE", AMMONIA, {}, 405, "method-not-allowed"),
    "read what is only written": ("GET", "/api/v1/join", {}, 405, "method-not-allowed"),
    "broken JSON": ("POST", AMMONIA, {"data": b'{"ph": ', **JSON}, 400, "bad-request"),
    "empty body": ("POST", AMMONIA, {"data": b"", **JSON}, 400, "bad-request"),
    "not UTF-8": ("POST", AMMONIA, {"data": b'{"ph": "\xff"}', **JSON}, 400, "bad-request"),
    "lone surrogate": ("POST", AMMONIA, {"data": b'{"ph": "\\ud800"}', **JSON}, 400, "bad-request"),
    "nested without end": ("POST", AMMONIA, {"data": DEEP, **JSON}, 400, "bad-request"),
    "number of 5000 digits": ("POST", AMMONIA, {"data": b'{"ph": 1' + b"0" * 5000 + b"}", **JSON}, 400, "bad-request"),
    "2 MB body": ("POST", AMMONIA, {"data": TOO_BIG, **JSON}, 413, "too-large"),
    "gzip bomb": (
        *("POST", AMMONIA),
        {"data": gzip.compress(b" " * 20_000_000), "headers": {"Content-Encoding": "gzip"}, **JSON},
        *(413, "too-large"),
    ),
    "cut gzip": (
        *("POST", AMMONIA),
        {"data": gzip.compress(GOOD)[:-6], "headers": {"Content-Encoding": "gzip"}, **JSON},
        *(400, "bad-request"),
    ),
    "unknown encoding": (
        "POST",
        AMMONIA,
        {"data": GOOD, "headers": {"Content-Encoding": "br"}, **JSON},
        415,
        "media-type",
    ),
    "not an object": ("POST", AMMONIA, {"data": b"[1]", **JSON}, 422, "invalid"),
    "no key": ("GET", "/api/v1/me", {}, 401, "key-unknown"),
    "key of another kind": ("GET", "/api/v1/me", {"headers": {"Authorization": "Basic eDp5"}}, 401, "key-unknown"),
    "unknown key": ("GET", "/api/v1/me", {"headers": {"Authorization": "Bearer abc"}}, 401, "key-unknown"),
    "join without a secret": ("POST", "/api/v1/join", {"data": b"{}", **JSON}, 422, "invalid"),
    "join by a wrong secret": (
        *("POST", "/api/v1/join"),
        {"data": b'{"secret": "not-a-secret", "keeper_name": "A", "device_name": "B"}', **JSON},
        *(404, "not-found"),
    ),
}


@pytest.mark.parametrize(("method", "path", "more", "status", "name"), CASES.values(), ids=CASES)
def test_anyone_is_refused_in_one_shape(fish_room, method, path, more, status, name):
    is_problem(fish_room.app.test_client().open(path, method=method, **more), status, name)


OWNED = {
    "unknown room": ("GET", "/rooms/0000000000000000/people", None, 404, "not-found"),
    "room of no shape": ("GET", "/rooms/..%2F..%2Fetc/pull", None, 404, "not-found"),
    "other epoch": ("GET", "/rooms/{room}/pull?epoch=old", None, 409, "epoch-changed"),
    "push of other epoch": ("POST", "/rooms/{room}/push", {"epoch": "old", "ops": []}, 409, "epoch-changed"),
    "op without a name": ("POST", "/rooms/{room}/push", {"epoch": "old", "ops": [{}]}, 422, "invalid"),
    "op that is no object": ("POST", "/rooms/{room}/push", {"epoch": "old", "ops": [3]}, 422, "invalid"),
    "cursor in words": ("GET", "/rooms/{room}/pull?since=first", None, 422, "invalid"),
    "cursor below zero": ("GET", "/rooms/{room}/pull?since=-1", None, 422, "invalid"),
    "page too long": ("GET", "/rooms/{room}/pull?limit=100000", None, 422, "invalid"),
    "unknown role": ("POST", "/rooms/{room}/invites", {"role": "king"}, 422, "invalid"),
    "invitation for years": ("POST", "/rooms/{room}/invites", {"hours": 100000}, 422, "invalid"),
    "unknown invitation": ("DELETE", "/rooms/{room}/invites/00000000", None, 404, "not-found"),
    "unknown keeper": ("PATCH", "/rooms/{room}/people/00000000", {"role": "viewer"}, 404, "not-found"),
    "unknown phone": ("DELETE", "/devices/00000000", None, 404, "not-found"),
    "unknown photo": ("GET", f"/rooms/{{room}}/blobs/{'0' * 64}", None, 404, "not-found"),
    "photo without a hash": ("GET", "/rooms/{room}/blobs/abc", None, 404, "not-found"),
    "room without a name": ("POST", "/rooms", {"name": ""}, 422, "invalid"),
}


@pytest.mark.parametrize(("method", "path", "body", "status", "name"), OWNED.values(), ids=OWNED)
def test_an_owner_is_refused_in_one_shape(fish_room, method, path, body, status, name):
    is_problem(fish_room.owner.call(method, path, body), status, name)


def test_last_owner_cannot_go(fish_room):
    owner = fish_room.owner
    is_problem(owner.call("DELETE", f"/rooms/{{room}}/people/{owner.keeper}"), 409, "last-owner")
    is_problem(owner.call("PATCH", f"/rooms/{{room}}/people/{owner.keeper}", {"role": "keeper"}), 409, "last-owner")


def test_newer_schema_must_upgrade_first(fish_room):
    answer = fish_room.owner.push(fish_room.owner.tank(), {**fish_room.owner.tank(), "schema": 99})
    is_problem(answer, 426, "schema")
    assert (answer.json["kind"], answer.json["oldest"], answer.json["newest"]) == ("tank", 1, 1)
    assert fish_room.owner.rows() == {}


def test_unforeseen_error_tells_nothing_of_the_inside(fish_room, monkeypatch, caplog):
    def broken(*_):
        raise RuntimeError("a secret inside")

    monkeypatch.setattr(fish_room.store, "rooms_of", broken)
    answer = fish_room.owner.call("GET", "/me")
    is_problem(answer, 500, "internal")
    assert "secret" not in answer.text
    assert "a secret inside" in caplog.text
    assert fish_room.owner.key not in caplog.text


def is_problem(answer, status, name):
    assert (answer.status_code, answer.content_type) == (status, "application/problem+json")
    body = answer.json
    assert body["type"] == f"/problems/{name}"
    assert body["status"] == status
    assert body["title"]
    assert answer.headers["Cache-Control"] == "no-store"
    if status == 401:
        assert answer.headers["WWW-Authenticate"].startswith("Bearer")
    if status == 422:
        assert body["errors"]
        for error in body["errors"]:
            assert set(error) == {"field", "message", "allowed"}
            assert error["message"] and error["allowed"]


def test_no_proxy_stores_how_the_server_is(fish_room):
    assert fish_room.app.test_client().get("/healthz").headers["Cache-Control"] == "no-store"


def test_a_wrong_method_is_told_the_right_ones(fish_room):
    """The app's pages answer any other address, and must not answer for the API's."""
    client = fish_room.app.test_client()
    for answer in (client.get("/api/v1/join"), client.options("/api/v1/join")):
        assert set(answer.headers["Allow"].split(", ")) == {"POST", "OPTIONS"}
    assert set(client.get(f"{AMMONIA}/more").headers) & {"Allow"} == set()


POST = b"POST /api/v1/join HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n"
UNREADABLE = {
    "no request": (b"NOTHING\r\n\r\n", 400, "bad-request"),
    "an address too long": (b"GET /" + b"a" * 9000 + b" HTTP/1.1\r\nHost: x\r\n\r\n", 414, "address-too-long"),
    "headers too large": (b"GET / HTTP/1.1\r\nHost: x\r\nX: " + b"y" * 9000 + b"\r\n\r\n", 431, "headers-too-large"),
    "two lengths": (POST + b"Content-Length: 2\r\nContent-Length: 3\r\n\r\n{}", 400, "bad-request"),
    "another coding": (POST + b"Transfer-Encoding: foo\r\n\r\n", 501, "transfer-coding"),
    "another expectation": (POST + b"Expect: foo\r\nContent-Length: 2\r\n\r\n{}", 417, "expectation-failed"),
    "broken chunks": (POST + b"Transfer-Encoding: chunked\r\n\r\nZZ\r\n{}\r\n0\r\n\r\n", 400, "bad-request"),
}


def test_what_cannot_be_read_at_all_is_refused_in_the_same_shape(tmp_path):
    """gunicorn refuses these before the app sees them."""
    server = RealServer(tmp_path / "data").start()
    try:
        for sent, status, name in UNREADABLE.values():
            with socket.create_connection(("127.0.0.1", server.port), timeout=30) as caller:
                caller.sendall(sent)
                head, _, body = caller.makefile("rb").read().partition(b"\r\n\r\n")
            first, *lines = head.decode().split("\r\n")
            headers = dict(line.split(": ", 1) for line in lines)
            assert first.split()[1] == str(status), sent
            assert HEADERS.items() <= headers.items(), sent
            assert (headers["Content-Type"], headers["Cache-Control"]) == ("application/problem+json", "no-store")
            problem = json.loads(body)
            assert (problem["type"], problem["status"]) == (f"/problems/{name}", status)
        assert "Traceback" not in server.out
    finally:
        server.stop()
