"""The app on an iPhone's home screen: storage of its own and no links, so it has ways in of its own."""

import base64
import io

import pytest
import segno
from playwright.sync_api import expect
from room_hands import join, link_for, read_ammonia, share
from tank_hands import have_tank

pytestmark = pytest.mark.browser
IPHONE = "Mozilla/5.0 (iPhone; CPU iPhone OS 17_0 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Mobile/15E148"
# What an app on the home screen answers, and a camera that sees one picture.
INSTALLED = """(() => {
  const ask = window.matchMedia.bind(window);
  window.matchMedia = (query) => query.includes("standalone") ? { matches: true } : ask(query);
})();"""
CAMERA = """async (png) => {
  const picture = Object.assign(new Image(), { src: png });
  await picture.decode();
  const canvas = Object.assign(document.createElement("canvas"), { width: 640, height: 480 });
  const pen = canvas.getContext("2d");
  const seen = () => {
    pen.fillStyle = "#888";
    pen.fillRect(0, 0, 640, 480);
    pen.drawImage(picture, 180, 90, 300, 300);
  };
  setInterval(seen, 100);
  navigator.mediaDevices.getUserMedia = async () => {
    window.stream = canvas.captureStream(10);
    return window.stream;
  };
}"""
RECORDS = "SELECT id FROM records WHERE kind IN ('tank', 'reading') ORDER BY id"


def png(text: str) -> bytes:
    out = io.BytesIO()
    segno.make(text, error="m").save(out, kind="png", scale=6)
    return out.getvalue()


@pytest.fixture
def browser_page(served_room, new_phone):
    """Aino's browser: joined by the link, with a tank that is shared."""
    thumb = new_phone(user_agent=IPHONE)
    join(thumb, served_room.link, "Aino", "Aino's browser")
    have_tank(thumb, "Reed pool")
    share(thumb)
    thumb.sees("Everything on this phone is shared.")
    return thumb


@pytest.fixture
def installed(new_phone):
    thumb = new_phone(user_agent=IPHONE)
    thumb.page.add_init_script(INSTALLED)
    return thumb


def type_names(thumb):
    """The rest of the join page, once it knows the link."""
    thumb.type("Your name", "Aino")
    thumb.type("A name for this phone", "Aino's app")
    thumb.tap("button", "Join")
    thumb.title("Round")


def type_way(thumb, text):
    thumb.type("Link or code", text)
    thumb.tap("button", "Go on")


@pytest.mark.parametrize("way", ["link", "code"])
def test_the_installed_app_comes_in_and_takes_over_what_was_not_shared(served_room, browser_page, installed, way):
    browser_page.turn_to("/")
    browser_page.sees("Put this app on the home screen")
    browser_page.tap("link", "Show me how")
    browser_page.sees("Choose “Add to Home Screen”, then “Add”.")
    if way == "code":
        browser_page.tap("button", "A short code to type")
        given = browser_page.page.locator(".code b").inner_text()
    else:
        given = f"Join: {link_for(browser_page, 'keeper')}"

    # Without signal two readings stay in the browser's storage.
    browser_page.stored()
    browser_page.page.context.set_offline(True)
    read_ammonia(browser_page, "Reed pool")
    read_ammonia(browser_page, "Reed pool", "0.25")
    browser_page.turn_to("/room/install")
    browser_page.sees("2 entries are not shared yet.")
    with browser_page.page.expect_download() as held:
        browser_page.tap("button", "Keep as a file")
    kept = held.value.path()

    installed.open("/")
    installed.tap("link", "Join a fish room")
    type_way(installed, "K7QM 9TX")
    expect(installed.page.get_by_role("alert")).to_contain_text("neither a whole link nor a code")
    type_way(installed, "AAAA-AAAA")
    expect(installed.page.get_by_role("alert")).to_contain_text("The server knows no such code.")
    type_way(installed, given.lower() if way == "code" else given)
    type_names(installed)
    installed.sees("Reed pool")
    expect(installed.page.get_by_text("Put this app on the home screen")).to_have_count(0)

    installed.turn_to("/room/copy")
    installed.page.get_by_label("Take a copy in").set_input_files(kept)
    installed.sees("2 records taken in")
    share(installed)
    installed.sees("Everything on this phone is shared.")
    records = [row["id"] for row in served_room.rows(RECORDS)]
    assert len(records) == 3

    # The browser's page has them still, and shares them under the same names.
    browser_page.page.context.set_offline(False)
    share(browser_page)
    browser_page.sees("Everything on this phone is shared.")
    assert [row["id"] for row in served_room.rows(RECORDS)] == records
    browser_page.turn_to("/")
    browser_page.tap("link", "Reed pool")
    browser_page.tap("link", "History")
    expect(browser_page.page.get_by_text("Ammonia (total) 0.25")).to_have_count(1)
    devices = [one["device"] for one in served_room.rows("SELECT DISTINCT device FROM ops")]
    assert len(devices) == 2, "each storage has a key of its own"


def test_what_an_unjoined_browser_holds_goes_into_the_joined_app(served_room, new_phone, installed):
    alone = new_phone(user_agent=IPHONE)
    alone.open("/")
    have_tank(alone, "Jar on the sill")
    read_ammonia(alone, "Jar on the sill")
    alone.turn_to("/room")
    alone.sees("2 entries, the oldest from")
    alone.tap("link", "On the home screen")
    alone.sees("2 entries are only here.")
    with alone.page.expect_download() as held:
        alone.tap("button", "Keep as a file")

    installed.open("/room/copy")
    installed.page.get_by_label("Take a copy in").set_input_files(held.value.path())
    installed.sees("2 records taken in")
    installed.turn_to("/join")
    type_way(installed, served_room.link)
    type_names(installed)
    installed.sees("Jar on the sill")
    share(installed)
    installed.sees("Everything on this phone is shared.")
    assert len(served_room.rows(RECORDS)) == 2


@pytest.mark.parametrize("how", ["camera", "photo"])
def test_a_code_on_another_screen_is_read(served_room, installed, how, tmp_path):
    installed.open("/join")
    picture = png(served_room.link)
    if how == "camera":
        installed.page.evaluate(CAMERA, f"data:image/png;base64,{base64.b64encode(picture).decode()}")
        installed.tap("button", "Scan with the camera")
    else:
        (tmp_path / "blank.png").write_bytes(png("Nothing of the kind"))
        installed.page.get_by_label("From a photo").set_input_files(tmp_path / "blank.png")
        expect(installed.page.get_by_role("alert")).to_contain_text("neither a whole link nor a code")
        (tmp_path / "code.png").write_bytes(picture)
        installed.page.get_by_label("From a photo").set_input_files(tmp_path / "code.png")
    installed.page.get_by_label("A name for this phone").wait_for()
    type_names(installed)
    assert served_room.members() == {"Aino": "owner"}
    if how == "camera":
        ended = "() => window.stream.getTracks().every(({ readyState }) => readyState === 'ended')"
        installed.page.wait_for_function(ended)


def test_the_browsers_own_reader_is_used_where_it_is(served_room, installed):
    installed.page.add_init_script(
        "window.BarcodeDetector = class { static getSupportedFormats = async () => ['qr_code'];"
        f" detect = async () => [{{ rawValue: '{served_room.link}' }}]; }};"
    )
    fetched = []
    installed.page.on("request", lambda request: fetched.append(request.url))
    installed.open("/join")
    photo = {"name": "code.png", "mimeType": "image/png", "buffer": png("anything")}
    installed.page.get_by_label("From a photo").set_input_files([photo])
    installed.page.get_by_label("A name for this phone").wait_for()
    assert [url for url in fetched if "jsqr" in url] == []


def test_what_waits_for_long_is_named_before_it_gets_lost(browser_page):
    browser_page.page.context.set_offline(True)
    read_ammonia(browser_page, "Reed pool")
    browser_page.turn_to("/room")
    browser_page.sees("The oldest of what waits is from today")
    browser_page.sees("The browser has not agreed to keep what is stored here")
    browser_page.turn_to("/")
    expect(browser_page.page.get_by_text("still waits to be shared")).to_have_count(0)
    browser_page.page.clock.install()
    browser_page.page.clock.fast_forward(6 * 24 * 3600 * 1000)
    browser_page.turn_to("/tanks")
    browser_page.sees("Something recorded here still waits to be shared")
