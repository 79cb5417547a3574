"""Phones to hold: Chromium at phone size with touch, and the taps of a keeper in words."""

import os
import re
import shutil
from collections.abc import Iterator
from contextlib import contextmanager

from playwright.sync_api import Browser, BrowserContext, Error, Locator, Page, Playwright, expect
from real_server import ROOT

# Long enough for a machine that is busy with other work.
PATIENCE_MS = 60_000
# Waits until a tap counts, and answers what CLICKED asks for.
SETTLED = f"""async () => {{
  const {{ taps: {{ is_echo }}, router: {{ is_turning }} }} = await window.app();
  window.is_echo = is_echo;
  // The app drops taps right after a change of page, as it does the second tap of a double tap; and when words move
  // once more because their forecast arrives.
  const moves = () => is_turning() || is_echo() || document.querySelector("[aria-busy=true]");
  for (const end = performance.now() + {PATIENCE_MS}; moves(); )
    if (performance.now() > end) throw new Error("the page does not settle");
    else await new Promise((resolve) => setTimeout(resolve, 20));
  return [performance.timeOrigin, window.clicks];
}}"""
TURN = "async (path) => (await window.app()).router.go(path)"
# How long the app offers an undo.
(UNDO_MS,) = (
    int(found[1].replace("_", ""))
    for path in (ROOT / "pwa").rglob("record.js")
    for found in re.finditer(r"UNDO_MS = ([\d_]+);", path.read_text("utf-8"))
)
# On a phone of these stories
# - the offer of an undo never ends, however long a busy machine takes to reach for it;
# - clicks are counted, and whether the app took the last one for the echo of a tap before it;
# - `app()` brings the modules that pwa/app.js shows to the stories, of the build or of the sources;
# - the worker that stores the shell starts only when a story asks for it: it fetches the whole app.
STEADY = f"""(() => {{
  let wait = setTimeout;
  const steady = (wait) => (work, ms, ...more) =>
    wait.call(window, work, ms === {UNDO_MS} ? 2 ** 31 - 1 : ms, ...more);
  // Playwright's clock sets another one.
  Object.defineProperty(window, "setTimeout", {{ get: () => steady(wait), set: (other) => (wait = other) }});
  window.app = () => import(document.querySelector("script[src*='/app']").src);
  window.clicks = 0;
  addEventListener("click", () => {{
    window.clicks += 1;
    window.echoed = Boolean(window.is_echo?.());
  }}, true);
  const workers = window.ServiceWorkerContainer?.prototype;
  const register = workers?.register;
  if (workers) workers.register = function (...given) {{
    return new Promise((resolve, reject) => {{
      window.store_shell = () => register.apply(this, given).then(resolve, reject);
    }});
  }};
}})();"""
CLICKED = "([page, clicks]) => performance.timeOrigin !== page || window.clicks > clicks"
ECHOED = "() => window.echoed"
expect.set_options(timeout=PATIENCE_MS)
# Chromium refuses to run in its sandbox as root.
SANDBOX = ["--no-sandbox"] if os.geteuid() == 0 else []
SMALL = {"width": 360, "height": 740}
LARGE = {"width": 412, "height": 915}


def chromium(playwright: Playwright) -> Browser:
    """The Chromium that is there: LIMNARY_CHROMIUM, the system's, else Playwright's own.

    The system's headless shell comes first: it is the same engine without the browser's own windows, and takes a third
    less of the processor.
    """
    return playwright.chromium.launch(executable_path=chromium_path(), args=SANDBOX)


def chromium_path() -> str | None:
    """The Chromium that is there; None for Playwright's own."""
    return os.environ.get("LIMNARY_CHROMIUM") or shutil.which("chromium-headless-shell") or shutil.which("chromium")


@contextmanager
def phone(browser: Browser, origin: str, *, size=None, dark=False, locale="en-GB", **more) -> Iterator[BrowserContext]:
    """A phone with storage of its own, touch, and no mouse."""
    context = browser.new_context(
        base_url=origin,
        viewport=size or SMALL,
        device_scale_factor=2,
        is_mobile=True,
        has_touch=True,
        locale=locale,
        timezone_id="Europe/Berlin",
        color_scheme="dark" if dark else "light",
        reduced_motion="reduce",
        **more,
    )
    context.set_default_timeout(PATIENCE_MS)
    context.add_init_script(STEADY)
    try:
        yield context
    finally:
        context.close()


class Thumb:
    """One thumb on one page: each verb finds its target by role and name, as a keeper does by its words."""

    def __init__(self, page: Page):
        self.page = page
        self.taps = 0
        self.troubles: list[str] = []
        page.on("pageerror", lambda error: self.troubles.append(str(error)))

    def open(self, path: str = "/") -> None:
        self.page.goto(path)
        expect(self.page.get_by_role("heading", level=1)).to_be_visible()

    def turn_to(self, path: str) -> None:
        turn_to(self.page, path)

    def tap(self, role: str, name: str, *, exact: bool = False) -> None:
        self.tap_on(self.page.get_by_role(role, name=name, exact=exact).first)

    def pick(self, name: str) -> None:
        """Choose a tile of a form by its words."""
        self.tap_on(self.page.locator("label").filter(has_text=name).first)

    def tap_on(self, target: Locator) -> None:
        tap(target)
        self.taps += 1

    def type(self, label: str, text: str) -> None:
        """On the phone's own keyboard."""
        self.page.get_by_label(label).first.fill(text)

    def key_in(self, figure: str) -> None:
        """On the app's keypad."""
        for key in figure:
            self.page.get_by_role("button", name=key, exact=True).tap()
            self.taps += 1

    @contextmanager
    def in_no_time(self) -> Iterator[None]:
        """Whatever is done within happens at one moment of the page's clock, however long it takes."""
        self.page.clock.install()
        self.page.clock.pause_at(self.page.evaluate("() => Date.now()") / 1000 + 60)
        yield
        self.page.clock.resume()

    def sees(self, text: str) -> None:
        expect(self.page.get_by_text(text).first).to_be_visible()

    def title(self, text: str) -> None:
        expect(self.page.get_by_role("heading", level=1)).to_have_text(text)

    def stored(self) -> None:
        stored(self.page)

    def settled(self) -> None:
        settled(self.page)


def turn_to(page: Page, path: str) -> None:
    """Another page without leaving the app, as a link does: several times as fast as opening it."""
    page.evaluate(TURN, path)
    settled(page)
    expect(page.get_by_role("heading", level=1)).to_be_visible()


def stored(page: Page) -> None:
    """Store the shell for use without signal, and wait until it is there."""
    page.wait_for_function("() => window.store_shell")
    page.evaluate("() => Promise.all([window.store_shell(), navigator.serviceWorker.ready]).then(() => null)")


def settled(page: Page) -> list[float]:
    """Wait until a tap counts; answers which page this is and the clicks that it heard."""
    while (heard := answered(page, SETTLED)) is None:
        pass
    return heard


def answered(page: Page, question: str) -> object:
    """What the page answers, or None if the browser leaves this page before it answers."""
    try:
        return page.evaluate(question)
    except Error as error:
        if "Execution context was destroyed" not in error.message:
            raise
        return None


def tap(target: Locator) -> None:
    """Tap it once it stands still, and wait until the page has heard the tap."""
    page = target.page
    while True:
        target.wait_for()
        before = settled(page)
        target.tap()
        page.wait_for_function(CLICKED, arg=before)
        # If the page changed just before the tap, the app dropped it: tap again, as a keeper would.
        # A page that the tap leaves has heard it.
        if not answered(page, ECHOED):
            return
