"""How soon a phone shows its forecast: `python tests/bench/forecast_page.py [ROUNDS]`.

A phone's own storage holds a tank with ninety days of daily tests (five readings each), feedings and weekly changes.
The DevTools protocol slows its page four times. The page is opened without a stored belief, opened again with one, and
given one more test. Printed are the medians from opening to the first sentence and to the forecast's sentence, and
the longest time for which a tap would have waited. The protocol does not slow workers: tests/bench/outlook_phone.py
slows the belief itself. It asserts nothing.
"""

import statistics
import sys
import tempfile
from datetime import UTC, datetime, timedelta
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT / "e2e"), str(ROOT / "server")]

from foretold import forecast_is_there, write  # noqa: E402
from phones import Thumb, chromium, phone  # noqa: E402
from playwright.sync_api import sync_playwright  # noqa: E402
from real_server import RealServer  # noqa: E402

DAYS, SLOWER, TANK = 90, 4, "tank-of-the-bench"
STEPS = [0, 0.25, 0.5, 1, 2, 4]
# Records when the first sentence and the forecast's sentence appear, and each time the page is busy for over 50 ms.
WATCH = """() => {
  window.seen = { busy: 0 };
  new PerformanceObserver((list) => list.getEntries().forEach((one) => (seen.busy = Math.max(seen.busy, one.duration))))
    .observe({ type: "longtask", buffered: true });
  const look = () => {
    const sentence = document.querySelector(".sentence");
    if (sentence && !seen.first) seen.first = performance.now();
    const told = document.querySelector(".why")?.innerText.includes("This is a forecast");
    if (told && !seen.forecast) seen.forecast = performance.now();
    if (!seen.forecast) requestAnimationFrame(look);
  };
  look();
}"""


def main(rounds: int) -> None:
    """Print the medians."""
    found: dict[str, list[dict]] = {"followed anew": [], "gone on from the stored belief": [], "one more test": []}
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        browser = chromium(playwright)
        server = RealServer(Path(folder) / "data").start()
        try:
            for number in range(rounds):
                with phone(browser, server.origin) as context:
                    one_round(Thumb(context.new_page()), found, number)
        finally:
            server.stop()
        browser.close()
    for name, spent in found.items():
        middle = {key: statistics.median(one[key] for one in spent) for key in ("first", "forecast", "busy")}
        print(f"{name:32} first sentence {middle['first']:5.0f} ms   forecast {middle['forecast']:5.0f} ms", end="")
        print(f"   longest wait of a tap {middle['busy']:5.0f} ms")


def one_round(thumb: Thumb, found: dict[str, list[dict]], number: int) -> None:
    now = datetime.now(UTC)
    thumb.open("/")
    thumb.stored()
    write(thumb, diary(now, number))
    slow = thumb.page.context.new_cdp_session(thumb.page)
    slow.send("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
    thumb.page.add_init_script(f"addEventListener('DOMContentLoaded', {WATCH})")
    for name in ("followed anew", "gone on from the stored belief", "one more test"):
        if name == "one more test":
            write(thumb, readings(0, now, 0.25))
        thumb.page.goto(f"/tank/{TANK}")
        forecast_is_there(thumb)
        thumb.page.wait_for_timeout(500)
        found[name].append(thumb.page.evaluate("seen"))


def diary(now: datetime, number: int) -> list:
    """The tank and its ninety days; each round starts at another time, so that no round repeats the one before."""
    started = now - timedelta(days=DAYS, minutes=number)
    about = {"name": "Bench tank", "water_l": 110, "temperature_c": 24, "ph": 7.3, "feed_g_day": 0.4}
    records = [["tank", TANK, {**about, "planting": "light", "seeded": "none", "started_at": stamp(started)}]]
    for day in range(1, DAYS):
        at = started + timedelta(days=day)
        records += readings(day, at, STEPS[min(day // 3, 5)] if day < 20 else 0)
        records.append(["feeding", f"feeding-{day}", {"tank": TANK, "at": stamp(at), "feed_g": 0.4}])
        if day % 7 == 0:
            change = {"tank": TANK, "at": stamp(at), "litres": 30, "fraction": 30 / 110}
            records.append(["water_change", f"change-{day}", change])
    return records


def readings(day: int, at: datetime, ammonia: float) -> list:
    """One day's five readings."""
    ion = {"basis": "ion", "steps": STEPS}
    nitrite = [0, 0.25, 1, 2, 1, 0.25][(day - 8) // 4] if 8 <= day < 32 else 0
    read = {
        "total_ammonia": {"value": ammonia, **ion},
        "nitrite": {"value": nitrite, **ion},
        "nitrate": {"value": min(day / 2, 40), "basis": "ion"},
        "ph": {"value": 7.3},
        "temperature": {"value": 24},
    }
    common = {"tank": TANK, "at": stamp(at)}
    return [["reading", f"reading-{day}-{name}", {**common, "parameter": name, **said}] for name, said in read.items()]


def stamp(moment: datetime) -> str:
    return moment.strftime("%Y-%m-%dT%H:%M:%S.000Z")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 3)
