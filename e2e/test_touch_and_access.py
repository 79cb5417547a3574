"""Every screen for wet hands and for every keeper: sizes of what is tapped, axe's rules, text at 200 %, ghosts."""

from itertools import combinations

import pytest
from axe_playwright_python.sync_playwright import Axe
from foretold import write
from journal_hands import write_note
from phones import Thumb, phone
from playwright.sync_api import expect
from real_server import RealServer
from room_hands import join
from setup_hands import OF_PLAN, plan_tank
from tank_hands import have_tank, set_down_water_and_label

pytestmark = pytest.mark.browser

# Everything that can be tapped, with its box; a tick or radio counts by the label around it, a line of its own.
TARGETS = """() => {
  const tapped = "a[href], button, summary, input:not(.unseen), textarea, select, label:has(.unseen)";
  return [...document.querySelectorAll(tapped)]
    .filter((one) => one.checkVisibility() && !one.matches("[type=checkbox], [type=radio]"))
    .map((one) => ({
      box: one.getBoundingClientRect().toJSON(),
      main: one.matches(".main"),
      foot: one.closest(".foot") !== null,
      name: one.innerText || one.getAttribute("aria-label") || one.id,
    }))
    .filter(({ box }) => box.width);
}"""
UNFOLD = "() => document.querySelectorAll('main details').forEach((one) => (one.open = true))"
WIDER = "() => document.documentElement.scrollWidth - document.documentElement.clientWidth"
MAIN_PX, OTHER_PX, GAP_PX = 64, 48, 8
NARROW_PX = 320
LIFE_PAGES = ("stock", "stock/new?change=death", "plants", "plants/new?change=move_out", "tool")
TASK_PAGES = (
    "/tasks",
    "/calendar",
    "/task/new",
    "/task/task-0001",
    "/task/task-0001/edit",
    "/away",
    "/away/edit",
    "/labels",
)


@pytest.fixture(scope="module")
def furnished(browser, tmp_path_factory):
    """A phone in a room, with one tank that has been tested once; the tests leave it as it is."""
    server = RealServer(tmp_path_factory.mktemp("furnished") / "data").start()
    with phone(browser, server.origin) as context:
        thumb = Thumb(context.new_page())
        furnish(thumb, server.links[0])
        yield thumb
        assert thumb.troubles == []
    server.stop()


@pytest.fixture(scope="module")
def screens(furnished):
    """The path of every screen."""
    return every_screen(furnished)


def furnish(thumb, link):
    join(thumb, link, "Aino", "Aino's phone")
    have_tank(thumb, "Reed pool")
    set_down_water_and_label(thumb)
    thumb.tap("link", "Test")
    thumb.tap("button", "0.5", exact=True)
    thumb.tap("button", "0.25", exact=True)
    thumb.tap("button", "Save 2 readings")
    thumb.title("Reed pool")
    weekly = {"title": "Wipe the glass", "starts_at": "2026-05-04T07:30:00.000Z", "rule": "FREQ=WEEKLY"}
    write(thumb, [["task", "task-0001", {**weekly, "zone": "Europe/Berlin"}]])
    write(thumb, lived_in(thumb.page.url.rsplit("/", 1)[-1]))
    write(thumb, [away_sheet(thumb.page.url.rsplit("/", 1)[-1])])
    write_note(thumb, "All is well")
    thumb.title("Reed pool")


def lived_in(tank):
    """A second tank, animals of which one died, plants that moved, a net in both."""
    at = {"at": "2026-05-04T07:30:00.000Z", "tank": tank}
    danio, moss, shelf = {"species": "Danio rerio"}, {"species": "moss"}, {"other_tank": "tank-shelf"}
    return [
        ["tank", "tank-shelf", {"name": "ShelfUnderTheNorthWindowOfTheLanding", "water_l": 40}],
        ["stock_change", "stock-0001", {**at, **danio, "change": "arrival", "count": 6, "length_cm": 3}],
        ["stock_change", "stock-0002", {**at, **danio, "change": "death", "count": 1, "cause": "old age"}],
        ["planting", "plant-0001", {**at, **moss, "change": "plant", "amount": "a handful"}],
        ["planting", "plant-0002", {**at, **moss, **shelf, "change": "move_out", "amount": "half"}],
        ["shared_tool", "tool-0001", {**at, **shelf, "tool": "net", "order": "both"}],
    ]


def away_sheet(tank):
    """A sheet in force, with all that it may hold."""
    days = {"from_at": "2026-01-01T12:00:00.000Z", "to_at": "2099-01-01T12:00:00.000Z", "feed_every_days": 2}
    calls = [{"who": "Aino", "phone": "+49 30 5550 0142"}]
    return ["away_sheet", "away-0001", {**days, "tanks": [tank], "calls": calls, "note": "The key hangs left."}]


def every_screen(thumb):
    tank = thumb.page.url[thumb.page.url.index("/tank/") :]
    of_tank = [f"{tank}{rest}" for rest in ("", "/test", "/change", "/outlook", "/water", "/edit")]
    of_tank += [f"{tank}/{rest}" for rest in ("feed", "dose", "note", "history", "trends")]
    of_tank += [f"{tank}/{rest}" for rest in LIFE_PAGES] + [f"/trace?tank={tank[len('/tank/') :]}&days=30"]
    tasks = [f"{tank}/tasks", *TASK_PAGES]
    thumb.open(f"{tank}/history")
    thumb.page.locator(".happened img").first.wait_for()
    written = ("/photo/", "/correct/reading/", "/correct/note/")
    of_record = [thumb.page.locator(f"a[href^='{way}']").first.get_attribute("href") for way in written]
    plan = plan_tank(thumb)
    me = thumb.page.evaluate("() => import('/ui/live.js').then(({ room }) => room.value.me().id)")
    ways = [
        "/room",
        *(f"/room/{way}" for way in ("rooms", "people", f"person/{me}", "invite", "needs-you", "copy", "display")),
    ]
    settings = [
        "/room/test_kit/new?parameter=nitrite",
        "/room/label/new",
        "/room/source_water/new",
        "/room/own_species/new",
    ]
    return [
        "/",
        "/tanks",
        "/tanks/new",
        "/tanks/setup",
        *of_tank,
        *tasks,
        *of_record,
        "/timeline",
        "/trace",
        "/search",
        *(f"{plan}{rest}" for rest in OF_PLAN),
        "/bench",
        "/bench/dilution",
        "/room",
        *(f"/room/{way}" for way in ways),
        *settings,
        "/join#secret",
    ]


def test_every_screen_suits_wet_hands_and_every_keeper(furnished, screens):
    """Sizes and gaps of what is tapped, axe in light and dark, nothing cut off at 320 px and at twice the text."""
    wrong = []
    for path in screens:
        furnished.turn_to(path)
        furnished.page.evaluate(UNFOLD)
        wrong += [
            f"{path}: {said}"
            for said in (*cramped(furnished.page), *refused_by_axe(furnished.page), *cut_off(furnished.page))
        ]
    assert not wrong, "\n".join(wrong)


def cramped(page):
    targets = page.evaluate(TARGETS)
    for target in targets:
        least = MAIN_PX if target["main"] else OTHER_PX
        size = min(target["box"]["height"], target["box"]["width"])
        if size < least - 0.5:
            yield f"{target['name']!r} is {size:.0f} px, not {least}"
    for one, other in combinations(targets, 2):
        gap = gap_between(one["box"], other["box"])
        # What stands at the foot lies over the page, which is scrolled away under it.
        if gap is not None and gap < GAP_PX - 0.5 and one["foot"] == other["foot"]:
            yield f"{one['name']!r} and {other['name']!r} stand {gap:.0f} px apart, not {GAP_PX}"


def gap_between(one, other):
    """The gap of two boxes in px; None where one lies within the other."""
    across = max(one["left"], other["left"]) - min(one["right"], other["right"])
    down = max(one["top"], other["top"]) - min(one["bottom"], other["bottom"])
    return None if across < 0 and down < 0 else max(across, down)


def refused_by_axe(page):
    # Between light and dark nothing differs but the colours.
    for scheme, options in (("dark", {"runOnly": ["color-contrast"]}), ("light", {})):
        page.emulate_media(color_scheme=scheme)
        for one in Axe().run(page, options=options).response["violations"]:
            yield f"axe in {scheme}: {one['id']} {[node['target'] for node in one['nodes']][:3]}"


def cut_off(page):
    size = page.viewport_size
    page.set_viewport_size({"width": NARROW_PX, "height": size["height"]})
    for percent in (100, 200):
        page.evaluate("(percent) => { document.documentElement.style.fontSize = `${percent}%`; }", percent)
        wider = page.evaluate(WIDER)
        if wider > 0:
            yield f"{wider} px too wide at {NARROW_PX} px and {percent} % text"
    page.evaluate("() => { document.documentElement.style.fontSize = ''; }")
    page.set_viewport_size(size)


def test_a_second_finger_records_nothing(furnished, screens):
    furnished.open(next(path for path in screens if path.endswith("/test")))
    furnished.settled()
    box = furnished.page.get_by_role("button", name="0.5", exact=True).bounding_box()
    touch = furnished.page.context.new_cdp_session(furnished.page)
    finger = {"x": box["x"] + 10, "y": box["y"] + 10, "id": 0}
    drop = {"x": 30, "y": 500, "id": 1}
    touch.send("Input.dispatchTouchEvent", {"type": "touchStart", "touchPoints": [drop]})
    touch.send("Input.dispatchTouchEvent", {"type": "touchStart", "touchPoints": [drop, finger]})
    touch.send("Input.dispatchTouchEvent", {"type": "touchEnd", "touchPoints": [drop]})
    touch.send("Input.dispatchTouchEvent", {"type": "touchEnd", "touchPoints": []})
    furnished.settled()
    furnished.sees("1 of 5")
    expect(furnished.page.get_by_role("button", name="Nothing read yet")).to_be_disabled()


# Every English text of more than two words that a German screen must not show: its longest stretch between two parts.
ENGLISH = """async () => {
  const [{ en }, { de }, { texts_of }] = await Promise.all(
    ["en", "de", "shared_texts"].map((one) => import(`/i18n/${one}.js`)));
  const [shared, german] = await Promise.all(
    ["/shared.json", "/words/de.json"].map(async (one) => (await fetch(one)).json()));
  const forms = (entry) => (typeof entry === "string" ? [entry] : Object.values(entry ?? {}));
  const ours = Object.entries(en).flatMap(([key, entry]) =>
    forms(entry).filter((text) => !forms(de[key]).includes(text)));
  const theirs = texts_of(shared).filter((text) => german[text] !== text);
  const stretches = (text) => text.split(/[{][^}]*[}]/).map((one) => one.trim());
  const longest = (text) => stretches(text).sort((a, b) => b.length - a.length)[0];
  const words = (text) => (text.match(/[A-Za-z]{2,}/g) ?? []).length;
  return [...new Set([...ours, ...theirs].map(longest))].filter((text) => words(text) > 2);
}"""
SAID = """() => [document.body.innerText, ...["aria-label", "placeholder", "alt"]
  .flatMap((name) => [...document.querySelectorAll(`[${name}]`)].map((one) => one.getAttribute(name)))].join("\\n")"""
# What keepers wrote down in the story is theirs, in their own language.
WRITTEN = {"All is well", "Wipe the glass"}


def test_no_english_is_left_on_a_german_phone(furnished, screens):
    furnished.open()
    english = set(furnished.page.evaluate(ENGLISH)) - WRITTEN
    assert any(text in furnished.page.evaluate(SAID) for text in english), "an English phone shows some"
    furnished.page.evaluate("() => localStorage.setItem('limnary.draft.language', JSON.stringify('de'))")
    furnished.open()
    left = []
    for path in screens:
        furnished.turn_to(path)
        said = furnished.page.evaluate(SAID)
        left += [f"{path}: {text}" for text in english if text in said]
    assert left == []
