"""A phone with the app of the version before: what it recorded offline arrives at the server of this version."""

import pytest
from phones import PATIENCE_MS, SMALL
from playwright.sync_api import expect
from real_server import RealServer

from tests.former_version import former_version

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def former(tmp_path_factory):
    return former_version(tmp_path_factory.mktemp("former"))


def names(room) -> list[str]:
    rows = room.rows("SELECT json_extract(fields, '$.name') AS name FROM records WHERE kind = 'tank' ORDER BY seq")
    return [row["name"] for row in rows]


# The former app's own ways, without its screens: those are not this story's matter.
JOIN = """async (secret) => {
  const { join } = await import("/data/fish_room.js");
  await join({ secret, keeperName: "Aino", deviceName: "Aino's phone" });
}"""
WRITE = """async (name) => {
  const { openRoom } = await import("/data/fish_room.js");
  const { records } = await import("/contracts.js");
  while (!records().tank) await new Promise((on) => setTimeout(on, 50)); // until the app has fetched its contracts
  const room = await openRoom();
  await room.write([{ type: "put", kind: "tank", fields: { name, water_l: 87.5 } }]);
}"""
IN_CONTROL = "() => navigator.serviceWorker.ready.then(() => Boolean(navigator.serviceWorker.controller))"
ALL_SHARED = "Everything on this phone is shared."


@pytest.fixture
def page(browser):
    """A phone of which nothing is held back: stories usually hold the worker until they want it."""
    context = browser.new_context(viewport=SMALL, locale="en-GB")
    context.set_default_timeout(PATIENCE_MS)
    yield context.new_page()
    context.close()


def test_what_waits_on_the_phone_arrives_after_the_update(page, tmp_path, former):
    old = RealServer(tmp_path / "data", code=former).start()
    new = RealServer(tmp_path / "data", "--backup-to", "off")
    new.port, new.origin = old.port, old.origin
    try:
        room = old.printed_room()
        page.goto(f"{old.origin}/room")
        page.evaluate(JOIN, room.link.split("#")[1])
        page.evaluate(WRITE, "Shared before")
        page.reload()
        expect(page.get_by_text(ALL_SHARED)).to_be_visible()
        while not page.evaluate(IN_CONTROL):
            page.reload()
        old.stop()
        page.reload()  # with the app that is stored
        for name in ("Reed pool", "Fern corner"):
            page.evaluate(WRITE, name)
        page.reload()
        expect(page.get_by_text("2 entries are saved on this phone and wait to be shared.")).to_be_visible()
        assert names(room) == ["Shared before"]

        new.start()
        page.reload()
        expect(page.get_by_text(ALL_SHARED)).to_be_visible()
        assert names(room) == ["Shared before", "Reed pool", "Fern corner"]

        page.evaluate("() => navigator.serviceWorker.getRegistration().then((one) => one.update())")
        page.get_by_role("button", name="Use it").click()
        # Only the new app asks for this.
        expect(page.get_by_text("The server makes no backups by itself.")).to_be_visible()
        expect(page.get_by_text(ALL_SHARED)).to_be_visible()
        page.goto(f"{new.origin}/tanks")
        for name in ("Shared before", "Reed pool", "Fern corner"):
            expect(page.get_by_text(name)).to_be_visible()
    finally:
        old.stop()
        new.stop()
