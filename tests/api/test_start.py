"""The server as a person starts it: links, one server per folder, plain words if it cannot, no secret in any log."""

import os
import signal
import ssl
import subprocess
import sys
import urllib.error
import urllib.request

import pytest
from started_server import LINK, ROOT, RealServer, call, free_port, join


@pytest.fixture
def server(tmp_path):
    made = RealServer(tmp_path / "data", "--access-log")
    yield made
    if hasattr(made, "process"):
        made.stop()


def test_first_start_prints_an_owner_link_and_the_second_only_while_there_is_no_owner(server):
    server.start()
    ((origin, first),) = LINK.findall(server.out)
    assert origin == f"http://localhost:{server.port}"
    assert "█" in server.out, "the QR code"
    assert server.stop() == 0
    server.start()
    second = LINK.findall(server.out)[-1][1]
    assert join(server, first)[0] == 410, "an earlier start's link is withdrawn"
    status, joined = join(server, second)
    assert (status, joined["role"], joined["room"]["name"]) == (201, "owner", "Fish room")
    assert server.stop() == 0
    before = len(LINK.findall(server.out))
    server.start()
    assert len(LINK.findall(server.out)) == before, "the room has its owner"
    assert call(server, "GET", "/api/v1/me", key=joined["key"])[0] == 200


def test_no_key_and_no_secret_in_any_log(server):
    server.start()
    secret = LINK.findall(server.out)[-1][1]
    _, joined = join(server, secret)
    room = f"/api/v1/rooms/{joined['room']['id']}"
    _, made = call(server, "POST", f"{room}/invites", {}, joined["key"])
    join(server, made["secret"], "Kim")
    join(server, "a-wrong-secret-that-nobody-has")
    call(server, "GET", f"{room}/pull?epoch={joined['epoch']}", key=joined["key"])
    call(server, "POST", f"{room}/push", {"epoch": 3}, joined["key"])
    call(server, "GET", "/api/v1/me", key="a-wrong-key-that-nobody-has")
    server.stop()
    assert f"GET {room}/pull 200" in server.out, "the access log is on"
    for hidden in (joined["key"], made["secret"], "a-wrong-secret-that-nobody-has", "a-wrong-key-that-nobody-has"):
        assert hidden not in server.out
    assert server.out.count(secret) == 1, "only as the link that the start printed"


def test_one_server_a_folder_and_a_port_that_is_taken(server):
    server.start()
    second = serve("--data", str(server.folder), "--port", str(free_port()))
    assert second.returncode == 1
    assert "Another Limnary server is using" in second.stderr
    third = serve("--data", f"{server.folder}-other", "--port", str(server.port))
    assert third.returncode == 1
    assert "choose another with --port" in third.stderr


def serve(*options: str) -> subprocess.CompletedProcess:
    """A start that is expected to fail."""
    return limnary("serve", *options)


def limnary(*arguments: str, **more) -> subprocess.CompletedProcess:
    """One command of the command line."""
    env = {**os.environ, "PYTHONPATH": str(ROOT / "server")}
    command = [sys.executable, "-m", "limnary.cli", *arguments]
    return subprocess.run(command, env=env, capture_output=True, text=True, timeout=120, check=False, **more)


def test_the_start_command_serves_the_demo_honours_port_and_stops_on_sigterm(tmp_path):
    port = free_port()
    env = {**os.environ, "LIMNARY_VENV": sys.prefix, "LIMNARY_DATA": str(tmp_path / "data"), "PORT": str(port)}
    log = tmp_path / "log"
    with log.open("wb") as out:
        process = subprocess.Popen(["bash", ROOT / "server/run", "--demo"], env=env, stdout=out, stderr=out)
    waiting = RealServer(tmp_path / "data")
    waiting.process, waiting.log, waiting.url = process, log, f"http://127.0.0.1:{port}"
    waiting._wait()
    links = LINK.findall(waiting.out)
    assert len(links) == 2, "one for each keeper"
    names = {join(waiting, secret, "ignored")[1]["keeper"]["name"] for _, secret in links}
    assert len(names) == 2
    process.send_signal(signal.SIGTERM)
    assert process.wait(30) == 0


def test_https_for_the_home_network(tmp_path):
    server = RealServer(tmp_path / "data", "--lan", scheme="https").start()
    try:
        assert "made its own certificate authority" in server.out
        authority = tmp_path / "data" / "lan" / "authority.crt"
        trusting = ssl.create_default_context(cafile=str(authority))
        assert call(server, "GET", "/healthz", context=trusting)[0] == 200
        with urllib.request.urlopen(f"{server.url}/authority.crt", context=trusting, timeout=30) as answer:
            assert answer.headers["Content-Type"] == "application/x-x509-ca-cert"
            assert answer.read() == authority.read_bytes()
        with pytest.raises(urllib.error.URLError, match="CERTIFICATE_VERIFY_FAILED"):
            call(server, "GET", "/healthz", context=ssl.create_default_context())
        for name in ("authority.key", "server.pem"):
            assert (tmp_path / "data" / "lan" / name).stat().st_mode & 0o077 == 0
    finally:
        server.stop()


def test_commands_for_people_and_data(server, tmp_path):
    server.start()
    _, joined = join(server, LINK.findall(server.out)[-1][1])
    data = ("--data", str(server.folder))
    shown = limnary("people", *data).stdout
    assert "Ada, owner" in shown and joined["device"] in shown
    invited = limnary("invite", *data, "--role", "helper").stdout
    ((origin, secret),) = LINK.findall(invited)
    assert origin == f"http://localhost:{server.port}", "as the server was last reached"
    assert join(server, secret, "Kim")[1]["role"] == "helper"
    recovered = LINK.findall(limnary("invite", *data, "--owner").stdout)[0][1]
    assert join(server, recovered, "Ada again")[1]["role"] == "owner"
    assert limnary("revoke", *data, joined["device"]).returncode == 0
    assert call(server, "GET", "/api/v1/me", key=joined["key"])[0] == 401
    saved, room = tmp_path / "backup.zip", tmp_path / "room.zip"
    assert limnary("backup", *data, str(saved)).returncode == 0
    assert limnary("export", *data, str(room)).returncode == 0
    refused = limnary("restore", *data, str(saved))
    assert (refused.returncode, "stop it first" in refused.stderr) == (1, True)
    server.stop()
    assert "1 room(s) restored" in limnary("restore", *data, str(saved)).stdout
    other = ("--data", str(tmp_path / "other"))
    assert LINK.search(limnary("import", *other, str(room)).stdout), "a room without an owner gets a link"
    assert "Fish room" in limnary("people", *other).stdout


@pytest.mark.parametrize(
    ("arguments", "code", "says"),
    [
        (["people", "--data", "/nonexistent"], 1, "name the folder with --data"),
        (["restore", "--data", "{data}", "missing.zip"], 1, "not a whole backup"),
        (["import", "--data", "{data}", "missing.zip"], 1, "cannot be read"),
        (["invite", "--data", "{data}"], 1, "no Limnary data"),
        (["serve", "--port", "70000"], 2, "1 to 65535"),
        (["invite", "--hours", "nan"], 2, "0.01 to 720"),
        (["calc"], 2, "needs a name"),
    ],
)
def test_a_command_that_cannot_says_why(tmp_path, arguments, code, says):
    done = limnary(*(part.replace("{data}", str(tmp_path / "data")) for part in arguments))
    assert done.returncode == code
    assert says in done.stderr
    assert "Traceback" not in done.stderr
