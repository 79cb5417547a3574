"""A death and the tanks that it exposed: three tanks, plants moved, a net shared, all without signal."""

import json
import re

import pytest
from playwright.sync_api import expect
from room_hands import join, share
from tank_hands import have_tank

pytestmark = pytest.mark.browser


def test_a_death_is_written_down_and_the_trace_shows_who_was_exposed(own_server, served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    sill = tank(thumb, "Sill")
    for name in ("Shelf", "Shed"):
        tank(thumb, name)
    thumb.stored()
    own_server.stop()

    thumb.open(sill)
    thumb.tap("link", "Animals", exact=True)
    thumb.tap("button", "arrived")
    thumb.tap("button", "Find the animal")
    thumb.type("Name, or a part of it", "zebra")
    thumb.tap("button", "zebra danio")
    for _ in range(5):
        thumb.tap("button", "1 more")
    thumb.tap("button", "6 × zebra danio: arrived")
    thumb.sees("Sill: 6 × zebra danio arrived, saved on this phone")

    thumb.turn_to(f"{sill}/plants/new")
    thumb.tap("button", "planted")
    thumb.tap("button", "Find the plant")
    thumb.type("Name, or a part of it", "ditch moss")
    thumb.tap("button", "Take “ditch moss” as it is")
    thumb.tap("button", "Planted: ditch moss")
    thumb.title("Plants")
    thumb.tap("link", "ditch moss")
    thumb.tap("button", "moved to another tank")
    thumb.tap("button", "Shelf")
    thumb.tap("button", "a handful")
    # A half-written entry survives the reload.
    thumb.page.reload()
    thumb.tap("button", "Move ditch moss, a handful")
    thumb.sees("moved from Sill to Shelf")
    thumb.sees("ditch moss, a handful, moved to Shelf")

    thumb.turn_to(f"{sill}/tool")
    thumb.tap("button", "Shed")
    thumb.tap("button", "here first")
    thumb.tap("button", "Save: net, here and in Shed")
    thumb.title("Trace")

    thumb.turn_to(f"{sill}/stock")
    thumb.tap("link", "zebra danio")
    died(thumb)
    expect(thumb.page.get_by_role("link", name="zebra danio 5")).to_have_count(0)
    thumb.sees("After a death")
    thumb.tap("button", "Undo")
    expect(thumb.page.get_by_text("After a death")).to_have_count(0)
    thumb.tap("link", "zebra danio")
    died(thumb)
    thumb.tap("link", "Who else was exposed")
    thumb.sees("2 tanks were exposed to Sill.")
    exposed = thumb.page.get_by_role("table", name="Exposed to it")
    expect(exposed.get_by_role("row", name="Shelf")).to_contain_text("ditch moss, from Sill to Shelf")
    expect(exposed.get_by_role("row", name="Shed")).to_contain_text("net, from Sill to Shed")
    thumb.tap("button", "7 days")
    expect(exposed.get_by_role("row")).to_have_count(2)

    thumb.turn_to("/tanks")
    thumb.tap("link", "Search")
    thumb.type("What are you looking for?", "DÁNIO")
    thumb.tap("link", "zebra danio")
    thumb.title("Animals")

    thumb.turn_to(f"{sill}/history")
    thumb.tap("link", "Correct Animals")
    thumb.tap("button", "1 more")
    thumb.tap("button", "2 × zebra danio: died")
    thumb.title("History")
    thumb.sees("Corrected; before: 1 × zebra danio, died: old age")
    thumb.turn_to("/timeline")
    thumb.tap("button", "Plants", exact=True)
    # Both halves of the move are listed; either one is corrected in the tank that the move left.
    thumb.tap("link", "Correct Plants")
    thumb.tap("button", "a few pots")
    thumb.tap("button", "Move ditch moss, a few pots")
    thumb.title("All tanks")
    expect(thumb.page.get_by_text(re.compile("before: ditch moss, a handful, moved"))).to_have_count(2)

    own_server.start()
    share(thumb)
    rows = served_room.rows("SELECT kind, fields FROM records WHERE deleted IS NULL")
    written = [{"kind": row["kind"], **json.loads(row["fields"])} for row in rows]
    stock = [(one["change"], one["count"]) for one in written if one["kind"] == "stock_change"]
    assert sorted(stock) == [("arrival", 6), ("death", 1), ("death", 2)]
    (death,) = [one for one in written if one.get("change") == "death" and "supersedes" in one]
    assert (death["species"], death["cause"]) == ("Danio rerio", "old age")
    moved = [one for one in written if one["kind"] == "planting" and one["change"].startswith("move")]
    assert (
        sorted((one["amount"], "supersedes" in one) for one in moved)
        == [("a few pots", True)] * 2 + [("a handful", False)] * 2
    )
    moves = {one["change"]: one for one in moved if "supersedes" in one}
    assert moves["move_out"]["other_tank"] == moves["move_in"]["tank"]
    assert moves["move_in"]["other_tank"] == moves["move_out"]["tank"]
    assert moves["move_in"]["at"] == moves["move_out"]["at"]
    assert [(one["tool"], one["order"]) for one in written if one["kind"] == "shared_tool"] == [("net", "here")]


def tank(thumb, name):
    """A new tank; its page's path."""
    thumb.turn_to("/tanks")
    have_tank(thumb, name)
    return thumb.page.url[thumb.page.url.index("/tank/") :]


def died(thumb):
    thumb.tap("button", "died")
    thumb.tap("button", "old age")
    thumb.tap("button", "1 × zebra danio: died")
    thumb.sees("Sill: 1 × zebra danio died, saved on this phone")
