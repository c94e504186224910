"""`depth 80, no bottom`: a depth at which no bottom was found, in the one form the grammar reads.

In comes a phrase; out comes one of the same length.  The words behind the comma say that it is
deeper than the figure; a plain sounding would be too shallow.  S-57 QUASOU 5.
"""

from __future__ import annotations

import re

_BEHIND = re.compile(
    r"(?P<figure>[0-9₀-₉½¼¾](?: ?(?:m|met(?:re|er)s?|fms?|fathoms?|ft|feet)\.?)?)"
    r"(?P<words>[,;]? ?\(?(?:(?:with |and )?no[ -]bottom"
    r"(?:[ -](?:found|reached|sounding|sounded))?"
    r"|(?:with |and )?bottom not (?:found|reached|sounded)|no ground(?: found| reached)?"
    r"|not bottomed)\)?)(?![a-z])",
    re.IGNORECASE,
)
_AHEAD = re.compile(r"(?<![a-z])no-bottom(?= (?:depth|sounding))", re.IGNORECASE)
_READ = re.compile(r" \(?no bottom(?: found)?\)?", re.IGNORECASE)
"""What the grammar reads as it stands."""


def with_no_bottom(text: str) -> str:
    """The phrase with `no bottom` right behind its figure."""
    if "bottom" not in text.lower() and "no ground" not in text.lower():
        return text
    return _BEHIND.sub(_behind_figure, _AHEAD.sub("no bottom", text))


def _behind_figure(told: re.Match[str]) -> str:
    if _READ.fullmatch(told["words"]):
        return told[0]
    return f"{told['figure']} no bottom".ljust(len(told[0]))
