"""The units of server/deploy/ start what there is, with settings that exist, and the clubs stay apart."""

import os
import re
import shlex
import subprocess
import sys
import time
import urllib.request
from pathlib import Path

import pytest
from limnary.cli import parser
from pace import by_pace
from started_server import free_port

ROOT = Path(__file__).parents[1]
DEPLOY = ROOT / "server" / "deploy"
UNITS = {path.name: path.read_text("utf-8") for path in DEPLOY.glob("*.service")}
KNOWN = set(re.findall(r"`(LIMNARY_[A-Z]+|PORT)`", (ROOT / "server" / "README.md").read_text("utf-8")))


def values(unit: str, name: str, club: str = "reedclub", state: str = "/var/lib") -> list[str]:
    """What stands after NAME= in the unit of one club."""
    found = re.findall(rf"^{name}=(.*)$", UNITS[unit], re.MULTILINE)
    return [value.replace("%i", club).replace("%S", state) for value in found]


def settings(text: str) -> dict[str, str]:
    return dict(line.split("=", 1) for line in text.splitlines() if line and not line.startswith("#"))


@pytest.mark.parametrize("unit", UNITS)
def test_a_unit_runs_a_command_that_there_is_with_settings_that_there_are(unit):
    (command,) = values(unit, "ExecStart")
    program, *arguments = shlex.split(command)
    assert program == "/opt/limnary/bin/limnary"
    assert parser().parse_args(arguments).command in ("serve", "backup")
    given = settings("\n".join(values(unit, "Environment"))) | settings((DEPLOY / "club.env").read_text("utf-8"))
    assert set(given) <= KNOWN
    assert given["LIMNARY_DATA"] == "/var/lib/" + values(unit, "StateDirectory")[0]
    assert values(unit, "User", "a") != values(unit, "User", "b")


def test_the_proxy_and_the_club_agree():
    club = settings((DEPLOY / "club.env").read_text("utf-8"))
    proxy = (DEPLOY / "nginx.conf").read_text("utf-8")
    assert f"proxy_pass http://127.0.0.1:{club['PORT']};" in proxy
    assert f"server_name {club['LIMNARY_ORIGIN'].removeprefix('https://')};" in proxy
    assert "$request " not in proxy and "$args" not in proxy, "the log must hold no query"


def test_clubs_beside_each_other_are_apart(tmp_path):
    """Started as the unit starts them; each prints its own owner's link and answers on its own port."""
    clubs, links = [], set()
    try:
        for number in range(by_pace(quick=2, usual=2, long=20)):
            out = (tmp_path / f"{number}.out").open("w+")
            own = settings("\n".join(values("limnary@.service", "Environment", f"club{number}", str(tmp_path))))
            port = free_port()
            own |= {"PORT": str(port), "LIMNARY_ORIGIN": f"https://club{number}.example"}
            env = {**os.environ, **own, "PYTHONPATH": str(ROOT / "server")}
            arguments = shlex.split(values("limnary@.service", "ExecStart")[0])[1:]
            command = [sys.executable, "-m", "limnary.cli", *arguments]
            clubs.append((port, out, subprocess.Popen(command, env=env, stdout=out, stderr=out)))
        for number, (port, out, process) in enumerate(clubs):
            while not well(port):
                assert process.poll() is None, out.seek(0) or out.read()
                time.sleep(0.1)
            out.seek(0)
            links |= set(re.findall(rf"https://club{number}\.example/join#\S+", out.read()))
        assert len(links) == len(clubs)
        assert {path.name for path in (tmp_path / "limnary").iterdir()} == {f"club{n}" for n in range(len(clubs))}
    finally:
        for _, out, process in clubs:
            process.terminate()
            process.wait()
            out.close()


def well(port: int) -> bool:
    try:
        with urllib.request.urlopen(f"http://127.0.0.1:{port}/healthz", timeout=30) as answer:
            return answer.status == 200
    except OSError:
        return False
