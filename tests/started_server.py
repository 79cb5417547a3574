"""A real server for tests: the start command in its own process on a free port, to kill and start again."""

import json
import os
import re
import signal
import socket
import subprocess
import sys
import time
import urllib.error
import urllib.request
from pathlib import Path

ROOT = Path(__file__).parents[1]
PATIENCE_S = 30
LINK = re.compile(r"(https?://\S+)/join#(\S+)")


class RealServer:
    """`limnary serve` on a data folder; `out` collects what it printed.

    `first` is Python that runs before it. `code` is the checkout that it runs.
    """

    def __init__(self, folder: Path, *options: str, scheme: str = "http", first: str = "", code: Path = ROOT):
        self.folder, self.options, self.first, self.code = folder, options, first, code
        self.port = free_port()
        self.url = f"{scheme}://127.0.0.1:{self.port}"
        self.log = folder.with_name(folder.name + ".log")

    def start(self) -> "RealServer":
        env = {**os.environ, "PYTHONPATH": str(self.code / "server"), "LIMNARY_DATA": str(self.folder)}
        run = f"import sys\n{self.first}\nfrom limnary.cli import main\nsys.exit(main())"
        command = [sys.executable, "-c", run, "serve", "--port", str(self.port), *self.options]
        with self.log.open("ab") as out:
            # Its own process group, so that a kill also ends the worker, as a power cut would.
            self.process = subprocess.Popen(command, env=env, stdout=out, stderr=out, start_new_session=True)
        self._wait()
        return self

    @property
    def out(self) -> str:
        return self.log.read_text("utf-8")

    def kill(self) -> None:
        """Send SIGKILL to the whole process group."""
        os.killpg(self.process.pid, signal.SIGKILL)
        self.process.wait()

    def stop(self) -> int:
        """Send SIGTERM; return the exit code."""
        if self.process.poll() is None:
            self.process.terminate()
        try:
            return self.process.wait(PATIENCE_S)
        finally:
            if self.process.poll() is None:
                self.kill()

    def _wait(self) -> None:
        if self.url.startswith("https"):
            return self._wait_for_port()
        for _ in range(PATIENCE_S * 20):
            if self.process.poll() is not None:
                break
            try:
                with urllib.request.urlopen(f"{self.url}/healthz", timeout=PATIENCE_S) as answer:
                    if answer.status == 200:
                        return None
            except OSError:
                time.sleep(0.05)
        raise AssertionError(f"the server did not start: {self.out}")

    def _wait_for_port(self) -> None:
        for _ in range(PATIENCE_S * 20):
            with socket.socket() as probe:
                if probe.connect_ex(("127.0.0.1", self.port)) == 0:
                    return
            time.sleep(0.05)
        raise AssertionError(f"the server did not start: {self.out}")


def free_port() -> int:
    """A port that nobody uses now."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


def call(server, method: str, path: str, body=None, key=None, **more):
    """One call; (status, JSON)."""
    headers = {"Content-Type": "application/json", **({"Authorization": f"Bearer {key}"} if key else {})}
    data = None if body is None else json.dumps(body).encode()
    request = urllib.request.Request(server.url + path, data, headers, method=method)
    try:
        with urllib.request.urlopen(request, timeout=30, **more) as answer:
            return answer.status, json.loads(answer.read() or "null")
    except urllib.error.HTTPError as refused:
        with refused:
            return refused.code, json.loads(refused.read())


def join(server, secret: str, name: str = "Ada"):
    return call(
        server, "POST", "/api/v1/join", {"secret": secret, "keeper_name": name, "device_name": f"{name}'s phone"}
    )
