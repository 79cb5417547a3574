"""The runner's own answer: 0 when everything passed, else not 0, with what failed said last."""

import os
import subprocess
from pathlib import Path

import pytest

RUN = Path(__file__).parent / "run"

PYTHON = """#!/bin/bash
case "$*" in
  "-m pytest -m browser "*) echo "the stories' last words"; exit "$STORIES" ;;
  "-m pytest "*) echo "the rest's last words"; exit "$REST" ;;
esac
"""


@pytest.fixture
def tree(tmp_path):
    """A tree whose Python, Node and type check only say their lines and end as told."""
    (tmp_path / "tests/node_modules/.bin").mkdir(parents=True)
    (tmp_path / "venv/bin").mkdir(parents=True)
    (tmp_path / "tests/run").write_text(RUN.read_text())
    programs = {
        "venv/bin/python": PYTHON,
        "venv/bin/node": '#!/bin/bash\nexit "$NODE"\n',
        "tests/node_modules/.bin/tsc": "#!/bin/bash\n",
    }
    for name, text in programs.items():
        (tmp_path / name).write_text(text)
        (tmp_path / name).chmod(0o755)
    return tmp_path


def ran(tree, *arguments, stories=0, rest=0, node=0):
    venv = tree / "venv"
    set_here = {
        "PATH": f"{venv / 'bin'}:{os.environ['PATH']}",
        "LIMNARY_VENV": str(venv),
        "LIMNARY_CHROMIUM": "none is started",
        "TMPDIR": str(tree),
    }
    ends = {"STORIES": str(stories), "REST": str(rest), "NODE": str(node)}
    return subprocess.run(
        ["bash", tree / "tests/run", *arguments],
        env=os.environ | set_here | ends,
        capture_output=True,
        text=True,
        timeout=60,
    )


@pytest.mark.parametrize("arguments", [[], ["--quick"]])
def test_all_passed_is_0(tree, arguments):
    run = ran(tree, *arguments)
    assert (run.returncode, run.stderr) == (0, "")
    assert "the rest's last words" in run.stdout
    assert ("the stories' last words" in run.stdout) == (arguments == [])


@pytest.mark.parametrize("failed", [{"rest": 1}, {"node": 1}])
@pytest.mark.parametrize("arguments", [[], ["--quick"]])
def test_a_failure_without_the_browser_is_not_0(tree, arguments, failed):
    assert ran(tree, *arguments, **failed).returncode != 0


def test_a_failed_story_is_not_0_and_is_said_last(tree):
    run = ran(tree, stories=1)
    assert run.returncode != 0
    assert run.stdout.endswith("== the browser, once more\nthe stories' last words\n")


@pytest.mark.parametrize("stories", [0, 1])
def test_nothing_is_left_behind(tree, stories):
    ran(tree, stories=stories)
    assert {path.name for path in tree.iterdir()} == {"tests", "venv"}
