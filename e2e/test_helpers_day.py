"""A helper's day: the keeper makes the away sheet and lets a helper in, who tests, feeds and does what is due."""

import io
import json
import re

import pytest
import zxingcpp
from foretold import write
from PIL import Image
from playwright.sync_api import expect
from room_hands import invite, join, share
from test_six_tanks import NAMES, room

pytestmark = pytest.mark.browser


def test_the_away_sheet_and_a_helpers_day(served_room, new_phone):
    owner = new_phone()
    join(owner, served_room.link, "Aino", "Aino's phone")
    write(owner, room())
    owner.turn_to("/room")
    owner.tap("link", "Away sheet")
    owner.sees("Nobody is away.")
    owner.tap("link", "Make the sheet")
    owner.tap("button", "Until: more")
    for name in NAMES[3:]:
        owner.tap("button", name)
    owner.type("Who", "Aino, on the train")
    owner.type("Telephone", "+49 30 5550 0142")
    owner.page.reload()
    owner.tap("button", "Save the sheet")
    owner.sees("If ammonia reads over")
    assert pages(owner, "A4") == pages(owner, "Letter") == 1, "three tanks"
    owner.tap("link", "Edit")
    for name in NAMES[3:]:
        owner.tap("button", name)
    owner.tap("button", "Save the sheet")
    expect(owner.page.get_by_role("article")).to_have_count(6)
    assert pages(owner, "A4") == pages(owner, "Letter") == 1, "six tanks"
    share(owner)

    helper = new_phone()
    join(helper, invite(owner, "helper", "an hour"), "Bo", "Bo's phone")
    helper.stored()
    helper.page.context.set_offline(True)
    helper.tap("link", "Away sheet")
    helper.sees("0.1 g of dry food every 2 days, no more.")
    helper.sees("Unplug heater, filter and lights before hands go in")
    expect(helper.page.get_by_role("link", name="+49 30 5550 0142")).to_have_attribute("href", "tel:+493055500142")
    expect(helper.page.get_by_role("link", name="Edit")).to_have_count(0)
    helper.turn_to("/")
    helper.tap("button", "Done Wipe the glass")
    helper.sees("Wipe the glass: done, saved on this phone")
    helper.tap("link", NAMES[0])
    helper.tap("link", "Feed")
    helper.tap("button", "Log")
    helper.sees("of food saved on this phone")
    helper.tap("link", "Test")
    helper.tap("button", "0", exact=True)
    helper.tap("button", "0", exact=True)
    helper.tap("button", "Save 2 readings")
    helper.sees("2 readings saved on this phone")
    expect(helper.page.get_by_role("link", name="About this tank")).to_have_count(0)
    helper.turn_to("/labels")
    expect(helper.page.get_by_role("img", name="QR code of")).to_have_count(6)
    label = helper.page.get_by_role("img", name=f"QR code of {NAMES[2]}")
    label.scroll_into_view_if_needed()
    (code,) = zxingcpp.read_barcodes(Image.open(io.BytesIO(label.locator("..").screenshot())))
    assert code.text == f"{served_room.origin}/tank/tank-0002"
    helper.page.goto(code.text)
    helper.title(NAMES[2])
    helper.turn_to("/task/task-0001")
    expect(helper.page.get_by_role("link", name="Change this task")).to_have_count(0)
    helper.page.context.set_offline(False)
    share(helper)
    helper.sees("Everything on this phone is shared.")
    kinds = [row["kind"] for row in served_room.rows("SELECT kind FROM records WHERE deleted IS NULL")]
    assert [kinds.count(kind) for kind in ("away_sheet", "task_done", "feeding", "reading")] == [1, 1, 1, 2]
    (sheet,) = served_room.rows("SELECT fields FROM records WHERE kind = 'away_sheet'")
    kept = json.loads(sheet["fields"])
    assert (len(kept["tanks"]), kept["calls"][0]["who"]) == (6, "Aino, on the train")


def test_a_label_on_a_phone_that_is_not_in_the_room(new_phone):
    stranger = new_phone()
    stranger.open("/tank/tank-0002")
    stranger.sees("This phone does not hold that tank.")


def pages(thumb, paper):
    """How many sheets of paper the page needs."""
    return len(re.findall(rb"/Type\s*/Page[^s]", thumb.page.pdf(format=paper)))
