"""Fixtures of the browser stories: one Chromium, a real server each, phones as many as the story needs."""

import sys
from contextlib import ExitStack
from pathlib import Path

import pytest
from playwright.sync_api import sync_playwright

sys.path.insert(0, str(Path(__file__).parent))

from phones import Thumb, chromium, phone
from real_server import RealServer


@pytest.fixture(scope="session")
def browser():
    with sync_playwright() as playwright:
        opened = chromium(playwright)
        yield opened
        opened.close()


@pytest.fixture
def server(tmp_path):
    started = RealServer(tmp_path / "data").start()
    yield started
    started.stop()


@pytest.fixture
def new_phone(browser, server):
    """Makes phones: each call is another one, with nothing on it."""
    with ExitStack() as held:
        thumbs = []

        def make(**how) -> Thumb:
            context = held.enter_context(phone(browser, server.origin, **how))
            thumbs.append(Thumb(context.new_page()))
            return thumbs[-1]

        yield make
        assert [trouble for thumb in thumbs for trouble in thumb.troubles] == []
