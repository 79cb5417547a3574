"""A room's people, phones and copies: a lost phone is shut out but keeps what it wrote; a copy is taken in."""

import zipfile

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


def test_a_copy_of_one_phone_is_taken_in_by_another(server, new_phone, tmp_path):
    first, second = new_phone(), new_phone()
    first.open("/")
    set_up_tank(first, "Reed pool")
    first.open("/room")
    with first.page.expect_download() as held:
        first.tap("button", "Keep as a file")
    kept = tmp_path / "kept.zip"
    held.value.save_as(kept)
    assert "room.jsonl" in zipfile.ZipFile(kept).namelist()

    second.open("/room")
    second.page.get_by_label("Take in a file").set_input_files(kept)
    second.sees("The file is taken in")
    second.open("/")
    second.sees("Reed pool")
    broken = tmp_path / "broken.zip"
    broken.write_bytes(b"no archive")
    second.open("/room")
    second.page.get_by_label("Take in a file").set_input_files(broken)
    expect(second.page.get_by_role("alert")).to_be_visible()
