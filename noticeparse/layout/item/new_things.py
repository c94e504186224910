"""`New:` before a whole item, which is to be inserted, and not the new state of another.

A list of what is new, removed and shifted has its verbs as keys.  Where an old state stands beside
it, or an amendment above that has not said what it changes to, `New:` tells the state instead.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.evidence import lead_index
from noticeparse.layout.item.states import state_told
from noticeparse.layout.line.elements import Element, Line, words_of
from noticeparse.readers.features import leads_feature
from noticeparse.readers.verbs import canonical_verb

_NEW = re.compile(r"(?:new|newly (?:laid|charted|built))[ \t]{0,12}:?", re.IGNORECASE)
_OLD = re.compile(
    r"^[ \t]{0,40}(?:old|was|former(?:ly)?|existing|previously|before|from|present)\b[^\n:]{0,20}"
    r"(?::| {2})",
    re.IGNORECASE | re.MULTILINE,
)
_FIRST_WORD = re.compile(r"^(?P<blanks> {0,40})(?P<word>[A-Za-z]{2,20})\b", re.MULTILINE)
_LONGEST = 600
_COMPLETE = re.compile(r"\b(?:to|by|with|into)\b", re.IGNORECASE)


def with_new_thing(text: str, line: Line, body: Sequence[Line], below: Line | None) -> Line:
    """The line, with `New:` in front of an item as its verb; `body` is what stands above it."""
    if not line.elements:
        return line
    lead = lead_index(line)
    first, behind = line.elements[lead], line.elements[lead + 1 :]
    if not _is_new(text, first, behind):
        return line
    told = behind or (below.elements if below is not None else ())
    is_feature = leads_feature(words_of(text, (e for e in told if e.kind == "words")))
    has_place = any(one is not None and one.has("point", "half") for one in (line, below))
    if not (is_feature and has_place) or _tells_a_state(text, line, body):
        return line
    verb = first._replace(kind="verb", value="insert")
    return line._replace(elements=(*line.elements[:lead], verb, *behind))


def _is_new(text: str, first: Element, behind: Sequence[Element]) -> bool:
    """Whether a key, or words that stand apart, say that something is new."""
    words = text[first.start : first.end].strip()
    if _NEW.fullmatch(words) is None:
        return False
    if not behind:
        return first.kind == "words" and words.endswith(":")
    is_apart = first.kind == "key" or (first.kind == "words" and first.gap and behind[0].gap)
    return is_apart and behind[0].kind == "words"


def _tells_a_state(text: str, line: Line, body: Sequence[Line]) -> bool:
    """Whether the words may tell the new state of a feature, whose old one stands beside them."""
    rest = _up_to_next(text, line)
    above = [one for one in body if not one.is_blank]
    if _OLD.search(rest):
        return True
    if _is_told(text, line, above):
        return False
    if any(_OLD.match(text, one.start, one.end) for one in above[-4:]):
        return True
    command = next((one for one in reversed(above) if one.has("verb")), None)
    if command is None:
        # Under words that command nothing it says what becomes of them.
        return bool(above)
    at = above.index(command)
    if any(one.elements[0].kind == "key" for one in above[at:]):
        return True
    verb = next(e for e in command.elements if e.kind == "verb")
    told = canonical_verb(verb.value or text[verb.start : verb.end])
    said = text[verb.end : above[-1].end]
    is_whole = _COMPLETE.search(said) is not None and any(
        one.has("point", "half", "reference") for one in above[at:]
    )
    return told not in ("insert", "delete") and not is_whole


def _up_to_next(text: str, line: Line) -> str:
    """What stands below a line, up to the next command in its column or a blank line."""
    rest = text[line.end : line.end + _LONGEST].partition("\n\n")[0]
    column = _column(line)
    for found in _FIRST_WORD.finditer(rest):
        is_next = _NEW.fullmatch(found["word"]) or canonical_verb(found["word"])
        if is_next and len(found["blanks"]) == column:
            return rest[: found.start()]
    return rest


def _is_told(text: str, line: Line, above: Sequence[Line]) -> bool:
    """Whether both states of what the command above changes are told right of its column.

    There the word in the column of the commands opens another item.
    """
    below: list[Line] = []
    column = _column(line)
    for one in reversed(above):
        if _lead(one).kind == "verb":
            states = {state_told(text[e.start : e.end], "amend") for e in map(_lead, below)}
            return _column(one) == column and {"old", "new"} <= states
        if _column(one) <= column:
            return False
        below.append(one)
    return False


def _lead(line: Line) -> Element:
    return line.elements[lead_index(line)]


def _column(line: Line) -> int:
    return _lead(line).start - line.start
