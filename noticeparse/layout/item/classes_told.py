"""The class that a heading tells of items that name no kind of their own.

`6.2  P` below `Depths to be inserted` is a depth; `Pier head, Fl.R.2s` below `Lights` is held.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Added, Item, Piece
from noticeparse.layout.item.class_headings import IN_UNIT, ClassHeading, without_unit
from noticeparse.layout.item.parts_of_lists import (
    are_parts,
    are_wordings,
    says_what_it_is,
    style_of,
)
from noticeparse.readers.features import has_kind, read_feature, value_property
from noticeparse.vocabulary import kinds

_BARE = re.compile(r"[0-9]{1,3}(?:[.,][0-9]{1,2})?")
_ITS_DEPTH = re.compile(r"(?:(?:least )?depth|drying height)\b", re.IGNORECASE)
_HAS_DEPTH = re.compile(r"(?:wrecks|rocks|obstructions|shoals|ledges|fish havens)\b", re.I)
_DEPTHS = frozenset(("depth", "measure", "number", "quality", "status", "reported"))


def give_classes(text: str, items: Sequence[Item], headings: Sequence[ClassHeading]) -> None:
    """Tell the class above them of items that name no kind themselves."""
    if not headings:
        return
    pieces = [without_unit(text, one.things) for one in headings]
    classes = [one.things for one in headings if one.verb is not None]
    styles: dict[Piece, str] = {}
    ended = -1
    for item in items:
        item.pieces = [piece for piece in item.pieces if piece not in pieces]
        start = min((piece[0] for piece in item.pieces), default=0)
        ended = start if item.verb_piece is not None else ended
        above = next((one for one in reversed(classes) if ended < one[1] <= start), None)
        item.heading = above
        if above is None or item.verb_piece is not None or above[0] == above[1]:
            continue
        if without_unit(text, above) in item.words:
            _give_unit(text, item, above)
        else:
            give_class(text, item, above, styles)


def give_class(text: str, item: Item, above: Piece, styles: dict[Piece, str]) -> None:
    """Tell an item the class above it, where it names no kind itself; `styles` are of such."""
    words = " ".join(text[a:b] for a, b in item.words)
    if not words:
        return
    things = text[slice(*above)]
    is_wording = are_wordings(things) and not says_what_it_is(words)
    is_alike = is_wording and styles.setdefault(above, style_of(words)) == style_of(words)
    is_depth = is_its_depth(things, words)
    if is_alike or (has_kind(things) and (is_depth or not names_kind(words))):
        item.words.insert(0, without_unit(text, above))
        _give_unit(text, item, above)
    elif is_wording or _is_of_other(things, words):
        # `Lights to be inserted` and below it `Pier head, Fl.R.2s`: not the pier.
        start, end = item.words[0][0], item.words[-1][1]
        written = {"written": " ".join(words.split())}
        item.faults.append(Fault("feature-kinds-several", start, end, written))


def _give_unit(text: str, item: Item, things: Piece) -> None:
    """Read the unit that a class states behind a figure alone: `12` below `Depths in feet`."""
    unit = IN_UNIT.search(text[slice(*things)])
    figures = [text[slice(*piece)] for piece in item.words[1:]]
    if unit is not None and len(figures) == 1 and _BARE.fullmatch(figures[0].strip(" ,")):
        item.added.append(Added(" ", [(things[0] + unit.start("unit"), things[1])], ""))


def _is_of_other(things: str, words: str) -> bool:
    """Whether words name what carries a thing of the class, or another thing than one of it."""
    if are_parts(things) and not says_what_it_is(words):
        return read_feature(words).feature.kind != read_feature(things).feature.kind
    return (_is_light(things) and (_is_lit(words) or _is_unlit_mark(words))) or _is_other(
        things, words
    )


def is_its_depth(things: str, words: str) -> bool:
    """Whether words are the depth of such a thing, and none of its own: `wrecks`, `depth 3m`."""
    return (
        _ITS_DEPTH.match(words) is not None
        and _HAS_DEPTH.match(things) is not None
        and value_property(words.strip(" ,;.")) <= _DEPTHS
    )


def _is_light(things: str) -> bool:
    return things.lower().strip().endswith("lights")


def _is_other(things: str, words: str) -> bool:
    """Whether words name another kind in a name of its own: `Brack Rock` below `Lights to delete`.

    Words that only say more of the class are no other kind: `Port-hand pillar buoy`.
    """
    plain = words.split(",")[0].split()
    is_name = len(plain) > 1 and all(word[0].isupper() for word in plain if word[0].isalpha())
    if not is_name or not has_kind(things):
        return False
    of_class, own = read_feature(things).feature, read_feature(words).feature
    return set(of_class.s57).isdisjoint(own.s57) and own.kind != of_class.kind


def _is_lit(words: str) -> bool:
    """Whether words name a thing that is no light, and give it the character of one."""
    feature = read_feature(words).feature
    return feature.light is not None and "light" not in feature.kind


def _is_unlit_mark(words: str) -> bool:
    """Whether words name a mark that has no light, of which the light alone may be meant."""
    feature = read_feature(words).feature
    known = kinds().get(feature.kind)
    is_mark = known is not None and bool(known.form)
    return is_mark and feature.light is None and "LIGHTS" not in feature.s57


def names_kind(words: str) -> bool:
    """Whether words name a kind by a word of more than a light's character: not `Fl.R.2s`."""
    return has_kind(words) and has_kind(re.sub(r"[A-Za-z]{1,3}[.(][^ ]*", "", words))
