"""What a person does at the page, and where they look: shared by its tests.

A page may be slower than its test, so what is seen there is waited for, by `expect` or
`eventually`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from playwright.sync_api import expect

from tests.browser.chromium import CORPUS
from tests.browser.waiting import PATIENCE, eventually

if TYPE_CHECKING:
    from playwright.sync_api import Locator, Page, Route

expect.set_options(timeout=PATIENCE)

DEMO = (CORPUS / "demo.txt").read_text("utf-8")
FAULTY = (CORPUS / "demo_faulty.txt").read_text("utf-8")
EDITION = (CORPUS / "demo_edition.txt").read_text("utf-8")
CHARTS = (CORPUS / "charts.csv").read_text("utf-8")

PARSE = "**/v1/parse"
"""Where the page has its text read."""

_FRAMES = """async () => {
    for (let frame = 0; frame < 3; frame += 1) await new Promise(requestAnimationFrame);
    await new Promise((done) => setTimeout(done));
}"""

_OF_VIEW = """async () => {
    const { EditorView } = await import("/static/vendor/codemirror/codemirror.js");
    const root = document.querySelector("#editor").shadowRoot;
    const view = EditorView.findFromDOM(root.querySelector(".cm-content"));
    const chosen = view.state.selection.main;
    return %s;
}"""


def drawn(page: Page) -> None:
    """Wait until the page has drawn what it is to draw, and what it wishes anew in doing so."""
    page.evaluate(_FRAMES)


def held(page: Page, *, times: int | None = None) -> list[Route]:
    """The wishes to read that the page makes from now on, which are not answered.

    There are so many at most; those behind them are answered.
    """
    routes: list[Route] = []
    page.route(PARSE, lambda route: routes.append(route), times=times)
    return routes


def editor(page: Page) -> Locator:
    """The text as it can be typed into."""
    return page.locator("#editor .cm-content")


def text_of(page: Page) -> str:
    """The whole text, also what is not drawn."""
    words: str = page.evaluate(_OF_VIEW % "view.state.doc.toString()")
    return words


def clipboard(page: Page) -> str:
    words: str = page.evaluate("navigator.clipboard.readText()")
    return words


def paste(page: Page, text: str, *, timeout: float = PATIENCE) -> None:
    """Paste a text in place of all that stands there, and wait until it is read."""
    page.evaluate("text => navigator.clipboard.writeText(text)", text)
    editor(page).click()
    page.keyboard.press("ControlOrMeta+a")
    page.keyboard.press("ControlOrMeta+v")
    eventually(page, text_of, text)
    read(page, timeout=timeout)


def read(page: Page, *, timeout: float = PATIENCE) -> None:
    """Wait until the records are those of the text: from its first change on they are not."""
    expect(page.locator("#state-words")).to_contain_text("Read in", timeout=timeout)


def slip(page: Page, words: str) -> Locator:
    """The slip of the action with these words."""
    return page.locator(".slip", has_text=words).first


def choose(page: Page, words: str) -> Locator:
    """Click on the slip of the action with these words, beside its values."""
    found = slip(page, words)
    found.locator(".slip-verb").click()
    return found


def selected(page: Page) -> str:
    """The words that are selected in the text."""
    words: str = page.evaluate(_OF_VIEW % "view.state.sliceDoc(chosen.from, chosen.to)")
    return words


def drop(page: Page, name: str, content: bytes, kind: str = "") -> None:
    """Let a file go over the page."""
    page.evaluate(
        """([name, bytes, kind]) => {
            const file = new File([new Uint8Array(bytes)], name, { type: kind });
            const carried = new DataTransfer();
            const options = { bubbles: true, cancelable: true };
            carried.items.add(file);
            for (const event of ["dragenter", "dragover", "drop"])
                document
                    .querySelector("#slips")
                    .dispatchEvent(new DragEvent(event, { ...options, dataTransfer: carried }));
        }""",
        [name, list(content), kind],
    )
