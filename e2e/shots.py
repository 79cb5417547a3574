"""Pictures of every screen, to be looked at: `python -m e2e.shots` writes them into e2e/shots/.

Two phone sizes and a desk, light and dark, an empty phone, the invented fish room, the same without the server, and in
German, French and US units.
`python -m e2e.shots 360-light` takes that one only.
"""

import shutil
import sys
import tempfile
from pathlib import Path

from playwright.sync_api import sync_playwright

HERE = Path(__file__).parent
sys.path[:0] = [str(HERE), str(HERE.parent / "server")]

from bench_hands import type_input  # noqa: E402
from limnary.contracts import contracts  # noqa: E402
from phones import LARGE, SMALL, Thumb, chromium, phone  # noqa: E402
from real_server import RealServer, ServedRoom  # noqa: E402
from setup_hands import OF_PLAN, plan_tank  # noqa: E402

OUT = HERE / "shots"
NARROW = 320
DESK = {"width": 1280, "height": 800}
# What a keeper of each language or country is asked at the door.
DOOR = {
    "american": ("en-US", "Your name", "A name for this phone", "Join"),
    "german": ("de-DE", "Dein Name", "Ein Name für dieses Handy", "Beitreten"),
    "french": ("fr-FR", "Ton nom", "Un nom pour ce téléphone", "Rejoindre"),
}
TASKS = ["/tasks", "/task/new", "/calendar", "/away", "/away/edit", "/labels"]
EMPTY = ["/", "/tanks", "/tanks/new", "/bench", "/room", "/join", "/join#not-a-secret", "/tank/none"]
BESIDE = [
    "/tanks",
    "/tanks/new",
    "/timeline",
    "/year",
    "/room/own_species/new",
    "/room/own_plant/new",
    "/grid",
    "/round/dose?place=",
    "/incidents?what=power_cut",
    "/bench",
    "/bench/free_ammonia",
    "/room",
    "/room/test_kit/new",
    "/room/label/new",
]
OF_TANK = [
    "",
    "/test",
    "/test?of=temperature",
    "/change",
    "/feed",
    "/dose",
    "/note",
    "/history",
    "/month",
    "/year",
    "/trends",
    "/outlook",
    "/long-run",
    "/water",
    "/edit",
    "/incidents",
    "/incident/chlorine",
    "/incident/gasping",
    "/label",
]
LIFE = [
    "/stock",
    "/stock/new?change=arrival",
    "/stock/new?change=death",
    "/plants",
    "/plants/new?change=move_out",
    "/tool",
]
ROOM = ["/room/rooms", "/room/copy", "/room/notebook", "/room/people", "/room/display", "/room/install"]
PEOPLE = "main a[href^='/room/person/']"


def main(wanted: list[str]) -> None:
    shutil.rmtree(OUT, ignore_errors=True)
    OUT.mkdir()
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        browser = chromium(playwright)
        server = RealServer(Path(folder) / "demo", "--demo").start()
        try:
            room = server.printed_room()
            for size in (SMALL, LARGE, DESK):
                for dark in (False, True):
                    name = f"{size['width']}-{'dark' if dark else 'light'}"
                    if wanted and name not in wanted:
                        continue
                    with phone(browser, server.origin, size=size, dark=dark) as context:
                        _empty(Thumb(context.new_page()), name)
                    with phone(browser, server.origin, size=size, dark=dark) as context:
                        _full(Thumb(context.new_page()), name, room)
            for language in DOOR:
                for width in (NARROW, SMALL["width"], DESK["width"]):
                    name = f"{width}-{language}"
                    if wanted and name not in wanted:
                        continue
                    size = DESK if width == DESK["width"] else {**SMALL, "width": width}
                    with phone(browser, server.origin, size=size, locale=DOOR[language][0]) as context:
                        _foreign(Thumb(context.new_page()), name, language, room)
        finally:
            server.stop()
        browser.close()
    print(f"{len(list(OUT.glob('*.png')))} pictures in {OUT}")


def _empty(thumb: Thumb, name: str) -> None:
    for path in EMPTY:
        _shoot(thumb, path, f"{name}-empty")


def _full(thumb: Thumb, name: str, room: ServedRoom) -> None:
    link = room.invite("owner")
    thumb.open(link[link.index("/join") :])
    thumb.type("Your name", "Marit")
    thumb.type("A name for this phone", "Marit's phone")
    thumb.tap("button", "Join")
    thumb.page.get_by_role("heading", level=2).nth(2).wait_for()
    thumb.stored()
    tanks = thumb.page.eval_on_selector_all(".tank-name[href]", "all => all.map(one => new URL(one.href).pathname)")
    _shoot(thumb, "/", name)
    for place, tank in enumerate(tanks, 1):
        for rest in [*OF_TANK, *LIFE] if place == 1 else ["", "/change", "/outlook"]:
            _shoot(thumb, f"{tank}{rest}", f"{name}-tank-{place}", rest or "page")
    for path in [*BESIDE, *TASKS, f"{tanks[0]}/tasks"]:
        _shoot(thumb, path, name)
    thumb.open("/search")
    thumb.type("What are you looking for?", "co")
    _snap(thumb, f"{name}-search")
    thumb.open(f"/trace?tank={tanks[0].rsplit('/', 1)[-1]}&days=90")
    _snap(thumb, f"{name}-trace", whole=True)
    thumb.open(f"{tanks[0]}/history")
    for way in ("/photo/", "/correct/reading/", "/correct/note/"):
        _shoot(thumb, thumb.page.locator(f"a[href^='{way}']").first.get_attribute("href"), name, way)
        thumb.open(f"{tanks[0]}/history")
    _bench(thumb, name)
    thumb.open(f"{tanks[0]}/test")
    for _ in range(3):
        thumb.tap("button", "Skip")
    thumb.key_in("7.4")
    _snap(thumb, f"{name}-keypad")
    thumb.tap("button", "Next")
    thumb.tap("button", "Skip")
    _snap(thumb, f"{name}-answers")
    _plan(thumb, name)
    _room(thumb, name)
    thumb.page.context.set_offline(True)
    for path in ("/", tanks[0], "/room", "/room/people"):
        _shoot(thumb, path, f"{name}-offline", "tank" if path == tanks[0] else None)
    thumb.page.context.set_offline(False)
    _trouble(thumb, name, room)


def _plan(thumb: Thumb, name: str) -> None:
    """A tank that is still being set up, whole pages."""
    plan = plan_tank(thumb)
    for rest in (*OF_PLAN, "/setup/place", "/setup/hardscape", "/setup/warmth", "/setup/first_fish"):
        thumb.open(f"{plan}{rest}")
        _snap(thumb, f"{name}-plan{rest}", whole=True)
    _shoot(thumb, "/tanks/setup", name)


def _foreign(thumb: Thumb, name: str, language: str, room: ServedRoom) -> None:
    """The screens in another language or in US units, whole; a page wider than the phone is named."""
    _, own_name, phones_name, come_in = DOOR[language]
    link = room.invite("owner")
    thumb.open(link[link.index("/join") :])
    thumb.type(own_name, "Marit")
    thumb.type(phones_name, "Marit 1")
    thumb.tap("button", come_in)
    thumb.page.locator(".tank-name[href]").first.wait_for()
    tank = thumb.page.locator(".tank-name[href]").first.get_attribute("href")
    ways = ["/room/needs-you", "/room/invite", "/room/own_plant/new", "/search", "/tanks/setup"]
    pages = ["/", *BESIDE, *TASKS, *ROOM, *ways, *(f"{tank}{rest}" for rest in (*OF_TANK, *LIFE))]
    for path in [*pages, *(f"/bench/{calculation}" for calculation in contracts())]:
        thumb.open(path)
        wider = thumb.page.evaluate("() => document.documentElement.scrollWidth - innerWidth")
        if wider > 0:
            print(f"{name} {path} is {wider} px too wide")
        _snap(thumb, f"{name}-{path}", whole=True)
    _plan(thumb, name)


def _room(thumb: Thumb, name: str) -> None:
    for path in ROOM:
        _shoot(thumb, path, name)
    for place, link in enumerate(thumb.page.eval_on_selector_all(PEOPLE, "all => all.map(one => one.href)")):
        _shoot(thumb, link, name, f"person-{place}")
        _snap(thumb, f"{name}-person-{place}-whole", whole=True)
    thumb.open("/room/invite")
    _snap(thumb, f"{name}-invite-asked")
    thumb.tap("button", "Make the link")
    thumb.page.locator(".invitation").wait_for()
    _snap(thumb, f"{name}-invite", whole=True)


def _trouble(thumb: Thumb, name: str, room: ServedRoom) -> None:
    """A phone that was made helper while it held a change of a tank, and is then taken out."""
    thumb.open("/tanks")
    thumb.page.locator("main a.line").first.tap()
    thumb.tap("link", "About this tank")
    thumb.page.context.set_offline(True)
    thumb.type("Name", "Night pool")
    thumb.tap("button", "Save tank")
    thumb.title("Night pool")
    room.set_role("Marit", "helper")
    thumb.page.context.set_offline(False)
    thumb.open("/room")
    thumb.page.get_by_role("link", name="Needs you").wait_for()
    _snap(thumb, f"{name}-refused")
    _shoot(thumb, "/room/needs-you", name)
    room.take_out("Marit")
    thumb.open("/room")
    thumb.sees("You are no longer in this room.")
    _snap(thumb, f"{name}-ended-room")
    for path in ("/", "/room/rooms", "/room/needs-you"):
        _shoot(thumb, path, f"{name}-ended")


def _bench(thumb: Thumb, name: str) -> None:
    """Every calculation's form with its first example typed, whole: the window is made as tall as the page."""
    page, size = thumb.page, size_of(thumb)
    for calculation, spec in contracts().items():
        thumb.open(f"/bench/{calculation}")
        type_input(page, spec, spec["examples"][0]["input"])
        page.get_by_text("How it is worked out").click()
        height = page.evaluate("() => document.documentElement.scrollHeight")
        page.set_viewport_size({**size, "height": height})
        _snap(thumb, f"{name}-bench-{calculation}")
        page.set_viewport_size(size)


def size_of(thumb: Thumb) -> dict:
    """The phone's window."""
    return dict(thumb.page.viewport_size)


def _shoot(thumb: Thumb, path: str, name: str, what: str | None = None) -> None:
    thumb.open(path)
    thumb.settled()
    _snap(thumb, f"{name}-{what or path}")
    if path.endswith("/outlook") and "demo" in path:
        thumb.page.locator(".chart").first.evaluate("(one) => one.scrollIntoView({ block: 'center' })")
        _snap(thumb, f"{name}-{what or path}-chart")


def _snap(thumb: Thumb, name: str, *, whole: bool = False) -> None:
    plain = name.replace("/", "_").replace("#", "_").replace("?", "_").replace("__", "_").strip("-_")
    thumb.page.screenshot(path=OUT / f"{plain}.png", full_page=whole)


if __name__ == "__main__":
    main(sys.argv[1:])
