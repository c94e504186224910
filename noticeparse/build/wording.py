"""Words as they stand in the original text, in place of those read after repair.

Readers see `2.5s` where the text has `2·5s`, and a straight quote where it has a curly one; what a
record quotes is the original.
"""

from __future__ import annotations

from typing import Any

from noticeparse.context import Context
from noticeparse.records.action import Change
from noticeparse.records.depth import Clearance, Depth
from noticeparse.records.feature import Feature
from noticeparse.records.light import Light
from noticeparse.stretch import Stretch


def with_original_words(context: Context, phrase: Stretch, feature: Feature) -> Feature:
    """The feature with every word it quotes from `phrase` as the original has it."""
    if not _differs(context, phrase):
        return feature
    updates: dict[str, Any] = {
        name: _original(context, phrase, words)
        for name in ("text", "name", "legend", "topmark")
        if (words := getattr(feature, name)) is not None
    }
    for name in ("light", "depth", "clearance"):
        value = getattr(feature, name)
        if value is not None:
            updates[name] = _rewritten(context, phrase, value)
    if feature.more_lights:
        updates["more_lights"] = [_rewritten(context, phrase, one) for one in feature.more_lights]
    if feature.companions:
        updates["companions"] = [
            one.model_copy(update={"feature": with_original_words(context, phrase, one.feature)})
            for one in feature.companions
        ]
    return feature.model_copy(update=updates)


def changes_with_original_words(
    context: Context, phrase: Stretch, changes: tuple[Change, ...]
) -> tuple[Change, ...]:
    """Changes with what they quote as the original has it."""
    if not _differs(context, phrase):
        return changes
    return tuple(
        change.model_copy(
            update={
                side: _value(context, phrase, getattr(change, side)) for side in ("old", "new")
            }
        )
        for change in changes
    )


def _value(context: Context, phrase: Stretch, value: Any) -> Any:
    if isinstance(value, str):
        return _original(context, phrase, value)
    if isinstance(value, Light | Depth | Clearance):
        return _rewritten(context, phrase, value)
    return value


def _rewritten(context: Context, phrase: Stretch, value: Any) -> Any:
    return value.model_copy(update={"written": _original(context, phrase, value.written)})


def _differs(context: Context, phrase: Stretch) -> bool:
    """Whether any character of the phrase was repaired."""
    if context.is_unrepaired or not phrase.text:
        return False
    start, end = phrase.extent((0, len(phrase.text)))
    return start >= end or context.written(start, end) != " ".join(context.text[start:end].split())


def _original(context: Context, phrase: Stretch, words: str) -> str:
    """The original of words found in a phrase; words that stand nowhere in it stay as they are."""
    at = phrase.text.find(words)
    if at < 0 or not words:
        return words
    start, end = phrase.extent((at, at + len(words)))
    if " ".join(context.text[start:end].split()) != " ".join(words.split()):
        return words
    return context.written(start, end)
