"""Fixtures of the browser stories: one Chromium and one server for all, a room for each story, phones as needed."""

import sys
from contextlib import ExitStack
from pathlib import Path

import pytest
from playwright.sync_api import Error, sync_playwright

sys.path.insert(0, str(Path(__file__).parent))

from own_code import copied
from phones import Thumb, chromium, phone
from real_server import RealServer

THUMBS = pytest.StashKey[list[Thumb]]()


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(item):
    """A story that fails says where each of its phones stood."""
    report = yield
    if report.when == "call" and report.failed:
        for thumb in item.stash.get(THUMBS, []):
            try:
                stands = thumb.page.inner_text("body", timeout=2000)
            except Error as gone:
                stands = str(gone)
            report.sections.append((f"a phone at {thumb.page.url}", stands))
    return report


@pytest.fixture(scope="session")
def browser():
    with sync_playwright() as playwright:
        opened = chromium(playwright)
        yield opened
        opened.close()


@pytest.fixture(scope="session")
def shared_server(tmp_path_factory):
    """The server of all stories that leave it running; rooms keep them apart."""
    started = RealServer(tmp_path_factory.mktemp("shared") / "data").start()
    yield started
    started.stop()


@pytest.fixture
def own_server(tmp_path):
    """A server for one story alone, which may stop it."""
    started = RealServer(tmp_path / "data").start()
    yield started
    started.stop()


@pytest.fixture
def own_code(tmp_path):
    """A copy of the product that a story may change."""
    return copied(tmp_path / "code")


@pytest.fixture
def served_room(request):
    """A new room, on the story's own server if it asks for one."""
    server = "own_server" if "own_server" in request.fixturenames else "shared_server"
    return request.getfixturevalue(server).new_room()


@pytest.fixture
def new_phone(browser, served_room, request):
    """Makes phones: each call is another one, with nothing on it."""
    with ExitStack() as held:
        thumbs = request.node.stash[THUMBS] = []

        def make(**how) -> Thumb:
            context = held.enter_context(phone(browser, served_room.origin, **how))
            thumbs.append(Thumb(context.new_page()))
            return thumbs[-1]

        yield make
        assert [trouble for thumb in thumbs for trouble in thumb.troubles] == []
