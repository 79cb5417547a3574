"""Every screen for wet hands and every keeper: target sizes, axe, 200 % text, stray touches, no English in German."""

import functools
import json
import subprocess
from itertools import combinations

import pytest
from access import refused_by_axe
from foretold import write
from journal_hands import write_note
from phones import Thumb, phone
from playwright.sync_api import expect
from real_server import ROOT
from room_hands import hear_of_role, join, share
from setup_hands import OF_PLAN, PLAN, plan_tank
from tank_hands import MEASURES, have_tank

pytestmark = pytest.mark.browser

# Everything that can be tapped, with its box. A check box or radio button counts as the label around it.
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
# The innermost elements that reach over the right edge.
OVER = """() => [...document.querySelectorAll("body *")]
  .filter((one) => one.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
  .filter((one, _, all) => !all.some((other) => other !== one && one.contains(other)))
  .slice(0, 3).map((one) => `${one.localName}.${one.className}: ${one.textContent.slice(0, 40)}`)"""
MAIN_PX, OTHER_PX, GAP_PX = 64, 48, 8
NARROW_PX = 320


@functools.cache
def routes():
    """The path of every route of the app, as pwa/routes.js lists them."""
    script = "import('./pwa/routes.js').then(({ ROUTES }) => console.log(JSON.stringify(ROUTES.map(([path]) => path))))"
    done = subprocess.run(["node", "-e", script], cwd=ROOT, capture_output=True, text=True, check=True)
    return json.loads(done.stdout)


TANK, SHELF = "tank-reed-pool", "tank-shelf"
# At least one path for each route. A word in braces is an id on the furnished phone.
EXAMPLES = {
    "/": ["/"],
    "/index.html": ["/index.html"],
    "/grid": ["/grid"],
    "/round/dose": ["/round/dose?place="],
    "/tanks": ["/tanks"],
    "/tanks/new": ["/tanks/new"],
    "/tanks/setup": ["/tanks/setup"],
    "/tank/:id": [f"/tank/{TANK}", f"/tank/{PLAN}"],
    "/tank/:id/edit": [f"/tank/{TANK}/edit"],
    "/tank/:id/setup": [f"/tank/{PLAN}/setup"],
    "/tank/:id/setup/:step": [f"/tank/{PLAN}{rest}" for rest in OF_PLAN if rest.startswith("/setup/")],
    "/tank/:id/buy": [f"/tank/{PLAN}/buy"],
    "/tank/:id/test": [f"/tank/{TANK}/test", f"/tank/{TANK}/test?of=temperature"],
    "/tank/:id/change": [f"/tank/{TANK}/change"],
    "/tank/:id/outlook": [f"/tank/{TANK}/outlook"],
    "/tank/:id/long-run": [f"/tank/{TANK}/long-run"],
    "/tank/:id/feed": [f"/tank/{TANK}/feed"],
    "/tank/:id/dose": [f"/tank/{TANK}/dose"],
    "/tank/:id/note": [f"/tank/{TANK}/note"],
    "/tank/:id/incidents": [f"/tank/{TANK}/incidents"],
    "/tank/:id/incident/:what": [f"/tank/{TANK}/incident/chlorine", f"/tank/{TANK}/incident/leak"],
    "/incidents": ["/incidents?what=power_cut"],
    "/tank/:id/trends": [f"/tank/{TANK}/trends"],
    "/tank/:id/history": [f"/tank/{TANK}/history"],
    "/tank/:id/month": [f"/tank/{TANK}/month"],
    "/tank/:id/year": [f"/tank/{TANK}/year"],
    "/year": ["/year"],
    "/tank/:id/water": [f"/tank/{TANK}/water"],
    "/tank/:id/stock": [f"/tank/{TANK}/stock"],
    "/tank/:id/stock/new": [f"/tank/{TANK}/stock/new?change=death"],
    "/tank/:id/plants": [f"/tank/{TANK}/plants"],
    "/tank/:id/plants/new": [f"/tank/{TANK}/plants/new?change=move_out"],
    "/tank/:id/tool": [f"/tank/{TANK}/tool"],
    "/trace": ["/trace", f"/trace?tank={TANK}&days=30"],
    "/search": ["/search"],
    "/tank/:id/tasks": [f"/tank/{TANK}/tasks"],
    "/tasks": ["/tasks"],
    "/calendar": ["/calendar"],
    "/labels": ["/labels"],
    "/tank/:id/label": [f"/tank/{TANK}/label"],
    "/away": ["/away"],
    "/away/edit": ["/away/edit"],
    "/task/new": ["/task/new"],
    "/task/:id": ["/task/task-0001"],
    "/task/:id/edit": ["/task/task-0001/edit"],
    "/timeline": ["/timeline"],
    "/test": ["/test"],
    "/shared": ["/shared"],
    "/correct/:kind/:id": ["/correct/reading/{reading}", "/correct/note/{note}"],
    "/photo/:id": ["/photo/{photo}"],
    "/bench": ["/bench"],
    "/bench/:name": ["/bench/dilution"],
    "/room": ["/room"],
    "/room/people": ["/room/people"],
    "/room/person/:id": ["/room/person/{me}", "/room/person/{other}"],
    "/room/invite": ["/room/invite"],
    "/room/rooms": ["/room/rooms"],
    "/room/needs-you": ["/room/needs-you"],
    "/room/copy": ["/room/copy"],
    "/room/notebook": ["/room/notebook"],
    "/room/display": ["/room/display"],
    "/room/install": ["/room/install"],
    "/room/:kind/new": [
        "/room/test_kit/new?parameter=nitrite",
        "/room/label/new",
        "/room/source_water/new",
        "/room/own_species/new",
        "/room/own_plant/new",
    ],
    "/room/:kind/:id": ["/room/label/label-0001", "/room/source_water/water-0001"],
    "/join": ["/join", "/join#secret"],
}
# What these pages fetch from the server and show after their title.
FETCHED = {
    "/room/people": "main a[href^='/room/person/']",
    "/room/person/:id": "main section",
}
# Opens a page; answers the route that the app takes for it, and the title of the "not here" page.
SHOWS = """async (path) => {
  const { ROUTES, router: { go, match }, words: { t } } = await app();
  go(path);
  const routes = ROUTES.map(([route]) => [route, route]);
  return { route: match(routes, new URL(path, location.origin).pathname)?.found, missing: t("missing.title") };
}"""


@pytest.fixture(scope="module")
def furnished(browser, shared_server):
    """A phone in a room where every screen has something to show; the tests leave it as it is."""
    with phone(browser, shared_server.origin) as context:
        thumb = Thumb(context.new_page())
        furnish(thumb, shared_server.new_room())
        yield thumb
        assert thumb.troubles == []


@pytest.fixture(scope="module")
def ids(furnished):
    """The ids that EXAMPLES leaves open."""
    return furnished.page.evaluate("""async () => {
      const { live: { room }, people: fetch_people } = await app();
      const { people } = await fetch_people();
      const [photo, reading, note] = ["photo", "reading", "note"].map((kind) => room.value.all(kind)[0].id);
      const me = room.value.me().id;
      const other = (await people(room.value)).find(({ id }) => id !== me).id;
      return { me, other, photo, reading, note };
    }""")


def furnish(thumb, served_room):
    join(thumb, served_room.invite("owner"), "Aino", "Aino's phone")
    write(thumb, lived_in())
    plan_tank(thumb)
    share(thumb)
    # A helper may not change a tank, so the server refuses this and the entry needs its author.
    served_room.set_role("Aino", "helper")
    write(thumb, [["tank", SHELF, {"place": "Landing"}]])
    hear_of_role(thumb)
    thumb.sees("1 entry was refused and needs you.")
    served_room.set_role("Aino", "owner")
    hear_of_role(thumb)
    thumb.turn_to(f"/tank/{TANK}")
    write_note(thumb, "All is well")
    thumb.title("Reed pool")


def lived_in():
    """A tank with all that may be recorded of one: a test, animals of which one died, plants that moved, tasks."""
    at = {"at": "2026-05-04T07:30:00.000Z", "tank": TANK}
    danio, moss, shelf = {"species": "Danio rerio"}, {"species": "moss"}, {"other_tank": SHELF}
    read = {**at, "basis": "ion", "test": "test-0001", "steps": [0, 0.25, 0.5, 1]}
    weekly = {"title": "Wipe the glass", "starts_at": at["at"], "rule": "FREQ=WEEKLY", "zone": "Europe/Berlin"}
    bottle = {"name": "Tap safe", "use": "dechlorinator", "amount": 2, "unit": "ml", "per_l": 10, "basis": "new_water"}
    tank = {"name": "Reed pool", "measures": MEASURES, "water_l": 102.2, "gross_l": 112}
    return [
        ["source_water", "water-0001", {"name": "Kitchen tap", "disinfectant": "chlorine"}],
        ["label", "label-0001", bottle],
        ["tank", TANK, {**tank, "source_water": "water-0001", "dechlorinator": "label-0001"}],
        ["tank", SHELF, {"name": "ShelfUnderTheNorthWindowOfTheLanding", "water_l": 40}],
        ["reading", "reading-0001", {**read, "parameter": "total_ammonia", "value": 0.5}],
        ["reading", "reading-0002", {**read, "parameter": "nitrite", "value": 0.25}],
        ["reading", "reading-0003", {**at, "parameter": "temperature", "value": 24.3, "unit": "°C"}],
        ["stock_change", "stock-0001", {**at, **danio, "change": "arrival", "count": 6, "length_cm": 3}],
        ["stock_change", "stock-0002", {**at, **danio, "change": "death", "count": 1, "cause": "old age"}],
        ["planting", "plant-0001", {**at, **moss, "change": "plant", "amount": "a handful"}],
        ["planting", "plant-0002", {**at, **moss, **shelf, "change": "move_out", "amount": "half"}],
        ["shared_tool", "tool-0001", {**at, **shelf, "tool": "net", "order": "both"}],
        ["task", "task-0001", weekly],
        away_sheet(),
    ]


def away_sheet():
    """A sheet in force, with all that it may hold."""
    days = {"from_at": "2026-01-01T12:00:00.000Z", "to_at": "2099-01-01T12:00:00.000Z", "feed_every_days": 2}
    calls = [{"who": "Aino", "phone": "+49 30 5550 0142"}]
    return ["away_sheet", "away-0001", {**days, "tanks": [TANK], "calls": calls, "note": "The key hangs left."}]


def test_every_route_has_an_example():
    assert set(routes()) - set(EXAMPLES) == set(), "no example path"
    assert set(EXAMPLES) - set(routes()) == set(), "no such route"


@pytest.mark.xdist_group("furnished")
@pytest.mark.parametrize("route", routes())
def test_every_screen_suits_wet_hands_and_every_keeper(route, furnished, ids):
    """Sizes and gaps of what is tapped, axe in light and dark, nothing cut off at 320 px and at twice the text."""
    wrong = []
    for example in EXAMPLES[route]:
        path = example.format(**ids)
        shown_by(furnished, route, path)
        wrong += [f"{path}: {said}" for said in found_wrong(furnished.page)]
    assert not wrong, "\n".join(wrong)


@pytest.mark.xdist_group("furnished")
def test_a_made_link_suits_wet_hands_and_every_keeper(furnished):
    furnished.turn_to("/room/invite")
    furnished.tap("button", "Make the link")
    furnished.page.locator(".invitation").wait_for()
    assert found_wrong(furnished.page) == []


def found_wrong(page):
    page.evaluate(UNFOLD)
    return [*cramped(page), *refused_in_any_light(page), *cut_off(page)]


def shown_by(thumb, route, path):
    """Turn to the page of `path`: `route` answers it, with something held on this phone."""
    shown = thumb.page.evaluate(SHOWS, path)
    assert shown["route"] == route, f"{path} is answered by {shown['route']}"
    thumb.settled()
    title = thumb.page.get_by_role("heading", level=1)
    expect(title).to_be_visible()
    expect(title, path).not_to_have_text(shown["missing"])
    if route in FETCHED:
        thumb.page.locator(FETCHED[route]).first.wait_for()


def cramped(page):
    targets = page.evaluate(TARGETS)
    for target in targets:
        least = MAIN_PX if target["main"] else OTHER_PX
        size = min(target["box"]["height"], target["box"]["width"])
        if size < least - 0.5:
            yield f"{target['name']!r} is {size:.0f} px, not {least}"
    for one, other in combinations(targets, 2):
        gap = gap_between(one["box"], other["box"])
        # The foot covers the page, and the page scrolls under it.
        if gap is not None and gap < GAP_PX - 0.5 and one["foot"] == other["foot"]:
            yield f"{one['name']!r} and {other['name']!r} stand {gap:.0f} px apart, not {GAP_PX}"


def gap_between(one, other):
    """The gap of two boxes in px; None where one lies within the other."""
    across = max(one["left"], other["left"]) - min(one["right"], other["right"])
    down = max(one["top"], other["top"]) - min(one["bottom"], other["bottom"])
    return None if across < 0 and down < 0 else max(across, down)


def refused_in_any_light(page):
    # Only colours differ between light and dark.
    for scheme, options in (("dark", {"runOnly": ["color-contrast"]}), ("light", {})):
        page.emulate_media(color_scheme=scheme)
        yield from (f"axe in {scheme}: {one}" for one in refused_by_axe(page, **options))


def cut_off(page):
    size = page.viewport_size
    page.set_viewport_size({"width": NARROW_PX, "height": size["height"]})
    for percent in (100, 200):
        page.evaluate("(percent) => { document.documentElement.style.fontSize = `${percent}%`; }", percent)
        wider = page.evaluate(WIDER)
        if wider > 0:
            yield f"{wider} px too wide at {NARROW_PX} px and {percent} % text: {page.evaluate(OVER)}"
    page.evaluate("() => { document.documentElement.style.fontSize = ''; }")
    page.set_viewport_size(size)


BEHIND_THE_BAR = """() => {
  const bar = document.querySelector(".foot").getBoundingClientRect();
  const boxes = [...document.querySelectorAll("main a")].map((one) => one.getBoundingClientRect());
  return { bar: bar.toJSON(), links: boxes.filter(({ top }) => top >= bar.top).map((box) => box.toJSON()) };
}"""
LOWEST = "() => Math.max(...[...document.querySelectorAll('.places a')].map((a) => a.getBoundingClientRect().bottom))"
STRIP_PX = 9


@pytest.mark.xdist_group("furnished")
def test_no_strip_of_a_link_behind_the_bar_is_left_below_it(furnished):
    page = furnished.page
    furnished.turn_to(f"/tank/{TANK}")
    size = page.viewport_size
    link = page.evaluate(BEHIND_THE_BAR)["links"][0]
    page.set_viewport_size({"width": size["width"], "height": round(link["bottom"]) - STRIP_PX})
    found = page.evaluate(BEHIND_THE_BAR)
    assert link in found["links"]
    assert found["bar"]["bottom"] >= link["bottom"]
    page.set_viewport_size(size)
    page.evaluate("() => scrollTo(0, document.documentElement.scrollHeight)")
    assert abs(page.evaluate(LOWEST) - size["height"]) <= 1, "the end of the page is the end of the bar"


LABELS = """() => [...document.querySelectorAll(".places a")].map((place) => {
  const range = document.createRange();
  range.selectNodeContents(place);
  const lines = new Set([...range.getClientRects()].map(({ bottom }) => Math.round(bottom)));
  return [place.innerText, lines.size, place.getBoundingClientRect().right <= innerWidth];
})"""


@pytest.mark.parametrize("locale", ["en-GB", "de-DE", "fr-FR"])
def test_the_places_stay_whole_words_at_twice_the_text(locale, new_phone):
    """Each place of the bar is an icon and one line, within the page."""
    thumb = new_phone(locale=locale, size={"width": NARROW_PX, "height": 740})
    thumb.open()
    thumb.page.evaluate("() => { document.documentElement.style.fontSize = '200%'; }")
    labels = thumb.page.evaluate(LABELS)
    assert len(labels) == 4
    assert [(lines, within) for _, lines, within in labels] == [(2, True)] * 4, labels


def test_a_second_finger_records_nothing(new_phone):
    thumb = new_phone()
    thumb.open()
    have_tank(thumb, "Reed pool")
    thumb.tap("link", "Test")
    thumb.settled()
    box = thumb.page.get_by_role("button", name="0.5", exact=True).bounding_box()
    touch = thumb.page.context.new_cdp_session(thumb.page)
    finger = {"x": box["x"] + 10, "y": box["y"] + 10, "id": 0}
    drop = {"x": 30, "y": 500, "id": 1}
    with thumb.in_no_time():
        touch.send("Input.dispatchTouchEvent", {"type": "touchStart", "touchPoints": [drop]})
        touch.send("Input.dispatchTouchEvent", {"type": "touchStart", "touchPoints": [drop, finger]})
        touch.send("Input.dispatchTouchEvent", {"type": "touchEnd", "touchPoints": [drop]})
        touch.send("Input.dispatchTouchEvent", {"type": "touchEnd", "touchPoints": []})
    thumb.settled()
    thumb.sees("1 of 5")
    expect(thumb.page.get_by_role("button", name="Nothing read yet")).to_be_disabled()


# Every English text of more than two words that a German screen must not show, as its longest part without a variable.
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
SPEAK = """async (wanted) => {
  const { language: { wanted_language } } = await app();
  wanted_language.value = wanted;
}"""
# Texts that the keeper wrote stay in the keeper's own language.
WRITTEN = {"All is well", "Wipe the glass"}


@pytest.fixture(scope="module")
def english(furnished):
    """What a German screen must not show; an English one does show some of it."""
    furnished.open()
    texts = set(furnished.page.evaluate(ENGLISH)) - WRITTEN
    assert any(text in furnished.page.evaluate(SAID) for text in texts)
    return texts


@pytest.fixture
def german(furnished, english):
    """The furnished phone, speaking German for one test."""
    speak(furnished, "de")
    yield furnished
    speak(furnished, "en")


def speak(thumb, language):
    thumb.page.evaluate(SPEAK, language)
    expect(thumb.page.locator(f"html[lang^={language}]")).to_have_count(1)


@pytest.mark.xdist_group("furnished in German")
@pytest.mark.parametrize("route", routes())
def test_no_english_is_left_on_a_german_phone(route, german, ids, english):
    left = []
    for example in EXAMPLES[route]:
        path = example.format(**ids)
        shown_by(german, route, path)
        said = german.page.evaluate(SAID)
        left += [f"{path}: {text}" for text in english if text in said]
    assert left == []
