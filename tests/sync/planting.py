"""A copy of the product with a bug in it, and runs of the simulator, over the product or over such a copy.

planted_bugs.json lists bugs that sync protocols are known to have, each as edits of our own code. An edit's
text must occur exactly once in its file, so that a bug that no longer fits the code fails loudly. `seed` is one
that shows the bug; if it no longer does, a search finds another. Bugs that seeds show too rarely have `caught_by`:
the test that has to see them, a file of tests/js or one test of tests/api.
"""

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[2]
BUGS = json.loads(Path(__file__).with_name("planted_bugs.json").read_text("utf-8"))
NEEDED = [
    *("pwa", "shared_schema", "server/limnary", "tests/js", "tests/sync", "tests/types", "tests/package.json"),
    *("tests/conftest.py", "tests/fish_rooms.py", "tests/api/test_bring_back.py", "tests/api/test_sync_api.py"),
]


def plant(bug: dict, folder: Path) -> Path:
    """A copy of what the simulator needs, with the bug in it. What phones get built is not needed."""
    for name in NEEDED:
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        if (ROOT / name).is_dir():
            shutil.copytree(ROOT / name, folder / name, copy_function=_linked, ignore=shutil.ignore_patterns("built"))
        else:
            _linked(ROOT / name, folder / name)
    (folder / "tests/node_modules").symlink_to((ROOT / "tests/node_modules").resolve())
    (folder / "pyproject.toml").touch()  # marks a checkout, where limnary looks for shared_schema
    for edit in bug["edits"]:
        path, old = folder / edit["file"], edit["find"]
        text = path.read_text("utf-8")
        assert text.count(old) == 1, f"{bug['name']}: {old!r} occurs {text.count(old)} times in {edit['file']}"
        path.unlink()  # the copy's name alone: the file itself may be the product's
        path.write_text(text.replace(old, edit["replace"]), "utf-8")
    return folder


def _linked(of: str, to: str) -> None:
    """A second name for a file, or a copy where the folders are on two disks."""
    try:
        os.link(of, to)
    except OSError:
        shutil.copy2(of, to)


def simulate(root: Path, *, first: int, seeds: int, steps: int = 80, seconds: float = 3600, told=None) -> dict:
    """The simulator's report: {from, seeds, violation: {seed, words} | null, counts}. `told`: where progress goes."""
    options = {"from": first, "seeds": seeds, "steps": steps, "seconds": seconds, "python": sys.executable}
    # More room for young objects: most of what a seed makes is soon gone.
    node = ["node", "--max-semi-space-size=64", str(root / "tests/sync/run.js")]
    command = [*node, *(f"--{name}={value}" for name, value in options.items())]
    err = told or subprocess.PIPE
    done = subprocess.run(command, stdout=subprocess.PIPE, stderr=err, text=True)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout.splitlines()[-1])


def passes(root: Path, *tests: str) -> bool:
    """Whether these tests of a copy pass: files of tests/js, and tests of tests/api by their names in pytest."""
    phone = [test for test in tests if test.endswith(".test.js")]
    server = [test for test in tests if test not in phone]
    return all(_passes_in_node(root, test) for test in phone) and (not server or _passes_in_pytest(root, server))


def _passes_in_node(root: Path, test: str) -> bool:
    return subprocess.run(["node", test], cwd=root, capture_output=True).returncode == 0


def _passes_in_pytest(root: Path, tests: list[str]) -> bool:
    # Only whether they pass counts: no plugin and no words about a failed assert, which take most of the time.
    command = [sys.executable, "-m", "pytest", "-x", "-q", "-p", "no:cacheprovider", "--assert=plain", *tests]
    env = {**os.environ, "PYTHONPATH": str(root / "server"), "PYTEST_DISABLE_PLUGIN_AUTOLOAD": "1"}
    done = subprocess.run(command, cwd=root, capture_output=True, text=True, env=env)
    assert done.returncode in (0, 1), done.stdout + done.stderr
    return done.returncode == 0
