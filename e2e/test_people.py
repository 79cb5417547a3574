"""People and phones of a room: an owner renames it, invites, and shuts out a lost phone, which keeps what it wrote."""

import pytest
from playwright.sync_api import expect
from test_daily_loop import join, set_up_tank

pytestmark = pytest.mark.browser


def test_a_lost_phone_is_shut_out(server, new_phone):
    owner, lost = new_phone(), new_phone()
    join(owner, server.links[0], "Aino", "Aino's phone")
    set_up_tank(owner, "Reed pool")
    owner.open("/room")
    owner.page.get_by_text("Rename this room").tap()
    owner.type("Name of the room", "Cellar")
    owner.tap("button", "Save", exact=True)
    owner.title("Cellar")
    owner.tap("button", "Invite a helper")
    join(lost, owner.page.locator(".invitation .link").inner_text(), "Bo", "Bo's phone")
    lost.sees("Reed pool")

    owner.open("/room")
    owner.page.locator("summary").filter(has_text="Bo").tap()
    shut = owner.page.locator("details").filter(has_text="Bo").get_by_role("button", name="Shut out").first
    shut.tap()
    expect(shut).to_have_text("Shut out Bo's phone for good")
    owner.settled()
    shut.tap()
    expect(owner.page.locator("summary").filter(has_text="Bo")).to_contain_text("no phone")

    lost.tap("link", "Test")
    lost.tap("button", "0.1", exact=True)
    lost.tap("button", "Save 1 reading")
    lost.sees("1 reading saved on this phone")
    lost.open("/room")
    lost.tap("button", "Share now")
    lost.sees("The server no longer knows this phone")
    lost.sees("1 entry is saved on this phone and waits to be shared.")
    lost.open("/")
    lost.sees("Reed pool")
