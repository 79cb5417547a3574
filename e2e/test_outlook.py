"""The outlook: the forecast without signal, charts and their table, a reading that does not fit."""

import json
import re
import urllib.request
from datetime import UTC, datetime, timedelta
from itertools import count

import pytest
from foretold import bucket, forecast_is_there, plain, plan_input, write
from playwright.sync_api import expect

pytestmark = pytest.mark.browser

NOW = datetime(2026, 5, 20, 10, 20, tzinfo=UTC)
DAYS = 12
TANK, TAP, BOTTLE = "tank-reed-pool", "water-kitchen-tap", "label-tap-safe"
STEPS = [0, 0.1, 0.2, 0.4, 0.8, 1.6]
# The invented keeper's readings, one each morning, in mg/L of the ion.
AMMONIA = [0.1, 0.2, 0.2, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4]
NITRITE = [0, 0, 0, 0, 0, 0.1, 0.1, 0.2, 0.2, 0.4, 0.4, 0.8]


def test_the_sentence_names_the_litres_of_change_plan_without_signal(own_server, new_phone):
    thumb = a_phone_with_a_diary(new_phone)
    thumb.stored()
    own_server.stop()
    thumb.open(f"/tank/{TANK}")
    forecast_is_there(thumb)
    said = plain(thumb.page.locator(".sentence").first)
    hit = re.match(r"Change ([\d.]+) L .*, with ([\d.]+) ml of Tap safe\.", said)
    assert hit, said
    asked = plan_input(thumb, "Reed pool")
    assert len(asked["readings"]) == 4 * DAYS
    assert len(asked["changes"]) == 1

    own_server.start()
    plan = ask(own_server, "change_plan", asked)
    assert plan["fraction"] > 0
    assert float(hit[1]) == bucket(plan["litres"], 110)
    dose = ask(
        own_server, "dechlorinator_dose", {"change_l": float(hit[1]), "tank_l": 110, "label_ml": 2, "label_per_l": 10}
    )
    assert float(hit[2]) == pytest.approx(dose["label_dose_ml"], abs=0.005)
    thumb.tap("link", "Change")
    expect(thumb.page.get_by_role("button", name=f"Log {hit[1]} L and {hit[2]} ml")).to_be_visible()
    assert thumb.page.evaluate("indexedDB.databases().then((all) => all.map((one) => one.name))").count(
        "limnary-beliefs"
    )


def test_the_charts_are_drawn_and_the_same_stands_in_a_table(new_phone):
    thumb = a_phone_with_a_diary(new_phone)
    thumb.turn_to(f"/tank/{TANK}")
    thumb.tap("link", "Outlook")
    thumb.title("Outlook")
    expect(thumb.page.get_by_role("heading", name="When it will be ready")).to_be_visible()
    expect(thumb.page.get_by_text("How much food it could process")).to_be_visible()
    charts = thumb.page.locator(".chart canvas")
    expect(charts).to_have_count(4)
    for chart in range(4):
        thumb.page.wait_for_function(DRAWN, arg=charts.nth(chart).element_handle())
    thumb.sees("chance that it passes its limit before the next test")

    nitrite = thumb.page.get_by_role("region", name="Nitrite")
    # Screen readers find the table beside the chart; it becomes visible after a tap.
    expect(nitrite.get_by_role("table")).to_have_count(1)
    assert nitrite.locator(".unseen").filter(has=thumb.page.get_by_role("table")).bounding_box()["width"] < 2
    thumb.tap("button", "As a table")
    expect(charts).to_have_count(0)
    assert nitrite.get_by_role("table").bounding_box()["width"] > 200
    # The newest reading, as the kit reads it: 0.8 as the ion, halfway to its neighbours.
    expect(nitrite.get_by_role("heading")).to_have_text("Nitrite mg/L as NO₂")
    row = nitrite.get_by_role("row").filter(has_text="read").first
    expect(row).to_contain_text("0.80")
    expect(row).to_contain_text("0.60 to 1.20")
    expect(nitrite.get_by_role("row").filter(has_text="Changed 30 L")).to_have_count(1)
    thumb.tap("button", "6 weeks")
    expect(nitrite.get_by_role("row").filter(has_text="read")).to_have_count(DAYS)
    # In US units the temperature axis is in °F: 24 °C is 75.2 °F.
    thumb.page.evaluate(IN_US_UNITS)
    thumb.tap("button", "As a table")
    expect(thumb.page.get_by_role("heading", name="Temperature °F")).to_be_visible()
    thumb.page.wait_for_function("() => window.written.some((text) => text.startsWith('75'))")


def test_a_reading_that_does_not_fit_is_doubted_out_loud(new_phone):
    thumb = a_phone_with_a_diary(new_phone, quiet=True)
    thumb.turn_to(f"/tank/{TANK}")
    forecast_is_there(thumb)
    thumb.tap("link", "Test")
    thumb.tap("button", "5", exact=True)
    thumb.tap("button", "0", exact=True)
    thumb.tap("button", "Save 2 readings")
    thumb.sees("Test ammonia again now")
    thumb.sees("The test may have gone wrong, or something happened in the tank")
    thumb.tap("link", "Change")
    thumb.sees("25 % of its water")
    thumb.tap("link", "Back")
    at(thumb, NOW + timedelta(minutes=20))
    thumb.tap("link", "Test")
    thumb.tap("button", "0", exact=True)
    thumb.tap("button", "Save 1 reading")
    expect(thumb.page.get_by_text("Test ammonia again now")).to_have_count(0)
    forecast_is_there(thumb)


def test_a_tank_without_a_test_says_that_it_knows_only_what_is_usual(new_phone):
    thumb = new_phone()
    at(thumb, NOW)
    thumb.open("/")
    write(thumb, things())
    thumb.turn_to(f"/tank/{TANK}")
    forecast_is_there(thumb)
    thumb.sees("Not known yet: test ammonia and nitrite")
    thumb.sees("This tank was never tested: these are usual figures for such a tank")


def test_until_the_new_forecast_comes_the_last_one_stands_with_its_age_and_nothing_below_moves(new_phone):
    thumb = a_phone_with_a_diary(new_phone)
    write(thumb, [["tank", "tank-shelf", {"name": "Shelf", "water_l": 40}]])
    thumb.turn_to(f"/tank/{TANK}")
    forecast_is_there(thumb)
    thumb.page.add_init_script(HELD_BACK)
    hours = count(1)
    for path in (f"/tank/{TANK}", "/"):
        let_the_forecast_come(thumb, path, next(hours))
        held, came = let_the_forecast_come(thumb, path, next(hours))
        assert "As of" in held["said"], "the last forecast says how old it is"
        assert "As of" not in came["said"]
        assert held["places"] == came["places"]
        assert len(held["places"]) > 3


def let_the_forecast_come(thumb, path, hours):
    """What the page says and where each link and button stands, before an hour's new forecast and after."""
    at(thumb, NOW + timedelta(hours=hours))
    thumb.open(path)
    thumb.page.wait_for_function("() => held.length > 0 && document.querySelector('.sentence')")
    before = thumb.page.evaluate(STANDING)
    thumb.page.evaluate("letGo()")
    thumb.page.wait_for_function("(said) => document.querySelector('main').innerText !== said", arg=before["said"])
    thumb.page.wait_for_function("() => asked === answered")
    return before, thumb.page.evaluate(STANDING)


# Questions to the worker wait until letGo().
HELD_BACK = """
window.held = [];
window.asked = window.answered = 0;
window.letGo = () => { held.free = true; held.splice(0).forEach((send) => send()); };
window.Worker = class extends Worker {
  postMessage(...said) {
    if (said[0].ask) asked += 1;
    const send = () => super.postMessage(...said);
    held.free ? send() : held.push(send);
  }
  constructor(...made) {
    super(...made);
    this.addEventListener("message", () => setTimeout(() => (answered += 1), 50));
  }
};"""
STANDING = """() => ({
  said: document.querySelector("main").innerText,
  places: [...document.querySelectorAll("main a, main button, .act a")].map((one) => {
    const { top, left } = one.getBoundingClientRect();
    return [one.getAttribute("href") ?? one.innerText, Math.round(top + scrollY), Math.round(left)];
  }),
})"""


def test_what_the_forecast_has_to_assume_can_be_set_down(new_phone):
    thumb = new_phone()
    at(thumb, NOW)
    thumb.open("/")
    write(thumb, [["tank", TANK, {"name": "Reed pool", "water_l": 110}]])
    thumb.turn_to(f"/tank/{TANK}")
    thumb.sees("Not recorded, so assumed: ")
    thumb.sees("a start on the day of its first record")
    measures = {"shape": "cuboid", "length_cm": 80, "width_cm": 40, "height_cm": 40, "measures": "inside"}
    write(thumb, [["tank", TANK, {"measures": measures}]])
    thumb.turn_to(f"/tank/{TANK}/edit")
    thumb.page.get_by_label("First filled").fill("2026-05-08")
    thumb.type("Feed a day", "0,4")
    thumb.type("Usual temperature", "24")
    thumb.type("Usual pH", "7,4")
    for tile in ("light", "nothing"):
        thumb.pick(tile)
    thumb.tap("button", "Save tank")
    forecast_is_there(thumb)
    expect(thumb.page.get_by_text("Not recorded")).to_have_count(0)
    asked = plan_input(thumb, "Reed pool")
    assert asked["now_h"] == 12 * 24 - 2
    assert asked["tank"]["feed_g_day"] == 0.4


KEPT = "indexedDB.databases().then((all) => all.map((one) => one.name))"
IN_US_UNITS = """async () => {
  const { fillText } = CanvasRenderingContext2D.prototype;
  window.written = [];
  CanvasRenderingContext2D.prototype.fillText = function (text, ...where) {
    window.written.push(String(text));
    return fillText.call(this, text, ...where);
  };
  (await app()).measures.measures.value = "us";
}"""
DRAWN = """(canvas) => {
  const { data } = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height);
  let inked = 0;
  for (let i = 3; i < data.length; i += 4) if (data[i]) inked += 1;
  return inked > 1000;
}"""


def a_phone_with_a_diary(new_phone, *, quiet=False):
    thumb = new_phone()
    at(thumb, NOW)
    thumb.open("/")
    write(thumb, things() + diary(quiet))
    return thumb


def at(thumb, moment):
    thumb.page.clock.set_fixed_time(moment)


def things():
    tank = {"name": "Reed pool", "water_l": 110, "temperature_c": 24, "ph": 7.6, "planting": "light", "feed_g_day": 0.4}
    more = {"started_at": stamp(DAYS), "source_water": TAP, "dechlorinator": BOTTLE, "seeded": "starter"}
    bottle = {"name": "Tap safe", "use": "dechlorinator", "amount": 2, "unit": "ml", "per_l": 10, "basis": "new_water"}
    return [
        ["source_water", TAP, {"name": "Kitchen tap", "disinfectant": "chlorine", "nitrate_mg_n_l": 2}],
        ["label", BOTTLE, bottle],
        ["tank", TANK, {**tank, **more}],
    ]


def diary(quiet):
    """A test each morning, one change, food each evening; `quiet`: nothing ever showed."""
    ion = {"basis": "ion", "steps": STEPS}
    records = []
    for day in range(DAYS):
        ago = DAYS - day - 0.9
        read = {
            "total_ammonia": {"value": 0 if quiet else AMMONIA[day], **ion},
            "nitrite": {"value": 0 if quiet else NITRITE[day], **ion},
            "ph": {"value": 7.6},
            "temperature": {"value": 24},
        }
        for parameter, said in read.items():
            about = {"tank": TANK, "at": stamp(ago), "parameter": parameter, "test": f"test-of-day-{day}"}
            records.append(["reading", f"reading-{day}-{parameter}", {**about, **said}])
        records.append(["feeding", f"feeding-of-{day}", {"tank": TANK, "at": stamp(ago - 0.4), "feed_g": 0.4}])
    change = {"tank": TANK, "at": stamp(4.8), "litres": 30, "fraction": 30 / 110, "source_water": TAP}
    return [*records[:-1], ["water_change", "change-of-day-7", change]]


def stamp(days_ago):
    return (NOW - timedelta(days=days_ago)).strftime("%Y-%m-%dT%H:%M:%S.000Z")


def ask(server, name, body):
    request = urllib.request.Request(f"{server.origin}/api/v1/calc/{name}", json.dumps(body).encode())
    request.add_header("Content-Type", "application/json")
    with urllib.request.urlopen(request, timeout=60) as answer:
        return json.load(answer)
