"""A short evening of a few keepers: what the large one would tell is told, and nothing is lost."""

import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

import evening


def passed(*arguments: str) -> int:
    """The program's exit code, from a thread of its own: a browser story before may have left its loop in this one."""
    with ThreadPoolExecutor(1) as beside:
        return beside.submit(evening.main, list(arguments)).result()


def test_nothing_is_lost_on_good_networks_and_bad(capsys):
    assert passed("--minutes", "0.1", "--keepers", "10", "--tanks", "20", "--records", "0") == 0
    said = capsys.readouterr().out
    assert "acknowledged: 0" not in said
    assert "lost: 0; never shared: 0" in said


def test_what_is_lost_is_told(capsys, monkeypatch):
    """A write that was acknowledged and that no room holds."""
    really = evening.Keeper._push

    async def push(self, ops):
        await really(self, ops)
        self.acknowledged.add("a write that was forgotten")

    monkeypatch.setattr(evening.Keeper, "_push", push)
    assert passed("--minutes", "0.02", "--keepers", "1", "--tanks", "1", "--records", "0") == 1
    assert "lost: 1;" in capsys.readouterr().out
