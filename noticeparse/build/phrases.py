"""How the words of an item, before and behind its place, become one phrase."""

from __future__ import annotations

import re

from noticeparse.readers.verbs import Verb, tells_new_state

_JOINT_IN_FRONT = re.compile(r"[ ,;]*(?:and |/ )", re.IGNORECASE)


def opening_length(words: str) -> int:
    """How long a joint before the feature is: `and rock`, or the slash in `INSERT / ROCK`."""
    found = _JOINT_IN_FRONT.match(words)
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
