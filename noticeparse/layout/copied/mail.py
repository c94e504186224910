"""Headers and signatures of mail around the text of a bulletin."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.line.elements import Line
from noticeparse.readers.editions import read_line_words


def rows_of_mail(text: str, lines: Sequence[Line], head: int) -> set[int]:
    """Header lines of forwarded mail above the first notice, and signatures behind `--`."""
    found = {
        i for i, line in enumerate(lines[:head]) if line.elements and _is_mail_head(text, line)
    }
    in_signature = False
    for index, line in enumerate(lines):
        words = text[line.start : line.end].strip()
        in_signature = words == "--" or (in_signature and bool(words))
        if in_signature:
            found.add(index)
    return found


def _is_mail_head(text: str, line: Line) -> bool:
    words = read_line_words(text[line.start : line.end].strip())
    return words.first("MAIL_HEAD") is not None and not line.has("point", "half")
