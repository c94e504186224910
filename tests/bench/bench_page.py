"""How fast the page is in a browser: `python -m tests.bench.bench_page`.

For a pasted bulletin of each size, the time until its records are shown, that from one key to the
records that follow it, and the longest time that the page did not answer. Also the bytes that the
page is made of. 200 ms are wished for from a key to the records of 20 kB.
"""

from __future__ import annotations

import gzip
import statistics
from typing import TYPE_CHECKING

from noticeparse.testing.generator import generate
from noticeparse.web.pages import STATIC
from tests.browser.chromium import launched
from tests.service import served

if TYPE_CHECKING:
    from playwright.sync_api import Page

SIZES = (20_000, 200_000, 1_000_000)
_KEYS = 9
_OTHERS = ("swagger-ui", "docs.", "example_", "LICENSE", "NOTICE", "package", "entry")

# From the paste or the key to the state that says that all is read, told by the page's own clock.
_MEASURE = """
window.longest = 0;
new PerformanceObserver((list) => {
  for (const one of list.getEntries()) window.longest = Math.max(window.longest, one.duration);
}).observe({ type: "longtask" });
let begin = 0;
const start = () => { begin = performance.now(); };
document.querySelector("#editor").shadowRoot.addEventListener("beforeinput", start, true);
document.querySelector("#editor").shadowRoot.addEventListener("paste", start, true);
window.times = [];
new MutationObserver(() => {
  const words = document.querySelector("#state-words").textContent;
  if (!begin || !words.startsWith("Read in")) return;
  window.times.push(performance.now() - begin);
  begin = 0;
}).observe(document.querySelector("#state-words"), { childList: true });
"""


def measure(page: Page, size: int) -> None:
    """Paste, then type, and say how long each took."""
    text = generate(1, size_bytes=size).text
    page.evaluate(f"() => {{ {_MEASURE} }}")
    page.evaluate("text => navigator.clipboard.writeText(text)", text)
    editor = page.locator("#editor .cm-content")
    editor.click()
    first = _time_of(page, "ControlOrMeta+v")
    page.keyboard.press("ControlOrMeta+Home")
    page.evaluate("window.longest = 0")
    keys = [_time_of(page, "x") for _ in range(_KEYS if size <= SIZES[0] else 2)]
    longest = page.evaluate("window.longest")
    print(
        f"{size / 1000:>6.0f} kB: first records {first:6.0f} ms, "
        f"key to records {statistics.median(keys):6.0f} ms, longest freeze {longest:4.0f} ms"
    )


def _time_of(page: Page, key: str) -> float:
    before = page.evaluate("window.times.length")
    page.keyboard.press(key)
    for _ in range(600):
        if page.evaluate("window.times.length") > before:
            return float(page.evaluate("window.times.at(-1)"))
        page.wait_for_timeout(50)
    raise SystemExit("the page was not done within 30 seconds")


def weigh() -> None:
    """Say of how many bytes the page is, as they are and packed."""
    parts = [
        path.read_bytes()
        for path in sorted(STATIC.rglob("*"))
        if path.is_file()
        and not any(one in path.relative_to(STATIC).as_posix() for one in _OTHERS)
    ]
    packed = sum(len(gzip.compress(part, 9)) for part in parts)
    print(
        f"{len(parts)} files, {sum(map(len, parts)) / 1000:.0f} kB, packed {packed / 1000:.0f} kB"
    )


def main() -> None:
    """Measure all sizes."""
    weigh()
    with served() as address, launched() as browser:
        for size in SIZES:
            context = browser.new_context(viewport={"width": 1280, "height": 720})
            context.grant_permissions(["clipboard-read", "clipboard-write"])
            page = context.new_page()
            page.goto(address)
            page.locator("body[data-ready]").wait_for()
            measure(page, size)
            context.close()


if __name__ == "__main__":
    main()
