"""Items, heads and rows that run together or lose a word: told apart exactly, or an error.

Each text once gave usable actions that its words do not say.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, usable_of

P, Q, R = (f"46-0{n}.00S 122-00.00W" for n in (1, 2, 3))


EXACT = {
    "qualifier wrapped": (
        f"Insert   wreck                {P}\n         port-hand\n         buoy, No 2    {Q}",
        [("insert", "wreck"), ("insert", "buoy_lateral_port")],
    ),
    "bars alone on a line": (
        f"Insert   wreck   {P}\n         |       |\n         buoy    {Q}",
        [("insert", "wreck"), ("insert", "buoy_generic")],
    ),
    "records without a blank line": (
        f"Action: Insert\nObject: pier\nPosition: {P}\n"
        f"Action: Delete\nObject: chimney\nPosition: {Q}",
        [("insert", "pier"), ("delete", "chimney")],
    ),
    "two statements of a sentence": (
        f"The light in {P} has been removed and a wreck has been inserted in {Q}.",
        [("delete", "light"), ("insert", "wreck")],
    ),
    "list behind a blank line": (
        f"Insert floating dock, bounded by {P}, {Q},\n\n{R} and 46-04.00S 122-00.00W",
        [("insert", "floating_dock")],
    ),
    "mention of another position": (
        f"Insert (a) wreck {P}\nDelete (b) rock (see (a) above) {Q}",
        [("insert", "wreck"), ("delete", "rock")],
    ),
    "value on the next line": (
        f"DO: Insert\nWHAT: light,\nIQ.R.10s5m3M\nWHERE: {P}", [("insert", "light")],
    ),
    "line from place to place": (
        f"Insert submarine pipeline from {P} to {Q}", [("insert", "pipeline")],
    ),
}  # fmt: skip


@pytest.mark.parametrize(("text", "actions"), EXACT.values(), ids=EXACT)
def test_told_apart(text: str, actions: list[tuple[str, str]]) -> None:
    bulletin = parse(HEAD + text + "\n")
    assert usable_of(bulletin) == actions
    assert not [f for f in bulletin.findings if f.severity in ("error", "warning")]


ERRORS = {
    "verbs side by side": (f"INSERT         DELETE\nwreck {P}    rock {Q}", "verb-unknown", 0),
    "misspelt heading": (f"INSERT\n   wreck {P}\n\nDELEE\n\n   rock {Q}", "verb-unknown", 1),
    "misspelt behind a slash": (
        f"Insert wreck in {P} / delee rock in {Q}", "verb-unknown", 1,
    ),
    "misspelt with a hyphen": (
        f"1. Delete rock in {P}\n2. Re-ste the buoy from {Q} to {R}", "verb-unknown", 1,
    ),
    "misspelt in a column": (
        f"{P}   Delete   wreck\n{Q}   Inset   rock", "verb-unknown", 1,
    ),
    "move under another verb": (f"Delete wreck, from {P}\n   to  {Q}", "places-of-a-move", 0),
    "participle behind and": (
        f"The wreck in {P} has been removed and replaced by a buoy.", "sentence-told-twice", 0,
    ),
    "new value gone": (
        "Object                Old            New             Position\n"
        f"Light-buoy, No 6      Fl.R.3s                        {P}", "new-value-empty", 0,
    ),
    "row run together": (
        "Position                    Feature                  Existing      Revised\n"
        f"{P}       Port light-buoy, No 4    Fl.R.3s       Q.R\n{Q} Depth 11.3m 10.8m",
        "item-without-verb", 1,
    ),
    "bracket of a letter": (
        f"Insert (a) wreck {P}\nDelete rock, between (a and (b) above", "bracket-lost", 1,
    ),
    "quotation behind a quotation": (
        f'Amend name of beacon from "Asker E" to "Asker East" and light to Q(3)10s, {P}',
        "change-value-unread", 0,
    ),
    "legend without its place": (
        f'Amend legend "Foul" to "Obstn"\nDelete rock {P}', "item-without-position", 1,
    ),
}  # fmt: skip


@pytest.mark.parametrize(("text", "code", "actions"), ERRORS.values(), ids=ERRORS)
def test_never_a_guess(text: str, code: str, actions: int) -> None:
    bulletin = parse(HEAD + text + "\n")
    assert code in [f.code for f in bulletin.findings if f.severity == "error"]
    assert len(usable_of(bulletin)) == actions


HEADS = {
    "previous notice on two lines": (
        f"506/26 Quill Sound.\nChart 844   previous\n   notice 480/26   WGS84\nInsert rock {P}",
        ["506/26"], [("844", 480)], None,
    ),
    "chart and number on two lines": (
        f"506/26 Quill Sound.\nChart\n845 [481/26] WGS84\nDelete rock {P}",
        ["506/26"], [("845", 481)], None,
    ),
    "chart of another notice": (
        f"506/26 Quill Sound.\nChart 827   last 490/26   Notice 507/26\nInsert rock {P}",
        ["506/26"], [("827", 490)], "chart-of-other-notice",
    ),
    "bracket of a head": (
        f"506/26 Quill Sound.\nCharts 802 (a [499/26]; 803 (a) [498/26]\n(a) Insert rock {P}",
        ["506/26"], [("802", 499), ("803", 498)], "chart-head-bracket",
    ),
    "previous notice gone": (
        f"506/26 Quill Sound.\nChart 844. Previous notice:\nInsert rock {P}",
        ["506/26"], [("844", None)], "previous-unread",
    ),
    "same as another chart": (
        f"506/26 Quill Sound.\nChart 55 [5/26]\nInsert rock {P}\nChart 56 [6/26]\nAs chart 55.",
        ["506/26"], [("55", 5), ("56", 6)], None,
    ),
    "numbers of items": (
        f"506/26 Quill Sound.\nCharts 55 [5/26] and 56 [6/26] (items 2 only)\n"
        f"1. Insert rock {P}\n2. Insert wreck {Q}",
        ["506/26"], [("55", 5), ("56", 6)], None,
    ),
    "item of one chart": (
        f"506/26 Quill Sound.\nCharts 55 [5/26] and 56 [6/26]\nInsert rock {P} (not on chart 56)",
        ["506/26"], [("55", 5), ("56", 6)], "item-of-one-chart",
    ),
}  # fmt: skip


@pytest.mark.parametrize(("text", "ids", "charts", "code"), HEADS.values(), ids=HEADS)
def test_heads(
    text: str, ids: list[str], charts: list[tuple[str, int | None]], code: str | None
) -> None:
    bulletin = parse(text + "\n")
    assert [notice.id for notice in bulletin.notices] == ids
    sections = bulletin.notices[0].charts
    found = [(one.chart, one.previous.number if one.previous else None) for one in sections]
    assert found == charts
    codes = [f.code for f in bulletin.findings if f.severity != "info"]
    assert code in codes if code else codes == []
