"""The real server as a process of its own, to kill and start again on the same data and port; and its rooms."""

import json
import os
import re
import signal
import socket
import sqlite3
import subprocess
import sys
import time
import urllib.request
from argparse import Namespace
from contextlib import closing
from functools import cached_property
from pathlib import Path

from limnary.commands.data import opened
from limnary.ids import digest
from limnary.store import invites, people

ROOT = Path(__file__).parents[1]
PATIENCE_S = 60


class RealServer:
    """gunicorn on a port of its own, with as many rooms as the stories need."""

    def __init__(self, data: Path, *options: str, code: Path = ROOT):
        self.data = data
        self.code = code
        self.options = options
        self.port = _free_port()
        self.origin = f"http://localhost:{self.port}"
        self._process: subprocess.Popen | None = None
        self._printed: Path = data.with_suffix(".out")

    def start(self) -> "RealServer":
        command = [sys.executable, "-m", "limnary.cli", "serve", "--port", str(self.port), "--data", str(self.data)]
        environment = {**os.environ, "PYTHONPATH": str(self.code / "server"), "PYTHONUNBUFFERED": "1"}
        with self._printed.open("w") as out:
            self._process = subprocess.Popen(
                [*command, *self.options], stdout=out, stderr=subprocess.STDOUT, env=environment, start_new_session=True
            )
        self._wait()
        return self

    def stop(self) -> None:
        """Kill it outright, workers too, as a pulled plug would."""
        if self._process is None:
            return
        os.killpg(self._process.pid, signal.SIGKILL)
        self._process.wait()
        self._process = None

    def new_room(self) -> "ServedRoom":
        """A room that nobody is in yet, and the link for its owner."""
        with opened(Namespace(data=self.data)) as store:
            room = store.new_room("Fish room")["id"]
            with store.files.writing(store.files.people) as db:
                secret = invites.add_invite(db, room, "owner", 48, people.SERVER, store.clock())["secret"]
        return ServedRoom(self, f"{self.origin}/join#{secret}")

    def printed_room(self) -> "ServedRoom":
        """The room that the first printed link opens."""
        return ServedRoom(self, re.findall(r"http://\S+/join#\S+", self._printed.read_text())[0])

    def _wait(self) -> None:
        deadline = time.monotonic() + PATIENCE_S
        while time.monotonic() < deadline:
            if self._process.poll() is not None:
                raise RuntimeError(f"the server stopped: {self._printed.read_text()}")
            try:
                with urllib.request.urlopen(f"{self.origin}/healthz", timeout=5):
                    return
            except OSError:
                time.sleep(0.1)
        raise RuntimeError(f"the server does not answer: {self._printed.read_text()}")


class ServedRoom:
    """One room of a server, as a story sees it; `link` lets its owner in, once."""

    def __init__(self, server: RealServer, link: str):
        self.origin = server.origin
        self.link = link
        self._people: Path = server.data / "people.sqlite"
        self._rooms: Path = server.data / "rooms"
        self._owner: dict | None = None

    def invite(self, role: str = "keeper") -> str:
        """A fresh link, made over the API by a phone that used `link` to come in."""
        if self._owner is None:
            secret = self.link.split("#")[1]
            self._owner = self.call("POST", "/join", {"secret": secret, "keeper_name": "Owner", "device_name": "Desk"})
        return self.call("POST", f"/rooms/{self._owner['room']['id']}/invites", {"role": role})["link"]

    def room(self) -> tuple[str, str]:
        """The room's id and epoch, as the phone knows them that makes the invitations."""
        return self._owner["room"]["id"], self._owner["epoch"]

    def set_role(self, name: str, role: str) -> None:
        """Another role for the member of that name, given by the phone that made the invitations."""
        self.call("PATCH", self._member(name), {"role": role})

    def take_out(self, name: str) -> None:
        """End the membership of the member of that name."""
        self.call("DELETE", self._member(name), None)

    def _member(self, name: str) -> str:
        people = f"/rooms/{self._owner['room']['id']}/people"
        (keeper,) = (one["id"] for one in self.call("GET", people, None)["people"] if one["name"] == name)
        return f"{people}/{keeper}"

    def call(self, method: str, path: str, body: dict | None) -> dict | None:
        """Ask the API as that phone."""
        key = {"Authorization": f"Bearer {self._owner['key']}"} if self._owner else {}
        headers = {"Content-Type": "application/json", **key}
        load = None if body is None else json.dumps(body).encode()
        request = urllib.request.Request(f"{self.origin}/api/v1{path}", load, headers, method=method)
        with urllib.request.urlopen(request, timeout=PATIENCE_S) as answer:
            return json.load(answer) if answer.status != 204 else None

    def rows(self, sql: str, *values: str) -> list[sqlite3.Row]:
        """Ask the room's database, read-only, past the app."""
        return _rows(self._rooms / self._id[:2] / f"{self._id}.sqlite", sql, *values)

    def members(self) -> dict[str, str | None]:
        """Who is in the room with which role, None where the membership has ended; read past the app."""
        found = _rows(
            self._people,
            "SELECT keepers.name, CASE WHEN memberships.ended_at IS NULL THEN role END AS role FROM memberships"
            " JOIN keepers ON keepers.id = memberships.keeper WHERE memberships.room = ?",
            self._id,
        )
        return {row["name"]: row["role"] for row in found}

    @cached_property
    def _id(self) -> str:
        secret = self.link.split("#")[1]
        (row,) = _rows(self._people, "SELECT room FROM invites WHERE secret_hash = ?", digest(secret))
        return row["room"]


def _rows(path: Path, sql: str, *values: str) -> list[sqlite3.Row]:
    with closing(sqlite3.connect(f"file:{path}?mode=ro", uri=True)) as db:
        db.row_factory = sqlite3.Row
        return db.execute(sql, values).fetchall()


def _free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]
