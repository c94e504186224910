"""The mutations of notices: of a whole text, and of a position within one."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace

from hypothesis import assume
from hypothesis import strategies as st

from noticeparse.testing import characters
from noticeparse.testing.cases import Mutation, Outcome
from noticeparse.testing.generator.truth import Action, Feature, Notice, Point, Truth
from noticeparse.testing.position_mutations import POSITION_MUTATIONS, PositionMutation
from noticeparse.testing.strategies import notices, positions
from noticeparse.testing.written import WrittenBulletin, WrittenPosition

Draw = st.DrawFn
Change = Callable[[st.DrawFn, WrittenBulletin], WrittenBulletin]

_NUMBER, _CHART = "2417/26", "802"
_HEAD = f"{_NUMBER}  TAVRENNE ISLANDS - Quill Sound - Wreck.\nChart {_CHART} [12/26] WGS84\n"
_VERB = "Insert dangerous wreck   "


def _as_it_is(_: Draw, one: WrittenBulletin) -> WrittenBulletin:
    return one


def _line_ends_of_windows(_: Draw, one: WrittenBulletin) -> WrittenBulletin:
    return one.saying(one.text.replace("\n", "\r\n"))


def _mark_at_the_start(_: Draw, one: WrittenBulletin) -> WrittenBulletin:
    return one.saying("\ufeff" + one.text)


def _blanks_at_line_ends(draw: Draw, one: WrittenBulletin) -> WrittenBulletin:
    return one.saying(one.text.replace("\n", draw(st.sampled_from((" ", "   ", "\u00a0"))) + "\n"))


def _no_break_blanks(_: Draw, one: WrittenBulletin) -> WrittenBulletin:
    return one.saying(one.text.replace(" ", "\u00a0"))


def _look_alike_marks(draw: Draw, one: WrittenBulletin) -> WrittenBulletin:
    assume(any(symbol in one.text for symbol in "°′´"))
    return one.saying(characters.with_look_alike(draw, one.text, "°′´"))


def _quoted_in_mail(_: Draw, one: WrittenBulletin) -> WrittenBulletin:
    return one.saying("".join(f"> {line}\n" for line in one.text.splitlines()))


def _soft_hyphens(_: Draw, one: WrittenBulletin) -> WrittenBulletin:
    """Unseen places to cut long words at, as pages made for the screen have them.

    Headings and legends are kept as written, so they have none.
    """
    regions = [region for notice in one.truth.notices for region in notice.regions]
    lines = [
        line
        if any(words in line for words in (*regions, '"', "“"))
        else re.sub(r"(?<=\b[a-z]{4})(?=[a-z]{3})", "\u00ad", line)
        for line in one.text.split("\n")
    ]
    return one.saying("\n".join(lines))


def _blank_lines_after(draw: Draw, one: WrittenBulletin) -> WrittenBulletin:
    return one.saying(one.text + "\n" * draw(st.integers(1, 5)))


def _page_end(draw: Draw, one: WrittenBulletin) -> WrittenBulletin:
    """The foot of a page and the head of the next before the first line of the notice."""
    at = one.truth.notices[0].line - 1
    page = draw(st.integers(2, 11))
    foot = ["", f"Page {page} of 12", "\f" if draw(st.booleans()) else "", ""]
    lines = one.text.split("\n")
    moved = {row + 1: row + 1 + (len(foot) if row >= at else 0) for row in range(len(lines))}
    return one.saying("\n".join([*lines[:at], *foot, *lines[at:]]), moved)


def _verb_garbled(draw: Draw, one: WrittenBulletin) -> WrittenBulletin:
    word = draw(st.sampled_from(("Deelte", "Inzert", "Xqvzt", "Zap")))
    return one.saying(one.text.replace("Insert", word))


def _command_lost_in_noise(draw: Draw, one: WrittenBulletin) -> WrittenBulletin:
    at = one.text.index("Insert")
    noise = draw(st.text("¤§¬±�", min_size=8, max_size=20))
    return one.saying(one.text[:at] + noise + " " + one.text[at + 7 :])


@st.composite
def _one_action(draw: st.DrawFn) -> WrittenBulletin:
    return placed(draw(positions(is_at_islands=True)))


def placed(position: WrittenPosition) -> WrittenBulletin:
    """A notice with one action, at a position of the islands."""
    return WrittenBulletin(f"{_HEAD}{_VERB}{position.text}\n", _truth(position.point))


def _truth(point: Point) -> Truth:
    feature = Feature("wreck_dangerous", ("WRECKS",))
    action = Action(_NUMBER, _CHART, 3, "insert", feature, (point,), "point")
    notice = Notice(
        _NUMBER, line=1, regions=["TAVRENNE ISLANDS", "Quill Sound"], subjects=["Wreck"],
        charts=[_CHART], actions=[action],
    )  # fmt: skip
    return Truth("notice_first", [notice], set())


def _within(row: PositionMutation) -> Mutation:
    """A mutation of a position, within the one action of a notice."""

    def change(draw: Draw, clean: WrittenPosition) -> WrittenBulletin:
        return placed(row.change(draw, clean))

    return Mutation(
        f"position-{row.name}", "notices", row.in_notice or row.outcome,
        f"in the position of an action: {row.what}",
        lambda: positions(forms=row.forms, is_at_islands=True), change, row.codes,
    )  # fmt: skip


def _row(outcome: Outcome, what: str, change: Change, *codes: str) -> Mutation:
    name = change.__name__.strip("_").replace("_", "-")
    return Mutation(name, "notices", outcome, what, notices, change, frozenset(codes))


def _of_one_action(outcome: Outcome, what: str, change: Change, *codes: str) -> Mutation:
    return replace(_row(outcome, what, change, *codes), clean=_one_action)


NOTICE_MUTATIONS: tuple[Mutation, ...] = (
    _row("same", "as written, in every layout", _as_it_is),
    _row("same", "line ends of another system", _line_ends_of_windows),
    _row("same", "a byte order mark before the text", _mark_at_the_start),
    _row("same", "blanks at the ends of lines", _blanks_at_line_ends),
    _row("same", "no-break blanks", _no_break_blanks),
    _row("same", "marks as others that look like them", _look_alike_marks),
    _row("same", "quoted in mail", _quoted_in_mail),
    _row("same", "soft hyphens within words", _soft_hyphens),
    _row("same", "blank lines behind the text", _blank_lines_after),
    _row("same", "the foot of a page before the notice", _page_end),
    _of_one_action("refused", "the verb garbled", _verb_garbled),
    _of_one_action("refused", "noise for the verb", _command_lost_in_noise),
    *(_within(row) for row in POSITION_MUTATIONS if row.is_in_notices),
)
