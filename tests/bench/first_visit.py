"""The first visit as Lighthouse 12.2.3 judges it: `python tests/bench/first_visit.py [ROUNDS]` asserts nothing.

A phone joins the invented fish room. Then the Round, a tank's page and a sheet of the Bench are opened, each as on a
first visit: nothing is stored of the app, only the records. Lighthouse's own phone profile slows network and processor.
Medians of ROUNDS (default 3). Left out are the audits of HTTP/2 and of the way from http to https, which a proxy gives.
npm installs Lighthouse into tests/bench/lighthouse for this.
"""

import json
import os
import socket
import statistics
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).parents[2]
LIGHTHOUSE = Path(__file__).parent / "lighthouse"
sys.path[:0] = [str(ROOT / "e2e"), str(ROOT / "server")]

from phones import SMALL, STEADY, Thumb, chromium_path  # noqa: E402
from playwright.sync_api import sync_playwright  # noqa: E402
from real_server import RealServer  # noqa: E402
from room_hands import join  # noqa: E402

CATEGORIES = ("performance", "accessibility", "best-practices", "seo")


def main(rounds: int = 3) -> None:
    if not (LIGHTHOUSE / "node_modules").is_dir():
        subprocess.run(["npm", "install", "--silent", "--no-package-lock", "--no-audit"], cwd=LIGHTHOUSE, check=True)
    print(f"load of the last minute: {os.getloadavg()[0]:.1f} on {os.cpu_count()} cores")
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        server = RealServer(Path(folder) / "data", "--demo").start()
        port = free_port()
        flags = [f"--remote-debugging-port={port}", *(["--no-sandbox"] if os.geteuid() == 0 else [])]
        how = {"viewport": SMALL, "has_touch": True, "base_url": server.origin}
        phone = playwright.chromium.launch_persistent_context(
            f"{folder}/phone", executable_path=chromium_path(), args=flags, **how
        )
        try:
            phone.add_init_script(STEADY)
            thumb = Thumb(phone.new_page())
            join(thumb, server.printed_room().link, "Bo", "Bo's phone")
            thumb.page.locator(".entry .sentence").first.wait_for()
            tank = thumb.page.locator("a[href^='/tank/']").first.get_attribute("href")
            thumb.page.close()
            for what, where in (("Round", "/"), ("a tank", tank), ("a Bench sheet", "/bench/free_ammonia")):
                judged = [judge(port, server.origin + where, Path(folder) / "report.json") for _ in range(rounds)]
                row(what, judged)
        finally:
            phone.close()
            server.stop()


def row(what: str, judged: list[dict]) -> None:
    score = {name: statistics.median(one["categories"][name]["score"] for one in judged) for name in CATEGORIES}
    scores = [f"{name} {100 * its:.0f}" for name, its in score.items()]
    figures = [
        f"{name} {statistics.median(one['audits'][audit]['numericValue'] for one in judged) / 1000:.2f} s"
        for name, audit in (
            ("largest paint", "largest-contentful-paint"),
            ("interactive", "interactive"),
            ("blocked", "total-blocking-time"),
        )
    ]
    requests = judged[0]["audits"]["network-requests"]["details"]["items"]
    print(f"{what:14}", ", ".join([*scores, *figures]), f"{len(requests)} requests", flush=True)
    for one in judged[0]["audits"].values():
        if one["score"] is not None and one["score"] < 0.9 and one["scoreDisplayMode"] in ("binary", "metricSavings"):
            print(f"{'':14} {one['id']}: {one.get('displayValue', '')}")


def judge(port: int, address: str, report: Path) -> dict:
    """One report of Lighthouse on a page, in the browser that listens on `port`."""
    asked = [address, f"--port={port}", "--output=json", f"--output-path={report}", "--quiet"]
    asked += [f"--config-path={LIGHTHOUSE / 'config.cjs'}", f"--only-categories={','.join(CATEGORIES)}"]
    subprocess.run([LIGHTHOUSE / "node_modules/.bin/lighthouse", *asked], check=True)
    return json.loads(report.read_text("utf-8"))


def free_port() -> int:
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return one.getsockname()[1]


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))
