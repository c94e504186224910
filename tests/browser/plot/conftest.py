"""The plot of the page in a real browser, under the service's own security policy.

The page is answered by the test itself, from the files of the package; a wish for any other host,
an error of a script and a breach of the policy fail the test.
"""

from __future__ import annotations

import mimetypes
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from noticeparse.web.guard import POLICY
from noticeparse.web.pages import STATIC
from tests.browser.plot.plotted import drawn

PAGE = Path(__file__).with_name("plot_page.html").read_text("utf-8")
ADDRESS = "http://plot.test"
STYLE = """
:root { color-scheme: light dark; background: Canvas; color: CanvasText }
main { margin: 8px }
"""
START = """async () => {
  const { createPlot } = await import("/static/plot.js");
  window.picked = [];
  const place = document.getElementById("plot");
  window.plot = createPlot(place, { onSelect: (path) => window.picked.push(path) });
  const styled = [...document.querySelectorAll("link[rel=stylesheet]")].map((one) =>
    one.sheet || new Promise((done) => one.addEventListener("load", done)));
  await Promise.all(styled);
}"""


@pytest.fixture
def opened(browser: Any) -> Iterator[Callable[..., Any]]:
    """Opens the page with the plot in it; what went wrong in it fails the test at its end."""
    contexts, wrong = [], []

    def answer(route: Any) -> None:
        path = route.request.url.removeprefix(ADDRESS)
        if path == "/":
            policy = {"Content-Security-Policy": POLICY}
            route.fulfill(body=PAGE, content_type="text/html", headers=policy)
        elif path == "/page.css":
            route.fulfill(body=STYLE, content_type="text/css")
        elif path.startswith("/static/") and (STATIC / path[8:]).is_file():
            kind = mimetypes.guess_type(path)[0]
            route.fulfill(body=(STATIC / path[8:]).read_bytes(), content_type=kind)
        else:
            wrong.append(f"asked for {route.request.url}")
            route.abort()

    def opener(**options: Any) -> Any:
        options.setdefault("viewport", {"width": 900, "height": 800})
        context = browser.new_context(**options)
        contexts.append(context)
        context.route("**/*", answer)
        page = context.new_page()
        page.on("console", lambda told: wrong.append(told.text) if told.type != "log" else None)
        page.on("pageerror", lambda error: wrong.append(str(error)))
        page.goto(f"{ADDRESS}/")
        page.evaluate(START)
        drawn(page)
        return page

    yield opener
    for context in contexts:
        context.close()
    assert wrong == []
