"""The reading copy for the corrector: complete, and nothing in it that could be misread."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

import pytest

from noticeparse import parse, parse_position, read_chart_list
from noticeparse.caution import CAUTION
from noticeparse.records.bulletin import Bulletin
from noticeparse.writers import new_writer, write
from noticeparse.writers.coordinates import readable
from tests.corpus_files import CORPUS, TEXTS, name_of
from tests.geojson_rules import FAULTY, HEAD, P, Q, R
from tests.golden_files import NAMES, kept, written_of
from tests.short_notices import actions_of

_POSITION = re.compile(r"[0-9]{2}°[0-9.'\"°]* ?[NS] [0-9]{3}°[0-9.'\"]* ?[EW]")


def copy(*bulletins: Bulletin) -> str:
    return "".join(write(new_writer("text"), bulletins))


def copy_of(*lines: str) -> str:
    return copy(parse(HEAD + "".join(f"{line}\n" for line in lines), name="w.txt"))


@pytest.mark.parametrize("name", NAMES)
def test_golden(name: str, request: pytest.FixtureRequest) -> None:
    found = written_of(name, "text")
    assert found == kept(f"{name}.text.txt", found, request.config)


@pytest.mark.parametrize("path", TEXTS, ids=name_of)
def test_is_complete(path: Path) -> None:
    bulletin = parse(path.read_text("utf-8"), name=path.name)
    shown = copy(bulletin)
    words = squeezed(shown)
    for notice in bulletin.notices:
        assert (notice.id or "No number") in shown
        assert squeezed(notice.heading or "") in words
        for section in notice.charts:
            assert (section.chart or "No chart") in shown
            for action in section.actions:
                assert squeezed(action.feature.text) in words
                for position in positions_of(action.model_dump()):
                    # On one line, with the digits as written.
                    assert position in shown
        for remark in notice.remarks:
            assert squeezed(remark.text) in words
    for one in bulletin.lists:
        assert all(squeezed(entry.text) in words for entry in one.entries)
    assert all(squeezed(finding.message) in words for finding in bulletin.findings)
    boxes = len(re.findall(r"^  \[ \] ", shown, re.MULTILINE))
    crosses = len(re.findall(r"^   X  ", shown, re.MULTILINE))
    actions = actions_of(bulletin)
    assert (boxes, crosses) == (
        sum(action.usable for action in actions), sum(not action.usable for action in actions),
    )  # fmt: skip


def squeezed(text: str) -> str:
    """The text without blanks, which a line end may have taken the place of."""
    return "".join(text.split())


def positions_of(record: Any) -> list[str]:
    """All positions in the geometry of an action, as they are spelled."""
    found = []
    for geometry in (record["geometry"], record.get("destination")):
        for position in geometry["positions"] if geometry else []:
            found.append(readable(parse_position(position["iso6709"])))
    return found


def test_what_must_not_be_used_stands_out() -> None:
    shown = copy_of(f"Insert wreck {P}", FAULTY)
    assert shown.count("NOT TO BE USED") == 1
    assert "1 NOT to be used" in shown
    assert "   X  Delete  depth 4m\n              no position\n" in shown
    assert "!! error, line 4: " in shown


def test_a_reference_is_told_apart() -> None:
    shown = copy_of(f"Delete depth 4m, close NE of {P}", f"Insert rock, 0.4 miles 128° from {P}")
    assert "close NE of 47°12.00'S 123°45.00'W\n" in shown
    lines = shown.splitlines()
    # The worked-out place and that of the reference never share a line.
    assert max(len(_POSITION.findall(line)) for line in lines) == 1
    assert any("that is 0.4 M 128° true from 47°12.00'S" in line for line in lines)
    assert "(worked out, good to " in shown


def test_shapes() -> None:
    shown = copy_of(
        f"Insert submarine cable, joining {P} {Q} {R}",
        f"Insert fish haven, centred on {P}, radius 2 miles",
        "Insert harbour limit, arc of a circle of radius 1.2 miles, between the bearings "
        f"095° and 280°, centred on {P}",
    )
    assert "joining\n" + "".join(f"{' ' * 14}{one}\n" for one in map(spelled, (P, Q, R))) in shown
    assert f"circle of 2 M radius round {spelled(P)}\n" in shown
    words = " ".join(shown.split())
    assert "arc of 1.2 M radius, bearings 095° to 280°, which way round is not stated" in words


def spelled(written: str) -> str:
    return readable(parse_position(written))


def test_changes() -> None:
    shown = copy_of(
        f"Amend light to Fl(3)WRG.15s21m15-11M {P}", f"Amend range of light to 11M {P}",
        f'Amend legend "Works" to "Marina" {P}', f"Amend racon (K) to racon (D) {P}",
        f"Amend fog signal Horn(2)30s to Horn(3)60s {P}",
    )  # fmt: skip
    assert "> light to Fl(3)WRG.15s21m15-11M\n" in shown
    assert "> light ranges to 11 M\n" in shown
    assert '> legend "Works" to "Marina"\n' in shown
    assert "> racon (K) to (D)\n" in shown
    assert "> sound horn(2) 30 s to horn(3) 60 s\n" in shown


def test_depth_in_other_units_in_metres_too() -> None:
    shown = copy(parse(HEAD + f"Insert depth 6¼ fathoms {P}\n"))
    assert "depth 6¼ fathoms\n              = 11.43 m\n" in shown


def test_place_on_the_sheet() -> None:
    charts = read_chart_list(CORPUS / "charts.csv")
    bulletin = parse((CORPUS / "demo.txt").read_text("utf-8"), charts=charts)
    shown = copy(bulletin)
    assert "              on the sheet: centre, 265.8 mm right, 419.6 mm up\n" in shown
    # Close to the wreck, and not on it.
    assert "              reference on the sheet: centre, 265.8 mm right, 419.6 mm up\n" in shown
    assert "              to, on the sheet: centre left, 212.5 mm right, 429.9 mm up\n" in shown


@pytest.mark.parametrize("lead", range(40, 80))
def test_positions_of_prose_stay_on_one_line(lead: int) -> None:
    text = f"TAVRENNE COASTAL WARNING 41/26\n{'BUOY ' * (lead // 5)}{'X' * (lead % 5)} ADRIFT IN "
    shown = copy(parse(f"{text}46 51.70 S 125 12.40 W\nAND 46 51.80 S\n125 12.40 W.\n"))
    assert "46 51.70 S 125 12.40 W" in shown
    assert "46 51.80 S 125 12.40 W" in shown


def test_metres_are_told_in_miles() -> None:
    shown = copy_of(f"Insert fish haven, centred on {P}, radius 500 metres")
    assert "circle of 0.27 M radius round 47°" in shown


def test_what_must_not_be_used_is_shown_as_written() -> None:
    assert f"as written: Delete depth 4m {P.replace('12', '72')}" in copy_of(FAULTY)


def test_several_inputs_and_one_caution_last() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n", name="w.txt")
    shown = copy(bulletin, parse("", name="e.txt"), bulletin)
    assert shown.count(CAUTION) == 1
    assert shown.endswith(f"\n{CAUTION}\n")
    assert "e.txt: 0 notices, 0 actions\n" in shown


def test_nothing_of_the_input_moves_a_cursor() -> None:
    text = (
        "2417/26 TAV\x1b[2JRENNE\nChart 802\x07\n"
        f"Insert \x1b[2Jwreck \u202e8m {P}\n"
        f'Insert legend, "a\u202eb\x9b" {P}\n\x1bjunk 9m\n'
    )
    shown = copy(parse(text, name="\x1b.txt"))
    assert not set(shown) & {"\x1b", "\x07", "\u202e", "\x9b"}


def test_lines_are_of_a_width_to_read() -> None:
    for path in TEXTS:
        lines = copy(parse(path.read_text("utf-8"), name=path.name)).splitlines()
        long = [line for line in lines if len(line) > 79 and line != CAUTION]
        # Only a word that is longer than a line goes beyond.
        assert all(len(line.split()) <= 3 for line in long), long
