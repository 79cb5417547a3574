"""Fixtures for all tests."""

import gc
import sys
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parent))

# Modules and tests live until the end. To look through them for garbage, while they are collected and again and again
# while they run, takes a tenth of the processor's time.
gc.disable()


def pytest_collection_finish():
    gc.freeze()
    gc.enable()


# These keep a processor busy for long.
LONG = ("tests/sync/", "tests/test_virtual_tank.py", "tests/test_outlook.py", "tests/test_twins.py", "tests/test_phone")


def pytest_collection_modifyitems(items):
    """What takes longest starts first, so that all workers end at about the same time.

    The tests of one group run in one worker, one after another: the groups come first. A browser story often waits for
    its page: stories and long calculations take turns, so that neither all wait nor all calculate at once.
    """
    groups = [item for item in items if item.get_closest_marker("xdist_group")]
    grouped = set(groups)
    stories = [item for item in items if item.nodeid.startswith("e2e/") and item not in grouped]
    long = [item for start in LONG for item in items if item.nodeid.startswith(start)]
    turns = [(at / len(part), item) for part in (stories, long) for at, item in enumerate(part)]
    first = groups + [item for _, item in sorted(turns, key=lambda turn: turn[0])]
    placed = set(first)
    items[:] = first + [item for item in items if item not in placed]


@pytest.fixture
def fish_room(tmp_path):
    """A fresh server with one room and its owner's phone."""
    from fish_rooms import FishRoom

    made = FishRoom(tmp_path / "data")
    yield made
    made.close()
