"""What among the remarks may be a change that is lost: sentences without a place, bare things.

`A wreck has been found in P. The light-buoy nearby has been removed.`: the removal is no action.
What says again what an action of the notice does is only told of it.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterator, Sequence, Set

from noticeparse.build.extents import item_extent, quoting
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, NoticeDraft
from noticeparse.layout.evidence import PLACES
from noticeparse.layout.line.elements import Element
from noticeparse.layout.line.joints import opens_note, tells_no_change
from noticeparse.layout.sentence.sentences import statements
from noticeparse.readers.features import has_kind, leads_feature, read_feature
from noticeparse.readers.verbs import canonical_verb
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
    actions = [one for chart in charts for one in chart.actions]
    done = {(one.verb, one.feature.kind) for one in actions}
    # `The wreck was found by the survey` is the one that is inserted, whatever is known of it.
    classes = {(one.verb, one.feature.s57[0]) for one in actions if one.feature.s57}
    families = {_family(one.feature.kind) for one in actions} - {""}
    for prose in draft.prose:
        if any(element.kind in PLACES for element in prose.elements):
            continue
        if _heads_rows(context.text, prose.elements):
            # `Delete light-buoys:` above a table whose rows do not say what they are.
            yield quoting(context, "change-without-place", prose.pieces[0])
        for sentence in statements(context.text, prose.elements):
            told = _told(context.text, sentence)
            if told is None or told in done:
                continue
            start, end = sentence[0].start, sentence[-1].end
            is_known = _THE.match(context.text, start) is not None
            known = kinds().get(told[1]) if is_known else None
            if known is not None and (told[0], known.s57) in classes:
                continue
            if not _is_done_of_a_special_one(*told, done):
                sums_up = is_known and end <= first and _family(told[1]) in families
                code = "change-summed-up" if sums_up else "change-without-place"
                yield quoting(context, code, (start, end))


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


def _told(text: str, sentence: Sequence[Element]) -> tuple[str, str] | None:
    """The verb and the kind of feature that a sentence tells of, None for other sentences."""
    at = next((i for i, e in enumerate(sentence) if e.kind == "passive"), None)
    if at is None:
        return None
    passive = text[sentence[at].start : sentence[at].end]
    verb = canonical_verb(passive)
    words = " ".join(text[e.start : e.end] for e in sentence[:at] if e.kind == "words")
    words = _INFORMED.sub("", words)
    whole = " ".join(text[sentence[0].start : sentence[-1].end].split())
    is_told = " ".join(passive.lower().split()).startswith(_FORMS)
    if _SUMMARY.search(whole) or _OF_BOOKS.match(whole) or verb is None or not is_told:
        return None
    if not has_kind(words) or tells_no_change(whole, passive):
        return None
    return verb, read_feature(words).feature.kind
