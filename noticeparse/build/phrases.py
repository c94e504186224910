"""How the words of an item, before and behind its place, become one phrase."""

from __future__ import annotations

import re

from noticeparse.context import Context
from noticeparse.layout.drafts import Item
from noticeparse.layout.item.listed_places import without_count
from noticeparse.readers.verbs import Verb, tells_new_state
from noticeparse.stretch import Stretch, concatenated, gather

_ON_CHART = re.compile(
    r"(?:on|in|to|from|off) (?:(?:the|this|these|your) )?charts?[ ,:-]{1,4}(?=[A-Za-z])",
    re.IGNORECASE,
)
_JOINT_IN_FRONT = re.compile(r"[ ,;]*(?:and |/ )", re.IGNORECASE)
_INFORMED = re.compile(
    r"(?:(?:(?:All )?[A-Za-z][a-z]{2,14}(?:(?:, |,? (?:and|or) )[a-z]{3,14}){0,4} (?:are|is)"
    r"|(?:Notice|It) is) (?:hereby |also )?(?:informed|advised|notified|given|reminded|warned)"
    r"(?: to [a-z, ]{3,40})?|(?:[A-Z][A-Za-z'-]{1,20} ){1,5}(?:hereby |also )?"
    r"(?:gives? notice|announces?|reports?|(?:informs?|advises?|notif(?:y|ies)) [a-z, ]{3,40}))"
    r" that[,:]? "
    r"(?:(?:following (?:an?|the|recent|completion)|as a result of|as shown by|owing to|due to"
    r"|because of|on completion of) [^,;.]{3,90}, )?(?=(?:an?|the|two|three) )"
)
"""Whom a sentence tells it, and what led to it: `Mariners are advised that, following a fire,`."""


def words_of_item(context: Context, item: Item) -> Stretch:
    """The words in front of the places of an item; a name from a column is that of a light."""
    count = len(item.named)
    if not count or item.words[:count] != item.named:
        return without_count(gather(context.text, item.words))
    light = Stretch("light", ((0, item.named[0][0]),))
    named = concatenated(light, gather(context.text, item.named), ' "', '"')
    return concatenated(named, gather(context.text, item.words[count:]))


def opening_length(words: str) -> int:
    """How long a joint before the feature is: `and rock`, or the slash in `INSERT / ROCK`.

    So is what opens the sentence of a port: `Mariners are advised that a wreck`, and what goes on
    with the verb above: `on the chart a wreck`.
    """
    found = _INFORMED.match(words) or _JOINT_IN_FRONT.match(words) or _ON_CHART.match(words)
    return found.end() if found is not None else 0


_OF_SECTORS = re.compile(
    r"(?:(?:the|this) light|which)(?: is)?(?: now)? (?:(?:to|will) (?:show|exhibit)|shows|exhibits"
    r"|showing) ",
    re.IGNORECASE,
)
"""The sectors of the light in front in a clause of their own: `the light to show W 000°-090°`."""


def joint_between(verb: Verb, written: str, described: str, rest: str) -> str:
    """What stands between a description and the words behind its position."""
    if tells_new_state(written):
        return " to "
    if verb not in ("amend", "replace"):
        return ", "
    if rest.lower().startswith(("to ", "from ", "by ", "with ", "as ")):
        return " "
    # Without a new state in front the clause tells it itself.
    is_told = " to " in described and _OF_SECTORS.match(rest) is not None
    return ": " if verb == "amend" and not is_told else ", "
