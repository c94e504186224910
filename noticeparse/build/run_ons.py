"""Items into which the words of another one have run, or whose place is told by a pointing word.

`Delete wreck in P; insert there a depth` puts the depth at P, and not at the place that comes
next.  `and on chart 453 insert` at the end of an item is the beginning of the next one.  Below
`Insert beacons at` stand the names of places, and no things.  What is read of such items may be
whole and still wrong; all of them are held back.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterator, Sequence
from itertools import pairwise, takewhile

from noticeparse.build.extents import over, own_words
from noticeparse.build.places_beside import LEADS_ON
from noticeparse.context import Context
from noticeparse.layout.drafts import Item
from noticeparse.layout.evidence import opens_a_line
from noticeparse.readers.features import leads_feature
from noticeparse.readers.positions import Point
from noticeparse.readers.verbs import canonical_verb

_POINTS_BACK = re.compile(
    r"(?:(?:there|here)(?! (?:is|are|was|were)\b)|thereat|therein)\b"
    r"|[^,;]*\b(?:the )?same (?:place|spot|site)\b",
    re.IGNORECASE,
)
_OF_NEXT = re.compile(
    r"\b(?:and|also),? (?:on|for) (?:the )?(?:charts?|sheets?|chts?\.?)[ ]?"
    r"(?:no\.? )?[0-9]{1,5}[^0-9\w]*(?P<verb>\w*)\W*$",
    re.IGNORECASE,
)
"""Words at the end of an item that say for which chart the next one is."""
_COMMANDS_NEXT = re.compile(
    r"[a-z,] (?:insert|add|delete|remove|move|replace|substitute|amend)[ :]*$", re.IGNORECASE
)
_MOVED = re.compile(
    r"[ ,;:(\[-]*(?:(?:and|but|which|that|it|then|is|are|was|were|has|have|be|been|being|to|now)"
    r" ){0,5}"
    r"(?:moved|shifted|relocated|transferred|repositioned|re-?sited|displaced)"
    r"(?: (?:to|from|into|in))?[ ,;:(\[]*",
    re.IGNORECASE,
)
"""Words that tell of the thing above alone, and where it has gone."""
_JOINT = re.compile(r"[ ,;]*(?:and|also|then|and (?:also|then))[ ,;:]*", re.IGNORECASE)
_COMES = re.compile(r"[ ,;]*(?:by|with)\b", re.IGNORECASE)
_ENDS_IN_AND = re.compile(r"\b(?:and|also|plus),?(?: (?:in|at))?\W*$", re.IGNORECASE)
_HEADS_PLACES = re.compile(r"\b(?:at|on|over|off|near|marking|to mark)[ :.-]*$", re.IGNORECASE)
_PARTS = re.compile(r"[.;\n]")
_A_LEGEND = re.compile(r"[ ,:]*(?:the |an? )?(?:legend|note|words?)\b", re.IGNORECASE)
_BARE_LEGEND = re.compile(
    r"[ ,:]*(?:the |an? )?(?:legend|note|words?|abbreviation)[ ,:]{1,4}(?=[^\s\"])",
    re.IGNORECASE,
)
"""Of several legends, `Legends:`, each line below is one."""
_AS_CHARTED = re.compile(r"[ ,:]*[A-Z][A-Za-z]{0,11}\.?(?: [A-Z0-9][A-Za-z0-9]{0,7}\.?)?[ ,:]*")
"""A word or two as a chart has them."""
_BETWEEN = re.compile(r"\bbetween [^,;]{1,40}$", re.IGNORECASE)
_AND_NAME = re.compile(
    r"and (?:the )?(?:nos?\b\.? ?[0-9]{1,3}[A-Z]?|[A-Z]{0,3}[0-9]{1,3}|[A-Z]|\"[^\"]{1,40}\")",
    re.I,
)
_MANY = re.compile(r"[a-z]{3,}s *:$", re.IGNORECASE)


def hold_back_run_on(context: Context, items: Sequence[Item]) -> None:
    """Give such items of a chart section, in text order, an error."""
    _hold_wordings(context, items)
    for index, (above, item) in enumerate(pairwise(items), start=1):
        if _points_back(context, above, item):
            _hold(context, items[index:], "place-of-neighbour")
            break
        if _has_words_of_next(context, above, item):
            _hold(context, items[index - 1 :], "place-of-neighbour")
            break
    for above, item in pairwise(items):
        _hold_legends(context, above, item)
        if _lies_between(context, above, item):
            _hold(context, (above, item), "place-of-neighbour")
        if _goes_to(context, above, item):
            _hold(context, [above, item], "verb-within-words")
    for index, item in enumerate(items):
        if _ends_as_next(context, item, items[index + 1 : index + 2]):
            _hold(context, items[index : index + 2], "verb-within-words")
        if _has_thing_behind(context, item) or _has_things_between(context, item):
            _hold(context, [item], "feature-kinds-several")
        if _heads_list(context, item):
            # Only the first item below such a line is sure, and those of which it is told again.
            others = [one for one in _listed(items, index) if own_words(one) == one.words]
            _hold(context, others, "feature-kinds-several")


def _hold_wordings(context: Context, items: Sequence[Item]) -> None:
    """Hold back what stands below a bare legend as it does: `Wk` may be a wreck or a wording."""
    is_below = False
    for above, item in pairwise(items):
        words = context.joined(item.words)
        is_led = _BARE_LEGEND.match(context.joined(above.words)) is not None
        goes_on = item.verb_piece is None and item.heading == above.heading
        is_below = goes_on and (is_below or is_led) and _AS_CHARTED.fullmatch(words) is not None
        if is_below:
            _hold(context, [item], "feature-kinds-several")


def _hold_legends(context: Context, above: Item, item: Item) -> None:
    """Hold back a legend without a place in one sentence with a command that has one."""
    if item.verb_piece is None or above.has_place == item.has_place:
        return
    bare = item if above.has_place else above
    between = context.text[max(end for _, end in above.pieces) - 1 : item.verb_piece[0]]
    joins = not _PARTS.search(between) and item.verb_piece[0] >= above.pieces[0][1]
    if joins and bare.words and _A_LEGEND.match(context.joined(bare.words)):
        _hold(context, [bare], "item-without-position")


def _lies_between(context: Context, above: Item, item: Item) -> bool:
    """Whether two items are the ends of a row: `all buoys between No 1 (P) and No 7 (Q)`."""
    if item.verb_piece is not None or not item.words or not above.words:
        return False
    joins = _AND_NAME.fullmatch(context.joined(item.words).strip(" ,()")) is not None
    return joins and _BETWEEN.search(context.joined(above.words)) is not None


def _hold(context: Context, items: Sequence[Item], code: str) -> None:
    for item in items:
        if item.verb is not None and all(fault.code != code for fault in item.faults):
            item.faults.append(over(context, item, code))


def _points_back(context: Context, above: Item, item: Item) -> bool:
    """Whether an item is told to be where the one above is, and has another place."""
    if not item.words or item.refers or not item.has_place or not above.has_place:
        return False
    if _POINTS_BACK.match(context.joined(item.words)) is None:
        return False
    return _points(item) != _points(above)


def _has_words_of_next(context: Context, above: Item, item: Item) -> bool:
    """Whether the last words of an item open the line on which the place of the next stands.

    Below places in front, `P depth 5.1m,` and on the next line `rock Q`: all behind has slid.
    """
    if len(above.words) < 2 or not item.places or not above.places or item.verb_piece is not None:
        return False
    start, end = max(above.words)
    place = min(one.element.start for one in item.places)
    in_front = min(one.element.start for one in above.places) < above.words[0][0]
    follows = end <= place and not context.text[end:place].strip(" ,:;-")
    opens = opens_a_line(context.text, start)
    return in_front and follows and opens and "\n" not in context.text[end:place]


def _goes_to(context: Context, above: Item, item: Item) -> bool:
    """Whether an item is the place to which the one above is moved: `pile P (moved to Q)`."""
    if item.verb_piece is not None or not item.has_place or not above.has_place:
        return False
    return _MOVED.fullmatch(context.joined(item.words)) is not None


def _points(item: Item) -> list[Point]:
    return [place.element.value.point for place in item.places if place.element.kind == "point"]


def _ends_as_next(context: Context, item: Item, below: Sequence[Item]) -> bool:
    """Whether the words behind the places of an item are the first ones of the next."""
    if not item.tail:
        return False
    words = context.joined(item.tail)
    found = _OF_NEXT.search(words)
    if found is not None and (not found["verb"] or canonical_verb(found["verb"]) is not None):
        return True
    if _COMMANDS_NEXT.search(words) is not None:
        return True
    start, end = item.tail[-1]
    if not below or below[0].verb_piece is None or not opens_a_line(context.text, start):
        return False
    if _JOINT.fullmatch(context.text, start, end):
        # `in P, / and insert …` joins the commands, and says nothing of the next one.
        return False
    if canonical_verb(item.verb or "") == "replace" and _COMES.match(words) is not None:
        # `by a light-buoy, / Fl.R.3s, insert …`: the line ends within what comes.
        return False
    return "\n" not in context.text[end : below[0].verb_piece[0]]


def _has_thing_behind(context: Context, item: Item) -> bool:
    """Whether an item is cut behind `and, in`, and its place is that of the thing behind it."""
    if not item.tail or not item.words:
        return False
    behind = context.joined(item.tail).lstrip(" ,")
    article = behind.lower().startswith(("a ", "an ", "the "))
    joins = _ENDS_IN_AND.search(context.joined(item.words)) is not None
    return joins and article and leads_feature(behind)


def _has_things_between(context: Context, item: Item) -> bool:
    """Whether things stand among the places of an item, before and behind one of them."""
    starts = sorted(place.element.start for place in item.places)
    if len(starts) < 2 or LEADS_ON.search(context.joined(item.words)) is not None:
        return False
    between = [
        bisect_right(starts, start)
        for start, end in item.words
        if leads_feature(context.text[start:end])
    ]
    return len({at for at in between if at > 0}) > 1


def _listed(items: Sequence[Item], index: int) -> Iterator[Item]:
    """The items that follow in a list: up to the next command, or line that heads others."""
    heading = items[index].heading
    return takewhile(
        lambda one: one.verb_piece is None and one.heading == heading, items[index + 1 :]
    )


def _heads_list(context: Context, item: Item) -> bool:
    """Whether an item opens with a line of a class, or of a relation to the places below it."""
    if len(item.words) < 2:
        return False
    (start, end), (after, _) = item.words[:2]
    between = context.text[end:after]
    line = context.text[start:end].rstrip() + between.split("\n")[0].strip()
    is_heading = _HEADS_PLACES.search(line) is not None or _MANY.search(line) is not None
    return "\n" in between and is_heading
