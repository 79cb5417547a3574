"""Phones, tabs and the real server under everything that can come between them: no seed breaks an invariant,
and every planted bug is caught.

Seeds 1 to LIMNARY_SEEDS run every time; a third as many more change from day to day. LIMNARY_DAILY, which
tests/run prints, repeats another day's.
"""

import os
import time
import warnings

import pytest
from pace import by_pace
from planting import BUGS, ROOT, passes, plant, simulate

SEEDS = int(os.environ.get("LIMNARY_SEEDS") or by_pace(quick=15, usual=300, long=1000))
DAILY = SEEDS // 3
DAILY_FROM = int(os.environ.get("LIMNARY_DAILY") or time.time() // 86_400 * 100)
# So many seeds are one test: enough that everything happens, few enough that the workers share them evenly.
AT_ONCE = 50
FATES = [
    *("lost request", "lost answer", "doubled", "late double", "stale answer", "server crash", "arm crash"),
    *("backup", "restore", "evict", "end membership", "revoke device", "rejoin", "role", "partition", "clock jump"),
    *("open tab", "try again", "lose phone", "leap", "shown row back"),
]


def batches():
    """The seeds in batches: first seed, number of seeds."""
    for first, seeds in ((1, SEEDS), (DAILY_FROM, DAILY)):
        for start in range(0, seeds, AT_ONCE):
            yield first + start, min(AT_ONCE, seeds - start)


@pytest.mark.parametrize(("first", "seeds"), list(batches()))
def test_no_seed_breaks_an_invariant(first, seeds):
    report = simulate(ROOT, first=first, seeds=seeds)
    assert report["violation"] is None
    assert report["seeds"] == seeds
    missing = [fate for fate in FATES if not report["counts"].get(fate)]
    assert seeds < AT_ONCE or missing == [], "these never happened, so nothing was shown about them"


def test_a_seed_runs_again_alike():
    assert simulate(ROOT, first=5, seeds=2) == simulate(ROOT, first=5, seeds=2)


@pytest.mark.skipif(SEEDS < 200, reason="a quick run plants no bugs")
@pytest.mark.filterwarnings("default:write seed")
@pytest.mark.parametrize("bug", BUGS, ids=[bug["name"] for bug in BUGS])
def test_planted_bug_is_caught(bug, tmp_path):
    root = plant(bug, tmp_path)
    if "caught_by" in bug:
        assert not passes(root, bug["caught_by"])
    elif not simulate(root, first=bug["seed"], seeds=1)["violation"]:
        found = simulate(root, first=1, seeds=300)["violation"]
        assert found, "no seed shows it"
        warnings.warn(f"write seed {found['seed']} into planted_bugs.json for: {bug['name']}", stacklevel=1)


@pytest.mark.skipif(SEEDS < 200, reason="a quick run plants no bugs")
def test_a_copy_without_a_bug_passes(tmp_path):
    """Else a copy that cannot even start would count as a bug that was caught."""
    root = plant({"name": "none", "edits": []}, tmp_path)
    assert passes(root, *sorted({bug["caught_by"] for bug in BUGS if "caught_by" in bug}))


def test_at_least_fifteen_bugs_are_planted():
    assert len(BUGS) >= 15
    assert sum("caught_by" not in bug for bug in BUGS) >= 15
