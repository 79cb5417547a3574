"""What years of records cost a phone: `python tests/bench/room_of_years.py [TANKS[xYEARS] ...]` prints a row a measure.

A real server holds rooms of 3 and of 60 tanks (tests/bench/years_page.py: meals, tests, changes) of one year, or of ten
as `60x10` asks. A phone joins: until every tank of the Round has its sentence, and until every row is stored. The
forecasts are worked out, the server is stopped, and the shell that the worker stored is opened: the Round, then one
tank, at the machine's own speed and slowed four times by the DevTools protocol. On the tank's page a reading is
recorded, until the page shows it. Medians; it asserts nothing.
"""

import os
import statistics
import sys
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT / "tests/bench"), str(ROOT / "e2e"), str(ROOT / "server")]

from phones import Thumb  # noqa: E402
from playwright.sync_api import TimeoutError as Late  # noqa: E402
from real_server import RealServer  # noqa: E402
from years_page import full_room  # noqa: E402

SIZES, A_YEAR, SPEEDS, OPENINGS, READINGS = ("3", "60"), 365, (1, 4), 5, 5
FORECASTS_MS = 240_000
FRAMES = "const frame = () => new Promise(requestAnimationFrame);"
# A round of many tanks counts them instead of showing each.
STANDS = f"""async (tanks) => {{ {FRAMES}
  const stand = () => document.querySelectorAll(".entry .sentence").length >= tanks;
  while (!document.querySelector(".many-count[aria-busy=false]") && !stand()) await frame();
  return performance.now();
}}"""
TANK_STANDS = f"""async () => {{ {FRAMES}
  while (!document.querySelector(".sentence") || !document.querySelector(".measured")) await frame();
  return performance.now();
}}"""
STORED = """async () => {
  const asked = (request) => new Promise((done) => (request.onsuccess = () => done(request.result)));
  const db = await asked(indexedDB.open("limnary"));
  const count = await asked(db.transaction("rows").objectStore("rows").count());
  db.close();
  return count;
}"""
WORKED_OUT = """(tanks) => document.querySelector(".many-count")?.dataset.workedOut === String(tanks) ||
  document.querySelectorAll(".room-taken[aria-busy=false]").length === tanks"""
RECORDED = f"""async ([tank, value]) => {{ {FRAMES}
  const {{ live: {{ room }}, record: {{ new_id }} }} = await app();
  const fields = {{ tank, at: new Date().toISOString(), parameter: "temperature", value }};
  const began = performance.now();
  await room.value.write([{{ type: "put", kind: "reading", id: new_id(), fields }}]);
  const saved = performance.now();
  const shows = (one) => one.innerText === String(value);
  while (![...document.querySelectorAll(".measured .big")].some(shows)) await frame();
  return [performance.now() - began, performance.now() - saved];
}}"""


def main(sizes: list[str]) -> None:
    """Measure, and print each row as soon as it is known."""
    print(f"load of the last minute: {os.getloadavg()[0]:.1f} on {os.cpu_count()} cores")
    for size in sizes:
        tanks, years = (int(one) for one in (f"{size}x1").split("x")[:2])
        with full_room(tanks, years * A_YEAR) as (thumb, link, records, server):
            one_phone(thumb, link, tanks, records, server)


def row(tanks: int, what: str, ms: float, more: str = "") -> None:
    print(f"{tanks:3} tanks  {what:44} {ms:8.0f} ms  {more}", flush=True)


def one_phone(thumb: Thumb, link: str, tanks: int, records: int, server: RealServer) -> None:
    take_in(thumb, link, tanks, records)
    thumb.stored()
    server.stop()
    thumb.page.context.set_offline(True)
    slow = thumb.page.context.new_cdp_session(thumb.page)
    tank = f"tank-{tanks - 1:04}"
    value = 14.1
    for speed in SPEEDS:
        slow.send("Emulation.setCPUThrottlingRate", {"rate": speed})
        named = f"{speed} times slower" if speed > 1 else "own speed"
        row(tanks, f"cold start, {named}", opened(thumb, "/", STANDS, tanks))
        row(tanks, f"a tank's page, {named}", opened(thumb, f"/tank/{tank}", TANK_STANDS))
        thumb.page.wait_for_timeout(10_000)
        spent = []
        for _ in range(READINGS):
            value += 1
            spent.append(thumb.page.evaluate(RECORDED, [tank, round(value, 1)]))
            thumb.page.wait_for_timeout(1000)
        shown, after = (statistics.median(one) for one in zip(*spent, strict=True))
        row(tanks, f"a reading recorded and shown, {named}", shown, f"{after:.0f} ms after it was saved")
    slow.send("HeapProfiler.collectGarbage")
    used = slow.send("Runtime.getHeapUsage")["usedSize"]
    print(f"{tanks:3} tanks  memory of the page {used / 1e6:.0f} MB")


def take_in(thumb: Thumb, link: str, tanks: int, records: int) -> None:
    thumb.open(link[link.index("/join") :])
    thumb.type("Your name", "Bo")
    thumb.type("A name for this phone", "Bo's phone")
    began = time.perf_counter()
    thumb.tap("button", "Join")
    thumb.title("Round")
    thumb.page.evaluate(STANDS, tanks)
    row(tanks, "taken in: every tank has its sentence", 1000 * (time.perf_counter() - began))
    while thumb.page.evaluate(STORED) < records:
        thumb.page.wait_for_timeout(250)
    row(tanks, "taken in: every row is stored", 1000 * (time.perf_counter() - began), f"{records} records")
    try:
        thumb.page.wait_for_function(WORKED_OUT, arg=tanks, timeout=FORECASTS_MS)
    except Late:
        print(f"{tanks:3} tanks  some forecasts are still not there", flush=True)
    row(tanks, "taken in: every forecast is worked out", 1000 * (time.perf_counter() - began))


def opened(thumb: Thumb, path: str, ready: str, *given: object) -> float:
    """The median of some cold starts, ms from the request of the page."""
    spent = []
    for _ in range(OPENINGS):
        thumb.page.goto(path)
        spent.append(thumb.page.evaluate(ready, *given))
    return statistics.median(spent)


if __name__ == "__main__":
    main(sys.argv[1:] or list(SIZES))
