"""A few kills of a real server; `python tests/store/killing.py 200` makes many."""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

from killing import kill_often


def test_no_acknowledged_op_is_lost_to_sigkill(tmp_path):
    done = kill_often(tmp_path / "data", kills=5, seed=2)
    assert done["acknowledged"] > 0
