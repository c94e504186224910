"""A further thing with a place of its own, behind the place of another in the same sentence.

`Delete buoy P, beacon Q` and `… and the old beacon Q` are two commands; `…, replaced by beacon Q`
and `… (see beacon Q)` are one, and a word on another thing.  What may stand between a place and
one more thing of the same verb is told here: a joint, an article, and words that describe a thing.
Which thing the verb holds for where other words stand there is not guessed.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item as Draft
from noticeparse.layout.evidence import OPEN_END, PROPERTIES, opens_a_line
from noticeparse.layout.line.elements import Element, words_of
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.places import read_phrase
from noticeparse.readers.told import told_by
from noticeparse.readers.verbs import canonical_verb
from noticeparse.readers.words import Item

_CODE = "place-of-another"
_OF_FEATURE = re.compile(rf"{PROPERTIES} of ", re.IGNORECASE)
"""`name of buoy at P, to "No 4"`"""
_JOINT = re.compile(
    r"[ ,;:.&+/-]*(?:(?:and|also|then|plus|another|further|likewise|as well as|together with"
    r"|similar|both|the|an?)[ ,]+){0,5}",
    re.IGNORECASE,
)
_GERUND = re.compile(r"[a-z]{3,12}ing(?= )", re.IGNORECASE)
_CHARTED = re.compile(r"(?:existing|charted|same|former)\b", re.IGNORECASE)
"""What lies there already, and is named for the sake of the first thing."""
_LEADS = re.compile(
    r"[ ,;:]*(?:(?:and )?(?:continuing|onwards?)|(?:and )?then(?=[ ,]*$)|to|into|from|by|with|for"
    r"|as(?! well)|on|near|off|over|under|across|beside|alongside)\b",
    re.IGNORECASE,
)
"""Words that go on with what is said of the first thing: a new state, or what lies beside it."""
_SPANS = re.compile(r"\b(?:between|from|joining|connecting|linking)\b", re.IGNORECASE)
_RUNS_ON = re.compile(
    r"[ ,;]*(?:and )?(?:then )?(?:continuing|continues|thence|onwards?|extending|extends|as far as"
    r"|up to|until|ending|terminating|running|passing|via)\b|[ ,;]*(?:and )?then[ ,]*$",
    re.IGNORECASE,
)
"""Words by which a line goes on behind a place: `and continuing to Q`."""
_OTHER_END = re.compile(r"[ ,]*(?:and|to)\b", re.IGNORECASE)
_BRACKET = re.compile(r"[ ,]*\([^()]*\)(?=[ ,;]*(?:[,;&]|and\b))")
_VALUES = frozenset(("light", "light_words", "sectors", "sound", "racon", "ais", "depth"))
_PARTS = frozenset(
    "area areas centre corner danger elbow end ends group groups head line lines middle pair part"
    " parts root row side".split()
)
"""Nouns of what a thing is made of, or of several: `head of the jetty`."""


def leads_item(words: str, verb: str) -> bool:
    """Whether words begin as a new item would: with a feature, or what of one is amended."""
    is_property = canonical_verb(verb) == "amend" and _OF_FEATURE.match(words) is not None
    return leads_feature(words) or (is_property and has_kind(words))


def only_leads(text: str, element: Element) -> bool:
    """Whether words only lead to a place."""
    words = text[element.start : element.end]
    return element.kind == "words" and all(part.kind != "words" for part in read_phrase(words))


def bracket_behind(text: str, words: Element) -> int | None:
    """Where a bracket ends that says more of the thing above: `wreck P (PA), rock Q`."""
    found = _BRACKET.match(text, words.start, words.end)
    return found.end() if found is not None else None


def lost_thing(text: str, above: Draft, label: tuple[int, int]) -> Fault | None:
    """The fault of a letter behind words that lead to what it heads: `replaced by (b) beacon`."""
    if not above.tail or not above.has_place:
        return None
    start, end = above.tail[-1]
    said = text[start:end]
    is_led = said.rstrip().rpartition(" ")[2].lower() in OPEN_END - {"and", "or"}
    if not is_led or text[end : label[0]].strip(" "):
        return None
    return Fault(_CODE, start, label[1], {"written": said.strip(" ,")})


def thing_aside(text: str, above: Draft, words: Sequence[Element]) -> list[Fault]:
    """The fault of a further thing, where words lead to it that are no part of a list."""
    verb = canonical_verb(above.verb or "")
    if verb is None or not _goes_on(text, above, words[0]):
        return []
    said, start, end = words_of(text, words), words[0].start, words[-1].end
    is_run_on = "\n" not in text[above.places[-1].element.end : start]
    if is_run_on and any(fault.code == _CODE for fault in above.faults):
        # `…, replaced by beacon Q and pile R`
        return [Fault(_CODE, start, end, {"written": said})]
    opening = _LEADS.match(said) or _other_end(text, above, said)
    if opening is not None:
        span: tuple[int, int] | None = opening.span()
    else:
        span = _words_of_change(said) if verb in ("amend", "replace") else _words_aside(said)
    if span is None:
        return []
    return [Fault(_CODE, start, end, {"written": said[slice(*span)].strip(" ,")})]


def torn_line(text: str, above: Draft, words: Sequence[Element]) -> list[Fault]:
    """The fault of a line that goes on behind its last place with words that lead further."""
    said = words_of(text, words)
    if above.verb is None or _RUNS_ON.match(said) is None or not _goes_on(text, above, words[0]):
        return []
    start, end = above.pieces[0][0], words[-1].end
    return [Fault("item-torn", start, end, {"written": text[start:end]})]


def _goes_on(text: str, above: Draft, first: Element) -> bool:
    """Whether words go on with the sentence of the item above: a line of its own begins anew."""
    if not opens_a_line(text, first.start):
        return True
    end = above.places[-1].element.end
    is_open = text[end : first.start].strip().startswith((",", ";"))
    return (is_open and text[first.start].islower()) or text[first.start] in "(["


def _other_end(text: str, above: Draft, words: str) -> re.Match[str] | None:
    """The joint before the other end of a line: `cable between pylon P and tower Q`."""
    spans = any(_SPANS.search(text, start, end) for start, end in above.words)
    return _OTHER_END.match(words) if spans and len(above.places) == 1 else None


def _words_of_change(words: str) -> tuple[int, int] | None:
    """What stands before a further thing that changes, too, and is no word of a thing."""
    start, ahead = _ahead(words)
    is_property = [one.text.lower() for one in ahead[1:2]] == ["of"]
    is_aside = bool(ahead) and _is_strange(ahead[0]) and not is_property
    return (start, start + ahead[0].end) if is_aside else None


def _words_aside(words: str) -> tuple[int, int] | None:
    """The words in front of a further thing by which it may be no object of the same verb."""
    start, ahead = _ahead(words)
    rest = words[start:]
    if (told := _GERUND.match(rest)) is not None and canonical_verb(told[0]) is not None:
        # `…, deleting 8.6m, Q`
        return start, start + told.end()
    if not ahead:
        return None
    is_led = leads_feature(rest) or _may_lead(ahead[0])
    if is_led and _CHARTED.match(rest) is None and not any(map(_is_strange, ahead)):
        return None
    return start, start + ahead[-1].end


def _ahead(words: str) -> tuple[int, list[Item]]:
    """Where a thing begins behind its joint, and what stands in front of the noun or value."""
    joint = _JOINT.match(words)
    start = joint.end() if joint is not None else 0
    told = told_by(words[start:])
    named = told.head or next((one for one in told.first_words if one.role in _VALUES), None)
    if named is None:
        return start, []
    return start, [item for item in told.first_words if item.start < named.start]


def _may_lead(item: Item) -> bool:
    """Whether a word that describes nothing may stand first: a name, a value, a part."""
    return _is_name(item) or item.role in _VALUES or item.text.lower() in _PARTS


def _is_name(item: Item) -> bool:
    return item.role == "proper" or (item.role == "unknown" and item.text[:1].isupper())


def _is_strange(item: Item) -> bool:
    """Whether the vocabulary knows nothing of a word, and it is no name: `replaced`, `(`."""
    return item.role in ("unknown", "other") and not _is_name(item)


LISTS = ("joining", "bounded by", "between", "through")
NAME_OF_POINT = (
    r"\((?:the )?(?:(?:[NSEW]{1,3}|(?:north|south|east|west)[a-z-]*|sea|seaward|landward|inshore"
    r"|offshore|shore|outer|inner|upper|lower|landing) )?"
    r"(?:shore|coast|beach|end|ends|corner|bend|landing(?: place)?|landfall|point|start|finish"
    r"|seaward|landward|turning point)\)"
)
"""What a bracket behind a place calls it: `(shore)`, `(NW corner)`, `(seaward end)`."""
_NAME_BEFORE_ANOTHER = re.compile(rf"{NAME_OF_POINT}[ ,;]", re.IGNORECASE)


def names_point(text: str, item: Draft, behind: str) -> bool:
    """Whether words begin with what a point of a line or limit is: `joining P (shore), Q`."""
    leads = text[slice(*item.words[-1])] if item.words else ""
    is_listed = leads.rstrip().lower().endswith(LISTS)
    return is_listed and _NAME_BEFORE_ANOTHER.match(behind) is not None


def is_broken(item: Draft, behind: str) -> bool:
    """Whether words behind the place of what goes break off before what comes: `by a`.

    The verb is that of the item, which a sentence below the heading of a list has of its own.
    """
    words, verb = behind.lower().split(), canonical_verb(item.verb or "")
    if verb == "amend":
        return words[-1] == "to"
    return verb == "replace" and words[0] in ("by", "with", "for") and not has_kind(behind)
