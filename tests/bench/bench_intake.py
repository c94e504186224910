"""PDF files: whole lines kept, lines in true order, time a page, time and memory of 200 pages."""

from __future__ import annotations

import difflib
import resource
import time

from noticeparse.intake import apart
from noticeparse.intake.pdf import read_pdf
from tests.pdf_notices import HEAD, bulletin
from tests.pdf_pages import document as drawn
from tests.pdf_pages import pages_of, plain, wrapped
from tests.test_intake_pdf import SETTINGS

_NOTICES = 40
_PAGES = 200


def main() -> None:
    """Print a line for each setting, and one for a long file."""
    print(f"{'setting':32} kept   in order  ms a page")
    for name, setting in SETTINGS.items():
        lines = wrapped(bulletin(_NOTICES), setting)
        data = drawn(lines, setting, head=HEAD, foot="- {page} -")
        start = time.process_time()
        found = read_pdf(data)
        spent = time.process_time() - start
        body = found.text
        for first, end in reversed(found.furniture):
            body = body[:first] + body[end:]
        want, got = _lines("\n".join(map(plain, lines))), _lines(body)
        known = set(got)
        kept = sum(one in known for one in want) / len(want)
        matcher = difflib.SequenceMatcher(None, want, got, autojunk=False)
        order = sum(one.size for one in matcher.get_matching_blocks()) / len(want)
        pages = len(pages_of(lines, setting))
        print(f"{name:32} {kept:6.1%} {order:8.1%} {1000 * spent / pages:8.0f}")
    _long()


def _long() -> None:
    setting = SETTINGS["two columns row by row"]
    lines = wrapped(bulletin(_NOTICES * 90), setting)
    rows = sum(map(len, pages_of(lines, setting)[0]))
    data = drawn(lines[: rows * _PAGES], setting, head=HEAD, foot="- {page} -")
    start = time.perf_counter()
    found = apart.read_apart(data, "pdf")
    spent = time.perf_counter() - start
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    print(
        f"{_PAGES} pages, {len(found.text)} characters: {spent:.1f} s"
        f" ({used.ru_utime:.1f} s of processor), peak {used.ru_maxrss // 1024} MiB"
    )


def _lines(text: str) -> list[str]:
    return [" ".join(line.split()) for line in text.split("\n") if line.strip()]


if __name__ == "__main__":
    main()
