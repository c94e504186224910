"""The browser of these tests and of the picture: the Chromium of this machine."""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from playwright.sync_api import Browser

ROOT = Path(__file__).resolve().parents[2]
CORPUS = ROOT / "corpus_synthetic"

_NAMES = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable")
_ARGUMENTS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]


def chromium_path() -> str | None:
    """The program, as `CHROMIUM` names it or as it is found; None where there is none."""
    named = os.environ.get("CHROMIUM")
    return named or next(filter(None, map(shutil.which, _NAMES)), None)


@contextmanager
def launched() -> Iterator[Browser]:
    """A browser that ends with the block."""
    from playwright.sync_api import sync_playwright

    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(
            executable_path=chromium_path(), args=_ARGUMENTS, handle_sigint=False
        )
        try:
            yield browser
        finally:
            browser.close()
