"""Tells which words of a phrase went into no value, so that none is lost in silence.

In come the items of a phrase with its kind and depth settled; out come faults.  Figures without a
value are told by the reader of values; here it is the words.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.broken_words import broken_words
from noticeparse.readers.drawn_besides import drawn_besides
from noticeparse.readers.garbled_figures import garbled_figures
from noticeparse.readers.garbled_lights import CLASSES, garbled_lights
from noticeparse.readers.marks import read_colour_letters
from noticeparse.readers.misspelt_words import misspelt_words
from noticeparse.readers.named_sounds import torn_marks
from noticeparse.readers.names_of_others import is_abbreviation
from noticeparse.readers.restrictions import unread_restrictions
from noticeparse.readers.states_left import states_left
from noticeparse.readers.told import Told
from noticeparse.readers.unknown_things import unknown_things
from noticeparse.readers.verbs import canonical_verb
from noticeparse.readers.weighty_words import weighty_words
from noticeparse.readers.words import Item
from noticeparse.vocabulary import DANGERS, is_known_word, kinds

_SAID = {
    "negation": "feature-negated",
    "instead": "feature-instead",
    "open_quote": "feature-quote-open",
}
_NO_FIGURE = frozenset(("unknown", "other", "counted", "number", "code"))
_DEPTH_WORDS = ("depth", "depths", "sounding", "soundings")
_PAINT = frozenset("RGYBW")


def leftovers(text: str, told: Told, kind: str, *, has_depth: bool) -> Iterator[Fault]:
    """Faults of words that are understood to say more than the record holds, or not at all."""
    found = list(_leftovers(text, told, kind, has_depth=has_depth))
    yield from found
    for fault in weighty_words(text, told, kind):
        if all(fault.end <= one.start or one.end <= fault.start for one in found):
            yield fault


def _leftovers(text: str, told: Told, kind: str, *, has_depth: bool) -> Iterator[Fault]:
    for item in told.items:
        if item.role in _SAID:
            yield _fault(_SAID[item.role], item)
    yield from (_fault("feature-figure-unread", item) for item in told.lost)
    yield from (
        _fault("feature-words-unread", item) for item in told.items if is_abbreviation(item)
    )
    yield from torn_marks(text, told)
    yield from unread_restrictions(text, told.items)
    yield from states_left(text, told, kind)
    behind = told.after_head
    is_word = behind is not None and len(behind.text) > 2 and kind != "unknown"
    is_word = is_word and not (behind is not None and _is_paint(behind.text, kind))
    if behind is not None and is_word:
        yield _fault("feature-words-behind-kind", behind)
    yield from _unread_depths(text, told, has_depth=has_depth)
    yield from _lone_units(text, told)
    known = kinds().get(kind)
    if known is not None and known.form:
        yield from _letters_behind(text, told)
        yield from _lost_lights(text, told)
    if known is not None and (known.form or known.s57 == "LIGHTS"):
        # `light, Fl. Horn(2)30s`: a class that was taken for no light.
        lost = [item for item in told.items if item.role == "unknown" and item.text in CLASSES]
        yield from (_fault("light-unreadable", item) for item in lost)
    yield from _second_dangers(text, told)
    yield from _before_depth(text, told)
    yield from _idle_runs(text, told, kind)
    yield from _two_forms(text, told)
    yield from drawn_besides(text, known.s57 if known is not None else "")
    yield from unknown_things(text, told, kind)
    yield from misspelt_words(text, told, kind)
    yield from broken_words(text, told)
    yield from garbled_figures(text, told.items)
    yield from garbled_lights(text, told, kind)
    for item, behind in pairwise(told.items):
        # `topmark cone`: whether its point is up or down is not said.
        if item.role == "kind" and item.value == "topmark" and behind.role == "unknown":
            yield _fault("feature-words-unread", behind)


def _fault(code: str, item: Item, end: int | None = None, text: str = "") -> Fault:
    end = item.end if end is None else end
    written = text[item.start : end] if text else item.text
    return Fault(code, item.start, end, {"written": shown(written)})


def _unread_depths(text: str, told: Told, *, has_depth: bool) -> Iterator[Fault]:
    """`depth ⑧m`, `depth of less than 5m`: the word for a depth, then something else first."""
    items = [item for item in told.items if item.text.lower() not in ("of", "at", "is")]
    for item, behind in pairwise(items):
        if not _is_depth_word(item) or behind.role not in _NO_FIGURE or behind.bracketed:
            continue
        gap = text[item.end : behind.start]
        if any(sign in gap for sign in ",;"):
            continue
        if not has_depth:
            yield _fault("depth-unread", item, behind.end, text)
        elif behind.role == "unknown" and behind != told.after_head:
            yield _fault("feature-words-unread", behind)
        return


def _lone_units(text: str, told: Told) -> Iterator[Fault]:
    """`depth 6 f.`: fathoms or feet."""
    for item, behind in pairwise(told.items):
        is_close = item.role == "depth" and not text[item.end : behind.start].strip()
        if is_close and behind.text.strip("().").lower() in ("f", "ftm", "ftms", "fth"):
            yield _fault("depth-unit-unread", item, behind.end, text)


def _is_depth_word(item: Item) -> bool:
    last = item.text.lower().split()[-1] if item.text else ""
    # `dries ⑧m`, `drying height zz`
    dries = item.role == "water" and last in ("dries", "drying")
    return dries or last in _DEPTH_WORDS or item.value in ("least", "drying_height")


def _letters_behind(text: str, told: Told) -> Iterator[Fault]:
    """`pillar buoy B`: read as paint, and as well a name."""
    head = told.head
    if head is None:
        return
    behind = next((item for item in told.items if item.start >= head.end), None)
    if behind is None or behind.role != "unknown" or behind.text not in _PAINT:
        return
    if not text[head.end : behind.start].strip():
        yield _fault("feature-letter-unclear", behind)


_FORMS = {"beacon", "buoy"}


def _second_dangers(text: str, told: Told) -> Iterator[Fault]:
    """`wreck rock awash`: two dangers, run together; neither names the other."""
    named = [item for item in told.items if item.role == "kind" and not item.bracketed]
    for first, second in pairwise(named):
        classes = {kinds()[first.value].s57, kinds()[second.value].s57}
        is_close = not text[first.end : second.start].strip()
        if first.value != second.value and is_close and len(classes) > 1 and classes <= DANGERS:
            yield _fault("feature-kinds-several", second)


_LEADS_TO_DEPTH = re.compile(r" ?[,;:(] ?| with (?:an? |the )?| having (?:an? |the )?")


def _before_depth(text: str, told: Told) -> Iterator[Fault]:
    """`sunken barge, least depth 4m`: words in front of the thing name another."""
    at = next((n for n, item in enumerate(told.items) if item.role == "depth"), 0)
    if not at or (told.head is not None and told.head.role != "depth"):
        return
    ahead, depth = told.items[:at], told.items[at]
    is_idle = all(item.role in ("unknown", "plain") for item in ahead)
    nouns = [item for item in ahead if item.role == "unknown" and len(item.text) > 2]
    nouns = [item for item in nouns if canonical_verb(item.text) is None]
    if is_idle and nouns and _LEADS_TO_DEPTH.fullmatch(text, ahead[-1].end, depth.start):
        yield _fault("feature-words-unread", ahead[0], ahead[-1].end, text)


def _two_forms(text: str, told: Told) -> Iterator[Fault]:
    """`special beacon buoy`: a mark is one of them, and the other word was meant for another."""
    for first, second in pairwise(told.items):
        if first.role != "kind" or second.role != "kind" or second.bracketed:
            continue
        forms = {kinds()[first.value].form, kinds()[second.value].form}
        if forms == _FORMS and text[first.end : second.start] == " ":
            yield _fault("feature-kinds-several", first, second.end, text)


def _lost_lights(text: str, told: Told) -> Iterator[Fault]:
    """`light-buoy, .R`: the class before the stop is lost."""
    for item in told.items:
        at = item.start - 1
        is_letters = item.role == "unknown" and set(item.text) <= _PAINT
        if is_letters and at > 0 and text[at] == "." and text[at - 1] in " ,;:":
            yield Fault("light-unreadable", at, item.end, {"written": shown(text[at : item.end])})


def _idle_runs(text: str, told: Told, kind: str) -> Iterator[Fault]:
    """What stands between commas and tells nothing: `depth 8m, frobnicated grommet`."""
    if kind in ("unknown", "nature_of_seabed"):
        return
    for run in _runs(text, told.items)[1:]:
        idle = all(item.role == "unknown" and not _is_paint(item.text, kind) for item in run)
        if run[0].bracketed:
            yield from _idle_bracket(text, run, kind)
        if not idle or run[0].bracketed:
            continue
        words = [item for item in run if len(item.text) > 2 and not item.text.isupper()]
        # `light, Discontinued`: what is done stands as the verb of the action.  Words of the trade
        # (`pipeline, gas`) say what the text keeps.
        if any(not _is_told(item.text) for item in words):
            yield _fault("feature-words-unread", run[0], run[-1].end, text)


_LIES_THERE = frozenset(
    "lost anchor anchors chain chains container containers cargo net nets gear fishing boulder"
    " boulders aircraft vehicle car barge trawler ferry tug yacht vessel ship dredger drums mast"
    " sinker sinkers block blocks debris mound metal pipe pipes wood timber tyres scrap concrete"
    " engine crane hull bow stern sand mud shell shells gravel stones clay buried partly"
    " partially out use mag".split()
)
"""Words of what a danger is or was, `obstruction (container)`, and of bearings, `171° (mag)`."""


_IN_DOUBT = frozenset("approx approximate approximately estimated uncertain doubtful".split())
"""Words of a quality that do not say what they are of."""


def _idle_bracket(text: str, run: Sequence[Item], kind: str) -> Iterator[Fault]:
    """A bracket that tells nothing that is known: `rock (frobnicated)`; it may limit the item."""
    strange = [item for item in run if item.role == "unknown" and len(item.text) > 2]
    # What has a capital is a name, or letters on the chart.
    strange = [item for item in strange if item.text.islower()]
    if len(run) == 1 and run[0].text.lower() in _IN_DOUBT:
        # `wreck (approx)`: of the place, or of a figure beside it.
        yield _fault("feature-words-unread", run[0])
        return
    idle = all(item.role in ("unknown", "plain", "number") for item in run)
    if not idle or any(_is_paint(item.text, kind) for item in run):
        return
    if any(item.text not in _LIES_THERE and not is_known_word(item.text) for item in strange):
        yield _fault("feature-words-unread", run[0], run[-1].end, text)


def _is_paint(word: str, kind: str) -> bool:
    """Whether a word was read as the colours of a mark: `RGR`, `BuY`."""
    known = kinds().get(kind)
    is_mark = known is not None and bool(known.form)
    return is_mark and len(word) > 1 and read_colour_letters(word) is not None


def _is_told(words: str) -> bool:
    return canonical_verb(words) is not None or all(is_known_word(one) for one in words.split())


def _runs(text: str, items: Sequence[Item]) -> list[list[Item]]:
    runs: list[list[Item]] = []
    for item in items:
        gap = text[runs[-1][-1].end : item.start] if runs else ","
        if any(sign in gap for sign in ",;:()"):
            runs.append([])
        runs[-1].append(item)
    return runs
