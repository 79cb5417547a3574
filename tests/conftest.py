"""Fixtures for all tests."""

import sys
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parent))

# What takes longest starts first, so that all workers end at about the same time.
LONG_FIRST = ("tests/sync/", "e2e/", "tests/test_virtual_tank.py", "tests/test_outlook.py", "tests/test_twins.py")


def pytest_collection_modifyitems(items):
    places = {start: place for place, start in enumerate(LONG_FIRST)}
    items.sort(
        key=lambda item: next((at for start, at in places.items() if item.nodeid.startswith(start)), len(places))
    )


@pytest.fixture
def fish_room(tmp_path):
    """A fresh server with one room and its owner's phone."""
    from fish_rooms import FishRoom

    made = FishRoom(tmp_path / "data")
    yield made
    made.close()
