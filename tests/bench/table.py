"""One table of what the app and the server cost: `tests/bench/run [--tanks N] [--rounds N]`.

The server is compared with sqlite3 alone, Node with Python, a large room with a small one, and a phone with its
budget. Run it on a machine that does nothing else; the first line says how busy it was. It asserts nothing.

Phone: Chromium at phone size, its page slowed four times by the DevTools protocol. A cold start is a page opened
without a server, from the shell that the worker stored, until every tank of the Round has its sentence. Taken in is a
room of N tanks and one year, from the tap on "Join" until every tank stands on the Round, at the machine's own speed.
"""

import argparse
import os
import statistics
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT / "tests/bench"), str(ROOT / "e2e"), str(ROOT / "server")]

import calc_lines  # noqa: E402
import push_pull  # noqa: E402
from phones import Thumb, chromium, phone  # noqa: E402
from playwright.sync_api import sync_playwright  # noqa: E402
from real_server import RealServer  # noqa: E402
from room_hands import join  # noqa: E402
from years_page import full_room  # noqa: E402

OPS, SLOWER, OPENINGS, A_YEAR = 10_000, 4, 5, 365
PLACES = {
    "Round": "/",
    "tanks": "/tanks",
    "Bench": "/bench",
    "Room": "/room",
    "tasks": "/tasks",
    "history": "/timeline",
}
STANDS = """async (tanks) => {
  const wait = () => new Promise(requestAnimationFrame);
  while (document.querySelectorAll(".entry .sentence").length < tanks) await wait();
  return performance.now();
}"""
ASKED = """() => [...performance.getEntriesByType("navigation"), ...performance.getEntriesByType("resource")]
  .map(({ name, transferSize }) => [new URL(name).pathname, transferSize])"""


def main(tanks: int, rounds: int) -> None:
    """Measure, and print each row as soon as it is known."""
    print(f"load of the last minute: {os.getloadavg()[0]:.1f} on {os.cpu_count()} cores")
    row("what", "measured", "beside", "ratio")
    server_rows(rounds)
    calculation_rows(rounds)
    for count in sorted({3, tanks}):
        phone_rows(count)
    place_rows()


def row(what: str, measured: str, beside: str, ratio: str = "") -> None:
    print(f"{what:38} {measured:>18}  {beside:32} {ratio:>7}", flush=True)


def server_rows(rounds: int) -> None:
    full = push_pull.median([push_pull.fresh(lambda folder: push_pull.one_room(folder, OPS)) for _ in range(rounds)])
    for what, beside in push_pull.BESIDE.items():
        alone = full[f"sqlite3 {beside}"]
        ratio = f"{full[what] / alone:.1f}"
        row(f"{what} {OPS}", f"{1000 * full[what]:.0f} ms", f"sqlite3 alone {1000 * alone:.0f} ms", ratio)
    fuller = [push_pull.fresh(lambda folder: push_pull.by_fullness(folder, OPS)) for _ in range(rounds)]
    row("an op of a push", "", f"room of {OPS} beside a tenth", f"{statistics.median(fuller):.2f}")


def calculation_rows(rounds: int) -> None:
    requests = calc_lines.lines()
    programs = {"Python": calc_lines.Answerer(calc_lines.PYTHON), "Node": calc_lines.Answerer(calc_lines.NODE)}
    spent = {}
    for name, program in programs.items():
        program.seconds(requests[:500])
        spent[name] = statistics.median(program.seconds(requests) for _ in range(rounds))
        program.close()
    rates = {name: len(requests) / seconds for name, seconds in spent.items()}
    measured, beside = f"{rates['Node']:.0f} a second", f"Python {rates['Python']:.0f} a second"
    row("calculations, Node", measured, beside, f"{rates['Node'] / rates['Python']:.1f}")


def phone_rows(tanks: int) -> None:
    """Taking in a room of these tanks and one year, and starting without a server."""
    with full_room(tanks, A_YEAR) as (thumb, link, records, server):
        taken_in_and_started(thumb, link, tanks, records, server)


def taken_in_and_started(thumb: Thumb, link: str, tanks: int, records: int, server: RealServer) -> None:
    of_room = f"{tanks} tanks, {records} records"
    began = time.perf_counter()
    join(thumb, link, "Bo", "Bo's phone")
    thumb.page.wait_for_function("(n) => document.querySelectorAll('.tank-name').length === n", arg=tanks)
    row("taken in", f"{time.perf_counter() - began:.1f} s", of_room)
    thumb.stored()
    server.stop()
    thumb.page.context.set_offline(True)
    slow = thumb.page.context.new_cdp_session(thumb.page)
    slow.send("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
    spent = []
    for _ in range(OPENINGS):
        thumb.page.goto("/")
        spent.append(thumb.page.evaluate(STANDS, tanks))
    row("cold start without signal", f"{statistics.median(spent):.0f} ms", f"{of_room}, {SLOWER} times slower")
    slow.send("HeapProfiler.collectGarbage")
    used = slow.send("Runtime.getHeapUsage")["usedSize"]
    row("memory of the page", f"{used / 1e6:.0f} MB", of_room)


def place_rows() -> None:
    """What a first visit asks for, and what each other place then adds."""
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        server = RealServer(Path(folder) / "data").start()
        browser = chromium(playwright)
        try:
            with phone(browser, server.origin) as context:
                thumb = Thumb(context.new_page())
                thumb.open("/")
                thumb.page.wait_for_load_state("networkidle")
                seen = 0
                for name, path in PLACES.items():
                    if path != "/":
                        thumb.turn_to(path)
                    asked = thumb.page.evaluate(ASKED)
                    new, seen = asked[seen:], len(asked)
                    files = [size for path, size in new if not path.startswith("/api/")]
                    row(f"first visit: {name}", f"{len(files)} requests", f"{sum(files) / 1000:.0f} kB", "")
        finally:
            browser.close()
            server.stop()


if __name__ == "__main__":
    options = argparse.ArgumentParser(prog="tests/bench/run")
    options.add_argument("--tanks", type=int, default=60)
    options.add_argument("--rounds", type=int, default=3)
    given = options.parse_args()
    main(given.tanks, given.rounds)
