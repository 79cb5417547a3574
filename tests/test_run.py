"""The runner's own answer: 0 when everything passed, else not 0, with what failed said last."""

import os
import subprocess
from pathlib import Path

import pytest

RUN = Path(__file__).parent / "run"

PYTHON = """#!/bin/bash
case "$*" in
  "-m pytest "*) echo "$LIMNARY_PACE: $*"; echo "the tests' last words"; exit "$TESTS" ;;
  "-m ruff "*) exit "$STYLE" ;;
esac
"""


@pytest.fixture
def tree(tmp_path):
    """A tree whose Python, npm and checkers only say their lines and end as told."""
    (tmp_path / "tests/node_modules/.bin").mkdir(parents=True)
    (tmp_path / "venv/bin").mkdir(parents=True)
    (tmp_path / "tests/run").write_text(RUN.read_text())
    (tmp_path / "tests/package.json").write_text("{}")
    programs = {
        "venv/bin/python": PYTHON,
        "venv/bin/npm": '#!/bin/bash\necho "tools installed"\n',
        "tests/check_types": '#!/bin/bash\nexit "$TYPES"\n',
        "tests/node_modules/.bin/biome": '#!/bin/bash\nexit "$FORMAT"\n',
    }
    for name, text in programs.items():
        (tmp_path / name).write_text(text)
        (tmp_path / name).chmod(0o755)
    return tmp_path


def ran(tree, *arguments, tests=0, style=0, types=0, form=0):
    venv = tree / "venv"
    set_here = {
        "PATH": f"{venv / 'bin'}:{os.environ['PATH']}",
        "LIMNARY_VENV": str(venv),
        "LIMNARY_CHROMIUM": "none is started",
        "TMPDIR": str(tree),
    }
    ends = {"TESTS": str(tests), "STYLE": str(style), "TYPES": str(types), "FORMAT": str(form)}
    outside = {name: value for name, value in os.environ.items() if name != "LIMNARY_WORKERS"}
    return subprocess.run(
        ["bash", tree / "tests/run", *arguments],
        env=outside | set_here | ends,
        capture_output=True,
        text=True,
        timeout=60,
    )


@pytest.mark.parametrize("arguments", [[], ["--quick"], ["--long"]])
def test_all_passed_is_0(tree, arguments):
    run = ran(tree, *arguments)
    assert (run.returncode, run.stderr) == (0, "")
    pace = arguments[0].strip("-") if arguments else "usual"
    workers = os.sysconf("SC_NPROCESSORS_ONLN") + 2
    assert f"\n{pace}: -m pytest -n {workers} " in run.stdout
    assert ("-m not browser" in run.stdout) == (pace == "quick")


@pytest.mark.parametrize("failed", [{"tests": 1}, {"style": 1}, {"types": 1}, {"form": 1}])
@pytest.mark.parametrize("arguments", [[], ["--quick"]])
def test_a_failure_is_not_0(tree, arguments, failed):
    assert ran(tree, *arguments, **failed).returncode != 0


def test_what_failed_is_said_last(tree):
    assert ran(tree, tests=1).stdout.endswith("the tests' last words\n")


def test_what_is_asked_for_in_other_words_is_refused(tree):
    run = ran(tree, "--quik")
    assert (run.returncode, run.stdout) == (2, "")
    assert "--quick" in run.stderr


def test_tools_are_installed_once_and_again_when_others_are_wanted(tree):
    assert "tools installed" in ran(tree).stdout
    assert "tools installed" not in ran(tree).stdout
    (tree / "tests/package.json").write_text('{"type": "module"}')
    assert "tools installed" in ran(tree).stdout


def test_without_its_tools_nothing_is_tested(tree):
    (tree / "venv/bin/npm").write_text("#!/bin/bash\nexit 1\n")
    run = ran(tree)
    assert (run.returncode, run.stdout) == (1, "")
    assert "npm could not bring the tools" in run.stderr


def test_what_is_wrong_with_style_is_said_too(tree):
    (tree / "tests/check_types").write_text("#!/bin/bash\necho 'a wrong type'\nexit 1\n")
    run = ran(tree)
    assert (run.returncode, run.stdout.splitlines()[-1]) == (1, "a wrong type")


@pytest.mark.parametrize("tests", [0, 1])
def test_nothing_is_left_behind(tree, tests):
    ran(tree, tests=tests)
    assert {path.name for path in tree.iterdir()} == {"tests", "venv"}
