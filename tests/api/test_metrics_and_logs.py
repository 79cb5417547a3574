"""Figures about the server on a local port, and its log as JSON: what they tell, and that no secret is in them."""

import json
import socket
import time
import urllib.request
from pathlib import Path

import pytest
from fish_rooms import FishRoom
from limnary import metrics
from limnary.cli import main
from limnary.config import BadSetting, Config
from limnary.store import daily
from prometheus_client import generate_latest
from prometheus_client.parser import text_string_to_metric_families
from started_server import LINK, RealServer, call, free_port, join


def figures(text: str) -> dict:
    """Every sample by name and labels; the text must be in the format."""
    return {
        (one.name, *sorted(one.labels.values())): one.value
        for family in text_string_to_metric_families(text)
        for one in family.samples
    }


@pytest.fixture
def fish_room(tmp_path):
    """A room on a server that counts; nothing listens on the port, because nothing starts it."""
    made = FishRoom(tmp_path / "data", metrics_port=1)
    yield made
    made.close()


def told_by(fish_room) -> str:
    return generate_latest(fish_room.app.extensions["limnary_metrics"]).decode()


def test_what_is_told(fish_room):
    fish_room.owner.results(fish_room.owner.tank())
    fish_room.owner.call("GET", "/rooms/nowhere/pull")
    fish_room.app.test_client().get("/no/such/page.txt")
    backups = fish_room.app.extensions["limnary_backups"]
    backups.run_if_due()
    backups.notes.faults = ["missing"]
    told = figures(told_by(fish_room))
    push = "/api/v1/rooms/<room>/push"
    assert told["limnary_requests_total", push, "200", "POST"] == 1
    assert told["limnary_request_seconds_count", push] == 1
    assert told["limnary_request_seconds_count", "/api/v1/rooms/<room>/pull"] == 1
    assert told["limnary_rooms",] == 1
    assert told["limnary_rooms_bytes",] > 10_000
    assert told["limnary_disk_free_bytes",] > 0
    assert told["limnary_backup_last_good_timestamp_seconds",] == fish_room.at / 1000
    assert told["limnary_backups_kept",] == 1
    assert [fault for fault in daily.FAULTS if told["limnary_backup_fault", fault]] == ["missing"]
    assert told["process_resident_memory_bytes",] > 0


def test_no_figure_names_a_person_a_room_or_a_key(fish_room):
    kim = fish_room.phone("keeper", "Kim")
    kim.results(kim.tank())
    kim.call("GET", f"/rooms/{{room}}/people/{kim.keeper}")
    fish_room.app.test_client().get(f"/{kim.key}?key={kim.key}")
    told = told_by(fish_room)
    for hidden in (kim.key, kim.keeper, kim.device, fish_room.id, "Kim"):
        assert hidden not in told


@pytest.fixture
def server(tmp_path):
    port = free_port()
    made = RealServer(tmp_path / "data", "--log-json", "--metrics", str(port))
    made.metrics_port = port
    yield made.start()
    if made.process.poll() is None:
        made.stop()


def test_a_running_server_tells_its_figures_on_this_machine_alone(server):
    with urllib.request.urlopen(f"http://127.0.0.1:{server.metrics_port}/metrics", timeout=30) as answer:
        told = figures(answer.read().decode())
    assert told["limnary_request_seconds_count", "/healthz"] >= 1
    assert call(server, "GET", "/metrics")[0] == 404, "not on the port that phones reach"
    sockets = [line.split() for line in Path("/proc/net/tcp").read_text().splitlines()[1:]]
    bound = {own for _, own, _, state, *_ in sockets if own.endswith(f":{server.metrics_port:04X}") and state == "0A"}
    assert bound == {f"0100007F:{server.metrics_port:04X}"}, "127.0.0.1 and no other address listens"


def raw(server, text: str) -> None:
    """Bytes that are no request, as a broken program sends them."""
    with socket.create_connection(("127.0.0.1", server.port), timeout=30) as out:
        out.sendall(text.encode())
        assert b" 400 " in out.recv(1000)


def test_one_json_line_a_request_and_no_secret(server):
    secret = LINK.findall(server.out)[-1][1]
    _, joined = join(server, secret)
    room, key = f"/api/v1/rooms/{joined['room']['id']}", joined["key"]
    _, made = call(server, "POST", f"{room}/invites", {}, key)
    _, calendar = call(server, "POST", f"{room}/calendar", None, key)
    join(server, made["secret"], "Kim")
    urllib.request.urlopen(f"{server.url}/api/v1/calendar.ics?key={calendar['key']}", timeout=30).close()
    call(server, "GET", "/api/v1/me", key="a-wrong-key-that-nobody-has")
    raw(server, f"GET /api/v1/calendar.ics?key={calendar['key']} twice HTTP/1.1\r\n\r\n")
    raw(server, f"GET /api/v1/me HTTP/1.1\r\nAuthorization Bearer {key}\r\n\r\n")
    raw(server, f"GET /api/v1/me HTTP/1.1\r\nAuthori zation: Bearer {key}\r\n\r\n")
    before = server.out.index("Stop with Ctrl-C.")
    server.stop()
    lines = [json.loads(line) for line in server.out[before:].splitlines()[1:] if line]
    requests = [line for line in lines if "path" in line]
    assert {(one["method"], one["path"], one["status"]) for one in requests} >= {
        ("GET", "/healthz", 200),
        ("POST", "/api/v1/join", 201),
        ("GET", "/api/v1/calendar.ics", 200),
        ("GET", "/api/v1/me", 401),
    }
    for one in requests:
        assert set(one) == {"time", "method", "path", "status", "bytes", "ms", "address"}
    assert sum("Invalid request" in line.get("message", "") for line in lines) == 3
    for hidden in (key, made["secret"], calendar["key"], "a-wrong-key-that-nobody-has", "Kim", "Bearer"):
        assert hidden not in server.out
    assert server.out.count(secret) == 1, "only as the link that the start printed"


# A fault in the app itself.
FAULT = "from limnary.store import Store; Store.check = lambda _: 1 // 0"


def test_a_fault_is_a_json_line_with_its_trace(tmp_path):
    server = RealServer(tmp_path / "data", "--log-json", first=FAULT)
    server._wait = lambda: None
    server.start()
    for _ in range(600):
        try:
            if call(server, "GET", "/healthz")[0] == 500:
                break
        except OSError:
            time.sleep(0.05)
    server.stop()
    (fault,) = [json.loads(line) for line in server.out.splitlines() if "ZeroDivisionError" in line]
    assert (fault["level"], fault["message"]) == ("error", "an error nobody foresaw")
    assert "Traceback" in fault["trace"]


def test_a_port_that_is_taken_costs_the_figures_only_and_is_said_at_the_start(tmp_path, capsys, caplog, fish_room):
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        port = taken.getsockname()[1]
        assert main(["serve", "--data", str(tmp_path), "--port", str(free_port()), "--metrics", str(port)]) == 1
        assert "choose another with --metrics" in capsys.readouterr().err
        metrics.serve(fish_room.app.extensions["limnary_metrics"], port)
        assert f"no metrics on port {port}" in caplog.text


@pytest.mark.parametrize(
    ("name", "text", "allowed"),
    [
        ("LIMNARY_METRICS", "70000", "1 to 65535"),
        ("LIMNARY_METRICS", "x", "1 to 65535"),
        ("LIMNARY_LOG", "xml", "json"),
    ],
)
def test_a_setting_that_cannot_be_used_says_what_can(monkeypatch, name, text, allowed):
    monkeypatch.setenv(name, text)
    with pytest.raises(BadSetting, match=allowed):
        Config()
