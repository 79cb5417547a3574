"""WebKit: pages loaded after a write, back and forward, hidden while rows are written, two tabs; none stays blank.

A page of WebKit that is left may lie in the back/forward cache with its database open, and block every page after it.
"""

import os
import time

import pytest
import webkit
from driven import PATIENCE_S
from engine_hands import CONTROLLED, TANK, fill, join
from webkit import WebKit

pytestmark = [pytest.mark.browser, pytest.mark.skipif(bool(webkit.missing()), reason=webkit.missing())]
RUNS = 10 if os.environ.get("LIMNARY_PACE") == "long" else 1
SHOWS = "document.getElementById('app')?.innerText.includes('Reed pool')"
SAYS_SO = "/has not started yet|could not start/.test(document.body.innerText)"


def log_a_change(browser: WebKit, origin: str) -> None:
    browser.open(f"{origin}/tank/{TANK}/change")
    browser.sees("Reed pool")
    browser.press("Log ")
    browser.sees("Undo")


def stands(browser: WebKit) -> None:
    """The tank's page stands. On a busy machine, going back without a server sometimes loads none of the app's code:
    then its words say to reload, and one reload brings the page."""
    browser.waits_for(f"return {SHOWS} || {SAYS_SO}")
    if not browser.run(f"return {SHOWS}"):
        browser.reload()
    browser.sees("Reed pool")


@pytest.mark.parametrize("turn", range(RUNS))
def test_no_page_stays_blank(own_server, served_room, turn):
    link, origin = fill(served_room, rows=4), served_room.origin
    with WebKit() as browser:
        join(browser, link, "Ida")
        browser.sees("Reed pool")
        browser.waits_for(CONTROLLED)
        own_server.stop()

        # Full loads after a write, without a server.
        log_a_change(browser, origin)
        for page in ("history", "change", "history"):
            browser.open(f"{origin}/tank/{TANK}/{page}")
            browser.sees("Reed pool")
        browser.reload()
        browser.sees("Reed pool")

        # Back and forward, to pages that lie in the cache.
        for turned in (browser.back, browser.back, browser.forward, browser.forward, browser.back):
            turned()
            stands(browser)
        log_a_change(browser, origin)
        browser.back()
        stands(browser)

        # Two tabs that write and read in turn.
        first = browser.here()
        second = browser.tab()
        for tab in (second, first, second):
            browser.turn_to(tab)
            log_a_change(browser, origin)
        browser.turn_to(first)
        browser.open(f"{origin}/tank/{TANK}/history")
        browser.sees("Reed pool")

        # What was logged without a server is shared once it is back.
        own_server.start()
        browser.open(f"{origin}/room")
        browser.press("Share now")
        shared = "SELECT count(*) AS n FROM records WHERE kind = 'water_change'"
        end = time.monotonic() + PATIENCE_S
        while served_room.rows(shared)[0]["n"] < 5:
            assert time.monotonic() < end, browser.text()
            time.sleep(0.2)


@pytest.mark.parametrize("turn", range(RUNS))
def test_a_page_left_while_rows_are_written_holds_up_no_other(served_room, turn):
    link, origin = fill(served_room, rows=3000), served_room.origin
    with WebKit() as browser:
        join(browser, link, "Ida")
        browser.waits_for("return location.pathname === '/'")
        for page in ("tanks", "room", f"tank/{TANK}", "tasks"):
            browser.open(f"{origin}/{page}")
            browser.waits_for("return document.querySelector('#app h1') !== null")
        browser.back()
        browser.waits_for("return document.querySelector('#app h1') !== null")
        browser.open(f"{origin}/tank/{TANK}/history")
        browser.sees("Reed pool")
