"""For how long a temporary notice holds, told below its commands: `Valid until 30 June 2026`.

Such a paragraph is said of the notice and of no command.  Between commands, or in a permanent
notice, it limits what stands above it, and is left alone here.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.body.prose import paragraph
from noticeparse.layout.drafts import Prose
from noticeparse.layout.line.elements import Line
from noticeparse.readers.for_a_time import states_validity

_MOST_LINES = 6
"""Lines of a paragraph that says so in its first sentence."""


def without_validity(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[Prose]]:
    """The lines without such paragraphs, and these."""
    last = max((row for row, line in enumerate(lines) if line.has("verb")), default=-1)
    kept: list[Line] = []
    prose: list[Prose] = []
    at = 0
    while at < len(lines):
        end = _end_of_paragraph(lines, at)
        told = lines[at:end]
        if told and at > last >= 0 and _tells(text, told):
            prose.append(paragraph(text, [e for line in told for e in line.elements]))
            kept += [line._replace(elements=()) for line in told]
            at = end
        else:
            kept.append(lines[at])
            at += 1
    return kept, prose


def _end_of_paragraph(lines: Sequence[Line], at: int) -> int:
    """Where the lines end that go on with a sentence, and command nothing."""
    end = at
    while end < len(lines) and end - at <= _MOST_LINES and not lines[end].is_blank:
        opens = lines[end].elements[0].kind in ("label", "bar", "chart", "key", "verb")
        if lines[end].has("verb", "chart") or (end > at and opens):
            break
        end += 1
    return end


def _tells(text: str, lines: Sequence[Line]) -> bool:
    words = text[lines[0].elements[0].start : lines[-1].end]
    return words[:1].isupper() and states_validity(words.replace("\n", " ").partition(". ")[0])
