"""The phone's code in Node: each file of tests/js is one test of the common queue."""

import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
FILES = sorted((ROOT / "tests/js").glob("**/*.test.js"))


@pytest.mark.parametrize("file", FILES, ids=lambda file: file.name)
def test_phone_code(file):
    done = subprocess.run(["node", file], cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
    assert done.returncode == 0, done.stdout


def test_there_is_some():
    assert len(FILES) > 40
