"""Settings: the data folder, the clock, and limits on requests."""

import os
import time
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path

from limnary.errors import LimnaryError

CHECKOUT = Path(__file__).resolve().parents[2]


def default_data_dir() -> Path:
    """$LIMNARY_DATA, else server/data of a checkout, else the user's own data folder."""
    if os.environ.get("LIMNARY_DATA"):
        return Path(os.environ["LIMNARY_DATA"])
    if (CHECKOUT / "pyproject.toml").is_file():
        return CHECKOUT / "server" / "data"
    return Path(os.environ.get("XDG_DATA_HOME") or Path.home() / ".local" / "share") / "limnary"


def wall_clock() -> int:
    """Milliseconds since 1970, UTC."""
    return time.time_ns() // 1_000_000


MOST_PROXIES = 9


class BadSetting(LimnaryError):
    """An environment variable has a value that cannot be used."""

    title = "A setting cannot be used"


def proxies() -> int:
    """$LIMNARY_PROXIES: how many of your own reverse proxies are in front of the server, usually 0 or 1."""
    text = os.environ.get("LIMNARY_PROXIES") or "0"
    if not (text.isascii() and text.isdigit() and int(text) <= MOST_PROXIES):
        raise BadSetting(f"LIMNARY_PROXIES is {text!r}: it must be a whole number from 0 to {MOST_PROXIES}")
    return int(text)


BACKUPS_OFF = "off"
BACKUP_MB = 2000
MOST_MB = 1_000_000


def backup_limit_bytes(text: str | None = None) -> int:
    """`text`, else $LIMNARY_BACKUP_MB: what all daily backups together may take, in megabytes."""
    text = text or os.environ.get("LIMNARY_BACKUP_MB") or str(BACKUP_MB)
    if not (text.isascii() and text.isdigit() and 1 <= int(text) <= MOST_MB):
        raise BadSetting(f"LIMNARY_BACKUP_MB is {text!r}: it must be a whole number of megabytes from 1 to {MOST_MB}")
    return int(text) * 1_000_000


def metrics_port() -> int | None:
    """$LIMNARY_METRICS: the port of this machine on which figures about the server are told; None without one."""
    text = os.environ.get("LIMNARY_METRICS") or ""
    if text and not (text.isascii() and text.isdigit() and 1 <= int(text) <= 65535):
        raise BadSetting(f"LIMNARY_METRICS is {text!r}: it must be a port, a whole number from 1 to 65535")
    return int(text) if text else None


LOGS = ("quiet", "plain", "json")


def logged() -> str:
    """$LIMNARY_LOG: what is written of requests."""
    text = os.environ.get("LIMNARY_LOG") or LOGS[0]
    if text not in LOGS:
        raise BadSetting(f"LIMNARY_LOG is {text!r}: it must be {', '.join(LOGS[:-1])} or {LOGS[-1]}")
    return text


@dataclass(frozen=True)
class Config:
    """Everything that `create_app` needs to know.

    origin: what links start with, such as https://fish.example; None takes it from each request.
    proxies: how many addresses at the end of `X-Forwarded-For` your own proxies wrote. If the number is too high,
        a caller can fake any address; if it is 0 behind a proxy, all callers share one limit of attempts.
    authority: the certificate that phones on the home network are asked to trust, if there is one.
    backup_to: the folder of the daily backups, or "off"; None keeps them in the data folder.
    metrics_port: where figures about the server are told, on this machine alone; None tells none.
    logged: "quiet", "plain" (one line a request) or "json" (one JSON line a request, and messages as JSON).
    sources: serve the modules of pwa/ as they are, even where pwa/built/ is theirs.
    """

    data_dir: Path = field(default_factory=default_data_dir)
    clock: Callable[[], int] = wall_clock
    origin: str | None = field(default_factory=lambda: os.environ.get("LIMNARY_ORIGIN") or None)
    proxies: int = field(default_factory=proxies)
    authority: Path | None = None
    backup_to: str | None = field(default_factory=lambda: os.environ.get("LIMNARY_BACKUP_TO") or None)
    backup_limit_bytes: int = field(default_factory=backup_limit_bytes)
    metrics_port: int | None = field(default_factory=metrics_port)
    logged: str = field(default_factory=logged)
    sources: bool = False
    json_limit_bytes: int = 1_000_000
    unpacked_limit_bytes: int = 8_000_000
    photo_limit_bytes: int = 10_000_000
    # A calculation needs no key: what it may be given, and how often a minute one address may ask.
    calculation_limit_bytes: int = 400_000
    calls_per_minute: int = 300
    # After `join_attempts` wrong secrets from one address within `join_window_s` seconds the answer is 429.
    join_attempts: int = 10
    join_window_s: int = 600
    # A short code opens for `code_minutes`; after `code_attempts` wrong ones from all addresses within `join_window_s`
    # seconds no code is taken at all, and links still work.
    code_minutes: int = 10
    code_attempts: int = 100

    @property
    def backup_folder(self) -> Path | None:
        """Where the daily backups go; None if the server makes none."""
        if self.backup_to == BACKUPS_OFF:
            return None
        return Path(self.backup_to) if self.backup_to else self.data_dir / "backups"
