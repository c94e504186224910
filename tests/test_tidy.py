"""`tidy` writes a bulletin anew and drops nothing in silence."""

from __future__ import annotations

from pathlib import Path

import pytest

from noticeparse import parse
from noticeparse.caution import CAUTION
from noticeparse.records import Bulletin
from noticeparse.writers.tidy_out import Tidying
from tests.comes_back import usable, values
from tests.command import BAD, GOOD, invoke
from tests.corpus_files import CORPUS, TEXTS, name_of

DEMO = str(CORPUS / "demo.txt")

TIDY = f"""\
2417/26  TAVRENNE ISLANDS - Quill Sound - Depths.

Chart 802, WGS84, after notice 2310/26
Insert   depth 8m   47°12.34'S 123°45.67'W

--
{CAUTION}
"""


def tidied(text: str) -> str:
    return "".join(Tidying().pieces(parse(text), text))


def test_a_notice(good: str) -> None:
    result = invoke("tidy", good)
    assert result.exit_code == 0
    assert result.stdout == TIDY
    assert result.stderr == "1 action written, 0 actions left out, 0 stretches of text not read\n"


def test_standard_input() -> None:
    assert invoke("tidy", given=GOOD).stdout == TIDY
    assert invoke("tidy", "-", given=GOOD).stdout == TIDY


def test_it_is_tidy_already() -> None:
    assert tidied(TIDY) == TIDY


def test_an_unusable_action_stands_in_its_place_with_the_reason() -> None:
    text = BAD + "Delete wreck 47°12'.35S., 123°45'.67W.\n"
    result = invoke("tidy", given=text)
    assert result.exit_code == 1
    lines = result.stdout.splitlines()
    at = lines.index("#|   Insert depth 8m 47°72'.34S., 123°45'.67W.")
    assert lines[at - 2 : at] == [
        "#| Left out: position-minutes-out-of-range: `47°72'.34S.`: 72.34 minutes;",
        "#| 59 is the last",
    ]
    assert lines[at + 1] == "Delete   wreck   47°12.35'S 123°45.67'W"
    assert "1 action written, 1 action left out" in result.stderr


def test_what_is_left_out_is_read_again_as_a_loss_and_not_as_an_action() -> None:
    again = parse(tidied(BAD))
    assert [chart.actions for chart in again.notices[0].charts] == [[]]
    lost = [one for one in again.findings if one.severity == "error"]
    assert [one.code for one in lost] == ["text-action-lost"]
    assert again.coverage.unread > 0


@pytest.mark.parametrize("mark", ["", "  ", "> ", ">> > "])
def test_what_is_left_out_is_no_action_in_mail_either(mark: str) -> None:
    """A quotation puts marks before a line, and a narrow window breaks it in two."""
    left_out = "#|   Delete wreck 47°12'.35S., 123°45'.67W.,\n47°12'.36S., 123°45'.68W.\n"
    text = GOOD + left_out + "Delete rock 47°12'.37S., 123°45'.69W.\n"
    quoted = parse("".join(mark + line for line in text.splitlines(keepends=True)))
    actions = quoted.notices[0].charts[0].actions
    assert [(one.verb, len(one.geometry.positions)) for one in actions] == [
        ("insert", 1),
        ("delete", 1),
    ]
    assert [one.feature.kind for one in actions] == ["sounding", "rock"]
    (lost,) = (one for one in quoted.findings if one.severity == "error")
    assert lost.code == "text-action-lost"
    assert "123°45'.68W" in lost.message


def test_what_is_left_out_is_in_lines_that_mail_does_not_wrap() -> None:
    row = BAD.replace("depth 8m", "obstruction, least depth 8m, " * 4)
    lines = [line for line in tidied(row).splitlines() if line.startswith("#|")]
    assert len(lines) > 3
    assert max(map(len, lines)) < 76


def test_a_fragment_with_nothing_left_tells_why() -> None:
    text = "Delete wreck 47°72'.34S., 123°45'.67W.\n"
    assert tidied(text).startswith("#| Left out: position-minutes-out-of-range: ")
    assert tidied("47°12'.34S., 123°45'.67W.\n").startswith(
        "#| Not written anew: it has no number, and no action that can be written\n"
    )


def test_a_lost_row_is_told_of_in_its_notice() -> None:
    text = GOOD + "Pondering wreck 47°12'.35S., 123°45'.67W.\n"
    bulletin = parse(text)
    assert bulletin.coverage.unread_spans
    lines = tidied(text).splitlines()
    assert any(one.startswith("#| Not read, line 4: ") and "Pondering" in one for one in lines)


def test_what_bears_on_no_chart_stands_at_the_end() -> None:
    lines = tidied("TAVRENNE OFFICE\nInvented waters.\n\n" + GOOD).splitlines()
    foot = lines[lines.index("--") :]
    assert any(one.startswith("Not read, line ") for one in foot)
    assert not any(one.startswith("#|") for one in lines)


def test_doubts_stand_at_the_end() -> None:
    text = GOOD.replace("Insert depth 8m", "Insert north cardinal light-buoy, VQ(9)10s,")
    foot = tidied(text).partition("--\n")[2]
    assert foot.startswith("2417/26, line 3: warning mark-cardinal-light: ")


def test_a_notice_that_reads_otherwise_is_quoted_whole(monkeypatch: pytest.MonkeyPatch) -> None:
    from noticeparse.canonical import heads

    monkeypatch.setattr(heads, "number", lambda ref: f"{ref.number + 1}/26")
    result = invoke("tidy", given=GOOD)
    assert result.exit_code == 1
    assert "1 notice not written anew" in result.stderr
    assert result.stdout.startswith("#| Not written anew: read again it differs in its ")
    for line in GOOD.splitlines():
        assert f"#|   {line}\n" in result.stdout


def test_several_files(good: str) -> None:
    result = invoke("tidy", good, good)
    assert result.stdout == TIDY + "\n" + TIDY
    assert result.stderr.startswith("2 actions written")


def test_no_such_file(good: str) -> None:
    result = invoke("tidy", "/no/such/file", good)
    assert result.exit_code == 2
    assert "/no/such/file: no such file" in result.stderr
    assert result.stdout == TIDY


def test_the_edition_and_its_lists() -> None:
    text = (CORPUS / "clean" / "weekly_full.txt").read_text("utf-8")
    out = tidied(text)
    assert out.startswith("TAVRENNE HYDROGRAPHIC DESK\nEdition 31/2026, 2026-07-31\n\n3104/26  ")
    assert "Not repeated: `" in out


@pytest.mark.parametrize("path", TEXTS, ids=name_of)
def test_the_corpus_reads_again_the_same(path: Path) -> None:
    """No usable action is lost, and none comes of what was not usable."""
    text = path.read_text("utf-8")
    before = parse(text)
    after = parse(tidied(text))
    assert _values(after) == _values(before)
    left = sum(not one.usable for n in before.notices for c in n.charts for one in c.actions)
    lost = [one for one in after.findings if one.code == "text-action-lost"]
    assert bool(lost) == bool(left or _lost(before))


def _values(bulletin: Bulletin) -> list[object]:
    return [values(usable(notice)) for notice in bulletin.notices]


def _lost(bulletin: Bulletin) -> bool:
    """Whether a stretch that may bear on a chart was not read."""
    slight = {one.span for one in bulletin.findings if one.severity == "info"}
    return any(span not in slight for span in bulletin.coverage.unread_spans)


def test_help_has_examples_and_the_caution() -> None:
    result = invoke("tidy", "--help")
    assert "noticeparse tidy week12.txt" in result.stdout
    assert " ".join(CAUTION.split()) in " ".join(result.stdout.split())
