"""A new version of the app waits until the keeper wants it, and keeps what is half typed, though a message is lost."""

import pytest
from own_code import build
from phones import Thumb, phone
from playwright.sync_api import expect
from real_server import RealServer

pytestmark = pytest.mark.browser

# The first message to a worker is lost.
LOSE_ONE = """() => {
  const post = ServiceWorker.prototype.postMessage;
  ServiceWorker.prototype.postMessage = () => (ServiceWorker.prototype.postMessage = post);
}"""


def test_a_new_version_waits_until_it_is_wanted(browser, tmp_path, own_code):
    server = RealServer(tmp_path / "data", code=own_code).start()
    try:
        with phone(browser, server.origin) as context:
            thumb = Thumb(context.new_page())
            thumb.open("/tanks/new")
            thumb.stored()
            thumb.page.reload()
            thumb.stored()
            thumb.pick("cylinder")
            thumb.type("Diameter", "40")

            words = own_code / "pwa/i18n/en.js"
            words.write_text(words.read_text().replace('"tank.save": "Save tank"', '"tank.save": "Keep tank"'))
            build(own_code)
            thumb.page.evaluate("() => navigator.serviceWorker.getRegistration().then((one) => one.update())")
            thumb.sees("A new version is ready")
            expect(thumb.page.get_by_role("button", name="Save tank")).to_be_visible()

            thumb.page.evaluate(LOSE_ONE)
            thumb.tap("button", "Use it")
            expect(thumb.page.get_by_role("button", name="Keep tank")).to_be_visible()
            expect(thumb.page.get_by_label("Diameter")).to_have_value("40")
            expect(thumb.page.get_by_text("A new version is ready")).to_have_count(0)
    finally:
        server.stop()
