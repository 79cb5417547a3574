"""The wheel contains the app and the shared schema, answers from them, and contains no tests or server pages."""

import json
import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]


@pytest.fixture(scope="module")
def wheel(tmp_path_factory):
    folder = tmp_path_factory.mktemp("wheel")
    command = [
        sys.executable,
        "-m",
        "pip",
        "wheel",
        "-q",
        "--no-deps",
        "--no-build-isolation",
        "-w",
        str(folder),
        str(ROOT),
    ]
    subprocess.run(command, check=True, cwd=folder)
    (made,) = folder.glob("*.whl")
    return made


def test_wheel_carries_the_app_and_the_schema(wheel):
    names = zipfile.ZipFile(wheel).namelist()
    for needed in ("pwa/index.html", "pwa/sw.js", "pwa/calc/volume.js", "shared_schema/calc/volume.json"):
        assert f"limnary/_data/{needed}" in names
    assert not [n for n in names if "node_modules" in n or n.startswith("tests/")]
    assert not [n for n in names if n.endswith(".md") and not n.startswith("limnary/_data/")]


def test_wheel_answers_without_the_checkout(wheel, tmp_path):
    zipfile.ZipFile(wheel).extractall(tmp_path / "site")
    answer = subprocess.run(
        [sys.executable, "-m", "limnary.cli", "calc", "free_ammonia"],
        input='{"tan_mg_n_l": 1, "ph": 8, "temperature_c": 25}', text=True, capture_output=True, check=True,
        cwd=tmp_path, env={**os.environ, "PYTHONPATH": str(tmp_path / "site")},
    )  # fmt: skip
    assert json.loads(answer.stdout)["fraction"] == pytest.approx(0.05366, rel=0.004)
