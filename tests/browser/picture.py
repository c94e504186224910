"""Makes the README's picture of the page: `python -m tests.browser.picture`.

It shows the demonstration bulletin with its planted slips, small enough to be kept in the package.
"""

from __future__ import annotations

import io
from pathlib import Path

from PIL import Image

from noticeparse.web.pages import STATIC
from tests.browser.chromium import launched
from tests.service import served

PICTURE = STATIC.parent / "page.png"
MOST_BYTES = 150_000
_SIZE = {"width": 1280, "height": 800}
_COLOURS = 160


def make_picture(path: Path = PICTURE) -> None:
    """Write the picture, with a palette so that it stays small."""
    from tests.browser.desk import FAULTY, paste

    with served() as address, launched() as browser:
        context = browser.new_context(viewport=_SIZE, color_scheme="light")
        context.grant_permissions(["clipboard-read", "clipboard-write"])
        page = context.new_page()
        page.goto(address)
        page.locator("body[data-ready]").wait_for()
        paste(page, FAULTY)
        page.keyboard.press("ControlOrMeta+Home")
        page.keyboard.press("F8")
        page.locator(".finding[aria-current]").wait_for()
        shot = page.screenshot(caret="hide")
    with Image.open(io.BytesIO(shot)) as picture:
        picture.convert("RGB").quantize(_COLOURS, dither=Image.Dither.NONE).save(
            path, optimize=True
        )
    size = path.stat().st_size
    if size > MOST_BYTES:
        raise SystemExit(f"{path.name} has {size} bytes; {MOST_BYTES} are allowed")


if __name__ == "__main__":
    make_picture()
    print(f"{PICTURE}: {PICTURE.stat().st_size} bytes")
