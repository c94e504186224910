"""Degree signs that a copy has lost: `47?02.31'S 127?49.20'W`, with one sign in all their places.

A text that shows no degree sign, and in its coordinates another sign with which none is written,
has lost them to it; that it is read so is told once.  The marks of minutes and seconds may be lost
to the same sign.  So may a figure, for which reason it is read only between whole figures.
Source: common practice, no published source.
"""

from __future__ import annotations

import re
from collections import Counter

from noticeparse.faults import Fault
from noticeparse.layout.copied.look_alikes import Mended

_SIGN = r"[?¿~^@#%$!&+\u00ac\u00a7\u25a1\u25af]"
_MINUTES = rf"['\u2032]|{_SIGN}"
_SECONDS = rf"[\"\u2033]|''|{_SIGN}"
_FIGURES = (
    # `300? 46?04.05?S` is the end of a sector and a latitude.
    rf"[0-9]{{2,3}}(?P<degrees>{_SIGN})(?![ ][0-9.,]{{2,8}}{_SIGN})[ ]?[0-9]{{2}}"
    rf"(?:(?P<before>{_MINUTES})?[.,·][0-9]{{1,4}}(?P<behind>{_MINUTES})?"
    rf"|(?P<minutes>{_MINUTES})(?:[ ]?[0-9]{{2}}(?:[.,][0-9]{{1,3}})?(?P<seconds>{_SECONDS}))?)?"
)
_COORDINATE = re.compile(
    rf"(?<![\w.,'?])(?P<letter>[NSEW][ ]?)?{_FIGURES}"
    r"(?(letter)(?![\w?])|[ ]?[NSEW](?![A-Za-z0-9]))"
)
_READ = {"degrees": "°", "before": "'", "behind": "'", "minutes": "'", "seconds": '"'}
_BEARING = r"(?<![\w.,?])[0-3][0-9]{2}(?:[.,][0-9])?"
_FEWEST = 4
"""Coordinates in which a sign must stand, those of two positions."""


def with_degree_signs(text: str) -> Mended:
    """The text with the degree signs that another one stands for; its length stays."""
    if "°" in text:
        return Mended(text)
    found = list(_COORDINATE.finditer(text))
    signs = Counter(one["degrees"] for one in found)
    if len(signs) != 1 or len(found) < _FEWEST:
        return Mended(text)
    (sign,) = signs
    told = Fault("text-degree-sign-lost", *found[0].span(), {"written": found[0][0], "sign": sign})
    bearing = re.compile(rf"({_BEARING}){re.escape(sign)}(?=[-,;. )T\n])")
    return Mended(bearing.sub(r"\1°", _COORDINATE.sub(_as_meant, text)), (told,))


def _as_meant(coordinate: re.Match[str]) -> str:
    """A coordinate with each sign in whose place the other stands."""
    written = list(coordinate.group())
    for name, meant in _READ.items():
        if coordinate[name] == coordinate["degrees"]:
            written[coordinate.start(name) - coordinate.start()] = meant
    return "".join(written)
