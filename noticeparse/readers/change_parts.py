"""Divides the phrase of an amendment into features, properties and values.

In comes the phrase; out come its parts between separators as the grammar `change.lark` gives them.
What the words of a part mean is not looked up here.
"""

from __future__ import annotations

from functools import cache
from typing import Any, NamedTuple

from lark import Token
from lark.exceptions import LarkError

from noticeparse import grammar
from noticeparse.faults import Fault
from noticeparse.readers.phrases import place
from noticeparse.records.feature import Feature


class Part(NamedTuple):
    """One part between separators; stretches as (start, end) of the text."""

    subject: tuple[int, int] | None
    property: Token | None = None
    old: tuple[int, int] | None = None
    new: tuple[int, int] | None = None
    is_change: bool = True


class Value(NamedTuple):
    """A value and the path of the property it is of; faults count from the value's start."""

    property: str
    value: Any
    faults: tuple[Fault, ...] = ()
    more: tuple[tuple[str, Any], ...] = ()
    """Other properties that come with it: a pattern with colours, a fog signal with a light."""


class _Tagged(NamedTuple):
    role: str
    stretch: tuple[int, int]


class _Builder:
    """Rule by rule at parse time; keeps no state."""

    def change(self, *parts: Part) -> tuple[Part, ...]:
        return parts

    def stretch(self, *tokens: Token) -> tuple[int, int]:
        return place(tokens[0])[0], place(tokens[-1])[1]

    value = stretch

    def property(self, token: Token) -> Token:
        return token

    def of(self, stretch: tuple[int, int]) -> _Tagged:
        return _Tagged("of", stretch)

    def old(self, stretch: tuple[int, int]) -> _Tagged:
        return _Tagged("old", stretch)

    def becomes(self, stretch: tuple[int, int]) -> _Tagged:
        return _Tagged("new", stretch)

    def subject(self, stretch: tuple[int, int]) -> Part:
        return Part(stretch, is_change=False)

    def renewed(self, *parts: Any) -> Part:
        return _made(parts)

    def amended(self, *parts: Any) -> Part:
        return _made(parts)

    def amended_from(self, *parts: Any) -> Part:
        old = [part for part in parts if not isinstance(part, Token | _Tagged)][-1]
        return _made([part for part in parts if part is not old])._replace(old=old)


def _made(parts: Any) -> Part:
    tagged = {part.role: part.stretch for part in parts if isinstance(part, _Tagged)}
    words = [part for part in parts if isinstance(part, Token)]
    plain = [part for part in parts if not isinstance(part, Token | _Tagged)]
    of = tagged.get("of")
    return Part(
        subject=plain[0] if plain else of,
        property=words[0] if words else None,
        # `wreck depth of 5 m to 4 m`: the feature stands in front already.
        old=tagged.get("old") or (of if plain else None),
        new=tagged.get("new"),
    )


@cache
def _parser() -> grammar.PhraseParser:
    return grammar.build("change", "change", callbacks=_Builder())


def divide_change(text: str) -> tuple[Part, ...]:
    """The parts of an amendment, none where the grammar does not take it."""
    try:
        parts: tuple[Part, ...] = _parser().parse(text)
        return parts
    except LarkError:
        return ()


def carried(parts: list[Part]) -> list[Part]:
    """Gives a property named ahead to the value behind it: `range of light, Iso.R.2s, to 5M`."""
    made: list[Part] = []
    for part in parts:
        waits = next((i for i, one in enumerate(made) if one.property and one.new is None), None)
        if waits is None or not part.is_change or part.property is not None:
            made.append(part)
            continue
        ahead = made[waits]
        if _states_again(ahead, made[-1]) and part.subject is None and part.old is None:
            # `depth of the wreck, least depth 5m, to 4m`
            made[waits] = Part(ahead.subject, is_change=False)
            made[-1] = made[-1]._replace(new=part.new)
        elif ahead.old is None:
            made[waits] = Part(ahead.subject, is_change=False)
            made.append(part._replace(property=ahead.property))
        elif part.subject is None and part.old is None:
            # `depth 5.2: to 4.8`
            made[waits] = ahead._replace(new=part.new)
        else:
            made.append(part)
    return made


def _states_again(ahead: Part, part: Part) -> bool:
    """Whether a part tells the old value of what one ahead names with its feature."""
    if ahead.property is None or ahead.subject is None or ahead.old or part.new:
        return False
    if part.property is None or part.subject is not None or part.old is None:
        return False
    named = str(ahead.property).lower().removeprefix("the ")
    return ahead.property.type == part.property.type and part.property.lower().endswith(named)


def named_within(part: Part, text: str) -> Part:
    """A part whose new value names its property itself: `light, Fl.3s to range 7M`.

    So does `to show a range of 7M`, and `range 5M to range 7M`.
    """
    if part.new is None:
        return part
    start, end = part.new
    if part.property is not None:
        return part._replace(new=(start + _named_again(part.property, text[start:end]), end))
    start += len(_article(text[start:end]))
    inner = divide_change(text[start:end])
    if len(inner) != 1 or inner[0].property is None or inner[0].new:
        return part
    named = place(inner[0].property)
    value = inner[0].old
    if value is None and inner[0].subject and text[start:end][named[1] :].startswith(" of "):
        value = inner[0].subject
    elif inner[0].subject or named[0]:
        return part
    if value is None:
        return part
    return part._replace(property=inner[0].property, new=(start + value[0], start + value[1]))


def _named_again(name: Token, words: str) -> int:
    """The length of a property that stands again in front of its new value; a depth keeps it."""
    plain = str(name).lower().removeprefix("the ")
    head = words[: len(plain) + 1].lower()
    return len(head) if head == f"{plain} " and name.type != "DEPTH_WORD" else 0


def _article(words: str) -> str:
    return next((one for one in ("a ", "an ", "the ") if words.lower().startswith(one)), "")


def with_old_state(parts: list[Part], text: str) -> list[Part]:
    """The parts, those that only describe the feature being no changes.

    In `light Fl 10s, elevation 18 metres: period to 8s` only what stands behind the colon changes.
    """
    told = next((part.new for part in parts if part.new is not None), None)
    colon = text.rfind(":", 0, told[0]) if told is not None else -1
    return [_description(part) if part.old and part.old[1] <= colon else part for part in parts]


def _description(part: Part) -> Part:
    if part.property is None or part.old is None or part.new or part.subject is not None:
        return part
    return Part((place(part.property)[0], part.old[1]), is_change=False)


def is_end_of(new: Any, old: Any) -> bool:
    """Whether a new legend has only a bracket or figure, and the old one words before its own."""
    now, before = str(new), str(old or "")
    return now[:1] in "(0123456789" and before[:1].isalpha() and before[-1:] == now[-1:]


def is_of_other_kind(clause: Part, new: Value, old: Any) -> bool:
    """Whether a clearance is of another kind now: `vertical clearance 12m to horizontal …`."""
    is_told = new.property == "clearance" and clause.old is not None and old is not None
    return is_told and bool(old.kind != new.value.kind)


def present(feature: Feature, path: str) -> Any:
    """The value that the feature already states for a property, None where it states none."""
    first, _, rest = path.partition(".")
    value = getattr(feature, first, None)
    if rest and value is not None:
        stated = rest != "colours" or value.colour_stated
        value = getattr(value, rest) if stated else None
    return value if value != [] else None
