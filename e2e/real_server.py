"""The real server as a process of its own: started, killed and started again on the same data and port."""

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
from pathlib import Path

ROOT = Path(__file__).parents[1]
PATIENCE_S = 60


class RealServer:
    """gunicorn on a port of its own; `links` holds the invitations that the start printed."""

    def __init__(self, data: Path, *options: str, code: Path = ROOT):
        self.data = data
        self.code = code
        self.options = options
        self.port = _free_port()
        self.origin = f"http://localhost:{self.port}"
        self.links: list[str] = []
        self._owner: dict | None = None
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
        found = re.findall(r"http://\S+/join#\S+", self._printed.read_text())
        self.links = found or self.links
        return self

    def stop(self) -> None:
        """Kill it outright, workers too, as a pulled plug would."""
        if self._process is None:
            return
        os.killpg(self._process.pid, signal.SIGKILL)
        self._process.wait()
        self._process = None

    def invite(self, role: str = "keeper") -> str:
        """A fresh link, made over the API by a phone that holds the first printed one."""
        if self._owner is None:
            secret = self.links[0].split("#")[1]
            self._owner = self._post("/join", {"secret": secret, "keeper_name": "Owner", "device_name": "Desk"})
        return self._post(f"/rooms/{self._owner['room']['id']}/invites", {"role": role})["link"]

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

    def _post(self, path: str, body: dict) -> dict:
        return self.call("POST", path, body)

    def room(self) -> tuple[str, str]:
        """The room's id and epoch, as the phone that made the invitations knows them."""
        return self._owner["room"]["id"], self._owner["epoch"]

    def call(self, method: str, path: str, body: dict | None) -> dict | None:
        """Ask the API as that phone."""
        key = {"Authorization": f"Bearer {self._owner['key']}"} if self._owner else {}
        headers = {"Content-Type": "application/json", **key}
        load = None if body is None else json.dumps(body).encode()
        request = urllib.request.Request(f"{self.origin}/api/v1{path}", load, headers, method=method)
        with urllib.request.urlopen(request, timeout=20) as answer:
            return json.load(answer) if answer.status != 204 else None

    def rows(self, sql: str, *values: str) -> list[sqlite3.Row]:
        """Ask the one room's database, read-only, past the app."""
        (room,) = self.data.glob("rooms/*/*.sqlite")
        with sqlite3.connect(f"file:{room}?mode=ro", uri=True) as db:
            db.row_factory = sqlite3.Row
            found = db.execute(sql, values).fetchall()
        db.close()
        return found

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


def _free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]
