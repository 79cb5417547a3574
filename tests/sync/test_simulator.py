"""Phones, tabs and the real server under everything that can come between them: no seed breaks an invariant,
and every planted bug is caught. LIMNARY_SEEDS sets how many seeds (1,000 if it is not set)."""

import os

import pytest
from many_runs import run
from planting import BUGS, ROOT, plant, rules_hold, server_rules_hold, simulate

SEEDS = int(os.environ.get("LIMNARY_SEEDS", "1000"))
FATES = [
    *("lost request", "lost answer", "doubled", "late double", "stale answer", "server crash", "arm crash"),
    *("backup", "restore", "evict", "end membership", "revoke device", "rejoin", "role", "partition", "clock jump"),
    *("open tab", "try again", "lose phone", "leap", "shown row back"),
]


def test_no_seed_breaks_an_invariant():
    report = run(1, SEEDS, jobs=2)
    assert report["violations"] == []
    assert report["seeds"] == SEEDS
    missing = [fate for fate in FATES if not report["counts"].get(fate)]
    assert SEEDS < 20 or missing == [], "these never happened, so nothing was shown about them"


def test_a_seed_runs_again_alike():
    assert simulate(ROOT, first=5, seeds=2) == simulate(ROOT, first=5, seeds=2)


@pytest.mark.skipif(SEEDS < 200, reason="a quick run plants no bugs")
@pytest.mark.parametrize("bug", BUGS, ids=[bug["name"] for bug in BUGS])
def test_planted_bug_is_caught(bug, tmp_path):
    root = plant(bug, tmp_path)
    if "caught_by" in bug:
        assert not {"rules": rules_hold, "server rules": server_rules_hold}[bug["caught_by"]](root)
    else:
        assert simulate(root, first=bug.get("seed", 1), seeds=300)["violation"], "no seed shows it"


def test_at_least_fifteen_bugs_are_planted():
    assert len(BUGS) >= 15
    assert sum("caught_by" not in bug for bug in BUGS) >= 15
