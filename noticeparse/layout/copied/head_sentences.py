"""Sentences that open with the head of a chart: `On Chart 60, last notice 31/26, insert a wreck`.

The head ends where the command begins: there the line is broken instead of within the head, which
leaves the text as long as it is.
"""

from __future__ import annotations

import re

from noticeparse.readers.heads import head_kinds
from noticeparse.readers.verbs import canonical_verb

# How such a head may begin: most texts hold none, and are not read for the whole of it.
_BEGINS = re.compile(r"[OoTtFf](?:n|or?)\s{1,20}(?:the\s{1,20})?[Cc]hart")
_HEAD = re.compile(
    r"(?P<lead>(?<=[.:])[ ])?\b(?:[Oo]n|[Tt]o|[Ff]or)\s{1,20}(?:the\s{1,20})?[Cc]harts?"
    r"\s{1,20}(?=[A-Z]{0,3}\s?[0-9])"
    r"(?:[^.;:]|(?<=\b[Nn]o)\.){1,140}?(?P<end>,?\s{1,20})(?P<verb>[a-z]{2,12})"
    r"(?P<behind>\s{1,20}(?:an?|the|two|three)\s)"
)
_PREVIOUS = frozenset({"PREVIOUS", "PREVIOUS_IN_BRACKETS"})
_WHOSE = re.compile(r"whose (?:preceding|previous|last|former|latest) [a-z]{2,12} (?:is|was)\b")


_IN_COLUMNS = re.compile(r"\n[ \t]*>|[\t|]|[^\n ] {3,20}[^ ]")
"""Marks of mail, and gaps that part cells."""


def with_heads_apart(text: str) -> str:
    """The text, each such head on lines of its own in front of its command."""
    return text if _BEGINS.search(text) is None else _HEAD.sub(_apart, text)


def _apart(match: re.Match[str]) -> str:
    """The sentence with its line broken behind the head."""
    written = match.group()
    verb = match["verb"]
    head = " ".join(written[: match.start("end") - match.start()].split())
    is_command = canonical_verb(verb) is not None and not verb.endswith("ed")
    kinds = head_kinds(head)
    is_head = not _PREVIOUS.isdisjoint(kinds) or (
        "NOTICE_NUMBER" in kinds and _WHOSE.search(head) is not None
    )
    if not is_command or not is_head or _IN_COLUMNS.search(written):
        return written
    end = match.end("end") - match.start()
    behind = match["behind"].replace("\n", " ")
    lead = "\n" if match["lead"] else ""
    return f"{lead}{written[len(lead) : end - 1].replace(chr(10), ' ')}\n{verb}{behind}"
