"""How long a phone calculates for one tank: `python tests/bench/outlook_phone.py [ROUNDS]`.

Ninety days of daily readings of ammonia and nitrite go to the app's worker (pwa/workers/outlook_worker.js) in Chromium.
The DevTools protocol slows a page down but not its workers, so the same messages also go to the same file loaded by
the slowed page itself. Printed are the medians of the first answer, of the answer after one new reading (which
continues from the kept belief), and of their ratio, beside a fixed calculation on the same thread, which shows how
much the page was really slowed. It asserts nothing.
"""

import os
import shutil
import statistics
import sys
import threading
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

from playwright.sync_api import sync_playwright

ROOT = Path(__file__).parents[2]
DAYS = 90
SLOWER = 4
sys.path.insert(0, str(ROOT / "server"))

# Both ways answer ask(message); the page gives the worker file a `self` of its own.
PAGE = """
async ([shared, days, round, way]) => {
  const waiting = [];
  let send;
  if (way === "worker") {
    const worker = new Worker("/pwa/workers/outlook_worker.js", { type: "module" });
    worker.addEventListener("message", ({ data }) => waiting.shift()(data));
    send = (message) => worker.postMessage(message);
  } else {
    const port = new EventTarget();
    const add = self.addEventListener;
    const post = self.postMessage;
    self.addEventListener = (name, listener) => port.addEventListener(name, listener);
    self.postMessage = (data) => waiting.shift()(data);
    await import(`/pwa/workers/outlook_worker.js?${round}`);
    self.addEventListener = add;
    send = (data) => {
      self.postMessage = (answer) => waiting.shift()(answer);
      port.dispatchEvent(new MessageEvent("message", { data }));
      self.postMessage = post;
    };
  }
  const steps = [0, 0.25, 0.5, 1, 2, 4];
  const reading = (day, parameter, value) => ({ at_h: 24 * day, parameter, value, basis: "ion", steps });
  const until = (last) => Array.from({ length: last }, (_, d) => d + 1).flatMap((day) => [
    reading(day, "total_ammonia", day < 12 ? steps[day >> 1] ?? 4 : day < 20 ? 0.5 : 0),
    reading(day, "nitrite", day < 8 ? 0 : day < 28 ? [0.25, 1, 2, 4, 2, 0.5][(day - 8) >> 2] ?? 0.25 : 0),
  ]);
  const tank = { volume_l: 110, temperature_c: 24, ph: 7.3, feed_g_day: 0.4 };
  const ask = async (name, last) => {
    const input = { tank, now_h: 24 * last + 1, readings: until(last), seed: round + 1 };
    const answer = new Promise((done) => waiting.push(done));
    const started = performance.now();
    send({ ask: last, tank_id: `tank ${round}`, name, input });
    const { errors } = await answer;
    if (errors) throw new Error(JSON.stringify(errors));
    return performance.now() - started;
  };
  send({ shared });
  const spent = {};
  spent["outlook, 89 days anew"] = await ask("outlook", days - 1);
  spent["outlook, one day later"] = await ask("outlook", days);
  spent["change_plan, same readings"] = await ask("change_plan", days);
  spent["stock_headroom, same readings"] = await ask("stock_headroom", days);
  const started = performance.now();
  let sum = 0;
  for (let i = 1; i < 1e6; i += 1) sum += Math.exp(-1 / i) * Math.log(i);
  if (sum > 0) spent["a million exp and log, on the page"] = performance.now() - started;
  return spent;
}
"""


class Quiet(SimpleHTTPRequestHandler):
    """Serves files without logging."""

    def log_message(self, *_):
        pass


def main(rounds: int) -> None:
    """Print the medians of both ways."""
    from limnary.schema_files import shared_bundle

    server = ThreadingHTTPServer(("127.0.0.1", 0), partial(Quiet, directory=ROOT))
    threading.Thread(target=server.serve_forever, daemon=True).start()
    chromium = os.environ.get("LIMNARY_CHROMIUM") or shutil.which("chromium")
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=chromium, args=["--no-sandbox"])
        for way, rate in (("worker", 1), ("page", SLOWER)):
            page = browser.new_page()
            page.goto(f"http://127.0.0.1:{server.server_port}/pwa/manifest.webmanifest")
            page.context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": rate})
            tell(way, rate, [page.evaluate(PAGE, [shared_bundle(), DAYS, n, way]) for n in range(rounds)])
            page.close()
        browser.close()
    server.shutdown()


def tell(way: str, rate: int, rounds: list[dict]) -> None:
    """Print one block of figures."""
    print(f"in the {way}, slowed {rate} times")
    for name in rounds[0]:
        spent = [found[name] for found in rounds]
        print(f"  {name:36} {statistics.median(spent):6.0f} ms   fastest {min(spent):.0f}")
    ratio = statistics.median(r["outlook, 89 days anew"] / r["outlook, one day later"] for r in rounds)
    print(f"  going on is {ratio:.1f} times quicker than starting anew")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 5)
