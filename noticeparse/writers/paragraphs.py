"""Lines of a text for a person, filled to a width, without anything that moves a cursor."""

from __future__ import annotations

import textwrap

from noticeparse.writers.quoting import visible

WIDTH = 79
NO_BREAK = "\u00a0"


def filled(text: str, first: str, others: str) -> list[str]:
    """The words over as many lines as they need; `first` and `others` stand before them.

    Words and figures are never divided, nor what a `NO_BREAK` holds together: half a position
    could be taken for a whole one.
    """
    lines = textwrap.wrap(
        visible(text),
        WIDTH,
        initial_indent=first,
        subsequent_indent=others,
        break_long_words=False,
        break_on_hyphens=False,
    )
    return [line.replace(NO_BREAK, " ") for line in lines]


def hanging(lead: str, text: str) -> list[str]:
    """The words behind a lead, further lines below their beginning."""
    return filled(text, lead, " " * len(lead))
