"""Words that speak of what is done to a thing, not of the thing: `Cancel insertion of rock`.

The rock was to be inserted and now is not; a search for a wreck that is discontinued leaves the
wreck where it is.  The verb holds for the insertion or the search, and not for the feature.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.build.extents import within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.readers.features import has_kind
from noticeparse.records.feature import Feature
from noticeparse.stretch import Stretch, blanked

_QUOTED = re.compile(r'"[^"]*"|\([^()]*\)')
_CHANGE_OF = re.compile(
    r"\b(?P<change>insertion|addition|deletion|removal|withdrawal|amendment|alteration|relocation"
    r"|replacement|substitution|establishment|reestablishment|re-establishment|discontinuance"
    r"|discontinuation|cancellation|laying|construction|demolition|dismantling|erection|salvage"
    r"|salving|raising|recovery|dredging|dispersal|clearance|destruction|marking|buoyage|buoying"
    r"|lighting|search|searches|hunt|survey|surveys|surveying|investigation|examination"
    r"|inspection|maintenance|repairs?|diving|report|reports|announcement|work|works|operations)"
    r" (?:of|for|on|to|at|about|over) (?:the |an? |this |that |these |all )?(?P<other>[^,;]+)",
    re.IGNORECASE,
)
_DISREGARD = re.compile(
    r"(?:please )?(?:disregard|ignore|revoke|rescind|annul|void|countermand|retain|keep|leave)\b",
    re.IGNORECASE,
)
"""At the start of an item below a verb: that verb is taken back for it."""


def words_of_change(
    context: Context, item: Item, words: Stretch, feature: Feature
) -> Iterator[Fault]:
    """A word for what is done to the feature read, or one that takes the verb above back."""
    if feature.legend is not None:
        return
    plain = blanked(words.text, _QUOTED)
    found = next((one for one in _CHANGE_OF.finditer(plain) if has_kind(one["other"])), None)
    if found is not None:
        yield within(context, "verb-within-words", words, found.span("change"))
    elif item.verb_piece is None and (told := _DISREGARD.match(plain)) is not None:
        yield within(context, "sentence-under-verb", words, told.span())
