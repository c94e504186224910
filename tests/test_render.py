"""The canonical layout reads back as the record it was written from, or is refused."""

from __future__ import annotations

import json
import os
from pathlib import Path
from typing import Any

import pytest

import noticeparse
from noticeparse import parse, render
from noticeparse.records import Finding, Notice
from noticeparse.testing.generator import ALL, generate
from tests.canonical_heads import HEADS
from tests.canonical_items import DEPTHS, ITEMS, UNITS, notice_of, placed
from tests.comes_back import all_actions, assert_comes_back, usable
from tests.corpus_files import CORPUS, name_of

TEXTS = sorted(CORPUS.rglob("*.txt"))
FULL = os.environ.get("NOTICEPARSE_LAWS") == "full"
# Notices generated in all layouts together: 10,000, else 300.
NOTICES = 10_000 if FULL else 300
IN_ONE_TEXT = 4


@pytest.mark.parametrize("item", ITEMS)
def test_an_item_comes_back(item: str) -> None:
    notice = parse(notice_of(item)).notices[0]
    assert all(action.usable for action in all_actions(notice))
    assert any(True for _ in all_actions(notice))
    assert_comes_back(notice)


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("item", DEPTHS)
def test_a_depth_comes_back_with_its_unit(item: str, unit: str) -> None:
    notice = parse(notice_of(item, unit)).notices[0]
    assert all(action.usable for action in all_actions(notice))
    assert_comes_back(notice)


@pytest.mark.parametrize("name", HEADS)
def test_a_head_comes_back(name: str) -> None:
    notices = parse(placed(HEADS[name])).notices
    assert len(notices) == 1
    assert_comes_back(notices[0])


@pytest.mark.parametrize("path", TEXTS, ids=name_of)
def test_the_corpus_comes_back(path: Path) -> None:
    notices = parse(path.read_text("utf-8")).notices
    assert notices
    for notice in notices:
        assert_comes_back(usable(notice))


@pytest.mark.parametrize("layout", ALL)
def test_generated_notices_come_back(layout: str) -> None:
    wanted = -(-NOTICES // len(ALL))
    seen = 0
    seed = 1000
    while seen < wanted:
        text = generate(seed, notices=IN_ONE_TEXT, layouts=(layout,)).text
        for notice in parse(text).notices[: wanted - seen]:
            assert_comes_back(usable(notice), stays=seen % 8 == 0)
            seen += 1
        seed += 1


def test_every_key_of_a_record_is_in_the_table() -> None:
    """A key that the table never fills has not been tried."""
    filled: set[str] = set()
    for text in [*map(notice_of, ITEMS), *(placed(one) for one in HEADS.values())]:
        _note_filled(json.loads(parse(text).notices[0].model_dump_json()), filled)
    schema = Notice.model_json_schema()
    models = [schema, *schema["$defs"].values()]
    keys = {key for model in models for key in model.get("properties", {})}
    # A sheet needs a chart list, and findings do not come back.
    left_aside = {"sheet", "x_mm", "y_mm", "part", "findings"}
    left_aside |= set(Finding.model_fields)
    assert keys - filled - left_aside == set()


def _note_filled(value: Any, filled: set[str]) -> None:
    if isinstance(value, list):
        for one in value:
            _note_filled(one, filled)
    elif isinstance(value, dict):
        for key, one in value.items():
            if one not in (None, [], {}, False):
                filled.add(key)
            _note_filled(one, filled)


DEMO = """\
2417/26  TAVRENNE ISLANDS - Quill Sound - Wreck. Light. Buoyage.
Source: Port Ellory Harbour Master
Notice 2301(T)/26 is cancelled.

Chart 802 (INT 9871), plan "Grain Quay", WGS84, depths in fathoms and feet, after notice 2310/26
Insert   (a) dangerous wreck, least depth 4fm 3ft   47°13.05'S 123°44.20'W (PA)
Insert   legend, "Foul ground", close E of          (a) above
Amend    light to Fl(3)WRG.15s21m15-11M             47°11'54.0"S 123°46'12.0"W
Move     port-hand light-buoy, Fl.R.4s, from        47.20567°S 123.76117°W to 47.20683°S 123.75967°W
Replace  port-hand buoy by port-hand light-buoy, Q.R   47°14.1'S 123°43.8'W
Delete   submarine cable, joining                   (b) 47°20.15'S 123°30.50'W and (c) 47°20.62'S 123°31.74'W
"""  # noqa: E501


def test_how_it_looks() -> None:
    """A notice in the canonical layout is written as it stands."""
    lines = render(parse(DEMO).notices[0]).splitlines()
    assert [" ".join(line.split()) for line in lines] == [
        " ".join(line.split()) for line in DEMO.splitlines()
    ]


def test_positions_stand_in_one_column() -> None:
    lines = render(parse(notice_of("Insert wreck @P\nDelete dangerous rock @Q")).notices[0])
    places = [line.index("47°") for line in lines.splitlines() if "47°" in line]
    assert len(places) == 2
    assert len(set(places)) == 1


@pytest.mark.parametrize(
    ("item", "line"),
    [
        ("Insert depth 8₆ m @P", "Insert   depth 8.6m   47°13.05'S 123°44.20'W"),
        ("DELETE RK, FL(5)Y.20S @P", "Delete   RK, Fl(5)Y.20s   47°13.05'S 123°44.20'W"),
        ("Insert wreck 47 13.050S 123 44.200W", "Insert   wreck   47°13.050'S 123°44.200'W"),
        ("Insert wreck 471305S 1234420W", "Insert   wreck   47°13'05\"S 123°44'20\"W"),
        ("Insert wreck -4713.05-12344.20/", "Insert   wreck   47°13.05'S 123°44.20'W"),
        ("Insert wreck 47°S 123°W", "Insert   wreck   47°S 123°W"),
        (
            "Insert kelp, 2.5 cables SSE of @P",
            "Insert   kelp, 0.25 miles SSE of   47°13.05'S 123°44.20'W",
        ),
        (
            "Insert dan-\n  gerous wreck @P",
            "Insert   dangerous wreck   47°13.05'S 123°44.20'W",
        ),
    ],
)
def test_a_line(item: str, line: str) -> None:
    notice = parse(notice_of(item)).notices[0]
    assert assert_comes_back(notice).splitlines()[-1] == line


@pytest.mark.parametrize(
    ("item", "words"),
    [
        ("Amend inner light to Fl.R.5s @P", "inner light to Fl.R.5s"),
        ("Amend depth 8.6m, inside the dock, to 9.6m @P", "inside the dock, depth from 8.6m"),
        ("Amend depth of dredged area to 10.2m, centred on @P", "dredged area, dredged depth to"),
        ("Insert AIS aid, MMSI 993672001 @P", "AIS aid, MMSI 993672001"),
        ("Insert fog signal, Horn Mo(U)30s 2M @P", "fog signal, Horn Mo(U)30s 2M"),
        ("Replace light, 7 panels by light Q, 9 panels @P", "7 panels by light Q, 9 panels"),
        ("Insert wreck, least depth 12.0m @P", "wreck, least depth 12.0m"),
        ("Insert depth 12₀ @P", "depth 12.0 "),
    ],
)
def test_no_word_and_no_digit_is_lost(item: str, words: str) -> None:
    """Neither where the record has no place for it, nor where it was doubted."""
    assert words in assert_comes_back(parse(notice_of(item)).notices[0])


def test_an_unusable_action_is_refused() -> None:
    notice = parse(notice_of("Insert wreck @P\nInsert rock 47°73'.05S., 123°44'.20W.")).notices[0]
    with pytest.raises(
        ValueError, match=r"^/charts/0/actions/1 of notice 2417/26 cannot .* usable"
    ):
        render(notice)


def test_a_record_that_no_words_say_is_refused() -> None:
    notice = parse(notice_of("Insert wreck @P")).notices[0]
    chart = notice.charts[0]
    feature = chart.actions[0].feature.model_copy(update={"kind": "islet"})
    action = chart.actions[0].model_copy(update={"feature": feature})
    changed = notice.model_copy(
        update={"charts": [chart.model_copy(update={"actions": [action]})]}
    )
    with pytest.raises(ValueError, match=r"/charts/0/actions/0 of notice 2417/26 .* no wording"):
        render(changed)


def test_a_head_that_no_words_say_is_refused() -> None:
    notice = parse(notice_of("Insert wreck @P")).notices[0]
    with pytest.raises(
        ValueError, match=r"notice 2417/26 cannot be written: .*differs in its .*year"
    ):
        render(notice.model_copy(update={"year": 1850}))


@pytest.mark.parametrize("given", [None, "2417/26", 12, {}])
def test_what_is_no_notice(given: Any) -> None:
    with pytest.raises(TypeError, match="notice must be a Notice"):
        render(given)


@pytest.mark.parametrize("item", ["Insert wreck, least depth 7m @P", "Insert light, Fl.R.5s @P"])
def test_a_changed_value_is_written_and_not_the_old_words(item: str) -> None:
    """The words of a record count only as far as they say what it says."""
    notice = parse(notice_of(item)).notices[0]
    chart = notice.charts[0]
    feature = chart.actions[0].feature
    if feature.depth is not None:
        update: dict[str, Any] = {
            "depth": feature.depth.model_copy(update={"value_m": feature.depth.value_m - 2})  # type: ignore[operator]
        }
    else:
        assert feature.light is not None
        update = {
            "light": feature.light.model_copy(update={"period_s": feature.light.period_s + 2})
        }  # type: ignore[operator]
    changed = feature.model_copy(update=update)
    action = chart.actions[0].model_copy(update={"feature": changed})
    assert_comes_back(
        notice.model_copy(update={"charts": [chart.model_copy(update={"actions": [action]})]})
    )


def test_a_notice_from_json_is_written_too() -> None:
    """Figures come as the nearest numbers, and without the words of the text."""
    item = "Insert fish haven, centred on @P, radius 500 metres"
    notice = parse(notice_of(item)).notices[0]
    again = Notice.model_validate_json(notice.model_dump_json())
    assert "radius 500 metres" in assert_comes_back(again)


@pytest.mark.parametrize("item", ITEMS)
def test_a_record_without_its_words_is_written_from_its_values(item: str) -> None:
    assert_comes_back(without_words(parse(notice_of(item)).notices[0]), stays=False)


def without_words(notice: Notice) -> Notice:
    """The notice as a program would make it, without the words of any text."""
    return Notice.model_validate(_blanked(json.loads(notice.model_dump_json())))


def _blanked(value: Any, key: str = "") -> Any:
    if isinstance(value, dict):
        return {name: _blanked(one, name) for name, one in value.items()}
    if isinstance(value, list):
        return [_blanked(one, key) for one in value]
    return "" if key in ("text", "written", "written_verb") and value is not None else value


def test_render_is_public() -> None:
    assert "render" in noticeparse.__all__
    assert noticeparse.render is render
