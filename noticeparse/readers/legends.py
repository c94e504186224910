"""Reads a legend or note: words that are to stand on the chart letter for letter.

In comes the phrase as divided by `feature.lark`; out comes the feature with its `legend`.
"""

from __future__ import annotations

import re

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.legend_wordings import end_of_wording, holds_several, leads_to_thing
from noticeparse.readers.phrases import Legend, divide, place
from noticeparse.readers.told import RELATIONS, told_by
from noticeparse.records.feature import Feature
from noticeparse.vocabulary import kinds


def read_legend(text: str, legend: Legend) -> tuple[Feature, tuple[Fault, ...]]:
    """The legend or note; two wordings are an error and neither is taken."""
    faults: list[Fault] = []
    words = None
    if legend.wording is not None:
        words = " ".join(legend.wording.strip('"').split()).rstrip(
            " ,;:" if legend.form == "bare" else ""
        )
        start, end = place(legend.wording)
        if legend.form == "open":
            faults.append(
                Fault("feature-quote-open", start, end, {"written": shown(text[start:end])})
            )
        if legend.form == "bare":
            words, told = _without_place(words, start, end)
            faults += told
        if legend.form == "bare" and holds_several(legend.word, words):
            # `legends, Works and Foul`: one of two words, or two of one.
            written = {"written": shown(text)}
            faults.append(Fault("feature-legends-several", start, end, written))
            words = None
        elif legend.form == "bare" and (other := _SECOND.search(words)) is not None:
            # `legend Works and legend Foul`: two, of which none has its own words here.
            written = {"written": shown(text)}
            faults.append(Fault("feature-legends-several", start + other.start(), end, written))
            words = None
        elif legend.form == "bare" and _JOINED.match(words) is not None:
            # `legend and depth 5m`: two things; no legend begins with the joint.
            faults.append(
                Fault("feature-kinds-several", start, end, {"written": shown(text[start:end])})
            )
            words = None
        elif legend.form == "bare" and (led := _place_behind(words)) is not None:
            written = {"written": shown(words[led:])}
            faults.append(Fault("relation-unclear", start, end, written))
            words = None
        elif legend.form == "bare" and _lies_at(words):
            # `legend at beacon` says where it stands, and not what it says.
            faults.append(
                Fault("feature-words-unread", start, end, {"written": shown(text[start:end])})
            )
            words = None
    if legend.after is not None and '"' in legend.after:
        start, end = place(legend.after)
        start += len(legend.after) - len(legend.after.lstrip(" ,;"))
        faults.append(Fault("feature-legends-several", start, end, {"written": shown(text)}))
        words = None
    elif legend.after is not None and (joint := _JOINED.match(legend.after)) is not None:
        start, end = place(legend.after)
        behind = legend.after[joint.end() :]
        if told_by(behind).head is not None or _DRAWN.search(behind) is not None:
            written = {"written": shown(text[start + joint.end() : end])}
            faults.append(Fault("feature-kinds-several", start + joint.end(), end, written))
    kind = "note" if "note" in legend.word.lower() else "legend"
    return _plain(text, kind, words), tuple(faults)


def _without_place(words: str, start: int, end: int) -> tuple[str, list[Fault]]:
    """A bare wording without the words behind it that lead to its place, and their faults."""
    faults: list[Fault] = []
    if (ends := end_of_wording(words)) < len(words):
        if leads_to_thing(words[ends:]):
            written = {"written": shown(words[ends:].strip(" ,;()"))}
            faults.append(Fault("feature-words-unread", start, end, written))
        words = words[:ends]
    if (lead := _LEADS_ON.search(words)) is not None:
        # `legend, Works, over P`: the word leads to the place.
        faults.append(Fault("feature-words-unread", start, end, {"written": lead["word"]}))
        words = words[: lead.start()]
    return words, faults


def lacks_wording(text: str) -> bool:
    """Whether a phrase names a legend and holds no words for it: `legend`, `circle and legend`."""
    legend = divide(text).legend
    return legend is None or legend.wording is None


_LEADS_ON = re.compile(
    r"(?:\s?[,;]\s?|(?<=[a-z)]) )(?P<word>over|across|along|alongside|off|beside|around|beneath"
    r"|under|above|below|adjacent to|close to|near)$"
)
_SECOND = re.compile(
    r"(?: and| &| also|[,;])(?: also)? (?:(?:the|an?|new) )?legends?\b|(?: and| &) note\b",
    re.IGNORECASE,
)
_DANGLING = re.compile(
    r"(?<=[^ ,])[ ,]{1,3}(?:over|across|along|above|below|beneath|on|by|to|from)$"
)
_JOINED = re.compile(r"[ ,;:]{0,3}(?:and|with|plus|also|including|or|&|\+) (?:the |its |an? )?")
"""A joint in small letters, which leads to another thing than the words of the legend."""
_DRAWN = re.compile(r"\b(?:lines?|circles?|arrows?|symbols?)$")
_BEHIND = re.compile(
    r" (?:at|near|by|beside|alongside|off|close to|adjacent to) (?P<the>the )?"
    r"(?P<thing>[a-z][a-z -]{2,40})$"
)


def _place_behind(words: str) -> int | None:
    """Where words begin that may say where a bare legend stands: `Fl.5s at the beacon`."""
    if (left := _DANGLING.search(words)) is not None:
        # `legend, Works, over P`
        return left.start()
    found = _BEHIND.search(words)
    head = told_by(found["thing"]).head if found is not None else None
    if found is None or head is None:
        return None
    # Without an article only a mark or a light is surely none of the words of the legend.
    is_mark = bool(kinds()[head.value].form) or kinds()[head.value].s57 == "LIGHTS"
    return found.start() if found["the"] or is_mark else None


def _lies_at(words: str) -> bool:
    """Whether words without quotes lead to another thing: `at beacon`."""
    first, _, rest = words.partition(" ")
    return first in RELATIONS | {"on", "by", "of"} and told_by(rest).head is not None


def _plain(text: str, kind: str, legend: str | None) -> Feature:
    return Feature(
        kind=kind, s57=[], text=collapsed(text), name=None, legend=legend, light=None,
        more_lights=[], depth=None, clearance=None, height_m=None, colours=[],
        colour_pattern=None, shape=None, topmark=None, sound=None, racon=None, ais=None,
        status=[], reported_year=None, companions=[], attributes={},
    )  # fmt: skip


def collapsed(text: str) -> str:
    """The words as written, blanks collapsed, separators at the ends left out."""
    return " ".join(text.split()).strip(" ,;:")
