"""What the server fails to do by itself stands in the Room of its owner, and in nobody else's."""

import dataclasses
import json
import time

import pytest
from limnary.store.daily import NOTES, Notes
from playwright.sync_api import expect
from real_server import RealServer
from room_hands import join, link_for

pytestmark = pytest.mark.browser


@pytest.fixture
def own_server(tmp_path):
    """A server that noted at its last cycle that a backup was damaged."""
    (tmp_path / "data").mkdir()
    now_ms = time.time_ns() // 1_000_000
    noted = Notes(mark="0a1b2c", tried_at=now_ms, good_at=now_ms, faults=["backup-damaged"])
    (tmp_path / "data" / NOTES).write_text(json.dumps(dataclasses.asdict(noted)))
    started = RealServer(tmp_path / "data").start()
    yield started
    started.stop()


@pytest.mark.usefixtures("own_server")
def test_a_damaged_backup_stands_in_the_owners_room(served_room, new_phone):
    owner, keeper = new_phone(), new_phone()
    join(owner, served_room.link, "Aino", "Aino's phone")
    join(keeper, link_for(owner, "keeper"), "Bo", "Bo's phone")
    for thumb in (owner, keeper):
        thumb.turn_to("/room")
        thumb.sees("Everything on this phone is shared.")
    owner.sees("A backup was damaged after it was made. The others are kept.")
    owner.sees("Last backup: today")
    expect(keeper.page.get_by_role("heading", name="The server’s backups")).to_have_count(0)


def test_the_room_leads_to_what_this_phone_gives_the_app(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    thumb.turn_to("/room")
    thumb.page.get_by_role("link", name="What this phone gives the app").click()
    expect(thumb.page.get_by_text("This page came by a safe way")).to_be_visible()
    thumb.page.get_by_role("link", name="To the app").click()
    thumb.sees("Round")
