"""A tank of years: without signal its page opens before they are read, and says the same once they are."""

from datetime import UTC, datetime, timedelta

import pytest
from foretold import forecast_is_there, write
from playwright.sync_api import expect
from room_hands import join, share

pytestmark = pytest.mark.browser

# More than a phone reads at once.
DAYS = 1100
KEPT = """async () => {
  const asked = (request) => new Promise((done) => (request.onsuccess = () => done(request.result)));
  const db = await asked(indexedDB.open("limnary-beliefs"));
  const kept = await asked(db.transaction("advice").objectStore("advice").getAll());
  db.close();
  return kept.length === 2 && kept.every(({ shown, told }) => shown && told.from);
}"""
# What the page says when its figures first stand there.
FIRST = """const look = () => document.querySelector(".measured")
  ? (window.at_first = document.querySelector("#app").innerText) : requestAnimationFrame(look);
requestAnimationFrame(look);"""


def years() -> list[list]:
    """Two tanks that are fed daily and tested seldom; the second was stocked."""
    now, records = datetime.now(UTC), []
    at = [(now - timedelta(days=days)).isoformat(timespec="milliseconds")[:23] + "Z" for days in range(DAYS + 1)]
    for tank in ("tank-0001", "tank-0002"):
        about = {"name": f"Pool {tank[-1]}", "water_l": 80, "feed_g_day": 0.1, "temperature_c": 24, "ph": 7.2}
        records.append(["tank", tank, {**about, "started_at": at[DAYS], "planting": "dense"}])
        for days in range(1, DAYS // 2):
            records.append(["feeding", f"{tank}-fed-{days}", {"tank": tank, "at": at[days], "feed_g": 0.1}])
        for days, name, value in ((900, "gh", 7), (30, "nitrate", 12), (2, "nitrite", 0), (2, "total_ammonia", 0)):
            fields = {"tank": tank, "at": at[days], "parameter": name, "value": value}
            records.append(["reading", f"{tank}-{name}", fields])
    arrived = {"tank": "tank-0002", "at": at[800], "species": "Corydoras", "count": 6, "change": "arrival"}
    return [*records, ["stock_change", "stock-0001", arrived]]


def test_the_page_of_a_tank_of_years(served_room, new_phone):
    thumb = new_phone()
    join(thumb, served_room.link, "Aino", "Aino's phone")
    write(thumb, years())
    share(thumb)
    for tank in ("tank-0001", "tank-0002"):
        thumb.turn_to(f"/tank/{tank}")
        forecast_is_there(thumb)
    thumb.stored()
    thumb.page.wait_for_function(KEPT)

    thumb.page.context.set_offline(True)
    thumb.page.add_init_script(FIRST)
    thumb.open("/tank/tank-0002")
    expect(thumb.page.get_by_text("As of")).to_have_count(0)
    forecast_is_there(thumb)
    first, later = (thumb.page.evaluate(text) for text in ("at_first", "document.querySelector('#app').innerText"))
    assert [line for line in first.splitlines() if not line.startswith("As of")] == later.splitlines()
    assert "As of" in first, "it opens with what was kept, and says how old that is"
    assert all(said in first.replace("\u00a0", " ") for said in ("General hardness", "6 × Corydoras"))

    fields = {"tank": "tank-0002", "at": datetime.now(UTC).isoformat(timespec="milliseconds")[:23] + "Z"}
    write(thumb, [["reading", "just-now", {**fields, "parameter": "temperature", "value": 21.5}]])
    expect(thumb.page.locator(".measured").get_by_text("21.5")).to_be_visible()
