"""A page that fails says so in plain words, keeps what is half typed, and lets the keeper go on."""

import pytest
from playwright.sync_api import expect
from real_server import RealServer

pytestmark = pytest.mark.browser

RAW = "cannot read properties of nothing"
IN_DRAWING = f"export const Search = () => {{ throw new TypeError('{RAW}'); }};"
IN_AN_EFFECT = f"""
import {{ html, useEffect }} from "/vendor/preact.js";
export function Labels() {{
  useEffect(() => {{ throw new TypeError("{RAW}"); }}, []);
  return html`<h1>Drawn, then broken</h1>`;
}}"""
FAULT, NOT_FETCHED = "Something went wrong inside the app", "This page could not be fetched"
# A screen with what its module holds instead, or none at all, and what its page says.
BROKEN = {"search": (IN_DRAWING, FAULT), "labels": (IN_AN_EFFECT, FAULT), "trace": (None, NOT_FETCHED)}


def serve(thumb, screen: str, module: str | None) -> None:
    """Answer a screen's module with this text, or not at all."""
    answer = {"status": 404} if module is None else {"body": module, "content_type": "text/javascript"}
    thumb.page.route(f"**/screens/{screen}.js", lambda route: route.fulfill(**answer))


@pytest.fixture
def own_server(tmp_path):
    """A server of the sources, where each screen is a file of its own."""
    started = RealServer(tmp_path / "data", "--sources").start()
    yield started
    started.stop()


def test_a_broken_page_lets_the_keeper_go_on(own_server, new_phone):
    thumb = new_phone()
    for screen, (module, _) in BROKEN.items():
        serve(thumb, screen, module)
    thumb.open("/tanks/new")
    thumb.pick("cylinder")
    thumb.type("Diameter", "40")
    for screen, (_, says) in BROKEN.items():
        thumb.turn_to(f"/{screen}")
        thumb.title("Limnary")
        thumb.sees(says)
        thumb.sees("What you have typed stays.")
        expect(thumb.page.get_by_text(RAW)).to_have_count(0)
        thumb.tap("link", "Back to the Round")
        thumb.title("Round")
        thumb.turn_to("/tanks/new")
        expect(thumb.page.get_by_label("Diameter")).to_have_value("40")

    # The same as the first page that is opened.
    thumb.open("/trace")
    thumb.sees(NOT_FETCHED)
    thumb.tap("button", "Reload")
    thumb.sees(NOT_FETCHED)


# Requests whose answer is never heard, as in a storage that another page holds.
DEAF = """(() => {
  const real = IDBObjectStore.prototype.getKey;
  IDBObjectStore.prototype.getKey = function (...given) {
    return Object.assign(real.apply(this, given), { addEventListener() {} });
  };
})();"""
STUCK = {
    "the app's code does not come": lambda page: page.route("**/*.js", lambda route: None),
    "no transaction starts": lambda page: page.add_init_script(DEAF),
}


@pytest.mark.parametrize("hang", STUCK.values(), ids=STUCK)
def test_an_app_that_does_not_start_says_so(new_phone, hang):
    """The words stand in index.html itself and show by its style: they need no script."""
    thumb = new_phone()
    thumb.page.route("**/sw.js", lambda route: route.abort())
    hang(thumb.page)
    thumb.page.goto("/tanks", wait_until="commit")
    words = thumb.page.get_by_text("Limnary has not started yet. Nothing that was recorded is lost.")
    expect(words).to_be_attached()
    expect(words).not_to_be_visible()
    expect(words).to_be_visible()


def test_an_app_that_started_says_nothing_of_the_kind(new_phone):
    thumb = new_phone()
    thumb.open("/tanks")
    expect(thumb.page.get_by_text("has not started yet")).to_have_count(0)


TOO_OLD = "CSS.supports = () => false;"


def test_a_browser_that_is_too_old_says_so_and_what_it_needs(new_phone):
    thumb = new_phone()
    thumb.page.add_init_script(TOO_OLD)
    thumb.page.goto("/tanks")
    thumb.sees("This browser is too old for Limnary: it needs iOS 16.0, Chrome 105, Firefox 115, or newer.")
    thumb.sees("Nothing that was recorded here is lost.")
    expect(thumb.page.locator("#app")).to_be_hidden()
    expect(thumb.page.locator("#not-yet")).to_be_hidden()
