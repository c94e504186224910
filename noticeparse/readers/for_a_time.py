"""Commands that say for how long they hold, or that they are made in pencil."""

from __future__ import annotations

import re

from noticeparse.readers.dates import MONTH

_VERBS = (
    "insert|add|place|enter|plot|draw|mark|delete|remove|erase|rub out|strike out|take out|amend"
    "|alter|change|revise|replace|substitute|move|shift|relocate|transfer|reposition"
)
_TIME = (
    r"in pencil(?: only)?|temporarily|for the (?:time being|present)|in the meantime|meanwhile"
    r"|(?:until|till) (?!now\b)[^:;.\n]{3,70}?"
    r"|pending (?:(?:a|the|its|their) )?(?:new|next|further|publication|completion|issue|end)\b"
    r"[^:;.\n]{0,60}?"
)
_COMMAND = re.compile(
    rf"(?:(?:please|kindly) )?(?:(?:{_TIME}),? ){{1,2}}(?:(?:please|kindly) )?"
    rf"(?P<verb>{_VERBS})(?: in(?! pencil))?(?: in pencil)?(?= ?:| -| [a-z0-9])"
    r"|(?:(?:please|kindly) )?(?P<pencil>pencil in)(?= ?:| -| [a-z0-9])"
    rf"|(?:(?:please|kindly) )?(?P<first>{_VERBS}) (?:in pencil|temporarily)(?= ?:| -| [a-z0-9])"
    r"|(?:the following(?: [a-z-]{3,16}){0,2} )?(?:(?:is|are|should) )?(?:to )?be "
    r"(?P<told>inserted|added|placed|entered|deleted|removed|erased|amended|altered|changed"
    r"|replaced|moved|shifted) (?:in pencil|temporarily)(?= ?:)",
    re.IGNORECASE,
)
_NEGATED = re.compile(r"\b(?:not|never|no|nor|neither|if|unless|when|once|propos|intend)\b", re.I)
_SPAN = re.compile(r"(?:(?:please|kindly) )?(?:until|till|pending)\b", re.IGNORECASE)
_REST = re.compile(r" ?(?:the following|as follows|on (?:the|this|these) charts?)?(?: ?:| -)\s*")

_DAY = rf"(?:about |approximately )?(?:[0-9]{{1,2}}(?:st|nd|rd|th)? )?{MONTH}\.?,?(?: [0-9]{{4}})?"
_OPEN_END = r"(?:further|later) notice|(?:the )?(?:completion|end) of (?:the )?works?"
_VALIDITY = re.compile(
    r"(?:(?:this|the(?:se)?) (?:temporary |preliminary )?(?:notices?|corrections?) )?"
    r"(?:(?:(?:is|are|remains?|stays?) )?(?:valid|in force|effective)(?: from"
    rf" {_DAY})?,? (?:until|till|to|up to|through) (?:{_DAY}|{_OPEN_END})"
    rf"|(?:expires?|lapses?|ends?) on {_DAY}"
    rf"|(?:from {_DAY},? )?(?:until|till) (?:{_DAY}|{_OPEN_END})|from {_DAY} to {_DAY})\.?",
    re.IGNORECASE,
)


def states_validity(words: str) -> bool:
    """Whether a sentence says for how long a notice holds, and nothing else."""
    return _VALIDITY.fullmatch(" ".join(words.split())) is not None


def command_for_a_time(words: str) -> re.Match[str] | None:
    """The command that opens a line so, with its verb as the last group: `In pencil, move:`.

    A proposal or a condition is none; a span of time ends at a comma, or before the heading of a
    list: in `Until they remove the wreck, insert:` its verb is none.
    """
    found = _COMMAND.match(words)
    if found is None or _NEGATED.search(found[0]) is not None:
        return None
    before = found[0][: found.start(found.lastgroup or 0) - found.start()].rstrip()
    is_open = _SPAN.match(words) is not None and not before.endswith(",")
    return None if is_open and not heads_list(words[found.end() :]) else found


def heads_list(rest: str) -> bool:
    """Whether nothing but a colon, or words that lead to a list, stands behind a verb."""
    return _REST.fullmatch(rest) is not None
