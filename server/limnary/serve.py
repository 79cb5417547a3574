"""Runs gunicorn with one worker of many threads, and keeps a second server off the same data folder."""

import fcntl
import os
import socket
import ssl
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from limnary.config import Config

# A thread costs little while it waits: there are more than a few dozen stalled callers hold.
THREADS = 40


class CannotStart(Exception):
    """The reason why the server does not start, in words for the terminal."""


@dataclass(frozen=True)
class Address:
    """Where the server listens, and the URL that people type."""

    host: str
    port: int
    url: str


@contextmanager
def holding(folder: Path) -> Iterator[None]:
    """Hold the lock that keeps other servers and restores off this data folder."""
    folder.mkdir(parents=True, exist_ok=True, mode=0o700)
    with (folder / ".lock").open("w") as lock:
        try:
            fcntl.flock(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError:
            raise CannotStart(f"Another Limnary server is using {folder}: stop it first") from None
        yield


def check_port(host: str, port: int, option: str = "--port") -> None:
    """Raise CannotStart if the port cannot be used; `option` names another."""
    family = socket.AF_INET6 if ":" in host else socket.AF_INET
    with socket.socket(family, socket.SOCK_STREAM) as probe:
        probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            probe.bind((host, port))
        except OSError as bad:
            raise CannotStart(
                f"Port {port} on {host} cannot be used ({bad.strerror}): choose another with {option}"
            ) from None


def run(config: Config, address: Address, certificate: Path | None = None) -> None:
    """Serve until SIGTERM or Ctrl-C. The caller has created and migrated the data."""
    from gunicorn.app.base import BaseApplication

    class Server(BaseApplication):
        def load_config(self):
            for name, value in _settings(address, certificate, config.logged).items():
                self.cfg.set(name, value)

        def load(self):
            from limnary.app import create_app, upkeep_of
            from limnary.deadlines import in_pieces

            app = create_app(config)
            upkeep_of(app).start()
            if config.metrics_port:
                from limnary import metrics

                metrics.serve(app.extensions["limnary_metrics"], config.metrics_port)
            return in_pieces(app)

    sys.argv = sys.argv[:1]  # gunicorn would take our arguments for its own
    os.environ.pop("GUNICORN_CMD_ARGS", None)
    Server().run()


def _settings(address: Address, certificate: Path | None, logged: str) -> dict:
    host = f"[{address.host}]" if ":" in address.host else address.host
    settings = {
        "bind": f"{host}:{address.port}",
        "worker_class": "limnary.deadlines.DeadlineWorker",
        "workers": 1,
        "threads": THREADS,
        "timeout": 60,
        "graceful_timeout": 5,
        "keepalive": 5,
        "loglevel": "warning",
        "proc_name": "limnary",
    }
    if logged == "json":
        settings |= {"accesslog": "-", "logger_class": "limnary.logs.JsonLogger"}
    if logged == "plain":
        # Write no header and no query: a calendar's key is in the query, and no key may reach the log.
        settings |= {"accesslog": "-", "access_log_format": "%(h)s %(t)s %(m)s %(U)s %(s)s %(B)s %(M)sms"}
    if certificate:
        # gunicorn reads the file anew for each connection, so a renewed certificate serves from the next one on.
        settings |= {"certfile": str(certificate), "keyfile": str(certificate), "ssl_context": whole_certificate}
    return settings


def whole_certificate(_, read: Callable[[], ssl.SSLContext]) -> ssl.SSLContext:
    """gunicorn's context for one connection.

    The file is opened twice, for the certificate and for its key. If it is renewed in between, the two do not fit, and
    the file is read once more.
    """
    try:
        return read()
    except ssl.SSLError:
        return read()
