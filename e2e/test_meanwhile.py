"""A half-typed form shows what another keeper changed meanwhile, and saving it undoes none of that."""

import pytest
from access import refused_by_axe
from foretold import write
from playwright.sync_api import expect
from room_hands import invite, join, share

pytestmark = pytest.mark.browser

TANK = "reed-bank-0001"
FIELDS = {
    "name": "Reed bank",
    "measures": {"shape": "cuboid", "length_cm": 90, "width_cm": 40, "height_cm": 45, "measures": "inside"},
    "water_l": 162,
    "ph": 7,
    "place": "Hall",
}
SHARE_NOW = """async () => (await app()).sync.now()"""
RECORD = """async (id) => (await app()).live.room.value.get("tank", id)"""


def test_the_form_says_what_another_keeper_changed_since_it_was_opened(served_room, new_phone):
    aino, ben = new_phone(), new_phone()
    join(aino, served_room.link, "Aino", "Aino's phone")
    join(ben, invite(aino), "Ben", "Ben's phone")
    write(aino, [("tank", TANK, FIELDS)])
    for thumb in (aino, ben):
        share(thumb)
    aino.turn_to(f"/tank/{TANK}/edit")
    aino.type("Name", "Reed shore")
    news = aino.page.locator(".news")
    expect(news).to_have_count(0)

    ben.turn_to(f"/tank/{TANK}/edit")
    ben.type("Usual pH", "7.4")
    ben.page.get_by_label("Where it stands").fill("")
    ben.tap("button", "Save tank")
    ben.sees("Reed bank")
    share(ben)
    aino.page.evaluate(SHARE_NOW)
    expect(news).to_contain_text("Changed meanwhile, last by Ben:")
    expect(news).to_contain_text("Usual pH: now 7.4.")
    expect(news).to_contain_text("Where it stands: now empty.")
    assert refused_by_axe(aino.page) == []
    aino.page.reload()
    expect(news).to_contain_text("Usual pH: now 7.4.")
    expect(aino.page.get_by_label("Name")).to_have_value("Reed shore")

    aino.tap("button", "Save tank")
    aino.title("Reed shore")
    record = aino.page.evaluate(RECORD, TANK)
    assert (record["name"], record["ph"], "place" in record) == ("Reed shore", 7.4, False)
    aino.turn_to(f"/tank/{TANK}/edit")
    expect(aino.page.get_by_label("Usual pH")).to_have_value("7.4")
    expect(news).to_have_count(0)
