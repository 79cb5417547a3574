"""HTTPS at home, in Chromium: before the authority is trusted and after; a rogue name; what the check page says."""

import http.server
import os
import shutil
import ssl
import subprocess
import threading
from contextlib import contextmanager

import pytest
from cryptography import x509
from limnary import lan
from phones import PATIENCE_MS, SANDBOX, SMALL, chromium_path
from playwright.sync_api import Error, expect

from tests.rogue import signed_for
from tests.started_server import RealServer

pytestmark = pytest.mark.browser
# Names that lead to this machine, as a home network or a thief's network would have them.
NAMES = "MAP tanks.example 127.0.0.1, MAP bank.example 127.0.0.1"


@pytest.fixture(scope="module")
def https_server(tmp_path_factory):
    started = RealServer(tmp_path_factory.mktemp("home") / "data", "--lan", scheme="https").start()
    yield started
    started.stop()


@pytest.fixture(scope="module")
def plain_server(tmp_path_factory):
    started = RealServer(tmp_path_factory.mktemp("plain") / "data").start()
    yield started
    started.stop()


@contextmanager
def chromium_of(browser, home):
    """Another Chromium, whose trusted authorities are those of the folder `home`."""
    arguments = [*SANDBOX, f"--host-resolver-rules={NAMES}"]
    environment = {**os.environ, "HOME": str(home)}
    opened = browser.browser_type.launch(executable_path=chromium_path(), args=arguments, env=environment)
    yield opened
    opened.close()


@contextmanager
def phone(browser, origin, **more):
    """A phone of which nothing is held back: stories usually hold the worker until they want it."""
    context = browser.new_context(base_url=origin, viewport=SMALL, locale="en-GB", **more)
    context.set_default_timeout(PATIENCE_MS)
    yield context
    context.close()


def trust(home, authority):
    """What a keeper does by hand: trust the authority for websites."""
    if not shutil.which("certutil"):
        pytest.skip("certutil (apt: libnss3-tools) is not here, so Chromium cannot be made to trust an authority")
    store = home / ".pki" / "nssdb"
    store.mkdir(parents=True)
    named = f"sql:{store}"
    subprocess.run(["certutil", "-N", "-d", named, "--empty-password"], check=True)
    subprocess.run(["certutil", "-A", "-d", named, "-n", "home", "-t", "C,,", "-i", str(authority)], check=True)


def outcome(page, name):
    return page.locator(f"#{name}:not(.waiting)").get_attribute("class")


def test_before_the_authority_is_trusted_the_pages_say_so(browser, https_server, tmp_path):
    with (
        chromium_of(browser, tmp_path) as chromium,
        phone(chromium, https_server.url, ignore_https_errors=True) as context,
    ):
        page = context.new_page()
        page.goto("/trust")
        assert outcome(page, "trusted") == "wrong"
        expect(page.get_by_text("This phone does not trust this server yet")).to_be_visible()
        expect(page.get_by_text("You can open the app.")).to_be_hidden()
        expect(page.locator("code")).to_have_text(lan.fingerprint(https_server.folder / "lan" / lan.AUTHORITY))
        page.goto("/check?lang=de")
        assert outcome(page, "worker") == "wrong"
        expect(page.get_by_text("Das Telefon speichert die App nicht.")).to_be_visible()
        expect(page.get_by_text("Etwas fehlt.")).to_be_visible()


def test_once_it_is_trusted_all_is_well_and_a_rogue_name_is_refused(browser, https_server, tmp_path):
    authority = https_server.folder / "lan" / lan.AUTHORITY
    trust(tmp_path, authority)
    rogue = signed_for(authority.parent, x509.DNSName("bank.example"))
    with (
        chromium_of(browser, tmp_path) as chromium,
        phone(chromium, https_server.url) as context,
        serving(rogue) as port,
    ):
        page = context.new_page()
        page.goto("/trust")
        assert outcome(page, "trusted") == "well"
        page.goto("/check")
        assert [outcome(page, name) for name in ("secure", "worker", "storage", "clock", "engine")] == ["well"] * 5
        expect(page.get_by_text("Everything that the app needs is there.")).to_be_visible()
        # With the worker in control the pages still come from the server.
        page.goto("/")
        page.evaluate("() => navigator.serviceWorker.ready.then(() => true)")
        page.goto("/check")
        expect(page.get_by_text("Everything that the app needs is there.")).to_be_visible()
        page.goto(f"https://localhost:{https_server.port}/check")
        with pytest.raises(Error, match="ERR_CERT_"):
            page.goto(f"https://bank.example:{port}/")


@contextmanager
def serving(certificate):
    """A server of a thief, with that certificate; its port."""
    server = http.server.HTTPServer(("127.0.0.1", 0), http.server.BaseHTTPRequestHandler)
    context = ssl.create_default_context(ssl.Purpose.CLIENT_AUTH)
    context.load_cert_chain(certificate)
    server.socket = context.wrap_socket(server.socket, server_side=True)
    server.handle_error = lambda *_: None  # a refused handshake is what the test wants
    threading.Thread(target=server.serve_forever, daemon=True).start()
    yield server.server_port
    server.shutdown()
    server.server_close()


# What is taken from a browser, and the test that it fails.
LACKS = {
    "secure": "",
    "worker": "Object.defineProperty(navigator, 'serviceWorker', { value: undefined })",
    "storage": "Object.defineProperty(window, 'indexedDB', { value: { open() { throw new Error('private') } } })",
    "clock": "Date.prototype.getTime = function () { return this.valueOf() + 300000 }",
    "engine": "delete window.structuredClone",
}


@pytest.mark.parametrize("lacking", LACKS)
def test_what_a_phone_lacks_is_named(browser, plain_server, lacking):
    with phone(browser, plain_server.url) as context:
        context.add_init_script(LACKS[lacking] or "Object.defineProperty(window, 'isSecureContext', { value: false })")
        page = context.new_page()
        page.goto("/check")
        wrong = [name for name in LACKS if outcome(page, name) == "wrong"]
        assert wrong == ([lacking] if lacking != "secure" else ["secure", "worker"])
        expect(page.get_by_text("Something is missing.")).to_be_visible()


def test_over_plain_http_from_another_machine_the_page_says_what_to_do(browser, plain_server, tmp_path):
    with (
        chromium_of(browser, tmp_path) as chromium,
        phone(chromium, f"http://tanks.example:{plain_server.port}") as context,
    ):
        page = context.new_page()
        page.goto("/check?lang=fr")
        assert [outcome(page, name) for name in ("secure", "worker")] == ["wrong", "wrong"]
        expect(page.get_by_text("Cette page est arrivée sans HTTPS.")).to_be_visible()


@pytest.mark.parametrize(
    ("agent", "first"),
    [
        ("Mozilla/5.0 (iPhone; CPU iPhone OS 16_0 like Mac OS X) AppleWebKit/605.1.15", "iPhone, iPad"),
        ("Mozilla/5.0 (Linux; Android 13) AppleWebKit/537.36 Chrome/105.0.0.0 Mobile", "Android phone"),
        ("Mozilla/5.0 (Android 13; Mobile; rv:115.0) Gecko/115.0 Firefox/115.0", "Firefox"),
        ("Mozilla/5.0 (X11; Linux x86_64) AppleWebKit/537.36 Chrome/105.0.0.0", "Computer"),
    ],
)
def test_the_steps_of_the_phone_in_hand_come_first(browser, https_server, agent, first):
    with phone(browser, https_server.url, ignore_https_errors=True, user_agent=agent) as context:
        page = context.new_page()
        page.goto("/trust")
        expect(page.locator("dt").first).to_have_text(first)
        expect(page.locator("dt")).to_have_count(4)
