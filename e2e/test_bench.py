"""The bench on a phone: every form shows the server's figures, works without signal and loses nothing typed."""

import json
import re
import urllib.error
import urllib.request

import pytest
from access import refused_by_axe
from bench_hands import expected_texts, figures_shown, shows_figures, type_input, typed
from limnary.contracts import contracts
from phones import Thumb, phone, stored, tap, turn_to
from playwright.sync_api import expect
from test_touch_and_access import TARGETS, WIDER

pytestmark = pytest.mark.browser
NAMES = sorted(contracts())
POND = {"name": "Heron pool", "water_l": 148.5, "temperature_c": 23.5, "ph": 7.25}


@pytest.fixture
def context(browser, shared_server):
    with phone(browser, shared_server.origin) as held:
        yield held


@pytest.fixture
def bench(context):
    page = context.new_page()
    troubles = []
    page.on("pageerror", lambda error: troubles.append(str(error)))
    yield page
    assert troubles == []


@pytest.fixture
def ask_server(shared_server):
    def ask(name: str, given: dict) -> dict:
        request = urllib.request.Request(
            f"{shared_server.origin}/api/v1/calc/{name}",
            data=json.dumps(given).encode(),
            headers={"Content-Type": "application/json"},
        )
        try:
            with urllib.request.urlopen(request, timeout=60) as answer:
                return json.load(answer)
        except urllib.error.HTTPError as refused:
            return json.load(refused)

    return ask


WRITE_TANK = """async (fields) => {
  const { live: { room }, record: { new_id } } = await app();
  const id = new_id();
  await room.value.write([{ type: "put", kind: "tank", id, fields }]);
  return id;
}"""
NOTES = """async (id) => {
  const { live: { room } } = await app();
  return room.value.all("note").filter((note) => note.tank === id).map((note) => note.text);
}"""


@pytest.fixture
def tank(bench):
    """A tank written through the app's own door, as the form for a new tank does."""
    bench.goto("/bench")
    expect(bench.get_by_role("heading", level=1)).to_be_visible()
    return {**POND, "id": bench.evaluate(WRITE_TANK, POND)}


@pytest.fixture(scope="module")
def forms(browser, shared_server):
    """One phone that goes from form to form."""
    with phone(browser, shared_server.origin) as held:
        thumb = Thumb(held.new_page())
        thumb.open("/bench")
        yield thumb
        assert thumb.troubles == []


@pytest.mark.xdist_group("forms")
@pytest.mark.parametrize("name", NAMES)
def test_form_gives_the_servers_figures_to_every_thumb_and_eye(name, forms, ask_server):
    bench = forms.page
    spec = contracts()[name]
    given = spec["examples"][0]["input"]
    answer = ask_server(name, given)
    forms.turn_to(f"/bench/{name}")
    expect(bench.get_by_role("heading", level=1)).to_have_text(spec["title"])
    type_input(bench, spec, given)
    expect(bench.locator(".answer .figure").first).to_be_visible()
    shows_figures(bench, expected_texts(spec, answer))
    bench.evaluate("() => document.querySelectorAll('details').forEach((one) => (one.open = true))")
    for text in [
        *(one["text"] for one in spec["cautions"]),
        *answer["notes"],
        spec["uncertainty"],
        *(one["title"] for one in answer["sources"]),
    ]:
        expect(bench.get_by_text(text).first).to_be_visible()
    if spec["working"]:
        expect(bench.locator(".steps li").first).to_be_visible()
    fits(bench)


def fits(bench):
    """No sideways scroll, targets for a wet thumb, the main action in reach, axe content, room for large text."""
    assert bench.evaluate(WIDER) <= 0
    for target in bench.evaluate(TARGETS):
        least = 64 if target["main"] else 48
        assert min(target["box"]["height"], target["box"]["width"]) >= least - 0.5, target["name"]
    main = bench.locator(".act .main").bounding_box()
    assert main["y"] + main["height"] <= 740
    assert refused_by_axe(bench) == []
    bench.evaluate("() => { document.documentElement.style.fontSize = '200%'; }")
    assert bench.evaluate(WIDER) <= 0, "at twice the text"
    bench.evaluate("() => { document.documentElement.style.fontSize = ''; }")


def test_reads_and_writes_the_readers_own_comma(browser, shared_server):
    with phone(browser, shared_server.origin, locale="en-DE") as context:
        page = context.new_page()
        page.goto("/bench/free_ammonia")
        type_input(page, contracts()["free_ammonia"], {"tan_mg_n_l": 1, "ph": 8.0, "temperature_c": 25})
        expect(page.locator(".answer-main .figure")).to_contain_text("0,0537")
        page.get_by_label("Water temperature").fill("25,125")
        expect(page.locator(".answer-main .figure")).to_contain_text("0,0541")
        page.get_by_label("Units").select_option("us")
        expect(page.get_by_label("Water temperature")).to_have_value("77,225")


def test_calculates_without_signal_after_a_reload(bench, context):
    bench.goto("/bench")
    stored(bench)
    context.set_offline(True)
    bench.goto("/bench/free_ammonia")
    type_input(bench, contracts()["free_ammonia"], {"tan_mg_n_l": 1, "ph": 8, "temperature_c": 25})
    expect(bench.locator(".answer-main .figure")).to_contain_text("0.0537")
    bench.get_by_label("pH").fill("8,")
    bench.reload()
    expect(bench.get_by_label("pH")).to_have_value("8,")
    expect(bench.locator(".answer-main .figure")).to_contain_text("0.0537")
    for name in NAMES:
        turn_to(bench, f"/bench/{name}")
        expect(bench.get_by_role("heading", level=1)).to_have_text(contracts()[name]["title"])


def test_switching_units_there_and_back_keeps_what_was_typed(bench):
    bench.goto("/bench/volume")
    type_input(bench, contracts()["volume"], {"shape": "cuboid", "length_cm": 80.5, "width_cm": 35, "height_cm": 40})
    bench.get_by_label("Height").fill("40,")
    metric = figures_shown(bench)
    units = bench.get_by_label("Units")
    units.select_option("us")
    expect(bench.get_by_label("Length")).to_have_value("31.693")
    expect(bench.locator(".answer-main")).to_contain_text("US gal")
    units.select_option("imperial")
    expect(bench.locator(".answer-main")).to_contain_text("UK gal")
    units.select_option("metric")
    expect(bench.get_by_label("Length")).to_have_value("80,5")
    expect(bench.get_by_label("Height")).to_have_value("40,")
    shows_figures(bench, metric)


def test_a_figure_typed_in_inches_and_fahrenheit_means_them(bench, ask_server):
    bench.goto("/bench/volume")
    bench.get_by_label("Units").select_option("us")
    type_input(bench, contracts()["volume"], {"shape": "cuboid", "length_cm": 30, "width_cm": 12.5, "height_cm": 18})
    answer = ask_server("volume", {"shape": "cuboid", "length_cm": 76.2, "width_cm": 31.75, "height_cm": 45.72})
    bench.get_by_label("Units").select_option("metric")
    shows_figures(bench, expected_texts(contracts()["volume"], answer))
    expect(bench.get_by_label("Width")).to_have_value("31.75")


def test_bad_input_is_refused_in_the_servers_words_and_kept(bench, ask_server):
    bench.goto("/bench/free_ammonia")
    refused = ask_server("free_ammonia", {"tan_mg_n_l": "half", "ph": 15, "temperature_c": 25})
    bench.get_by_label("Total ammonia").fill("half")
    bench.get_by_label("pH").fill("15")
    bench.get_by_label("Water temperature").fill("25")
    for error in refused["errors"]:
        field = bench.locator(f"#f-{error['field']}")
        expect(field).to_have_attribute("aria-invalid", "true")
        expect(bench.locator(f"#f-{error['field']}-wrong")).to_have_text(error["message"])
    bench.reload()
    expect(bench.get_by_label("Total ammonia")).to_have_value("half")
    expect(bench.get_by_label("pH")).to_have_value("15")
    bench.get_by_label("pH").fill("")
    bench.get_by_label("Total ammonia").fill("0.5")
    expect(bench.locator(".act .in-brief")).to_have_text("Still needed: pH")


def test_a_tank_fills_the_form_and_the_answer_is_kept_in_its_journal(bench, tank):
    turn_to(bench, f"/bench/free_ammonia?tank={tank['id']}")
    expect(bench.get_by_label("For")).to_have_value(tank["id"])
    expect(bench.get_by_label("pH")).to_have_value(typed(tank["ph"], comma=False))
    expect(bench.get_by_label("Water temperature")).to_have_value(typed(tank["temperature_c"], comma=False))
    bench.get_by_label("pH").fill("8,2")
    own = bench.get_by_role("button", name=re.compile("^Use the tank's own"))
    tap(own)
    expect(bench.get_by_label("pH")).to_have_value(typed(tank["ph"], comma=False))
    bench.get_by_label("Total ammonia").fill("0,5")
    figure = figures_shown(bench)[0]
    tap(bench.get_by_role("button", name="Keep in the journal"))
    expect(bench.get_by_role("status").filter(has_text="kept in the journal")).to_be_visible()
    kept = bench.evaluate(NOTES, tank["id"])
    assert len(kept) == 1
    assert figure in kept[0] and "Total ammonia, as nitrogen: 0.5 mg N/L" in kept[0]
    bench.reload()
    expect(bench.locator(".answer .figure").first).to_be_visible()
    assert bench.evaluate(NOTES, tank["id"]) == kept
    turn_to(bench, f"/tank/{tank['id']}/history")
    expect(bench.get_by_text("Worked out from")).to_be_visible()


def test_found_by_a_word_and_remembered(bench):
    bench.goto("/bench")
    expect(bench.get_by_role("heading", level=1)).to_have_text("Bench")
    names = {spec["title"] for spec in contracts().values()}
    shown = bench.locator(".lines a strong")
    expect(shown).to_have_count(len(names))
    assert set(shown.all_inner_texts()) == names
    bench.get_by_label("Find a calculation").fill("AMMONIA toxic")
    expect(bench.locator(".lines a")).to_have_count(1)
    tap(bench.get_by_role("link", name=re.compile("^Free ammonia")))
    expect(bench.get_by_role("heading", level=1)).to_have_text("Free ammonia")
    turn_to(bench, "/bench")
    expect(bench.locator(".section").first).to_contain_text("Opened last")
    expect(bench.locator(".section").first).to_contain_text("Free ammonia")


def test_emptying_the_form_can_be_taken_back(bench):
    bench.goto("/bench/dilution")
    type_input(bench, contracts()["dilution"], {"before_mg_l": 40, "fractions": [0.5, 0.25]})
    before = figures_shown(bench)
    tap(bench.get_by_role("button", name="Empty the form"))
    expect(bench.get_by_label("In the tank now")).to_have_value("")
    tap(bench.get_by_role("button", name="Undo"))
    expect(bench.get_by_label("In the tank now")).to_have_value("40")
    shows_figures(bench, before)
    assert json.loads(bench.evaluate("() => localStorage.getItem('limnary.draft.bench.dilution')"))


# The page right after a key is pressed, before the pause after which the worker is asked.
AFTER_A_KEY = """async ({ label, text }) => {
  const top = (what) => document.querySelector(what).getBoundingClientRect().top + scrollY;
  const place = () => [".answer .caution", ".act .main"].map(top).join();
  const before = place();
  const field = [...document.querySelectorAll("label")].find((one) => one.textContent.startsWith(label)).control;
  field.value = text;
  field.dispatchEvent(new Event("input", { bubbles: true }));
  await new Promise((drawn) => setTimeout(drawn));
  const figure = document.querySelector(".answer .figure");
  return {
    moved: place() !== before,
    seen: figure.checkVisibility({ visibilityProperty: true }),
    said: document.querySelector(".act .in-brief").innerText,
    keep: document.querySelector(".act .main").disabled,
  };
}"""


@pytest.mark.parametrize(("name", "field"), [("outlook", "now_h"), ("water_blend", "litres")])
def test_a_slow_answer_comes_from_a_worker_without_signal_and_never_of_older_figures(
    name, field, bench, context, ask_server
):
    spec = contracts()[name]
    given = spec["examples"][0]["input"]
    answer = ask_server(name, given)
    label = next(one["label"] for one in spec["inputs"] if one["name"] == field)
    bench.goto("/bench")
    stored(bench)
    context.set_offline(True)
    bench.goto(f"/bench/{name}")
    type_input(bench, spec, given)
    expect(bench.locator(".answer .figure").first).to_be_visible()
    shows_figures(bench, expected_texts(spec, answer))
    assert [worker.url.rsplit("/", 1)[1] for worker in bench.workers] == ["outlook_worker.js"]
    after = bench.evaluate(AFTER_A_KEY, {"label": label, "text": typed(given[field] + 1, comma=False)})
    assert after == {"moved": False, "seen": False, "said": "Working it out …", "keep": True}
    bench.get_by_label(label).fill(typed(given[field], comma=False))
    expect(bench.locator(".answer .figure").first).to_be_visible()
    shows_figures(bench, expected_texts(spec, answer))


def test_a_slow_answer_comes_where_no_worker_can_start(bench, context, ask_server):
    context.add_init_script("delete window.Worker")
    spec = contracts()["stock_headroom"]
    given = spec["examples"][0]["input"]
    bench.goto("/bench/stock_headroom")
    type_input(bench, spec, given)
    expect(bench.locator(".answer .figure").first).to_be_visible()
    shows_figures(bench, expected_texts(spec, ask_server("stock_headroom", given)))
    assert bench.workers == []
