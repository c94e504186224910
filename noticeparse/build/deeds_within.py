"""A further deed in the words of an item: `wreck, deleting depth 12m`, `(P), delete nearby buoy`.

The second thing goes or comes, and would be taken for a value of the first: the depth that is to
be taken off for that of the wreck put on.  A quotation tells nothing of deeds.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache
from re import IGNORECASE

from noticeparse.build.extents import within
from noticeparse.build.other_states import has_value
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.rare import Rare
from noticeparse.readers.features import has_kind, leads_feature, read_feature
from noticeparse.readers.verbs import Verb
from noticeparse.records.feature import Feature
from noticeparse.stretch import Stretch, gather, unquoted

_BESIDE = (
    r"(?:(?:the|an?|any|all|its|both|old|existing|former|previous|present|charted|adjacent|nearby"
    r"|adjoining|neighbou?ring|surrounding|underlying|associated|relevant|corresponding) ){0,4}"
)
_GOES = Rare(
    r"(?<![a-z-])(?:(?:delet|eras|expung|obliterat|effac|eliminat|omitt|cancell?|suppress"
    r"|overprint|overwrit|withdraw|remov|discontinu)ing"
    r"|(?:tak|cross|strik|rubb|cutt|wip|blott|blank|blotch|paint)ing (?:out|off|away|up))"
    r" (?:out |off |away )?"
    rf"{_BESIDE}(?P<other>[^,;()\[\]]+)",
    "blanking blotching blotting cancelling canceling crossing cutting deleting discontinuing"
    " effacing eliminating erasing expunging obliterating omitting overprinting overwriting"
    " painting removing rubbing striking suppressing taking wiping withdrawing",
    IGNORECASE,
)
_COVERS = Rare(
    rf"(?<![a-z-])(?:covering|hiding|obscuring|masking) (?:over |up )?{_BESIDE}"
    r"(?P<other>(?:depth|sounding|drying height|legend|figure|symbol)s?(?![a-z])[^,;()\[\]]*)",
    "covering hiding masking obscuring",
    IGNORECASE,
)
"""A thing drawn over another, which then stands on the chart no longer."""
_COMES = Rare(
    rf"(?<![a-z-])(?:adding|entering|inserting|plotting|charting) {_BESIDE}"
    r"(?P<other>[^,;()\[\]]+)",
    "adding charting entering inserting plotting",
    IGNORECASE,
)
_ORDERED = Rare(
    r"(?<=[,;.)\]] )(?:and |then |also |please ){0,2}(?:insert|add|enter|delete|remove|expunge"
    r"|erase|cancel|omit|obliterate|withdraw|efface|strike out|take out) "
    rf"{_BESIDE}(?P<other>[^,;()\[\]]+)",
    "add cancel delete efface enter erase expunge insert obliterate omit remove strike take"
    " withdraw",
    IGNORECASE,
)
_GOES_ITSELF = Rare(
    r"(?<![a-z-])(?P<other>(?:depth|sounding|drying height)s?(?![a-z])[^,;()\[\]]{0,20}?[0-9]"
    r"[^,;()\[\]]{0,10}?) (?:goes|going|disappears|vanishes|to go|comes out|to come out"
    r"|falls away|drops out)(?![a-z-])",
    "comes disappears drops falls goes going to vanishes",
    IGNORECASE,
)
_MOVED = r"(?:moved|shifted|relocated|re-?positioned|transferred|displaced|re-?sited)(?![a-z-])"
_MOVES = Rare(
    r"(?<=[,;(]) ?(?:and |but |now |then |also |is |was |has been |to be |being ){0,2}"
    rf"{_MOVED}(?= *(?:[,;).]|$)| (?:to|from|into|in|at|[0-9]|(?-i:[NSEW]{{1,3}})(?![a-z])))"
    rf"|(?<![a-z-]){_MOVED}(?= (?:to|from|into)(?![a-z-])| *$)",
    "displaced moved re reposition repositioned relocated resited shifted transferred",
    IGNORECASE,
)
"""A thing that has another place as well: where it stood is not said, or where it stands now."""
_PARTS = frozenset({"TOPMAR", "LIGHTS", "FOGSIG", "RTPBCN", "RADSTA", "RETRFL", "RADRFL"})
"""Classes of what stands on a thing: an amendment may tell that it goes."""


def deeds_within(
    context: Context, item: Item, words: Stretch, verb: Verb, feature: Feature
) -> Iterator[Fault]:
    """The first further deed in the words of an item."""
    text = unquoted(words.text)
    if feature.legend is not None and text == words.text:
        # In front the words of the chart are not told from those of the command.
        words = gather(context.text, item.tail)
        text = words.text
    span = _deed(text, verb)
    if span is not None:
        yield within(context, "verb-within-words", words, span)


@lru_cache(maxsize=4096)
def _deed(text: str, verb: Verb) -> tuple[int, int] | None:
    """Where a further deed is told."""
    moved = None if verb in ("move", "amend") else _MOVES.search(text)
    if moved is not None and has_kind(text[: moved.start()]):
        return moved.start() + len(moved.group()) - len(moved.group().lstrip()), moved.end()
    for pattern in (_GOES, _COVERS, _ORDERED, _GOES_ITSELF, _COMES):
        if pattern is _COMES and verb != "delete":
            continue
        for found in pattern.finditer(text):
            other = found["other"]
            if not has_value(other):
                continue
            if verb != "amend" or (has_kind(other) and leads_feature(other) and _stands(other)):
                return found.span()
    return None


def _stands(words: str) -> bool:
    """Whether words name a thing of its own, and not what stands on another."""
    return _PARTS.isdisjoint(read_feature(words).feature.s57[:1] or ["TOPMAR"])
