"""What a phone gives the app at the tank: sound and a word at a timer's end, the share sheet, print, shortcuts."""

import json
from datetime import UTC, datetime, timedelta

import pytest
from journal_hands import picture
from playwright.sync_api import expect
from real_server import ROOT
from tank_hands import have_tank

pytestmark = pytest.mark.browser
NOW = datetime(2026, 5, 20, 10, 20, tzinfo=UTC)
IPHONE = "Mozilla/5.0 (iPhone; CPU iPhone OS 17_0 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Mobile/15E148"
TIMER = """([id, what, ends_at, href]) =>
  localStorage.setItem("limnary.draft.timers", JSON.stringify([{ id, what, ends_at, href }]))"""
HIDDEN = "() => Object.defineProperty(document, 'visibilityState', { value: 'hidden' })"
# A browser without a screen never asks; this one is asked, and its keeper agrees.
ASKED = """(() => {
  Object.defineProperty(Notification, "permission", { value: "default" });
  Notification.requestPermission = async () => "granted";
})();"""
TOLD = """() => {
  navigator.serviceWorker.getRegistration = async () => ({
    showNotification: async (text, { tag, data }) => { window.told = [text, tag, data]; },
  });
}"""
SHEET = """(outcome) => {
  navigator.canShare = ({ files }) => files.length === 1;
  navigator.share = async ({ files }) => {
    if (outcome === "closed") throw new DOMException("closed", "AbortError");
    window.sent = [files[0].name, files[0].type];
  };
}"""
SEND = """async (photos) => {
  const form = new FormData();
  for (const bytes of photos)
    form.append("photos", new File([new Uint8Array(bytes)], "one.png", { type: "image/png" }));
  return (await fetch("/share-photo", { method: "POST", body: form })).url;
}"""


def begin_timer(thumb, seconds):
    """A timer of a test's step, as it lies on the phone when the app is opened."""
    ends = (NOW + timedelta(seconds=seconds)).timestamp() * 1000
    thumb.page.evaluate(TIMER, ["wait", "Ammonia: Wait", ends, "/tanks"])
    thumb.page.reload()


def test_a_timer_asks_for_its_sound_again_after_a_reload(new_phone):
    thumb = new_phone()
    thumb.page.clock.set_fixed_time(NOW)
    thumb.open("/")
    begin_timer(thumb, 300)
    strip = thumb.page.locator(".timers")
    expect(strip.get_by_text("Ammonia: Wait 5:00")).to_be_visible()
    thumb.tap("button", "Turn sound on")
    expect(strip.get_by_role("button", name="Turn sound on")).to_have_count(0)
    # Away and back: the page's clock has slept, and the time is right at once.
    thumb.page.clock.set_fixed_time(NOW + timedelta(seconds=301))
    thumb.page.evaluate("() => dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true }))")
    expect(strip.get_by_role("button", name="Read now: Ammonia: Wait")).to_be_visible()


def test_a_timer_that_ends_behind_another_app_is_told(new_phone):
    thumb = new_phone()
    thumb.page.add_init_script(ASKED)
    thumb.page.clock.set_fixed_time(NOW)
    thumb.open("/")
    begin_timer(thumb, 60)
    thumb.sees("Ammonia: Wait 1:00")
    thumb.tap("button", "Tell me when it is over")
    expect(thumb.page.get_by_role("button", name="Tell me when it is over")).to_have_count(0)
    thumb.page.evaluate(TOLD)
    thumb.page.evaluate(HIDDEN)
    thumb.page.clock.set_fixed_time(NOW + timedelta(seconds=61))
    thumb.page.wait_for_function("() => window.told")
    assert thumb.page.evaluate("() => window.told") == ["Read now: Ammonia: Wait", "wait", "/tanks"]


@pytest.mark.parametrize("outcome", ["sent", "closed"])
def test_an_iphone_keeps_a_file_by_its_share_sheet(new_phone, outcome):
    thumb = new_phone(user_agent=IPHONE)
    thumb.open("/")
    have_tank(thumb, "Reed pool")
    thumb.turn_to("/room/copy")
    thumb.page.evaluate(SHEET, outcome)
    downloads = []
    thumb.page.on("download", lambda one: downloads.append(one))
    thumb.tap("button", "Keep the whole room")
    if outcome == "sent":
        thumb.sees("limnary-room-")
        name, kind = thumb.page.evaluate("() => window.sent")
        assert (name.startswith("limnary-room-"), name.endswith(".zip"), kind) == (True, True, "application/zip")
    else:
        expect(thumb.page.get_by_role("button", name="Keep the whole room")).to_be_enabled()
        expect(thumb.page.get_by_text("is kept")).to_have_count(0)
    assert downloads == []


@pytest.mark.parametrize("print_is", ["() => {}", "undefined"])
def test_where_a_browser_does_not_print_the_page_is_kept_as_a_file(new_phone, print_is):
    thumb = new_phone()
    thumb.open("/")
    have_tank(thumb, "Reed pool")
    thumb.turn_to("/labels")
    thumb.page.evaluate(f"() => {{ window.print = {print_is}; }}")
    with thumb.page.expect_download() as held:
        thumb.tap("button", "Print")
    page = held.value.path().read_text("utf-8")
    assert "Reed pool" in page and "<svg" in page and "@page" in page
    thumb.sees("This browser does not print. limnary-labels-")


def test_a_shortcut_leads_to_the_test_of_the_first_tank(new_phone):
    shortcuts = json.loads((ROOT / "pwa/manifest.webmanifest").read_text("utf-8"))["shortcuts"]
    assert [one["url"] for one in shortcuts] == ["/", "/test"]
    thumb = new_phone()
    thumb.open("/")
    have_tank(thumb, "Reed pool")
    thumb.page.goto("/test")
    thumb.title("Reed pool")
    thumb.sees("1 of 5")


def test_a_photo_that_another_app_shares_waits_in_the_note_of_its_tank(new_phone):
    thumb = new_phone()
    thumb.open("/")
    have_tank(thumb, "Reed pool")
    thumb.turn_to("/shared")
    thumb.sees("No photo is waiting here.")
    thumb.stored()
    thumb.page.reload()
    thumb.page.wait_for_function("() => navigator.serviceWorker.controller")
    photos = [list(picture(grey=grey)["buffer"]) for grey in (80, 160)]
    assert thumb.page.evaluate(SEND, photos).endswith("/shared")
    thumb.open("/shared")
    thumb.sees("Which tank do they belong to?")
    expect(thumb.page.locator(".pictures img")).to_have_count(2)
    thumb.tap("button", "Reed pool")
    thumb.sees("Save with 2 photos")
    thumb.turn_to("/shared")
    thumb.sees("No photo is waiting here.")
