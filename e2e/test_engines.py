"""The daily loop, reloads without a server, a new version and sharing, in the engines that Playwright does not drive.

One browser of each engine serves all its stories. Each story has a server of its own, so an origin and storage of its
own; its second phone is the same server by its other name.
"""

import time

import firefox
import pytest
import webkit
from driven import PATIENCE_S
from engine_hands import CONTROLLED, TANK, fill, join
from firefox import Firefox
from own_code import build
from real_server import RealServer
from webkit import WebKit

ENGINES = {"firefox": (Firefox, firefox.missing()), "webkit": (WebKit, webkit.missing())}
pytestmark = pytest.mark.browser


def of(name: str):
    """An engine as a parameter: its stories run one after another, and are left out where it is missing."""
    missing = ENGINES[name][1]
    marks = [pytest.mark.xdist_group(name), pytest.mark.skipif(bool(missing), reason=missing or "it is here")]
    return pytest.param(name, marks=marks)


@pytest.fixture(scope="module", params=[of(name) for name in ENGINES])
def engine(request):
    with ENGINES[request.param][0]() as browser:
        yield browser


def test_the_daily_loop(engine, served_room, own_server):
    join(engine, fill(served_room, rows=0), "Ida")
    engine.sees("Not known yet: test ammonia and nitrite.")
    engine.press("Test")
    engine.press_exactly("0.5")
    engine.sees("2 of 5")
    engine.press_exactly("0.5")
    engine.press("Save 2 readings")
    engine.sees("2 readings saved on this phone")
    engine.sees("Change ")
    engine.open(f"{served_room.origin}/tank/{TANK}/change")
    engine.press("Log ")
    engine.sees("Undo")
    engine.open(f"{served_room.origin}/tank/{TANK}/history")
    engine.sees("Ammonia (total) 0.5")
    engine.sees("Changed ")
    on_the_server(served_room, "reading", 2)
    on_the_server(served_room, "water_change", 1)


def test_reloads_and_deep_links_without_a_server(engine, served_room, own_server):
    join(engine, fill(served_room, rows=1), "Ida")
    engine.sees("Reed pool")
    engine.waits_for(CONTROLLED)
    own_server.stop()
    engine.open(f"{served_room.origin}/tank/{TANK}/test")
    engine.press_exactly("0.25")
    engine.press("Save 1 reading")
    engine.sees("1 reading saved on this phone")
    engine.reload()
    engine.waits_for("return document.readyState === 'complete'")
    engine.sees("Reed pool")
    engine.open(f"{served_room.origin}/tank/{TANK}/history")
    engine.sees("Ammonia (total) 0.25")
    engine.sees("saved on this phone")
    own_server.start()
    engine.open(f"{served_room.origin}/room")
    engine.press("Share now")
    engine.sees("Everything on this phone is shared.")
    on_the_server(served_room, "reading", 2)


def test_a_new_version_waits_until_it_is_wanted(engine, tmp_path, own_code):
    server = RealServer(tmp_path / "data", code=own_code).start()
    try:
        engine.open(f"{server.origin}/tanks/new")
        engine.pick("cylinder")
        engine.type("Diameter", "40")
        engine.waits_for(CONTROLLED)
        words = own_code / "pwa/i18n/en.js"
        words.write_text(words.read_text().replace('"tank.save": "Save tank"', '"tank.save": "Keep tank"'))
        build(own_code)
        engine.run("navigator.serviceWorker.getRegistration().then((one) => one.update())")
        engine.sees("A new version is ready")
        assert "Save tank" in engine.text()
        engine.press("Use it")
        engine.sees("Keep tank")
        assert engine.value("Diameter") == "40"
    finally:
        server.stop()


def test_a_second_phone_is_let_in_and_both_share(engine, served_room, own_server):
    join(engine, fill(served_room, rows=0), "Ida")
    engine.sees("Reed pool")
    link = served_room.invite("keeper")
    second = served_room.origin.replace("localhost", "127.0.0.1")
    join(engine, link.replace(served_room.origin, second), "Bo")
    engine.sees("Reed pool")
    engine.open(f"{second}/tank/{TANK}/note")
    engine.press("All is well")
    engine.press("Save note")
    engine.sees("Undo")
    on_the_server(served_room, "note", 1)
    engine.open(f"{served_room.origin}/room")
    engine.press("Share now")
    engine.sees("Everything on this phone is shared.")
    engine.open(f"{served_room.origin}/tank/{TANK}/history")
    engine.sees("Bo")
    assert set(served_room.members()) >= {"Ida", "Bo"}


def on_the_server(served_room, kind: str, count: int) -> None:
    """Wait until the server has so many records of a kind."""
    end = time.monotonic() + PATIENCE_S
    while (found := served_room.rows("SELECT count(*) AS n FROM records WHERE kind = ?", kind)[0]["n"]) != count:
        assert time.monotonic() < end, f"{found} of {count} {kind}"
        time.sleep(0.2)
