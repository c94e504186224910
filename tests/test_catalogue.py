"""The catalogue of finding codes: its form, its specimens, and that every code is in use."""

from __future__ import annotations

import ast
import re
from collections import Counter
from importlib import import_module
from itertools import pairwise
from string import Formatter

import pytest

from noticeparse import parse
from noticeparse.catalogue import ENTRIES
from noticeparse.faults import Entry, pointed
from noticeparse.writers.catalogue_out import marked
from noticeparse.writers.quoting import visible
from tests.short_notices import actions_of
from tests.specimens import OF_A_VALUE, bad_text, told_of
from tests.test_layers import MODULES, tree_of

BY_MODULE: dict[str, tuple[Entry, ...]] = {
    name: import_module(f"noticeparse.{name}").ENTRIES
    for name in MODULES
    if name.startswith("catalogue.")
}

# Codes of other findings that a bad specimen cannot be without.
COMPANIONS = {
    # Both are told of texts in two languages alone.
    "text-said-again": {"text-second-language"},
    "text-languages-differ": {"text-second-language", "text-left-over"},
    "chart-above-or-below": {"chart-not-named"},
    # The figure itself is read as metres, as where nothing is said.
    "depth-unit-unread": {"depth-unit-not-stated"},
    # What slides leaves a place over at one end, and a command without one at the other.
    "place-of-neighbour": {"item-without-verb", "item-without-position"},
    # The heading is one fault; each item under it is another, lost one.
    "text-action-lost": {"verb-unknown"},
    # What stands with a position is no datum of the chart.
    "position-datum-not-kept": {"datum-not-stated"},
    # The mark that parts the figure is read as such in a plain text too.
    "figure-in-doubt": {"text-garbled"},
    # If the place is that of the item before it, the item behind it has none.
    "place-before-verb": {"item-without-position"},
    # If the position is not that of the item behind it, the item of its letter has none.
    "position-of-other-item": {"item-without-position", "place-of-neighbour"},
    # The rows stand under a notice of their own, which has no number.
    "notice-unread": {"notice-head-missing"},
    # What was cut off names no feature of its own.
    "item-torn": {"item-without-feature", "feature-unknown"},
    # The only datum of the text is not known.
    "datum-unknown": {"datum-not-stated"},
}


def cases() -> list[object]:
    return [pytest.param(entry, id=code) for code, entry in sorted(ENTRIES.items())]


class TestForm:
    """Codes, messages, and fields that are never empty."""

    def test_every_module_is_seen(self) -> None:
        listed = [entry.code for entries in BY_MODULE.values() for entry in entries]
        assert [code for code, count in Counter(listed).items() if count > 1] == []
        assert set(listed) == set(ENTRIES)

    @pytest.mark.parametrize("name", BY_MODULE)
    def test_codes_are_in_order(self, name: str) -> None:
        codes = [entry.code for entry in BY_MODULE[name]]
        assert codes == sorted(codes)

    @pytest.mark.parametrize("entry", cases())
    def test_fields(self, entry: Entry) -> None:
        assert all(entry)
        assert re.fullmatch(r"[a-z]+(?:-[a-z0-9]+)+", entry.code)
        for words in (entry.message, entry.meaning, entry.hint):
            assert not words.endswith(".")
            assert (
                words[0].islower()
                or words[0] in "`{"
                or words.split()[0].isupper()
                or "A" in words[:2]
            )
        assert entry.bad.count("‹") == entry.bad.count("›") == 1
        assert not set("‹›") & set(entry.good)
        assert pointed(entry.bad).text != entry.good


class TestSpecimens:
    """A bad specimen gives exactly its finding, at exactly its stretch; a good one gives none."""

    @pytest.mark.parametrize("entry", cases())
    def test_bad(self, entry: Entry) -> None:
        text, start, end = pointed(entry.bad)
        told = told_of(entry.code, text)
        others = {one.code for one in told if one.code != entry.code}
        assert others == COMPANIONS.get(entry.code, set())
        assert [(one.severity, one.start, one.end) for one in told if one.code == entry.code] == [
            (entry.severity, start, end)
        ]

    @pytest.mark.parametrize("entry", cases())
    def test_good(self, entry: Entry) -> None:
        told = told_of(entry.code, entry.good)
        assert [one for one in told if one.severity != "info" or one.code == entry.code] == []

    @pytest.mark.parametrize("entry", cases())
    def test_message_is_filled_and_short(self, entry: Entry) -> None:
        """The values given are those that the message names, or more."""
        text = pointed(entry.bad).text
        (told,) = [one for one in told_of(entry.code, text) if one.code == entry.code]
        assert not set("{}") & set(told.message)
        assert "``" not in told.message
        without_values = Formatter().vformat(entry.message, (), _Blank())
        assert len(without_values) <= 90
        assert len(entry.message) <= 90

    @pytest.mark.parametrize(
        "code",
        sorted(
            code
            for code, entry in ENTRIES.items()
            if entry.severity == "error" and code not in OF_A_VALUE
        ),
    )
    def test_no_action_with_an_error_is_usable(self, code: str) -> None:
        bulletin = parse(bad_text(code))
        errors = [one.span for one in bulletin.findings if one.severity == "error" and one.span]
        assert errors
        for action in actions_of(bulletin):
            at = action.span
            if any(one.start < at.end and at.start < one.end for one in errors):
                assert not action.usable

    @pytest.mark.parametrize("entry", cases())
    def test_marks_stand_below_the_stretch(self, entry: Entry) -> None:
        shown = list(marked(entry.bad))
        text, start, end = pointed(entry.bad)
        pointed_at = "".join(
            line[below.index("^") : len(below)]
            for line, below in pairwise(shown)
            if "^" in below and "^" not in line
        )
        assert pointed_at == (visible(text[start:end].replace("\n", "")) or text[start])


class _Blank(dict[str, str]):
    def __missing__(self, key: str) -> str:
        return ""


# How a fault is made; the first argument is its code.
MAKERS = frozenset(
    {"Fault", "Trouble", "fault", "_fault", "_trouble", "_over", "blame", "add", "add_at"}
)
CODE = re.compile(r"[a-z]+(?:-[a-z0-9]+)+")
# Put together from the name of the figure.
COMPOSED = {"position-minutes-out-of-range", "position-seconds-out-of-range"}


def test_every_code_is_used() -> None:
    strings = {
        node.value
        for name in MODULES
        if not name.startswith("catalogue")
        for node in ast.walk(tree_of(name))
        if isinstance(node, ast.Constant) and isinstance(node.value, str)
    }
    assert sorted(set(ENTRIES) - strings - COMPOSED) == []


def test_every_code_that_is_used_is_listed() -> None:
    used = {
        node.value
        for name in MODULES
        if not name.startswith("catalogue")
        for call in ast.walk(tree_of(name))
        if isinstance(call, ast.Call) and call.args and _name(call.func) in MAKERS
        for argument in call.args[:3]
        for node in ast.walk(argument)
        if isinstance(node, ast.Constant)
        and isinstance(node.value, str)
        and CODE.fullmatch(node.value)
    }
    assert len(used) > 100
    assert sorted(used - set(ENTRIES)) == []


def _name(function: ast.expr) -> str:
    if isinstance(function, ast.Attribute):
        return function.attr
    return function.id if isinstance(function, ast.Name) else ""
