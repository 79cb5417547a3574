"""The product as it was at an earlier commit, for tests of updates."""

import io
import subprocess
import tarfile
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
# The version of 2026-11-27: without the built shell, with one migration of people.sqlite fewer.
FORMER = "3e4d504"


def former_version(folder: Path) -> Path:
    """Unpack it into `folder`; skips where the checkout has no history that far."""
    parts = ["pyproject.toml", "server/limnary", "pwa", "shared_schema"]
    packed = subprocess.run(["git", "archive", FORMER, *parts], cwd=ROOT, capture_output=True)
    if packed.returncode:
        pytest.skip(f"this checkout does not hold the former version ({FORMER})")
    with tarfile.open(fileobj=io.BytesIO(packed.stdout)) as pack:
        pack.extractall(folder, filter="data")
    return folder
