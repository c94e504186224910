"""Participles that stand behind a thing and tell what was done with it: `Pile, removed`.

In comes a stretch of words, out the one participle in it that commands, if one does, and whether
the words behind it are what may follow it.  Places and lines are not known here.
"""

from __future__ import annotations

import re

from noticeparse.layout.evidence import OPEN_END
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.places import leads_to_circle, only_relates
from noticeparse.readers.verbs import canonical_verb

_DONE = re.compile(
    r"(?<![A-Za-z\"-])(?P<fill>(?:to be|now|newly|permanently) )?(?P<verb>"
    r"(?:(?:taken|struck|put|pulled|cut|rubbed|written|inked) (?:out|up|away|off|down|in))"
    r"|[A-Za-z]{3,14}(?:ed|awn)|(?:re-?)?laid|re-[a-z]{3,14}ed|built)"
    r"(?P<chart> (?:on|in|from) (?:the|this) charts?)?(?![A-Za-z\"-])",
    re.IGNORECASE,
)
_ADJECTIVES = frozenset("charted shown located cleared destroyed lit plotted printed".split())
"""Participles that tell how a thing is, and not what is to be done."""
_UNSURE = frozenset(
    "not never no reported possibly been being is are was were be has have half part almost soon"
    " once maybe perhaps quite".split()
)
"""Words behind which a participle does not tell what was done."""


def participle(text: str, start: int, end: int, *, is_rest: bool) -> re.Match[str] | None:
    """The one word in a stretch that tells what was done with the thing before it."""
    found = [
        one
        for one in _DONE.finditer(text, start, end)
        if one["verb"].lower() not in _ADJECTIVES
        and canonical_verb(one["verb"]) is not None
        and text.count('"', start, one.start()) % 2 == 0
    ]
    if len(found) != 1:
        return None
    thing = text[start : found[0].start()].rstrip()
    joint = thing[-1:] if thing[-1:] in (",", "-", ":", ";") else ""
    named = thing.rstrip(" ,-:;")
    if is_rest:
        return found[0] if joint or not named else None
    last = named.rpartition(" ")[2].lower()
    if not joint and (last.endswith("ly") or last in _UNSURE | OPEN_END):
        return None
    known = has_kind(named) and leads_feature(named)
    # Without a comma only words of the trade are the thing that the participle stands behind.
    may_be = known or (joint in (",", "-") and named[:1].isupper() and len(named.split()) < 6)
    return found[0] if named and may_be and not named.endswith(".") else None


def fits_behind(written: str, rest: str) -> bool:
    """Whether what follows a participle is what may follow it, and no other sentence."""
    verb, first = canonical_verb(written), rest.partition(" ")[0].lower()
    if only_relates(rest) or leads_to_circle(rest):
        return True
    if verb == "replace":
        return first in ("by", "with")
    if verb == "amend":
        return first in ("to", "from") or written.lower() in ("renamed", "renumbered")
    return False
