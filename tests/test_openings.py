"""The look at one character before a terminal: it sends on early and changes no match."""

from __future__ import annotations

import re

import pytest

from noticeparse.grammar.openings import guarded

GUARDS = {
    "letter": ("abc", "a", "b"),
    "any case": ("(?i:south)", "sS", "t"),
    "alternatives": ("(?:no|[0-9])x", "n7", "x"),
    "what may be missing": ("-?[0-9]{2}", "-1", "a"),
    "behind a look": ("(?<=x)(?!b)[ab]", "ab", "c"),
    "of several": ("(?:ab){1,3}", "a", "b"),
}


@pytest.mark.parametrize(("pattern", "open_it", "do_not"), GUARDS.values(), ids=GUARDS)
def test_only_what_may_open_a_terminal_passes(pattern: str, open_it: str, do_not: str) -> None:
    guard = re.compile(guarded(pattern).removesuffix(pattern))
    assert all(guard.match(one) for one in (*open_it, "é", "₇"))
    assert not any(guard.match(one) for one in do_not)


@pytest.mark.parametrize("pattern", [".", "[^x]|x|\\n", "a*"])
def test_no_guard_where_nothing_is_kept_out(pattern: str) -> None:
    made = re.compile(guarded(pattern), re.DOTALL)
    assert all(made.match(one) for one in "a7 x")
