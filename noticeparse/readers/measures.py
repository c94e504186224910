"""What a figure in metres behind an object measures: the depth over it, or something else.

In comes one figure with the words beside it in its part of the phrase; out comes how it is meant.
A figure is the depth over a wreck, rock or obstruction where it stands bare or with a word for a
depth.  A length, the depth of the water around, and what stands out of the water are none.
Source: common practice, no published source; S-57 VALSOU is the least depth over the object.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Literal

from noticeparse.readers.depths import stated_kind
from noticeparse.readers.words import Item

Meaning = Literal["depth", "about", "around", "above", "other"]
"""`about` is a depth not known exactly, `around` that of the water around, `above` a height."""

OBJECTS = frozenset(("WRECKS", "OBSTRN", "UWTROC"))
"""Classes of what lies on the ground; a length in brackets, `rock (2m)`, may be a height."""
_PARTED = re.compile(r"[,;:()]|\.(?= |$)")
_AROUND = re.compile(
    r"\b(?:general|charted|surrounding|ambient|water|sea ?bed|sea ?floor|bottom|ground) depths?\b"
    r"|\bin (?:the |its )?(?:immediate )?(?:vicinity|surroundings|neighbou?rhood|area)\b"
    r"|\b(?:nearby|surrounding)\b|\b(?:adjacent|alongside|close by|next to it)\b(?! [a-z])",
    re.IGNORECASE,
)
_IN_WATER = re.compile(r"\bin (?:an? |the )?(?:about |approximately |some )?$", re.IGNORECASE)
_OF_WATER = re.compile(r" of (?:sea ?)?water\b", re.IGNORECASE)
_ABOVE = re.compile(
    r"\b(?:exposed|exposes|visible|showing|shows|uncover(?:s|ed|ing)?|protrud(?:es|ing)|standing"
    r"|above (?:the )?(?:water|surface)|at (?:low|high) water|at [LH]W(?:S|N)?)\b",
    re.IGNORECASE,
)
_LEFT_ABOVE = re.compile(r" ?above[ .]{0,4}$", re.IGNORECASE)
"""A figure above something that is not told; `LAT` may be taken for the word of a latitude."""
_ALWAYS_DRY = frozenset(("dry", "rock_dry"))
_DIMENSION = re.compile(
    r"\b(?:length|long|loa|beam|breadth|width|wide|draught|draft|diameter|across|thick(?:ness)?"
    r"|proud|high|tall|size|radius|within|accuracy|accurate|buried|rising|rises|tonnage"
    r"|apart|distance|distant)\b|±|\+ ?/ ?-",
    re.IGNORECASE,
)
_AWAY = re.compile(r" ?(?:off|from|either|by|x)(?![a-z])", re.IGNORECASE)
_BY = re.compile(r"[0-9] ?(?:m|met(?:re|er)s?)? ?(?:by|x|×) ?$", re.IGNORECASE)
_OTHER_SIDE = re.compile(r" ?(?:by|x|×) ?[0-9]", re.IGNORECASE)
"""The sides of `wreck 50m by 10m` and `platform 50m x 10m`."""
_ABOUT = re.compile(
    r"(?:~|\b(?:about|approx(?:imate(?:ly)?)?\.?|estimated|around|circa|roughly|nearly|some)"
    r"(?: (?:least |minimum )?depth)?(?: of| at)?) ?$",
    re.IGNORECASE,
)
_ABOUT_WITHIN = re.compile(
    r"\b(?:about|approx(?:imate(?:ly)?)?\.?|estimated|around|roughly|nearly) ?$"
    r"|~ ?$",
    re.IGNORECASE,
)
_BESIDE_A_DEPTH = frozenset(
    ("kind", "status", "wreck", "water", "quality", "reported", "depth", "measure", "plain",
     "condition", "part", "colour", "topmark")
)  # fmt: skip

_BESIDE = 300
"""Characters on either side of a figure that may tell how it is meant."""


def meaning_of(text: str, items: Sequence[Item], item: Item, s57: str) -> Meaning:
    """How a depth or bare measure among the items of a phrase is meant."""
    before = text[max(0, item.start - _BESIDE) : item.start]
    opened = max((found.end() for found in _PARTED.finditer(before)), default=0)
    before = before[opened:]
    behind = text[item.end : item.end + _BESIDE]
    closed = _PARTED.search(behind)
    behind = behind[: closed.start()] if closed else behind
    if _LEFT_ABOVE.match(behind):
        return "above"
    if s57 in OBJECTS:
        meaning = _beside_object(before, behind, items, item)
        if meaning is not None:
            return meaning
    is_side = _BY.search(before) is not None
    if item.role == "measure" and (is_side or _DIMENSION.search(f"{before} {behind}")):
        return "other"
    return "about" if _ABOUT.search(before) or _is_about(item) else "depth"


_BELOW = re.compile(r",? (?:below|under) (?:the )?(?:chart datum|datum|water|sea|surface)\b", re.I)


def is_no_height(text: str, item: Item) -> bool:
    """Whether a figure measures the light and not what carries it, or lies below the water.

    `pillar, light 8m`, `pile, top 2m below chart datum`
    """
    is_side = _OTHER_SIDE.match(text, item.end) is not None
    if (
        is_side
        or _BELOW.match(text, item.end)
        or _BY.search(text[max(0, item.start - _BESIDE) : item.start])
    ):
        return True
    before = text[: item.start]
    opened = max((found.end() for found in _PARTED.finditer(before)), default=0)
    return re.search(r"\blights? $", before[opened:], re.IGNORECASE) is not None


def _is_about(item: Item) -> bool:
    figure = re.search(r"[0-9½¼¾]", item.text)
    return figure is not None and bool(_ABOUT_WITHIN.search(item.text[: figure.start()]))


def _beside_object(before: str, behind: str, items: Sequence[Item], item: Item) -> Meaning | None:
    """What the words around a figure of a wreck, rock or obstruction say against a depth."""
    if _AROUND.search(f"{before}{item.text}{behind}"):
        return "around"
    is_least = stated_kind(item.text)[0] == "least"
    if _OF_WATER.match(behind) or (_IN_WATER.search(before) and not is_least):
        return "around"
    is_dry = any(one.value in _ALWAYS_DRY for one in items)
    if is_dry and stated_kind(item.text)[0] != "drying":
        # `rock 2m (above water)`: whatever the figure is, no water stands over the rock.
        return "above"
    if item.role != "measure":
        return None
    dries = any(one.role == "water" and one.value == "covers" for one in items)
    if not dries and _ABOVE.search(f"{before} {behind}"):
        return "above"
    if _AWAY.match(behind):
        return "other"
    after = next((one for one in items if one.start >= item.end), None)
    # `wreck of 35m fishing vessel`: the figure belongs to the noun behind it.
    touches = after is not None and after.start < item.end + len(behind)
    if after is not None and touches and after.role not in _BESIDE_A_DEPTH:
        return "other"
    return None
