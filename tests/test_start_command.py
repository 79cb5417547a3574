"""`bash server/run` where something is missing: it says in words what, and what to do, and leaves nothing half made."""

import os
import shutil
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
# What every Debian has, without Python, apt or Node.
TOOLS = ("bash", "id", "cmp", "cp", "rm", "dirname", "mkdir", "cat", "chmod")
OLD = "#!/bin/bash\n[ $1 = --version ] && echo 'Python 3.9.2'\nexit 1\n"
NO_VENV = '#!/bin/bash\n[ "$1" = -m ] && { mkdir -p "$3"; exit 1; }\nexit 0\n'
# Makes an environment whose pip fails, as it does without a network.
NO_NETWORK = r"""#!/bin/bash
[ "$1" = -m ] || exit 0
mkdir -p "$3/bin"
printf '#!/bin/bash\necho "pip: no route to host" >&2\nexit 1\n' >"$3/bin/python"
chmod +x "$3/bin/python"
"""


@pytest.fixture
def bare(tmp_path):
    """A checkout on a machine with TOOLS and nothing else."""
    (tmp_path / "bin").mkdir()
    for tool in TOOLS:
        (tmp_path / "bin" / tool).symlink_to(shutil.which(tool))
    (tmp_path / "checkout" / "server").mkdir(parents=True)
    for name in ("server/run", "pyproject.toml"):
        shutil.copy(ROOT / name, tmp_path / "checkout" / name)
    return tmp_path


def started(bare: Path, python: str = "", **more) -> subprocess.CompletedProcess:
    """Run the start command with `python` as python3."""
    if python:
        (bare / "bin" / "python3").write_text(python)
        (bare / "bin" / "python3").chmod(0o755)
    env = {"PATH": str(bare / "bin"), "HOME": os.environ["HOME"], **more}
    command = [bare / "bin" / "bash", bare / "checkout" / "server" / "run"]
    return subprocess.run(command, env=env, capture_output=True, text=True, timeout=60)


@pytest.mark.parametrize(
    ("python", "says"),
    [
        ("", ["3.11 or newer", "here is none", "sudo apt-get install python3 python3-venv"]),
        (OLD, ["3.11 or newer", "here is Python 3.9.2"]),
        (NO_VENV, ["cannot make a virtual environment", "sudo apt-get install python3-venv"]),
        (NO_NETWORK, ["pip: no route to host", "needs a network once", "run this again"]),
    ],
    ids=["no python", "old python", "no venv", "no network"],
)
def test_what_is_missing_is_said_with_what_to_do(bare, python, says):
    done = started(bare, python)
    assert done.returncode == 1
    assert [words for words in says if words not in done.stderr] == []
    assert "command not found" not in done.stderr
    installed = bare / "checkout" / ".venv"
    assert not installed.exists() or (installed / "bin" / "python").exists(), "no half made environment stays"
    assert not (installed / ".limnary-installed").exists()


def test_an_environment_that_is_lent_and_is_none(bare):
    done = started(bare, LIMNARY_VENV="/nowhere")
    assert (done.returncode, "LIMNARY_VENV is /nowhere" in done.stderr) == (1, True)
