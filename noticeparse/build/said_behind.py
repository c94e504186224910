"""What is said of a thing behind its place: that it stays, or that something else becomes of it.

`Delete buoy P, beacon Q being retained`: the verb holds for the buoy alone.  `Delete light P, to
be amended to Fl.10s` tells of two changes.  Purposes (`to mark the wreck`) and states are left to
the readers, and a sentence with a verb of its own is not judged here.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.build.conditions import is_of_sentence
from noticeparse.build.extents import within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.evidence import opens_a_line
from noticeparse.readers.features import has_kind, value_property
from noticeparse.readers.verbs import Verb, canonical_verb
from noticeparse.stretch import gather

_AUXILIARY = "is|are|was|were|be|being|been|to|shall|will|must|should|may|has|have|still|now"
_SAID = re.compile(
    r"[ ,;:.(-]*(?:(?:and|which|that|it|this|these|both|all) )?"
    rf"(?P<auxiliary>(?:(?:{_AUXILIARY}) )*)(?P<not>not )?(?P<word>[a-z]+)(?![a-z-])",
    re.IGNORECASE,
)
_STAYS = re.compile(
    r"stay|remain|retain|kept|keep|stands?$|stood$|left$|unchanged|unaltered|unaffected"
    r"|undisturbed|intact|untouched|no$",
    re.IGNORECASE,
)
_NO_CHANGE = re.compile(r"no (?:change|alteration|action|deletion|insertion|removal)", re.I)


def said_behind(context: Context, item: Item, verb: Verb) -> Iterator[Fault]:
    """The fault of words behind the place by which the verb does not hold, or not alone."""
    if verb not in ("insert", "delete", "move") or not item.tail:
        return
    if is_of_sentence(item.verb or ""):
        return
    if opens_a_line(context.text, item.tail[0][0]):
        # `No change` on a line of its own heads what stands below.
        return
    behind = gather(context.text, item.tail)
    said = _SAID.match(behind.text)
    if said is None:
        return
    span = said.start("auxiliary"), said.end("word")
    word, rest = said["word"], behind.text[said.end() :]
    told = canonical_verb(word)
    auxiliary = said["auxiliary"].lower().split()
    if _STAYS.match(word):
        is_thing = has_kind(rest) and not auxiliary
        is_none = word.lower() == "no" and not _NO_CHANGE.match(behind.text, said.start("word"))
        if not is_thing and not is_none:
            yield within(context, "sentence-under-verb", behind, span)
    elif not auxiliary:
        return
    elif told is not None and told != verb and "be" in auxiliary:
        yield within(context, "verb-within-words", behind, span)
    elif verb == "delete" and told is None and value_property(word) == {"unknown"}:
        yield within(context, "sentence-under-verb", behind, span)
