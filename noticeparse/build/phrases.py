"""How the words of an item, before and behind its place, become one phrase."""

from __future__ import annotations

import re

from noticeparse.readers.verbs import Verb, tells_new_state

_JOINT_IN_FRONT = re.compile(r"[ ,;]*(?:and |/ )", re.IGNORECASE)


def opening_length(words: str) -> int:
    """How long a joint before the feature is: `and rock`, or the slash in `INSERT / ROCK`."""
    found = _JOINT_IN_FRONT.match(words)
    return found.end() if found is not None else 0


def joint_between(verb: Verb, written: str, rest: str) -> str:
    """What stands between a description and the words behind its position."""
    if tells_new_state(written):
        return " to "
    if verb not in ("amend", "replace"):
        return ", "
    if rest.lower().startswith(("to ", "from ", "by ", "with ", "as ")):
        return " "
    return ": " if verb == "amend" else ", "
