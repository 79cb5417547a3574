"""WebKit to hold: GTK's small browser, driven by the W3C WebDriver protocol, on a screen that nobody sees.

It shares with the browser of iPhones what other engines lack: a page that is left may stay in the back/forward cache
with its database open.
"""

import contextlib
import json
import os
import shutil
import signal
import socket
import subprocess
import tempfile
import time
import urllib.error
import urllib.request
from pathlib import Path

BROWSERS = sorted(Path("/usr/lib").glob("*/webkit2gtk-4.*/MiniBrowser"))
PROGRAMS = ("WebKitWebDriver", "xvfb-run", "dbus-run-session", "localedef")
PATIENCE_S = 90
ELEMENT = "element-6066-11e4-a52e-4f735466cecf"


def missing() -> str:
    """What keeps WebKit from running here, in words; "" if nothing does."""
    lacks = [name for name in PROGRAMS if not shutil.which(name)]
    if not BROWSERS:
        lacks.append("MiniBrowser")
    if lacks:
        return f"no WebKit here: {', '.join(lacks)} (Debian: webkit2gtk-driver xvfb xauth dbus locales)"
    return ""


class WebKit:
    """One browser with storage of its own. `with` starts and ends it; verbs find their target by its words."""

    def __enter__(self) -> "WebKit":
        self._home = tempfile.TemporaryDirectory(ignore_cleanup_errors=True)
        home = Path(self._home.name)
        # Without a real locale `navigator.language` is "C", which Intl refuses.
        subprocess.run(["localedef", "-i", "en_GB", "-f", "UTF-8", str(home / "en_GB.UTF-8")], check=True)
        env = {**os.environ, "HOME": str(home), "LOCPATH": str(home), "LANG": "en_GB.UTF-8", "LC_ALL": "en_GB.UTF-8"}
        env |= {"XDG_RUNTIME_DIR": str(home), "LIBGL_ALWAYS_SOFTWARE": "1"}
        port = _free_port()
        command = ["xvfb-run", "-a", "dbus-run-session", "--", "WebKitWebDriver", f"--port={port}"]
        self._log = (home / "log").open("w")
        self._process = subprocess.Popen(command, env=env, stdout=self._log, stderr=self._log, start_new_session=True)
        self._root = f"http://127.0.0.1:{port}/session"
        self._session = self._start()
        return self

    def __exit__(self, *_) -> None:
        with contextlib.suppress(OSError, Refused):  # it may have ended already
            self._ask("DELETE", "")
        os.killpg(self._process.pid, signal.SIGKILL)
        self._process.wait()
        self._log.close()
        self._home.cleanup()

    # The browser's own buttons

    def open(self, url: str) -> None:
        self._ask("POST", "/url", {"url": url})

    def back(self) -> None:
        self._ask("POST", "/back", {})

    def forward(self) -> None:
        self._ask("POST", "/forward", {})

    def reload(self) -> None:
        self.run("location.reload()")

    def tab(self) -> str:
        """Open another tab and turn to it; its handle."""
        handle = self._ask("POST", "/window/new", {"type": "tab"})["handle"]
        self.turn_to(handle)
        return handle

    def here(self) -> str:
        """The handle of this tab."""
        return self._ask("GET", "/window")

    def turn_to(self, handle: str) -> None:
        self._ask("POST", "/window", {"handle": handle})

    # What a keeper does

    def sees(self, text: str) -> None:
        """Wait until the app shows this text."""
        if not self._wait(lambda: text in self.text()):
            raise AssertionError(f"{text!r} never came; the page shows: {self.text()!r}")

    def text(self) -> str:
        """What the app shows; "" for a blank page."""
        return self.run("return document.getElementById('app')?.innerText ?? ''")

    def press(self, words: str) -> None:
        """Press the button or link of these words."""
        self._ask("POST", f"/element/{self._find(words)}/click", {})

    def type(self, label: str, text: str) -> None:
        """Into the field of this label."""
        path = f"//label[contains(., '{label}')]//input | //input[@id = //label[contains(., '{label}')]/@for]"
        self._ask("POST", f"/element/{self._element(path)}/value", {"text": text})

    def run(self, script: str, *arguments: object) -> object:
        """What a script answers; a page that is just being left is asked again."""
        for _ in range(100):
            try:
                return self._ask("POST", "/execute/sync", {"script": script, "args": list(arguments)})
            except Refused as no:
                if no.error not in ("javascript error", "no such window", "unknown error"):
                    raise
                time.sleep(0.1)
        raise AssertionError(f"never answered: {script}")

    def waits_for(self, script: str) -> None:
        """Wait until the script answers something true."""
        if not self._wait(lambda: self.run(script)):
            raise AssertionError(f"never came: {script}; the page shows: {self.text()!r}")

    def _find(self, words: str) -> str:
        return self._element(f"//*[self::button or self::a][contains(normalize-space(.), '{words}')]")

    def _element(self, path: str) -> str:
        found = []

        def look() -> bool:
            found[:] = self._ask("POST", "/elements", {"using": "xpath", "value": path})
            return bool(found)

        if not self._wait(look):
            raise AssertionError(f"{path} never came; the page shows: {self.text()!r}")
        return found[0][ELEMENT]

    def _wait(self, holds) -> bool:
        end = time.monotonic() + PATIENCE_S
        while not holds():
            if time.monotonic() > end:
                return False
            time.sleep(0.1)
        return True

    def _start(self) -> str:
        options = {"binary": str(BROWSERS[-1]), "args": ["--automation"]}
        wanted = {"capabilities": {"alwaysMatch": {"webkitgtk:browserOptions": options}}}
        end = time.monotonic() + PATIENCE_S
        while True:
            try:
                return _call("POST", self._root, wanted)["sessionId"]
            except urllib.error.URLError:
                if time.monotonic() > end or self._process.poll() is not None:
                    raise
                time.sleep(0.1)

    def _ask(self, method: str, path: str, body: dict | None = None) -> object:
        return _call(method, f"{self._root}/{self._session}{path}", body)


class Refused(Exception):
    """The driver's own error, by its name in the protocol."""

    def __init__(self, error: str, message: str):
        super().__init__(f"{error}: {message}")
        self.error = error


def _call(method: str, url: str, body: dict | None = None) -> object:
    load = None if body is None else json.dumps(body).encode()
    request = urllib.request.Request(url, load, {"Content-Type": "application/json"}, method=method)
    try:
        with urllib.request.urlopen(request, timeout=PATIENCE_S) as answer:
            return json.load(answer)["value"]
    except urllib.error.HTTPError as no:
        with no:
            said = json.load(no)["value"]
        raise Refused(said["error"], said["message"]) from None


def _free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]
