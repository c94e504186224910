"""A service for all tests of the page; each test has a page without a past.

Whatever a page asks of another host is stopped, written down, and fails the test, as does an error
of a script or of the security policy.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING, Any

import pytest

from noticeparse.web.settings import ServiceSettings
from tests.browser.waiting import PATIENCE
from tests.service import served

if TYPE_CHECKING:
    from playwright.sync_api import Browser, BrowserContext, Page, Route

Opener = Callable[..., "Page"]


@pytest.fixture(scope="session")
def address() -> Iterator[str]:
    """Where the service of these tests answers."""
    # Time enough for the longest text of these tests, also on a machine that has much else to do.
    with served(ServiceSettings(workers=2, read_seconds=900.0)) as address:
        yield address


@pytest.fixture
def opened(browser: Browser, address: str) -> Iterator[Opener]:
    """Opens the page with the options of a context, as often as it is called."""
    contexts: list[BrowserContext] = []
    foreign: list[str] = []
    faults: list[str] = []
    own = {address}

    def guard(route: Route) -> None:
        if route.request.url.startswith((*(f"{one}/" for one in own), "blob:", "data:")):
            route.continue_()
        else:
            foreign.append(route.request.url)
            route.abort()

    def open_page(**options: Any) -> Page:
        at = options.pop("at", address)
        own.add(at)
        options.setdefault("viewport", {"width": 1280, "height": 720})
        context = browser.new_context(**options)
        context.set_default_timeout(PATIENCE)
        context.grant_permissions(["clipboard-read", "clipboard-write"])
        context.route("**/*", guard)
        contexts.append(context)
        page = context.new_page()
        page.on("pageerror", lambda error: faults.append(str(error)))
        page.on("console", lambda said: faults.append(said.text) if is_fault(said.text) else None)
        page.goto(at)
        page.locator("body[data-ready]").wait_for()
        return page

    yield open_page
    for context in contexts:
        context.close()
    assert foreign == []
    assert faults == []


def is_fault(words: str) -> bool:
    """Whether a line of the console tells of a fault of the page, and not of a refused request."""
    return "Content Security Policy" in words or "Uncaught" in words


@pytest.fixture
def page(opened: Opener) -> Page:
    """The page at a usual size, empty."""
    return opened()
