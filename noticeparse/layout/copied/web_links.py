"""Lines of links that a page of the web has round its text: `Share this page   Back to top`."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.layout.line.elements import Line

_LINK = (
    r"(?:(?:share|print|e-?mail|save|bookmark|download) this page|print(?:er)?[- ]friendly version"
    r"|(?:back to|return to|go to)(?: the)? (?:top|menu|home(?: ?page)?)|top of (?:the )?page"
    r"|skip to (?:the )?(?:main )?(?:content|navigation|menu)|accessibility(?: statement)?"
    r"|privacy(?: (?:policy|notice|statement))?|cookies?(?: (?:policy|settings))?|site ?map"
    r"|terms of use|contact us|home|share|print|follow us|this (?:web)?site uses cookies"
    r"|(?:show|view|see|open)(?: it)? (?:on|in)(?: the| a)? (?:map|chart viewer|web map)"
    r"|(?:show|load|view|read|see) (?:more|less|all)(?: (?:notices|results|rows|details))?"
    r"|accept (?:all(?: cookies)?|cookies)|reject (?:all|cookies)|about (?:the|this) (?:web)?site"
    r"|(?:export|download|save)(?: (?:as|to))? (?:csv|pdf|xml|excel|gpx|geojson|kml|this notice)"
    r"|sort by [a-z]{3,12}|all notices|details|download|filters?|menu)"
)
_LINE = re.compile(
    rf"[ \t]{{0,40}}{_LINK}"
    rf"(?:[ \t]{{0,20}}[|·•>/][ \t]{{0,20}}{_LINK}|[ \t]{{2,40}}{_LINK}){{0,8}}"
    r"[ \t.]{0,40}",
    re.IGNORECASE,
)
_LONGEST = 240
_WORD_ALONE = re.compile(r"[a-z]+", re.IGNORECASE)
"""`Home`, `Print`: one such word may be a name or a command."""


def lines_of_links(text: str, lines: Sequence[Line]) -> Iterator[int]:
    """The indexes of lines that hold such links and nothing else."""
    for index, line in enumerate(lines):
        if line.is_blank or line.end - line.start > _LONGEST:
            continue
        words = text[line.start : line.end]
        if _LINE.fullmatch(words) and not _WORD_ALONE.fullmatch(words.strip()):
            yield index
