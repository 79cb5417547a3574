"""The built shell, pwa/built/: what tests/build.js made of pwa/ and shared_schema/, as long as it is theirs.

Its stamp is the hash of all that it was built from. While the stamp is that of the files beside it, phones get the
build; else they get the modules of pwa/ as they are.
"""

import hashlib
import json
from functools import cache
from pathlib import Path, PurePosixPath

from limnary.schema_files import pwa_dir, shared_schema_dir

FOLDER = "built"
# Files that a browser runs; all others in pwa/ are for developers. tests/build.js has the same list.
ENDINGS = {
    ".css": "text/css",
    ".html": "text/html",
    ".ico": "image/x-icon",
    ".js": "text/javascript",
    ".json": "application/json",
    ".map": "application/json",
    ".mjs": "text/javascript",
    ".png": "image/png",
    ".svg": "image/svg+xml",
    ".webmanifest": "application/manifest+json",
    ".webp": "image/webp",
    ".woff2": "font/woff2",
}
FOR_DEVELOPERS = {"package.json", "tsconfig.json", "eslint.config.js", "eslint.config.mjs"}
# The parts of shared_schema/ that the phone reads.
SHARED = ("calc", "formats.json", "messages.json", "records", "tables", "words")


def is_fresh() -> bool:
    """Whether pwa/built/ was built from the files as they are now."""
    try:
        stamp = json.loads((pwa_dir() / FOLDER / "built.json").read_text("utf-8"))["stamp"]
    except (OSError, ValueError, KeyError):
        return False
    return stamp == _stamp(_state())


def files() -> list[str]:
    """The paths below pwa/ that a browser may ask for, the built ones left out."""
    root = pwa_dir()
    return sorted(path.relative_to(root).as_posix() for path in _walk(root) if is_for_browsers(path.relative_to(root)))


def is_for_browsers(path: Path | PurePosixPath) -> bool:
    """Whether a file of this path below pwa/ is one that a browser runs."""
    for_developers = path.name in FOR_DEVELOPERS or path.name.startswith(".") or path.name.endswith(".d.ts")
    return path.suffix in ENDINGS and not for_developers


def _walk(folder: Path) -> list[Path]:
    found = []
    for path in folder.iterdir():
        if not path.is_dir():
            found.append(path)
        elif path.name not in (FOLDER, "node_modules"):
            found += _walk(path)
    return found


def _state() -> tuple[tuple[str, str, int, int], ...]:
    """Every file that is built from: its name in the stamp, its path, and what shows a change of it."""
    root, shared = pwa_dir(), shared_schema_dir()
    named = {f"pwa/{path}": root / path for path in files()}
    for part in SHARED:
        paths = sorted((shared / part).glob("*.json")) if (shared / part).is_dir() else [shared / part]
        named |= {f"shared_schema/{path.relative_to(shared).as_posix()}": path for path in paths}
    states = ((name, path, path.stat()) for name, path in sorted(named.items()))
    return tuple((name, str(path), state.st_mtime_ns, state.st_size) for name, path, state in states)


@cache
def _stamp(state: tuple[tuple[str, str, int, int], ...]) -> str:
    made = hashlib.sha256()
    for name, path, _, _ in state:
        made.update(f"{name}\0{hashlib.sha256(Path(path).read_bytes()).hexdigest()}\n".encode())
    return made.hexdigest()
