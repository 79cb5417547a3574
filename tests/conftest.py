"""Fixtures for all tests."""

import sys
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parent))


@pytest.fixture
def fish_room(tmp_path):
    """A fresh server with one room and its owner's phone."""
    from fish_rooms import FishRoom

    made = FishRoom(tmp_path / "data")
    yield made
    made.close()
