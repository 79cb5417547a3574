"""Firefox to hold: headless, asked over Marionette, Firefox's own form of the W3C WebDriver protocol, at phone size."""

import json
import os
import shutil
import signal
import socket
import subprocess
import tempfile
import time
from pathlib import Path

from driven import PATIENCE_S, Driven, Refused

PROGRAM = shutil.which("firefox-esr") or shutil.which("firefox")
# The protocol's paths that are used here, with Marionette's names for them.
COMMANDS = {
    "/url": "WebDriver:Navigate",
    "/back": "WebDriver:Back",
    "/forward": "WebDriver:Forward",
    "/execute/sync": "WebDriver:ExecuteScript",
    "/elements": "WebDriver:FindElements",
    "/screenshot": "WebDriver:TakeScreenshot",
    "click": "WebDriver:ElementClick",
    "value": "WebDriver:ElementSendKeys",
}
PREFERENCES = {
    "intl.accept_languages": "en-GB",
    "browser.shell.checkDefaultBrowser": False,
    "browser.aboutwelcome.enabled": False,
    "datareporting.policy.dataSubmissionEnabled": False,
    "app.update.disabledForTesting": True,
    "network.captive-portal-service.enabled": False,
    "network.connectivity-service.enabled": False,
    "toolkit.startup.max_resumed_crashes": -1,
}


def missing() -> str:
    """What keeps Firefox from running here, in words; "" if nothing does."""
    return "" if PROGRAM else "no Firefox here (Debian: firefox-esr)"


class Firefox(Driven):
    """One browser with storage of its own. `with` starts and ends it."""

    def __enter__(self) -> "Firefox":
        self._home = tempfile.TemporaryDirectory(ignore_cleanup_errors=True)
        home = Path(self._home.name)
        with socket.socket() as probe:
            probe.bind(("127.0.0.1", 0))
            port = probe.getsockname()[1]
        chosen = {**PREFERENCES, "marionette.port": port}
        lines = [f"user_pref({json.dumps(name)}, {json.dumps(value)});\n" for name, value in chosen.items()]
        (home / "user.js").write_text("".join(lines))
        command = [PROGRAM, "--headless", "--marionette", "--no-remote", "--profile", str(home), "about:blank"]
        self._log = (home / "log").open("w")
        self._process = subprocess.Popen(
            command, env={**os.environ, "HOME": str(home)}, stdout=self._log, stderr=self._log, start_new_session=True
        )
        self._number = 0
        self._wire = self._connected(port)
        self._read()  # Marionette greets
        self._command("WebDriver:NewSession", {"capabilities": {"alwaysMatch": {"acceptInsecureCerts": False}}})
        self._command("WebDriver:SetWindowRect", {"width": 390, "height": 844})
        return self

    def __exit__(self, *_) -> None:
        self._wire.close()
        os.killpg(self._process.pid, signal.SIGKILL)
        self._process.wait()
        self._log.close()
        self._home.cleanup()

    def _connected(self, port: int) -> socket.socket:
        end = time.monotonic() + PATIENCE_S
        while True:
            try:
                return socket.create_connection(("127.0.0.1", port), timeout=PATIENCE_S)
            except OSError:
                if time.monotonic() > end or self._process.poll() is not None:
                    raise
                time.sleep(0.1)

    def _ask(self, method: str, path: str, body: dict | None = None) -> object:
        if path.startswith("/element/"):
            _, _, element, path = path.split("/")
            body = {**(body or {}), "id": element}
        answer = self._command(COMMANDS[path], body or {})
        return answer["value"] if isinstance(answer, dict) and "value" in answer else answer

    def _command(self, name: str, body: dict) -> object:
        """A message is its length, a colon, and JSON: [0, number, name, body]; the answer [1, number, error, body]."""
        self._number += 1
        sent = json.dumps([0, self._number, name, body]).encode()
        self._wire.sendall(b"%d:%s" % (len(sent), sent))
        _, _, error, answer = self._read()
        if error:
            raise Refused(error["error"], error["message"])
        return answer

    def _read(self) -> list:
        length = b""
        while not length.endswith(b":"):
            length += self._some(1)
        return json.loads(self._some(int(length[:-1])))

    def _some(self, count: int) -> bytes:
        got = b""
        while len(got) < count:
            part = self._wire.recv(count - len(got))
            if not part:
                raise ConnectionError("Firefox has ended")
            got += part
        return got
