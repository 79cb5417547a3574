"""`python tests/mutation/planted_model_bugs.py [WORD]`: which planted bugs of the forecast's model a test notices.

Applies each of planted_model_bugs.json (those whose file or reason has the WORD) to a copy of the tree, one at a time,
and runs the vectors of the outlook there, in Python also its outside checks. Prints red or SURVIVED; fails if one
survives. `old` must occur exactly once in its file.
"""

import json
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
BUGS = json.loads(Path(__file__).with_name("planted_model_bugs.json").read_text("utf-8"))["bugs"]
NEEDED = ("pwa", "shared_schema", "server/limnary", "tests/js", "tests/outside", "pyproject.toml", "tests/package.json")
NEEDED += ("tests/conftest.py", "tests/test_vectors.py")
PYTEST = (sys.executable, "-m", "pytest", "-q", "-x", "-n", "0", "-p", "no:cacheprovider")
# A bug that lets a loop run for ever is noticed.
MOST_S = 600


def main() -> int:
    word = sys.argv[1] if sys.argv[1:] else ""
    asked = [bug for bug in BUGS if word in bug["file"] or word in bug["why"]]
    with tempfile.TemporaryDirectory() as folder:
        copy = tree(Path(folder))
        for language in sorted({Path(bug["file"]).suffix for bug in asked}):
            assert not noticed(copy, language), f"the tests of {language} are red without a bug"
        survived = [bug for bug in asked if not red(copy, bug)]
    print(f"{len(asked) - len(survived)} of {len(asked)} are red")
    return 1 if survived else 0


def tree(folder: Path) -> Path:
    """A copy of what the tests need."""
    for name in NEEDED:
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        copy = shutil.copytree if (ROOT / name).is_dir() else shutil.copy
        copy(ROOT / name, folder / name)
    (folder / "tests/node_modules").symlink_to((ROOT / "tests/node_modules").resolve())
    return folder


def red(copy: Path, bug: dict) -> bool:
    """Whether a test notices the bug; the copy is whole again afterwards."""
    path = copy / bug["file"]
    whole = path.read_text("utf-8")
    assert whole.count(bug["old"]) == 1, f"{bug['why']}: {bug['old']!r} occurs {whole.count(bug['old'])} times"
    path.write_text(whole.replace(bug["old"], bug["new"]), "utf-8")
    found = noticed(copy, path.suffix)
    path.write_text(whole, "utf-8")
    print("red     " if found else "SURVIVED", bug["file"], bug["why"], sep="  ", flush=True)
    return found


def noticed(copy: Path, suffix: str) -> bool:
    """Whether any test of the outlook fails."""
    if suffix == ".js":
        return not passes(copy, "node", "--test-name-pattern=^outlook", "tests/js/vectors.test.js")
    contract = json.loads((copy / "shared_schema/calc/outlook.json").read_text("utf-8"))
    vectors = passes(copy, *PYTEST, "tests/test_vectors.py", "-k", "outlook")
    return not (vectors and passes(copy, *PYTEST, *contract["outside"]))


def passes(copy: Path, *command: str) -> bool:
    env = {**os.environ, "PYTHONPATH": str(copy / "server"), "OMP_NUM_THREADS": "1", "OPENBLAS_NUM_THREADS": "1"}
    try:
        done = subprocess.run(command, cwd=copy, env=env, capture_output=True, text=True, timeout=MOST_S)
    except subprocess.TimeoutExpired:
        return False
    assert "pytest" not in command or done.returncode in (0, 1), done.stdout + done.stderr
    return done.returncode == 0


if __name__ == "__main__":
    sys.exit(main())
