"""The people of a room, as stories on two phones: let in, refused, promoted, shut out, handed over, left."""

import json
import re

import pytest
from playwright.sync_api import expect
from room_hands import hear_of_role, invite, join, link_for, made_link, person, read_ammonia, share
from tank_hands import have_tank

pytestmark = pytest.mark.browser


@pytest.fixture
def owner(served_room, new_phone):
    """Aino's phone, with a tank that is shared."""
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    have_tank(thumb, "Reed pool")
    share(thumb)
    thumb.sees("Everything on this phone is shared.")
    return thumb


@pytest.fixture
def helper(owner, new_phone):
    """Bo's phone, let in as a helper, with the tank."""
    thumb = new_phone()
    join(thumb, link_for(owner, "helper"), "Bo", "Bo's phone")
    thumb.sees("Reed pool")
    thumb.stored()
    return thumb


def test_a_helper_records_but_changes_no_tank(served_room, owner, helper):
    read_ammonia(helper, "Reed pool")
    helper.turn_to("/")
    helper.tap("link", "Reed pool")
    helper.sees("History")
    expect(helper.page.get_by_role("link", name="About this tank")).to_have_count(0)
    refused_change(owner, helper)
    helper.sees("1 entry was refused and needs you. It is kept on this phone.")
    helper.tap("link", "Needs you")
    helper.sees("Tank “Night pool”: change")
    expect(helper.page.locator(".said-field")).to_have_text(["Name Night pool"])
    helper.sees("Your role here is helper. Only these roles may do that: owner, keeper.")
    with helper.page.expect_download() as held:
        helper.tap("button", "Keep them as a file")
    head, *lines = [json.loads(line) for line in held.value.path().read_text().splitlines()]
    assert (head["format"], [line["op"]["fields"]["name"] for line in lines]) == ("limnary-room", ["Night pool"])

    helper.tap("button", "Discard")
    helper.sees("Nothing needs you.")
    helper.tap("button", "Undo")
    helper.sees("Tank “Night pool”: change")
    helper.tap("button", "Try again Tank")
    helper.sees("Your role here is helper")

    person(owner, "Bo")
    owner.tap("button", "keeper")
    owner.sees("Bo is keeper now")
    hear_of_role(helper)
    helper.tap("link", "Needs you")
    helper.tap("button", "Try all again")
    helper.sees("Nothing needs you.")
    share(helper)
    helper.sees("Everything on this phone is shared.")
    assert names_on_the_server(served_room) == ["Night pool"]
    share(owner)
    owner.turn_to("/")
    owner.tap("link", "Night pool")
    owner.tap("link", "History")
    owner.sees("Ammonia (total) 0.1")
    expect(owner.page.get_by_text(re.compile("· Bo")).first).to_be_visible()


def test_discarding_for_good_brings_back_what_the_others_see(owner, helper):
    refused_change(owner, helper)
    helper.tap("link", "Needs you")
    helper.tap("button", "Discard")
    helper.sees("Nothing needs you.")
    helper.turn_to("/")
    helper.sees("Reed pool")
    helper.turn_to("/room")
    helper.sees("Everything on this phone is shared.")


def test_a_role_is_changed_and_changed_back(served_room, owner, helper):
    person(owner, "Bo")
    owner.tap("button", "viewer")
    owner.sees("Bo is viewer now")
    assert served_room.members()["Bo"] == "viewer"
    hear_of_role(helper)
    helper.sees("You are viewer here")
    helper.turn_to("/")
    helper.sees("Reed pool")
    expect(helper.page.get_by_role("link", name="Test", exact=True)).to_have_count(0)
    helper.tap("link", "Reed pool")
    expect(helper.page.locator("footer .act a")).to_have_count(0)
    page = helper.page.url
    for form in ("test", "change"):
        helper.turn_to(f"{page}/{form}")
        helper.sees("In this room you may look, not write.")
    helper.turn_to("/tanks/new")
    helper.sees("Your role in this room does not change this.")
    helper.turn_to("/room/source_water/new")
    helper.sees("Your role in this room does not change this.")
    owner.tap("button", "Undo")
    expect(owner.page.get_by_role("button", name="helper")).to_have_attribute("aria-pressed", "true")
    assert served_room.members()["Bo"] == "helper"


def test_a_link_is_withdrawn_and_opens_nothing(served_room, owner, new_phone):
    link = invite(owner, "viewer", "a week")
    owner.sees("It lets one viewer in, once")
    expect(owner.page.get_by_role("img", name="QR code")).to_be_visible()
    owner.tap("button", "Done")
    owner.sees("Open links")
    owner.tap("button", "Withdraw viewer")
    owner.sees("The link opens nothing any more")
    owner.sees("No link is open.")
    other = new_phone()
    other.open(link[link.index("/join") :])
    other.type("Your name", "Cai")
    other.type("A name for this phone", "Cai's phone")
    other.tap("button", "Join")
    expect(other.page.get_by_role("alert")).to_contain_text("used, withdrawn or is too old")
    assert "Cai" not in served_room.members()


def test_a_lost_phone_is_shut_out_keeps_everything_and_comes_in_again(served_room, owner, helper):
    person(owner, "Bo")
    owner.sees("This cannot be undone, but a new link lets it in again.")
    owner.tap("button", "Shut out Bo's phone")
    owner.sees("Bo's phone is shut out")
    owner.sees("no phone")

    read_ammonia(helper, "Reed pool")
    share(helper)
    helper.sees("The server no longer knows this phone")
    helper.sees("1 entry is saved on this phone and waits to be shared.")
    helper.turn_to("/")
    helper.sees("The server no longer knows this phone")
    helper.sees("Reed pool")
    assert readings_on_the_server(served_room) == 0

    person(owner, "Bo")
    owner.tap("link", "Add a phone")
    owner.tap("button", "Make the link")
    owner.sees("It lets one more phone of Bo in, once")
    link = made_link(owner)
    helper.open(link[link.index("/join") :])
    helper.type("A name for this phone", "Bo's phone again")
    helper.tap("button", "Join")
    helper.title("Round")
    share(helper)
    helper.sees("Everything on this phone is shared.")
    assert readings_on_the_server(served_room) == 1


def test_a_person_is_taken_out_and_what_waited_is_kept(served_room, owner, helper):
    helper.page.context.set_offline(True)
    read_ammonia(helper, "Reed pool")
    person(owner, "Bo")
    owner.tap("button", "Take Bo out")
    owner.sees("Bo is no longer in the room")
    assert served_room.members() == {"Aino": "owner", "Bo": None}

    helper.page.context.set_offline(False)
    helper.turn_to("/room")
    helper.sees("You are no longer in this room. What was not shared is still here.")
    helper.tap("link", "Needs you")
    helper.sees("Reading: new")
    helper.sees("You were no longer in this room when it was to be shared.")
    helper.turn_to("/")
    helper.sees("You are no longer in this room.")

    join_again(helper, link_for(owner, "helper"))
    share(helper)
    helper.sees("Everything on this phone is shared.")
    assert readings_on_the_server(served_room) == 1


def test_a_room_is_handed_over_and_left(served_room, owner, helper):
    person(owner, "Aino")
    owner.sees("The room’s only owner.")
    expect(owner.page.get_by_role("button", name="Leave")).to_have_count(0)
    person(owner, "Bo")
    owner.sees("Only Bo can give it back.")
    owner.tap("button", "Hand over to Bo")
    owner.sees("Bo is the owner now, and you are keeper")
    assert served_room.members() == {"Aino": "keeper", "Bo": "owner"}

    person(owner, "Aino")
    owner.tap("button", "Leave")
    owner.sees("You have left")
    owner.sees("You are no longer in this room.")
    assert served_room.members() == {"Aino": None, "Bo": "owner"}
    owner.turn_to("/")
    expect(owner.page.get_by_text("Reed pool")).to_have_count(0)
    owner.turn_to("/room/rooms")
    owner.tap("button", "Take it off this phone")
    owner.sees("is off this phone")
    owner.turn_to("/room")
    owner.sees("Everything is saved on this phone, and only here.")

    hear_of_role(helper)
    helper.sees("You are owner here")


def test_a_link_goes_by_the_phones_own_sheet(owner):
    owner.page.evaluate("() => { navigator.share = async (what) => { window.sent = what; }; }")
    link = invite(owner, "viewer", "30 days")
    owner.tap("button", "Send the link")
    owner.page.wait_for_function("() => window.sent")
    assert owner.page.evaluate("() => window.sent.url") == link


def test_an_app_of_another_age_says_so_and_loses_nothing(served_room, owner):
    problem = {"type": "/problems/schema", "title": "The app on this phone and the server are of different ages"}
    answer = {"status": 426, "content_type": "application/problem+json", "body": json.dumps(problem)}
    owner.page.context.route("**/push", lambda route: route.fulfill(**answer))
    read_ammonia(owner, "Reed pool")
    share(owner)
    owner.sees("The server needs another version of this app. Nothing is lost")
    owner.sees("1 entry is saved on this phone and waits to be shared.")
    owner.turn_to("/")
    owner.sees("The server needs another version of this app.")
    owner.page.context.unroute("**/push")
    share(owner)
    owner.sees("Everything on this phone is shared.")
    assert readings_on_the_server(served_room) == 1


def join_again(thumb, link):
    thumb.open(link[link.index("/join") :])
    thumb.type("A name for this phone", "Bo's phone")
    thumb.tap("button", "Join")
    thumb.title("Round")


def refused_change(owner, helper):
    """A change made without signal as keeper, which is to be shared as helper."""
    person(owner, "Bo")
    owner.tap("button", "keeper")
    owner.sees("Bo is keeper now")
    hear_of_role(helper)
    helper.sees("You are keeper here")
    helper.page.context.set_offline(True)
    change_tank(helper, "Night pool")
    owner.tap("button", "helper")
    owner.sees("Bo is helper now")
    helper.page.context.set_offline(False)
    hear_of_role(helper)


def change_tank(thumb, name):
    thumb.turn_to("/")
    thumb.tap("link", "Reed pool")
    thumb.tap("link", "About this tank")
    thumb.type("Name", name)
    thumb.tap("button", "Save tank")
    thumb.title(name)


def names_on_the_server(served_room):
    return [
        json.loads(row["fields"])["name"] for row in served_room.rows("SELECT fields FROM records WHERE kind = 'tank'")
    ]


def readings_on_the_server(served_room):
    return len(served_room.rows("SELECT id FROM records WHERE kind = 'reading' AND deleted IS NULL"))
