"""Words that speak of what is done to a thing, not of the thing: `Cancel insertion of rock`.

The rock was to be inserted and now is not; a search for a wreck that is discontinued leaves the
wreck where it is.  The verb holds for the insertion or the search, and not for the feature.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.build.doubts import PROPERTY_AHEAD
from noticeparse.build.extents import within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.rare import Rare
from noticeparse.readers.features import has_kind, value_property
from noticeparse.readers.unchanged import AT_START, changes_nothing
from noticeparse.readers.verbs import canonical_verb
from noticeparse.records.feature import Feature
from noticeparse.stretch import Stretch, blanked, gather, without_asides

_JOINTS = ("of", "for", "on", "to", "at", "about", "over")
_CHANGE_OF = Rare(
    r"\b(?P<change>insertion|addition|deletion|removal|withdrawal|amendment|alteration|relocation"
    r"|replacement|substitution|establishment|reestablishment|re-establishment|discontinuance"
    r"|discontinuation|cancellation|laying|construction|demolition|dismantling|erection|salvage"
    r"|salving|raising|recovery|dredging|dispersal|destruction|marking|buoyage|buoying"
    r"|(?<!vertical )(?<!horizontal )(?<!safe )clearance"
    r"|lighting|search|searches|hunt|survey|surveys|surveying|investigation|examination"
    r"|inspection|maintenance|repairs?|diving|report|reports|announcement|work|works|operations)"
    rf" (?:{'|'.join(_JOINTS)}) (?:the |an? |this |that |these |all )?(?P<other>[^,;]+)",
    "about at for of on over to",
    re.IGNORECASE,
)
_CONTRACTED = Rare(
    r"(?<![\w-])(?:canxd?|cnld?|disco?n?td|discont|wdrn|wthdrn|wdn|rplcd?|repld|deld|estabd|estbd)"
    r"(?![\w-])",
    "canxd cnld deld disco estbd repld rplcd wdn wdrn wthdrn",
    re.IGNORECASE,
)
"""Verbs as telegrams cut them short, which may be said of this item or of the next."""
_OUT = Rare(r"(?<![\w-])EXTD?(?![\w-])", "extd")
"""A light that is out, in a telegram."""
_SHOULD = Rare(
    r"\b(?:should|must|shall|has to|have to|needs? to|ought to) (?:now |also )?be "
    r"[a-z-]{3,14}(?:ed|wn|id|en)\b",
    "also be now",
    re.IGNORECASE,
)
"""What is to be done, in a sentence of its own: `The rock is gone and should be removed`."""
_VERB_BEFORE = re.compile(r" ?: ?(?P<verb>[A-Za-z]{3,12}) ?: ?(?P<thing>[^:]+)")
_VERB_BEHIND = re.compile(
    r" ?:? ?(?P<thing>[^:]+?) ?: (?P<verb>[A-Za-z]{3,12}(?: [a-z]{2,10}){0,2}) ?\.?"
)
"""What is done with a thing, between colons as the place before it: `P: Buoy: retain`."""


def words_of_change(
    context: Context, item: Item, words: Stretch, feature: Feature
) -> Iterator[Fault]:
    """A word for what is done to the feature read, or one that takes the verb above back."""
    if feature.legend is not None:
        return
    plain = without_asides(words.text)
    found = None
    is_amended = canonical_verb(item.verb or "") == "amend"
    told_of = blanked(plain, PROPERTY_AHEAD) if is_amended else plain
    if not set(plain.lower().split()).isdisjoint(_JOINTS):
        found = next((one for one in _CHANGE_OF.finditer(told_of) if has_kind(one["other"])), None)
    if found is not None:
        yield within(context, "verb-within-words", words, found.span("change"))
    elif (told := _cut_short(plain, item)) is not None:
        yield within(context, "verb-within-words", words, told.span())
    elif item.verb_piece is None and (told := AT_START.match(plain)) is not None:
        yield within(context, "sentence-under-verb", words, told.span())
    else:
        yield from _in_place_of_verb(context, item)
        own = gather(context.text, [*item.words, *item.tail])
        if (should := _SHOULD.search(own.text)) is not None:
            yield within(context, "sentence-under-verb", own, should.span())


def _cut_short(plain: str, item: Item) -> re.Match[str] | None:
    """A verb of telegrams among the words of an item: `WRECK P CANX`, `CANX BUOY P`."""
    told = _CONTRACTED.search(plain)
    return _OUT.search(plain) if told is None and item.verb_piece is None else told


def _in_place_of_verb(context: Context, item: Item) -> Iterator[Fault]:
    """A word between colons that is no verb: the verb of another item does not hold for it."""
    for pieces in (item.words, item.tail):
        own = gather(context.text, pieces)
        plain = without_asides(own.text)
        found = None
        if plain.lstrip().startswith(":") and item.verb_piece is None:
            found = _VERB_BEFORE.fullmatch(plain)
        found = found or _VERB_BEHIND.fullmatch(plain)
        if found is None or not has_kind(found["thing"]):
            continue
        verb = found["verb"]
        is_value = (
            has_kind(verb)
            or bool(value_property(verb) - {"unknown"})
            or canonical_verb(verb) is not None
        )
        if changes_nothing(verb) or (plain.lstrip().startswith(":") and not is_value):
            yield within(context, "verb-unknown", own, found.span("verb"))
            return
