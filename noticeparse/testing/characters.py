"""Changes of single characters, as copying, scanning and typing make them."""

from __future__ import annotations

import re
from collections.abc import Mapping

from hypothesis import assume
from hypothesis import strategies as st

LOOK_ALIKES: Mapping[str, str] = {
    "°": "º˚",
    "'": "’′´`ʹ",
    "′": "'’´`ʹ",
    "´": "'’′`ʹ",
    "’": "'′´`ʹ",
    '"': "”″",
    "″": '"”',
    ".": "·•∙⋅",
    "·": "•∙⋅",
    "-": "‐‑–",
}
"""Symbols that mean the same in their place; a stop only between figures."""

BLANKS = ("\u00a0", "\u2009", "\u202f")
FOREIGN_SCRIPTS = ("٠١٢٣٤٥٦٧٨٩", "०१२३४५६७८९", "০১২৩৪৫৬৭৮৯", "⓪①②③④⑤⑥⑦⑧⑨")
FULL_WIDTH = "０１２３４５６７８９"
LOST = "\ufffd?#"
INVISIBLE = "\u200b\u00ad\u2060\ufeff"
FIGURE_LETTERS = {"0": "O", "1": "l"}

_FIGURE = re.compile("[0-9]")
_STOP = re.compile(r"(?<=[0-9])[.·](?=[0-9])")


def figures_of(text: str) -> list[int]:
    """Where the figures of a text stand."""
    return [match.start() for match in _FIGURE.finditer(text)]


def with_look_alike(draw: st.DrawFn, text: str, symbols: str) -> str:
    """All of one of the `symbols` that stand in the text, as another symbol that looks like it."""
    symbol = draw(st.sampled_from([one for one in symbols if one in text]))
    return text.replace(symbol, draw(st.sampled_from(LOOK_ALIKES[symbol])))


def with_other_stop(draw: st.DrawFn, text: str) -> str:
    """The decimal stops of the text as another dot; a text without has none to change."""
    dot = draw(st.sampled_from("·•∙⋅"))
    return _STOP.sub(dot, text)


def with_other_blanks(draw: st.DrawFn, text: str) -> str:
    """The blanks of the text as another blank."""
    return text.replace(" ", draw(st.sampled_from(BLANKS)))


def with_figures_of(script: str, text: str) -> str:
    """The text with the figures of another script."""
    return text.translate(str.maketrans("0123456789", script))


def with_figure_lost(draw: st.DrawFn, text: str) -> str:
    """One figure as the sign of a lost character."""
    at = draw(st.sampled_from(figures_of(text)))
    return text[:at] + draw(st.sampled_from(LOST)) + text[at + 1 :]


def with_figure_split(draw: st.DrawFn, text: str) -> str:
    """Something that cannot be seen between two figures."""
    pairs = [match.start() for match in re.finditer("[0-9](?=[0-9])", text)]
    at = draw(st.sampled_from(pairs)) + 1
    return text[:at] + draw(st.sampled_from(INVISIBLE)) + text[at:]


def with_letter_for_figure(draw: st.DrawFn, text: str) -> str:
    """A nought or a one as the letter that looks like it; a text without either is left out."""
    places = [at for at in figures_of(text) if text[at] in FIGURE_LETTERS]
    assume(places)
    at = draw(st.sampled_from(places))
    return text[:at] + FIGURE_LETTERS[text[at]] + text[at + 1 :]
