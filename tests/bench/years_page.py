"""What years of records cost a phone: `python tests/bench/years_page.py [TANKS] [YEARS]` prints ratios.

A real server holds ten tanks of three years by default: sixty daily tests of five figures, then weekly ones, daily
meals, weekly changes. A phone joins and pulls everything. Then, slowed four times by the DevTools protocol, it opens
the Round, a tank, its history and its trends, and records a meal. It is compared with a phone whose room holds one
tank of thirty days. Medians of five openings each. It asserts nothing.
"""

import statistics
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT / "e2e"), str(ROOT / "server")]

from limnary.ids import uuid7  # noqa: E402
from phones import Thumb, chromium, phone  # noqa: E402
from playwright.sync_api import sync_playwright  # noqa: E402
from real_server import RealServer, ServedRoom  # noqa: E402
from room_hands import join  # noqa: E402

BATCH, SLOWER, OPENINGS, DAILY_DAYS = 500, 4, 5, 60
PATIENCE_MS = 600_000
FIGURES = {"total_ammonia": 0, "nitrite": 0, "nitrate": 10, "ph": 7.2, "temperature": 24}
# From the first request until the page shows its own words: its heading, and what `ready` looks for.
READY = """async (ready) => {
  while (!document.querySelector(ready)) await new Promise(requestAnimationFrame);
  return performance.now();
}"""
MEAL = """async (tank) => {
  const { live: { room }, record: { new_id } } = await app();
  const began = performance.now();
  const fields = { tank, at: new Date().toISOString(), feed_g: 0.2 };
  await room.value.write([{ type: "put", kind: "feeding", id: new_id(), fields }]);
  return performance.now() - began;
}"""
PAGES = {
    "Round": ("/", ".tank-name"),
    "tank": ("/tank/{tank}", ".sentence"),
    "history": ("/tank/{tank}/history", ".happened"),
    "trends": ("/tank/{tank}/trends", "canvas"),
}


def main(tanks: int, years: float) -> None:
    """Print both rooms' medians and their ratio."""
    small, small_count = measured(1, 30)
    large, large_count = measured(tanks, round(365 * years))
    print(f"{small_count} records beside {large_count}; phone at {SLOWER} times slower but for taking in")
    for name, spent in large.items():
        print(f"{name:12} {small[name]:8.0f} ms {spent:8.0f} ms   {spent / small[name]:5.1f} times")


def measured(tanks: int, days: int) -> tuple[dict[str, float], int]:
    """Milliseconds of each action, and how many records there are."""
    with full_room(tanks, days) as (thumb, link, count, _):
        return one_phone(thumb, link, tanks), count


@contextmanager
def full_room(tanks: int, days: int) -> Iterator[tuple[Thumb, str, int, RealServer]]:
    """A phone that has not joined yet, a link for it, how many records its room holds, and the server."""
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        server = RealServer(Path(folder) / "data").start()
        browser = chromium(playwright)
        try:
            served = server.new_room()
            link = served.invite("keeper")
            count = fill(served, tanks, days)
            with phone(browser, server.origin) as context:
                context.set_default_timeout(PATIENCE_MS)
                yield Thumb(context.new_page()), link, count, server
        finally:
            browser.close()
            server.stop()


def one_phone(thumb: Thumb, link: str, tanks: int) -> dict[str, float]:
    began = time.perf_counter()
    join(thumb, link, "Bo", "Bo's phone")
    thumb.page.wait_for_function("(n) => document.querySelectorAll('.tank-name').length === n", arg=tanks)
    found = {"taken in": 1000 * (time.perf_counter() - began)}
    thumb.stored()
    tank = f"tank-{tanks - 1:04}"
    thumb.page.context.new_cdp_session(thumb.page).send("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
    for name, (path, ready) in PAGES.items():
        spent = []
        for _ in range(OPENINGS):
            thumb.page.goto(path.format(tank=tank))
            spent.append(thumb.page.evaluate(READY, ready))
        found[name] = statistics.median(spent)
    found["a meal"] = statistics.median(thumb.page.evaluate(MEAL, tank) for _ in range(OPENINGS))
    return found


def fill(server: ServedRoom, tanks: int, days: int) -> int:
    """Push the room's records; return how many there are."""
    room, epoch = server.room()
    made = [one for tank in range(tanks) for one in diary(f"tank-{tank:04}", tank, days)]
    now_ms = int(time.time() * 1000)
    ops = [
        {
            "op": uuid7(now_ms),
            "kind": kind,
            "id": its,
            "type": "put",
            "fields": fields,
            "stamp": f"{now_ms - len(made) + at:013}-00000-bench",
            "schema": 1,
        }
        for at, (kind, its, fields) in enumerate(made)
    ]
    for at in range(0, len(ops), BATCH):
        answer = server.call("POST", f"/rooms/{room}/push", {"epoch": epoch, "ops": ops[at : at + BATCH]})
        assert {one["status"] for one in answer["results"]} == {"ok"}, answer["results"][:3]
    return len(made)


def diary(tank: str, place: int, days: int) -> list[tuple[str, str, dict]]:
    """One tank's records, oldest first."""
    started = datetime.now(UTC) - timedelta(days=days)
    about = {"water_l": 110, "temperature_c": 24, "ph": 7.2, "feed_g_day": 0.2, "planting": "dense"}
    made = [("tank", tank, {"name": f"Tank {place + 1}", **about, "started_at": stamp(started)})]
    for day in range(1, days):
        at = {"tank": tank, "at": stamp(started + timedelta(days=day))}
        made.append(("feeding", f"{tank}-fed-{day}", {**at, "feed_g": 0.2}))
        if day < DAILY_DAYS or day % 7 == 0:
            for name, value in FIGURES.items():
                made.append(("reading", f"{tank}-{name}-{day}", {**at, "parameter": name, "value": value}))
        if day % 7 == 0:
            made.append(("water_change", f"{tank}-change-{day}", {**at, "litres": 30, "fraction": 0.27}))
    return made


def stamp(moment: datetime) -> str:
    return moment.strftime("%Y-%m-%dT%H:%M:%S.000Z")


if __name__ == "__main__":
    given = [float(one) for one in sys.argv[1:]]
    main(int(given[0]) if given else 10, given[1] if len(given) > 1 else 3)
