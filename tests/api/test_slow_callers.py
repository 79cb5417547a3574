"""Slow, silent and greedy callers: each loses its own connection or is told to come back; the others are served."""

import gzip
import json
import socket
import threading
from contextlib import ExitStack

import pytest
from gunicorn.http.errors import NoMoreData
from limnary import deadlines, slow_lane
from limnary.contracts import InvalidInput, contracts, run
from limnary.errors import Busy
from limnary.slow_lane import SlowLane
from started_server import RealServer

HALF_SENT = {
    "a request line": b"POST /api/v1/jo",
    "a head": b"POST /api/v1/join HTTP/1.1\r\nHost: x\r\nContent-Le",
    "a body": b"POST /api/v1/join HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n"
    b"Content-Length: 5000\r\n\r\n{",
}


@pytest.fixture
def server(tmp_path):
    started = RealServer(tmp_path / "data").start()
    yield started
    started.stop()


@pytest.mark.parametrize("part", HALF_SENT)
def test_many_half_sent_requests_leave_the_server_answering(server, part):
    with ExitStack() as held:
        for _ in range(24):
            caller = held.enter_context(socket.create_connection(("127.0.0.1", server.port)))
            caller.sendall(HALF_SENT[part])
        asked = held.enter_context(socket.create_connection(("127.0.0.1", server.port), timeout=15))
        asked.sendall(b"GET /healthz HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n")
        assert asked.recv(64).startswith(b"HTTP/1.1 200")


class Clock:
    now = 0.0

    def __call__(self):
        return self.now


@pytest.fixture
def wire():
    ours, theirs = socket.socketpair()
    with ours, theirs:
        yield ours, theirs


def test_silence_ends_a_request(wire, monkeypatch):
    monkeypatch.setattr(deadlines, "SILENCE_S", 0.01)
    with pytest.raises(NoMoreData):
        deadlines.DeadlineUnreader(wire[0]).chunk()


def test_a_dribble_under_the_least_rate_ends_a_request(wire):
    clock = Clock()
    unreader = deadlines.DeadlineUnreader(wire[0], clock)
    for _ in range(3):
        wire[1].sendall(b"x")
        assert unreader.chunk() == b"x"
        clock.now += 6
    wire[1].sendall(b"x")
    clock.now = deadlines.GRACE_S + 1
    with pytest.raises(NoMoreData):
        unreader.chunk()


def test_a_slow_but_steady_upload_goes_through(wire):
    """A photo of a megabyte at the least rate takes minutes and is taken."""
    clock = Clock()
    unreader = deadlines.DeadlineUnreader(wire[0], clock)
    piece = b"x" * 8000
    for _ in range(120):
        wire[1].sendall(piece)
        assert unreader.chunk() == piece
        clock.now += len(piece) / deadlines.LEAST_BYTES_S


def test_each_request_of_a_kept_connection_has_its_own_time(wire):
    clock = Clock()
    unreader = deadlines.DeadlineUnreader(wire[0], clock)
    clock.now = 1000
    unreader.begin()
    wire[1].sendall(b"x")
    assert unreader.chunk() == b"x"


def test_answers_leave_in_pieces():
    closed = []

    class Answer(list):
        def close(self):
            closed.append(True)

    app = deadlines.in_pieces(lambda environ, start: Answer([b"x" * 150_000, b"y"]))
    answer = app({}, None)
    assert [len(piece) for piece in answer] == [64_000, 64_000, 22_000, 1]
    answer.close()
    assert closed == [True]


@pytest.fixture
def lane():
    made = SlowLane(waiting=1, patience_s=0.05)
    yield made
    made.close()


def example(name="change_plan"):
    return contracts()[name]["examples"][0]["input"]


def test_the_lane_answers_as_the_calculation_does(lane):
    assert lane.answer("free_ammonia", example("free_ammonia")) == run("free_ammonia", example("free_ammonia"))
    with pytest.raises(InvalidInput) as refused:
        lane.answer("free_ammonia", {})
    with pytest.raises(InvalidInput) as here:
        run("free_ammonia", {})
    assert refused.value.errors == here.value.errors


def test_beyond_its_places_the_lane_is_busy(lane):
    lane.enter(), lane.enter()
    with pytest.raises(Busy) as busy:
        lane.enter()
    assert busy.value.headers == {"Retry-After": "5"}
    lane.leave()
    lane.enter()


def test_who_waits_too_long_is_told_to_come_back(lane):
    with lane._turn, pytest.raises(Busy):
        lane.answer("free_ammonia", example("free_ammonia"))


def test_a_calculation_over_its_budget_is_stopped_and_the_next_one_answered(monkeypatch):
    lane = SlowLane(budget_s=0)
    try:
        with pytest.raises(Busy, match="did not end"):
            lane.answer("change_plan", example())
        lane.budget_s = slow_lane.BUDGET_S
        assert "fraction" in lane.answer("change_plan", example())
    finally:
        lane.close()


@pytest.mark.parametrize("name", ["outlook", "change_plan", "stock_headroom"])
def test_the_api_answers_slow_calculations_by_the_lane(fish_room, name):
    lane = fish_room.app.extensions["limnary_slow_lane"]
    asked = []
    lane.answer = lambda *question: asked.append(question) or {"answered": True}
    answer = fish_room.app.test_client().post(f"/api/v1/calc/{name}", json=example(name))
    assert answer.json == {"answered": True}
    assert asked == [(name, example(name))]
    for _ in range(3):
        lane.enter()
    busy = fish_room.app.test_client().post(f"/api/v1/calc/{name}", json=example(name))
    assert busy.status_code == 503
    assert busy.headers["Retry-After"] == "5"
    assert busy.json["type"] == "/problems/busy"


def test_places_are_given_back_after_a_refusal(fish_room):
    client = fish_room.app.test_client()
    for _ in range(5):
        assert client.post("/api/v1/calc/outlook", data="{", content_type="application/json").status_code == 400


@pytest.mark.parametrize("kind", ["text/plain", "application/x-www-form-urlencoded", ""])
def test_only_json_is_taken_as_json(fish_room, kind):
    """A page of another origin may send these without asking the server first."""
    body = json.dumps(example("free_ammonia"))
    answer = fish_room.app.test_client().post("/api/v1/calc/free_ammonia", data=body, content_type=kind)
    assert answer.status_code == 415


def test_one_address_asks_so_often_a_minute(tmp_path):
    from fish_rooms import FishRoom

    room = FishRoom(tmp_path / "data", calls_per_minute=2)
    client = room.app.test_client()

    def ask():
        return client.post("/api/v1/calc/free_ammonia", json=example("free_ammonia"))

    assert [ask().status_code for _ in range(3)] == [200, 200, 429]
    room.at += 60_000
    assert ask().status_code == 200
    room.close()


def test_good_links_work_from_an_address_that_guessed(fish_room):
    client = fish_room.app.test_client()
    wrong = {"secret": "x" * 43, "keeper_name": "Ada", "device_name": "x"}
    statuses = [client.post("/api/v1/join", json=wrong).status_code for _ in range(12)]
    assert statuses == [404] * 10 + [429] * 2
    good = {**wrong, "secret": fish_room.secret("viewer")}
    assert client.post("/api/v1/join", json=good).status_code == 201


def test_a_spent_link_is_no_guess(fish_room):
    client = fish_room.app.test_client()
    spent = {"secret": fish_room.secret("viewer"), "keeper_name": "Ada", "device_name": "x"}
    assert client.post("/api/v1/join", json=spent).status_code == 201
    assert {client.post("/api/v1/join", json=spent).status_code for _ in range(12)} == {410}


def test_a_larger_calculation_than_the_api_takes_is_refused(fish_room):
    body = {"readings": [{"at_h": 1, "parameter": "nitrite", "value": 0.123456}] * 9000}
    assert fish_room.app.test_client().post("/api/v1/calc/outlook", json=body).status_code == 413


def test_pushes_go_on_while_a_slow_calculation_runs(server):
    """The calculation works in a process of its own: this one answers at once."""
    body = json.dumps(example()).encode()
    head = (
        b"POST /api/v1/calc/change_plan HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nConnection: close\r\n"
    )
    answers = []

    def ask():
        with socket.create_connection(("127.0.0.1", server.port), timeout=60) as caller:
            caller.sendall(head + b"Content-Length: %d\r\n\r\n" % len(body) + body)
            answers.append(caller.recv(12))

    asking = [threading.Thread(target=ask) for _ in range(6)]
    for one in asking:
        one.start()
    for one in asking:
        one.join()
    assert set(answers) <= {b"HTTP/1.1 200", b"HTTP/1.1 503"}
    assert b"HTTP/1.1 200" in answers


def test_a_small_request_of_many_strange_fields_gets_a_small_answer(fish_room):
    """Unknown fields, each listing what is allowed, were 146 MB for 42 kB sent."""
    strange = {f"f{n}": 0 for n in range(475)}
    body = gzip.compress(json.dumps({"readings": [strange] * 60}).encode())
    headers = {"Content-Encoding": "gzip", "Content-Type": "application/json"}
    lane = fish_room.app.extensions["limnary_slow_lane"]
    lane.answer = run
    answer = fish_room.app.test_client().post("/api/v1/calc/stock_headroom", data=body, headers=headers)
    assert answer.status_code == 422
    assert len(answer.json["errors"]) == 50
    assert len(answer.data) < 100_000


def test_a_push_of_many_strange_fields_gets_a_small_answer(fish_room):
    phone = fish_room.owner
    ops = [phone.op("tank", {f"f{n}": 0 for n in range(100)}) for _ in range(100)]
    results = phone.results(*ops)
    assert {len(one["errors"]) for one in results} == {10}
