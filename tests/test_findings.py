"""Findings about items, references, checks and characters: raised by a slip, silent without it."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.catalogue import ENTRIES

HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
P, Q = "46-00.00S 122-00.00W", "46-00.50S 122-00.00W"
NEAR = f"Insert wreck {P}\nInsert rock {Q}\nInsert stump 46-00.10S 122-00.20W\n"

SLIPS = {
    "action-duplicate": (
        f"Insert wreck {P}\nInsert wreck {P}",
        f"Insert wreck {P}\nInsert rock {P}",
    ),
    "clearance-unit-not-stated": (
        f"Insert chimney, height 22 {P}",
        f"Insert chimney, height 22m {P}",
    ),
    "date-impossible": ("Valid until 31 June 2026.", "Valid until 30 June 2026."),
    "item-without-position": ("Insert wreck", f"Insert wreck {P}"),
    "item-without-verb": (f"wreck {P}", f"Delete wreck {P}"),
    "letter-unknown": (
        f"Insert (a) wreck {P}\nInsert rock (c) above",
        f"Insert (a) wreck {P}\nInsert rock (a) above",
    ),
    "letter-used-twice": (
        f"Insert (a) wreck {P}\n(a) rock {Q}",
        f"Insert (a) wreck {P}\n(b) rock {Q}",
    ),
    # IALA Maritime Buoyage System, cardinal, isolated danger and special marks.
    "mark-cardinal-colours": (
        f"Insert north cardinal buoy, red {P}",
        f"Insert north cardinal buoy, black and yellow {P}",
    ),
    "mark-cardinal-light": (
        f"Insert north cardinal light-buoy, Q(3)10s {P}",
        f"Insert east cardinal light-buoy, Q(3)10s {P}",
    ),
    "mark-cardinal-topmark": (
        f"Insert north cardinal buoy, topmark 2 cones points down {P}",
        f"Insert south cardinal buoy, topmark 2 cones points down {P}",
    ),
    "mark-light": (
        f"Insert isolated danger light-buoy, Fl(3)5s {P}",
        f"Insert isolated danger light-buoy, Fl(2)5s {P}",
    ),
    "move-too-far": (
        f"Move special buoy from {P} to 46-20.00S 122-00.00W",
        f"Move special buoy from {P} to {Q}",
    ),
    "move-without-destination": (
        f"Move special buoy from {P}",
        f"Move special buoy from {P} to {Q}",
    ),
    "offset-disagrees": (
        f"Insert wreck 5 miles 090° from the light in {P}, in {Q}",
        f"Insert wreck 0.5 miles 180° from the light in {P}, in {Q}",
    ),
    "offset-magnetic": (
        f"Insert wreck 090°M 5 miles from {P}",
        f"Insert wreck 090° 5 miles from {P}",
    ),
    "position-far-away": (
        NEAR + "Insert pile 46-00.10S 129-00.20W",
        NEAR + "Insert pile 46-00.10S 122-00.40W",
    ),
    "position-half-missing": ("Insert wreck 46-00.00S", f"Insert wreck {P}"),
    "position-latitude-digits": ("Insert wreck 046-00.00S 122-00.00W", f"Insert wreck {P}"),
    "position-shared-degrees-doubtful": (
        "Insert wrecks in 47° 59'.34S 123° 45'.67W and 00'.90S 46'.20W",
        "Insert wrecks in 47° 59'.34S 123° 45'.67W and 58'.90S 46'.20W",
    ),
    "reference-unknown": (
        "Insert wreck in the same position",
        f"Delete rock {P}\nInsert wreck in the same position",
    ),
    "text-control-character": (f"Insert wreck\x01 {P}", f"Insert wreck {P}"),
    "text-garbled": (f"Insert w#eck, l&ast d~pth {P}", f"Insert wreck, least depth 4m {P}"),
    "text-surrogate": (f"Insert wreck \ud800 {P}", f"Insert wreck {P}"),
    "geometry-too-few-positions": (
        f"Insert pipeline joining {P}",
        f"Insert pipeline joining {P} and {Q}",
    ),
    "geometry-along-coast": (
        f"Insert cable joining {P}, {Q} thence to the shore",
        f"Insert cable joining {P} and {Q}",
    ),
    "move-unpaired": (
        f"Move special buoys from {P} and {Q} to 46-00.70S 122-00.00W",
        f"Move special buoys from {P} and {Q} to 46-00.70S 122-00.00W and 46-00.80S 122-00.00W",
    ),
    "sentence-told-twice": (
        f"The light in {P} has been moved to {Q} and has been altered to Fl.R.3s.",
        f"The light in {P} has been moved to {Q}.",
    ),
    "sentence-unread": (
        f"The wreck in {Q} has been removed. No 6, has been laid in {P}.",
        f"The wreck in {P} has been removed.",
    ),
    "verb-within-words": (
        f"Insert wreck remove rock {P}",
        f'Insert legend "To remove rock" {P}',
    ),
    "change-colour-unclear": (
        f"Amend light-buoy, Fl.R.10s: colour to green {P}",
        f"Amend red light-buoy, Fl.R.10s: colour to green {P}",
    ),
    "feature-instead": (f"Insert buoy in place of wreck {P}", f"Replace wreck with buoy {P}"),
    "text-garbled at the end": (
        f"Insert tower {P}\n~(%) wr#ck, l&ast d~pth 4.1m",
        f"Insert tower {P}",
    ),
}


@pytest.mark.parametrize(("code", "slip"), [(code, slip) for code, (slip, _) in SLIPS.items()])
def test_slip_has_its_finding(code: str, slip: str) -> None:
    code = code.partition(" ")[0]
    found = [finding for finding in parse(HEAD + slip + "\n").findings if finding.code == code]
    assert found
    assert found[0].severity == ENTRIES[code].severity
    assert found[0].span.line > 2


@pytest.mark.parametrize(("code", "good"), [(code, good) for code, (_, good) in SLIPS.items()])
def test_good_text_has_it_not(code: str, good: str) -> None:
    code = code.partition(" ")[0]
    assert code not in [finding.code for finding in parse(HEAD + good + "\n").findings]


@pytest.mark.parametrize(
    "code", [c for c in SLIPS if ENTRIES[c.partition(" ")[0]].severity == "error"]
)
def test_an_action_with_an_error_is_not_usable(code: str) -> None:
    if code == "sentence-unread":
        pytest.skip("its error points at a remark")
    bulletin = parse(HEAD + SLIPS[code][0] + "\n")
    usable = [a.usable for n in bulletin.notices for c in n.charts for a in c.actions]
    assert not usable or False in usable


def test_item_that_no_chart_takes() -> None:
    text = f"12/26 Quill Sound.\nCharts 802 (a), 803 (a)\nInsert (a) wreck {P}\n(b) rock {Q}\n"
    codes = {finding.code for finding in parse(text).findings}
    assert {"item-without-chart", "text-action-lost"} <= codes


def test_items_without_a_letter_are_for_all_charts() -> None:
    text = f"12/26 Quill Sound.\nCharts 802 (a), 803 (a)\nInsert (a) wreck {P}\nDelete rock {Q}\n"
    charts = parse(text).notices[0].charts
    assert [[a.verb for a in chart.actions] for chart in charts] == [["insert", "delete"]] * 2


def test_chart_whose_number_cannot_be_read() -> None:
    bulletin = parse(f"12/26 Quill Sound.\nChart No: ?? [3/26] WGS84\nInsert wreck {P}\n")
    assert "chart-unread" in {finding.code for finding in bulletin.findings}


def test_words_that_may_bear_on_a_chart() -> None:
    bulletin = parse(
        f"TAVRENNE\nChart 999 is withdrawn.\n\n12/26 A\nChart 802\nInsert wreck {P}\n"
    )
    assert [f.severity for f in bulletin.findings if "999" in f.message] == ["warning"]


def test_stop_ends_a_command() -> None:
    bulletin = parse(f"{HEAD}ADD ROCK {P} STOP REMOVE WRECK {Q} STOP\n")
    actions = bulletin.notices[0].charts[0].actions
    assert [(a.verb, a.feature.kind) for a in actions] == [("insert", "rock"), ("delete", "wreck")]
