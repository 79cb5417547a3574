"""A keeper without a touch screen tests by keyboard alone; pages are announced; motion only where it is wanted."""

import pytest
from playwright.sync_api import expect
from tank_hands import have_tank

pytestmark = pytest.mark.browser

FOCUSED = "() => document.activeElement.getAttribute('aria-label') ?? document.activeElement.textContent.trim()"
OUTLINE = "() => getComputedStyle(document.activeElement).outlineStyle"
MOTION = """() => [...document.querySelectorAll("*")].map((one) => getComputedStyle(one))
  .filter((style) => style.animationName !== "none" || style.transitionDuration !== "0s").length"""
MOST_TABS = 40


def test_a_test_is_recorded_by_keyboard_alone(new_phone):
    thumb = new_phone()
    thumb.open()
    have_tank(thumb, "Reed pool")
    press(thumb, "Test")
    expect(thumb.page.get_by_role("heading", level=1)).to_be_focused()
    press(thumb, "0.5")
    expect(thumb.page.get_by_text("2 of 5")).to_be_visible()
    press(thumb, "0.25")
    press(thumb, "Save 2 readings")
    thumb.sees("2 readings saved on this phone")
    expect(thumb.page.get_by_role("heading", level=1)).to_be_focused()
    press(thumb, "Undo")
    press(thumb, "History")
    thumb.sees("Nothing recorded yet.")


def test_motion_only_where_it_is_welcome(new_phone):
    thumb = new_phone()
    thumb.open()
    have_tank(thumb, "Reed pool")
    for wish, moves in (("reduce", False), ("no-preference", True)):
        thumb.page.emulate_media(reduced_motion=wish)
        thumb.page.evaluate("() => app().then(({ record }) => record.say('Said'))")
        thumb.sees("Said")
        assert (thumb.page.evaluate(MOTION) > 0) is moves, wish
        thumb.page.evaluate("() => app().then(({ record }) => record.close_note())")
        expect(thumb.page.get_by_text("Said")).to_have_count(0)


def press(thumb, name):
    """Tab until the thing of that name has the focus, seen to have it, and press Enter."""
    thumb.page.get_by_text(name, exact=True).first.wait_for()
    for _ in range(MOST_TABS):
        thumb.page.keyboard.press("Tab")
        if thumb.page.evaluate(FOCUSED) == name:
            break
    else:
        raise AssertionError(f"{name} is not reached by Tab")
    assert thumb.page.evaluate(OUTLINE) != "none", f"{name} does not show that it has the focus"
    thumb.settled()
    thumb.page.keyboard.press("Enter")
