"""The units of server/deploy/ start what there is, with settings that exist, and the clubs stay apart."""

import json
import os
import re
import shlex
import shutil
import subprocess
import sys
import time
import urllib.request
from pathlib import Path

import pytest
from limnary.cli import parser
from limnary.store import backup
from pace import by_pace
from started_server import free_port

ROOT = Path(__file__).parents[1]
DEPLOY = ROOT / "server" / "deploy"
UNITS = {path.name: path.read_text("utf-8") for path in DEPLOY.glob("*.service")}
KNOWN = set(re.findall(r"`(LIMNARY_[A-Z_]+|PORT)`", (ROOT / "server" / "README.md").read_text("utf-8")))


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
    assert parser().parse_args(arguments).command == "serve"
    given = settings("\n".join(values(unit, "Environment"))) | settings((DEPLOY / "club.env").read_text("utf-8"))
    assert set(given) <= KNOWN | {"PYTHONUNBUFFERED"}
    assert given["LIMNARY_DATA"] == "/var/lib/" + values(unit, "StateDirectory")[0]
    if "@" in unit:
        assert values(unit, "User", "a") != values(unit, "User", "b")


@pytest.mark.parametrize("unit", UNITS)
def test_systemd_takes_the_unit(unit, tmp_path):
    if not shutil.which("systemd-analyze"):
        pytest.skip("systemd-analyze is not here, so no unit can be verified")
    # It looks for the program, which is not installed here.
    path = tmp_path / unit.replace("@.", "@reedclub.")
    path.write_text(UNITS[unit].replace("/opt/limnary/bin/limnary", "/bin/true"))
    done = subprocess.run(["systemd-analyze", "verify", str(path)], capture_output=True, text=True)
    said = "\n".join(line for line in done.stderr.splitlines() if "/reedclub.env" not in line)
    assert (done.returncode, said) == (0, "")


def test_the_image_is_made_of_what_there_is():
    lines = (DEPLOY / "Containerfile").read_text("utf-8").replace("\\\n", " ").splitlines()
    copied = [line.split()[1:] for line in lines if line.startswith("COPY ") and "--from" not in line]
    for *sources, _ in copied:
        assert [source for source in sources if not (ROOT / source).exists()] == []
    # The wheel takes all of these; see pyproject.toml.
    assert {source for *sources, _ in copied for source in sources} == {
        *("pyproject.toml", "README.md", "server/limnary", "pwa", "shared_schema")
    }
    (entry,) = [json.loads(line.split(" ", 1)[1]) for line in lines if line.startswith("ENTRYPOINT ")]
    (command,) = [json.loads(line.split(" ", 1)[1]) for line in lines if line.startswith("CMD ")]
    assert Path(entry[0]).name == "limnary" and parser().parse_args(command).command == "serve"
    given = dict(pair.split("=") for line in lines if line.startswith("ENV ") for pair in line.split()[1:])
    assert set(given) <= KNOWN | {"PYTHONUNBUFFERED"}


# In place of rsync over SSH: copies the file into the target's folder.
RSYNC = """#!/usr/bin/env bash
cp "${@: -2:1}" "${@: -1}"
"""


def test_what_is_copied_away_is_a_backup_that_restores(fish_room, tmp_path):
    fish_room.owner.results(fish_room.owner.tank())
    folder, away = fish_room.store.files.folder, tmp_path / "away"
    for made in (tmp_path / "bin", away):
        made.mkdir()
    for name, text in {"rsync": RSYNC, "limnary": f'#!/bin/sh\nexec {sys.executable} -m limnary.cli "$@"\n'}.items():
        (tmp_path / "bin" / name).write_text(text)
        (tmp_path / "bin" / name).chmod(0o755)
    assert copied_away(tmp_path, folder, away) == 0
    (sent,) = away.iterdir()
    assert re.fullmatch(r"hour-[0-2]\d\.zip", sent.name)
    assert backup.verify(sent, tmp_path / "trial")[1] == 1
    assert not list(tmp_path.glob("tmp.*")), "nothing is left behind"
    assert copied_away(tmp_path) == 2
    fish_room.store.close()
    fish_room.store.files.room(fish_room.id).write_bytes(b"junk" * 3000)
    sent.unlink()
    assert copied_away(tmp_path, folder, away) == 1
    assert list(away.iterdir()) == [], "what is no backup is not sent"


def copied_away(tmp_path: Path, *arguments: Path) -> int:
    """Run `copy-away` with what stands in `bin`; its exit code."""
    path = f"{tmp_path / 'bin'}:{os.environ['PATH']}"
    own = {"PATH": path, "LIMNARY": str(tmp_path / "bin" / "limnary"), "TMPDIR": str(tmp_path)}
    env = {**os.environ, **own, "PYTHONPATH": str(ROOT / "server")}
    return subprocess.run(["bash", DEPLOY / "copy-away", *arguments], env=env, capture_output=True).returncode


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
