"""What among the remarks may be a change that is lost: sentences without a place, bare things.

`A wreck has been found in P. The light-buoy nearby has been removed.`: the removal is no action.
What says again what an action of the notice does is only told of it.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterator, Sequence, Set
from typing import NamedTuple

from noticeparse.build.extents import item_extent, quoting
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, NoticeDraft
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element
from noticeparse.layout.line.joints import opens_note, tells_no_change
from noticeparse.layout.sentence.sentences import statements
from noticeparse.readers.features import has_kind, leads_feature, read_feature
from noticeparse.readers.verbs import canonical_verb
from noticeparse.records.action import Action
from noticeparse.records.chart import ChartSection
from noticeparse.records.reference import NoticeRef
from noticeparse.vocabulary import kinds

_FORMS = ("has been ", "have been ", "is ", "are ", "is to be ", "are to be ", "was ", "were ")


_CLOSE_BELOW = re.compile(r"[ .;,]{0,20}\n[ \t]{0,200}")

_SAID = re.compile(
    r"\b(?:is|are|was|were|be|been|has|have|will|shall|should|must|may|by|see|refer)\b", re.I
)
"""Words of a sentence that tells something; a bare thing has none of them."""

_SUMMARY = re.compile(r"\b(?:below|above|following|follows?|herein|hereunder|overleaf)\b", re.I)

_OF_BOOKS = re.compile(
    r"(?:[A-Z][a-z]{1,20}: )?(?:in )?(?:the )?"
    r"(?:lists? of (?:lights|radio signals|buoys)|lights? lists?"
    r"|sailing (?:directions|guides?)|pilot book|tide tables?|chart catalogue)\b[^.;]{0,80}?"
    r"\b(?:(?:entry|entries|pages?|lines?|paragraphs?|chapters?|articles?)\b"
    r"|(?:p\.|parts?|volumes?|vol\.|no\.?) ?[0-9])",
    re.IGNORECASE,
)
"""`List of Lights: entry F 612 is to be deleted`, `Sailing Guide, part 3: …`: of the book."""

_INFORMED = re.compile(
    r"^[A-Za-z ,]{3,80}\b(?:informed|advised|notified|reminded|warned|given|told)\s{1,20}that\b",
    re.I,
)
"""Whom a sentence tells it: pilots are no boarding place here."""

_LAST_THAT = re.compile(r"^.*(?:[,;]|\band)\s{1,20}that\b|^[\s,;]{0,20}and\b", re.I | re.S)
"""What stands before the subject of a further clause: `…, and that the moorings`."""

_LETTERS_OF_FAMILY = 3

_THE = re.compile(r"(?:remarks?|notes?)?[ :.]*the\b", re.IGNORECASE)
"""The beginning of a sentence on a thing that was named before."""


def is_for_charts(draft: NoticeDraft, number: NoticeRef | None) -> bool:
    """Whether what a notice tells is to be charted: it is permanent, and no radio warning."""
    return not draft.is_radio and (number is None or number.status == "permanent")


def lost_changes(
    context: Context,
    draft: NoticeDraft,
    number: NoticeRef | None,
    items: Sequence[Item],
    charts: Sequence[ChartSection],
) -> Iterator[Fault]:
    """The faults of a notice's remarks, whose items and charts these are."""
    if is_for_charts(draft, number):
        yield from _changes_without_place(context, draft, items, charts)
    yield from _things_without_verb(context, draft, items)


def _changes_without_place(
    context: Context,
    draft: NoticeDraft,
    items: Sequence[Item],
    charts: Sequence[ChartSection],
) -> Iterator[Fault]:
    """A fault for each such sentence of a permanent notice.

    Above all commands it sums up what they do, where they are about such things as it names.
    """
    first = min((item_extent(item)[0] for item in items if item.has_place), default=0)
    deeds = _Deeds.of([one for chart in charts for one in chart.actions])
    for prose in draft.prose:
        if any(element.kind in PLACES for element in prose.elements):
            continue
        if _heads_rows(context.text, prose.elements):
            # `Delete light-buoys:` above a table whose rows do not say what they are.
            yield quoting(context, "change-without-place", prose.pieces[0])
        for sentence in statements(context.text, prose.elements):
            codes = {
                deeds.code_of(one, is_above=sentence[-1].end <= first)
                for one in _told(context.text, sentence)
            }
            for code in ("change-without-place", "change-summed-up"):
                if code in codes:
                    yield quoting(context, code, (sentence[0].start, sentence[-1].end))
                    break


class _Change(NamedTuple):
    """A change that a sentence tells of: verb, kind, and whether the thing was named before."""

    verb: str
    kind: str
    is_known: bool


class _Deeds(NamedTuple):
    """What the commands of a notice do: verbs with kinds and with classes, and families."""

    done: Set[tuple[str, str]]
    classes: Set[tuple[str, str]]
    families: Set[str]

    @classmethod
    def of(cls, actions: Sequence[Action]) -> _Deeds:
        """What these do."""
        return cls(
            {(one.verb, one.feature.kind) for one in actions},
            {(one.verb, one.feature.s57[0]) for one in actions if one.feature.s57},
            {_family(one.feature.kind) for one in actions} - {""},
        )

    def code_of(self, told: _Change, *, is_above: bool) -> str | None:
        """The code of a change that none of them does; above all of them it may sum them up."""
        if (told.verb, told.kind) in self.done:
            return None
        known = kinds().get(told.kind) if told.is_known else None
        # `The wreck was found by the survey` is the one that is inserted, whatever is known of it.
        if known is not None and (told.verb, known.s57) in self.classes:
            return None
        if _is_done_of_a_special_one(told.verb, told.kind, self.done):
            return None
        sums_up = told.is_known and is_above and _family(told.kind) in self.families
        return "change-summed-up" if sums_up else "change-without-place"


def _family(kind: str) -> str:
    """What the S-57 classes of such things begin with: `ACH` of anchorage areas and berths."""
    known = kinds().get(kind)
    if known is None:
        return ""
    return "BOY" if known.form == "buoy" else known.s57[:_LETTERS_OF_FAMILY]


def _is_done_of_a_special_one(verb: str, kind: str, done: Set[tuple[str, str]]) -> bool:
    """Whether the change of a general kind is done: `a cable has been laid`, of a power cable."""
    general = kinds().get(kind)
    if general is None or not general.s57:
        return False
    special = [kinds()[one] for did, one in done if did == verb and one in kinds()]
    return any(
        (one.s57, one.form) == (general.s57, general.form)
        and all(one.attributes.get(key) == value for key, value in general.attributes.items())
        for one in special
    )


def _heads_rows(text: str, elements: Sequence[Element]) -> bool:
    """Whether a paragraph is a command of things that stand below it."""
    if not elements or elements[0].kind != "verb" or any(e.kind == "passive" for e in elements):
        return False
    words = text[elements[0].end : elements[-1].end].strip()
    return words.endswith(":") and "\n" not in words and leads_feature(words)


def _things_without_verb(
    context: Context, draft: NoticeDraft, items: Sequence[Item]
) -> Iterator[Fault]:
    """A fault for each thing close below an item that has neither a command nor a sentence.

    `At P`, `Insert wreck` and below it `rock`: it may belong to the verb, the place or neither.
    """
    if not draft.prose:
        return
    text = context.text
    ends = sorted(item_extent(item)[1] for item in items)
    for prose in draft.prose if ends else ():
        if any(e.kind != "words" for e in prose.elements) or not prose.elements:
            continue
        start, end = prose.elements[0].start, prose.elements[-1].end
        above = bisect_right(ends, start) - 1
        if above < 0 or _CLOSE_BELOW.fullmatch(text, ends[above], start) is None:
            continue
        words = text[start:end]
        is_said = words.endswith(".") or opens_note(words) or _SAID.search(words) is not None
        if not is_said and leads_feature(words):
            yield quoting(context, "item-without-verb", (start, end))


def _told(text: str, sentence: Sequence[Element]) -> Iterator[_Change]:
    """The changes that a sentence tells of, each with its verb and the kind of its feature."""
    whole = " ".join(text[sentence[0].start : sentence[-1].end].split())
    if _SUMMARY.search(whole) or _OF_BOOKS.match(whole):
        return
    start = 0
    for at, element in enumerate(sentence):
        if element.kind != "passive":
            continue
        passive = text[element.start : element.end]
        verb = canonical_verb(passive)
        words = " ".join(text[e.start : e.end] for e in sentence[start:at] if e.kind == "words")
        subject = _LAST_THAT.sub("", _INFORMED.sub("", words)).strip()
        start = at + 1
        is_told = " ".join(passive.lower().split()).startswith(_FORMS)
        if verb is None or not is_told or not has_kind(subject):
            continue
        if not tells_no_change(whole, passive):
            is_known = _THE.match(subject) is not None
            yield _Change(verb, read_feature(subject).feature.kind, is_known)
