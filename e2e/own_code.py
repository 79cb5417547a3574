"""A copy of the product that a story may change, and its build."""

import shutil
import subprocess
from pathlib import Path

from real_server import ROOT


def copied(to: Path) -> Path:
    """The code of server and phone, with its build, below `to`."""
    for folder in ("server/limnary", "pwa", "shared_schema"):
        leave = shutil.ignore_patterns("__pycache__", "node_modules")
        shutil.copytree(ROOT / folder, to / folder, ignore=leave)
    shutil.copy(ROOT / "pyproject.toml", to)
    return to


def build(code: Path) -> None:
    """Packed in haste: a story does not weigh it."""
    subprocess.run(["node", ROOT / "tests/build.js", code, "1"], check=True, stdout=subprocess.DEVNULL)
