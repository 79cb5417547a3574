"""A few cuts of import, backup, restore and migration; `python tests/store/cutting.py 200` makes many."""

import json
import subprocess
import sys
from pathlib import Path

from pace import by_pace

CUTTING = Path(__file__).parent / "cutting.py"


def test_what_is_cut_short_loses_nothing_and_goes_through_when_repeated():
    """In a process of its own: it forks, and a process with threads must not."""
    times = by_pace(quick=2, usual=4, long=50)
    done = subprocess.run([sys.executable, str(CUTTING), str(times)], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    kinds = [json.loads(line) for line in done.stdout.splitlines()]
    assert [one["kind"] for one in kinds] == ["import", "merge", "backup", "restore", "migration"]
    assert kinds[3]["in a rename"] > 0
    assert all(one["cut"] > 0 and one["times"] >= times for one in kinds)
