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

from driven import PATIENCE_S, Driven, Refused

BROWSERS = sorted(Path("/usr/lib").glob("*/webkit2gtk-4.*/MiniBrowser"))
STANDS_AT = "`${performance.timeOrigin} ${location.href}`"
PROGRAMS = ("WebKitWebDriver", "xvfb-run", "dbus-run-session", "localedef")


def missing() -> str:
    """What keeps WebKit from running here, in words; "" if nothing does."""
    lacks = [name for name in PROGRAMS if not shutil.which(name)]
    if not BROWSERS:
        lacks.append("MiniBrowser")
    if lacks:
        return f"no WebKit here: {', '.join(lacks)} (Debian: webkit2gtk-driver xvfb xauth dbus locales)"
    return ""


class WebKit(Driven):
    """One browser with storage of its own. `with` starts and ends it."""

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

    def open(self, url: str) -> None:
        self._leave(lambda: super(WebKit, self).open(url))

    def back(self) -> None:
        self._leave(super().back)

    def forward(self) -> None:
        self._leave(super().forward)

    def _leave(self, go) -> None:
        """Wait until the browser has left this page and loaded another."""
        here = self.run(f"return {STANDS_AT}")
        go()
        self.waits_for(f"return {STANDS_AT} !== '{here}' && document.readyState === 'complete'")

    def _start(self) -> str:
        options = {"binary": str(BROWSERS[-1]), "args": ["--automation"]}
        # The driver itself would wait for the page's load: on a busy machine sometimes for ever, where the page goes to
        # another origin and so to another process. `_leave` waits instead.
        always = {"webkitgtk:browserOptions": options, "pageLoadStrategy": "none"}
        wanted = {"capabilities": {"alwaysMatch": always}}
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
