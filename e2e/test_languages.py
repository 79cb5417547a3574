"""Other words and units: a German phone speaks German, a US phone says gallons, and records still hold litres."""

import pytest
from playwright.sync_api import expect

pytestmark = pytest.mark.browser


def test_language_and_units_change_at_once_and_keep_what_is_typed(new_phone):
    thumb = new_phone()
    thumb.open("/tanks/new")
    thumb.pick("rectangular")
    thumb.type("Length", "61.5")
    thumb.open("/room")
    thumb.tap("link", "Words and units")
    thumb.sees("Change 22.5 L at 24.5 °C.")
    thumb.pick("US gallons")
    thumb.sees("Change 5.9 US gal at 76.1 °F.")
    thumb.pick("Deutsch")
    expect(thumb.page.locator("html")).to_have_attribute("lang", "de")
    thumb.page.reload()
    thumb.page.locator("legend").first.wait_for()
    expect(thumb.page.locator("html")).to_have_attribute("lang", "de")
    thumb.page.locator("label").filter(has_text="English").tap()
    expect(thumb.page.locator("html")).to_have_attribute("lang", "en-GB")
    thumb.open("/tanks/new")
    expect(thumb.page.get_by_label("Length").first).to_have_value("61.5")
