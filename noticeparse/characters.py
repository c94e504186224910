"""What is told of single characters of the text as given: half ones, and those not to be seen."""

from __future__ import annotations

from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.findings import Located
from noticeparse.layout.drafts import Piece
from noticeparse.text import SURROGATE, RepairedText, hidden_in


def character_faults(context: Context, text: str) -> list[Located]:
    """Half characters, and invisible characters that were left out."""
    found: list[Located] = []
    surrogate = SURROGATE.search(text)
    if surrogate is not None:
        at = nearest(context.repaired, surrogate.start())
        found.append(Located(Fault("text-surrogate", *at)))
    return found + hidden_characters(context)


def hidden_characters(context: Context) -> list[Located]:
    """Each place between two figures, where a person sees another figure, and the first other."""
    found: list[Located] = []
    is_told = False
    for one in hidden_in(context.repaired):
        fault = Fault("text-control-character", *nearest(context.repaired, one.start))
        if one.splits_figures:
            span = context.lines.span(one.start - 1, one.end + 1)
            found.append(Located(fault, severity="warning", span=span))
        elif not is_told:
            is_told = True
            found.append(Located(fault, span=context.lines.span(one.start, one.end)))
    return found


def nearest(repaired: RepairedText, offset: int) -> Piece:
    """The stretch of the repaired text that stands nearest to an offset of the original."""
    low, high = 0, len(repaired.text)
    while low < high:
        middle = (low + high) // 2
        if repaired.original(middle) < offset:
            low = middle + 1
        else:
            high = middle
    return low, min(low + 1, len(repaired.text))
