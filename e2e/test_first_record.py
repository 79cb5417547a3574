"""The first run on an empty phone, without a room or signal; then a daily record in few taps."""

import pytest
from foretold import write
from playwright.sync_api import expect
from tank_hands import set_up_tank

pytestmark = pytest.mark.browser

MOST_TAPS = 6
LOADED = "() => performance.getEntriesByType('resource').map(({ name }) => new URL(name).pathname)"
READINGS = """() => app().then(({ live: { room } }) =>
  room.value.all("reading").map(({ parameter, value, meta }) => [parameter, value, meta.state]))"""


def test_from_an_empty_phone_to_a_first_record_and_a_daily_one(own_server, new_phone):
    thumb = new_phone()
    thumb.open("/")
    thumb.sees("No tank yet.")
    loaded = thumb.page.evaluate(LOADED)
    not_yet = ("uplot", "bench", "journal", "shared-rest")
    if any(path.startswith("/built/") for path in loaded):
        more = [path for path in loaded for name in not_yet if path.startswith(f"/built/{name}")]
        assert more == [], "the app opens with more than its first page needs"
    thumb.stored()

    own_server.stop()
    thumb.page.context.set_offline(True)
    thumb.open("/")
    expect(thumb.page.get_by_role("link", name="Set up the first tank")).to_be_visible()
    set_up_tank(thumb, "Reed pool")
    read(thumb, "0.1", "0.05")

    # The next day: count the taps from the opening of the app.
    thumb.page.close()
    thumb.page = thumb.page.context.new_page()
    thumb.open("/")
    before = thumb.taps
    read(thumb, "0.25", "0.1")
    taps = thumb.taps - before
    print(f"a daily record of ammonia and nitrite: {taps} taps")
    assert taps <= MOST_TAPS
    thumb.page.reload()
    thumb.sees("Reed pool")
    assert sorted(thumb.page.evaluate(READINGS)) == [
        ["nitrite", 0.05, "waiting"],
        ["nitrite", 0.1, "waiting"],
        ["total_ammonia", 0.1, "waiting"],
        ["total_ammonia", 0.25, "waiting"],
    ]


def test_when_every_tank_is_put_away_the_round_says_so(new_phone):
    thumb = new_phone()
    thumb.open("/")
    task = {"title": "Wipe the floor", "starts_at": "2026-05-04T07:00:00.000Z", "rule": "FREQ=DAILY", "zone": "UTC"}
    tank = {"name": "Reed pool", "water_l": 90, "resting": True}
    write(thumb, [("tank", "tank-0001", tank), ("task", "task-0001", task)])
    thumb.turn_to("/")
    thumb.sees("Wipe the floor")
    expect(thumb.page.get_by_text("No tank yet")).to_have_count(0)
    thumb.tap("link", "Every tank is put away")
    thumb.sees("Reed pool")


def read(thumb, ammonia, nitrite):
    """Ammonia and nitrite from where the app stands."""
    thumb.tap("link", "Test")
    thumb.tap("button", ammonia, exact=True)
    thumb.tap("button", nitrite, exact=True)
    thumb.tap("button", "Save 2 readings")
    thumb.sees("2 readings saved on this phone")
