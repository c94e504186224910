"""`New:` as the key of what is inserted, and as that of a state."""

from __future__ import annotations

from noticeparse import parse
from tests.short_notices import P, Q, errors

HEAD = "44/26 Quill\nChart GH1 (last updated by Terminal Notice 39 of 2026)\n"


def test_is_an_insertion_among_keys_of_what_was_done() -> None:
    body = f"* New: SPM, Fl.Y.10s | {P}\n* Removed: special light-buoy | {Q}\n* New: rock | {Q}\n"
    bulletin = parse(HEAD + body)
    (chart,) = bulletin.notices[0].charts
    assert [(one.verb, one.feature.kind) for one in chart.actions] == [
        ("insert", "buoy_installation"),
        ("delete", "buoy_special"),
        ("insert", "rock"),
    ]
    assert chart.previous is not None
    assert chart.previous.number == 39
    assert not errors(bulletin)


def test_is_no_insertion_beside_an_old_state() -> None:
    body = f"* Amend: light {P}\n* Old: Fl.R.5s\n* New: Fl.G.5s\n"
    (chart,) = parse(HEAD + body).notices[0].charts
    assert "insert" not in {one.verb for one in chart.actions}


def test_please_behind_the_end_of_a_sentence_commands() -> None:
    body = f"The south pier was mended. Please insert a beacon, Fl.R.3s, in {P}.\n"
    bulletin = parse(HEAD + body)
    (chart,) = bulletin.notices[0].charts
    assert [(one.verb, one.feature.kind) for one in chart.actions if one.usable] == [
        ("insert", "light_beacon")
    ]
