"""The table: read back by Python's own reader, and safe to open in a spreadsheet."""

from __future__ import annotations

import csv
import io
import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from noticeparse import parse, parse_position, read_chart_list
from noticeparse.caution import CAUTION
from noticeparse.records.bulletin import Bulletin
from noticeparse.writers import Wishes
from noticeparse.writers.columns import COLUMNS
from noticeparse.writers.csv_out import TITLES
from noticeparse.writers.rows import placed_actions, row_of
from tests.contract_keys import resolve
from tests.corpus_files import CORPUS, TEXTS
from tests.geojson_rules import HEAD, with_destination
from tests.golden_files import NAMES, kept, written, written_of
from tests.short_notices import actions_of
from tests.week import WEEK

P, Q = "47°12'.34S., 123°45'.67W.", "47°12'.41S., 123°45'.58W."


def read(*bulletins: Bulletin) -> list[dict[str, str]]:
    """The rows of a table by the names of its columns."""
    return [*csv.DictReader(io.StringIO(written("csv", *bulletins), newline=""))]


def row(line: str) -> dict[str, str]:
    (found,) = read(parse(f"{HEAD}{line}\n", name="w.txt"))
    return found


def test_a_row_for_each_action() -> None:
    bulletins = [parse(path.read_text("utf-8"), name=path.name) for path in TEXTS]
    rows = read(*bulletins)
    expected = [(b.source.name, a.verb, a.text) for b in bulletins for a in actions_of(b)]
    guarded = [unguarded(one) for one in rows]
    assert [(one["source"], one["verb"], one["text"]) for one in guarded] == expected
    assert all(one["caution"] == CAUTION for one in rows)
    assert all([*one] == [*TITLES] for one in rows)


def unguarded(cells: dict[str, str]) -> dict[str, str]:
    """The row as it was before cells were guarded, by what it says of itself."""
    names = cells["guarded"].split(", ") if cells["guarded"] else []
    assert all(cells[name].startswith("'") for name in names)
    return {name: cell[1:] if name in names else cell for name, cell in cells.items()}


class TestColumns:
    """What stands in the columns."""

    def test_every_row_has_all_columns(self) -> None:
        for placed in placed_actions(parse(WEEK)):
            assert [*row_of(placed)] == [*COLUMNS]

    def test_place(self) -> None:
        found = row(f"Insert wreck {P}")
        assert float(found["lat_deg"]) == parse_position(P).lat
        assert float(found["lon_deg"]) == parse_position(P).lon
        assert found["positions"] == "47°12.34'S 123°45.67'W"
        assert found["positions_deg"] == "47.2056667S 123.7611667W"
        assert found["resolution_m"] == "9.3"

    def test_both_ends_of_a_move(self) -> None:
        found = row(f"Move special buoy from {P} to {Q}")
        assert float(found["destination_lat_deg"]) == parse_position(Q).lat
        assert found["destination_positions"] == "47°12.41'S 123°45.58'W"
        assert (found["destination_resolution_m"], found["destination_relation"]) == ("9.3", "at")

    def test_a_new_place_told_from_a_reference_is_no_place(self) -> None:
        (found,) = read(with_destination({"relation": "close", "direction": "NE"}))
        for name in ("lat_deg", "lon_deg", "positions", "positions_deg"):
            assert found[name] != ""
            assert found[f"destination_{name}"] == ""
        assert found["destination_reference_positions"] == "47°12.00'S 123°30.00'W"
        assert (found["relation"], found["destination_relation"]) == ("at", "close")

    def test_place_on_the_paper(self) -> None:
        charts = read_chart_list(CORPUS / "charts.csv")
        wreck, legend, *others = read(
            parse((CORPUS / "demo.txt").read_text("utf-8"), charts=charts)
        )
        assert wreck["sheet"] == "centre, 265.8 mm right, 419.6 mm up"
        # Close to the wreck, and not on it.
        assert (legend["sheet"], legend["reference_sheet"]) == ("", wreck["sheet"])
        moved = next(one for one in others if one["verb"] == "move")
        assert moved["sheet"] == "centre left, 210.2 mm right, 432.5 mm up"
        assert moved["destination_sheet"] == "centre left, 212.5 mm right, 429.9 mm up"

    def test_a_reference_is_no_place(self) -> None:
        found = row(f"Delete depth 4m, close NE of {P}")
        for name in ("lat_deg", "lon_deg", "positions", "positions_deg"):
            assert found[name] == ""
        assert (found["relation"], found["direction"]) == ("close", "NE")
        assert found["reference_positions"] == "47°12.34'S 123°45.67'W"

    def test_places_that_are_not_to_be_plotted_as_they_stand(self) -> None:
        other = parse(HEAD.replace("WGS84", "NAD27") + f"Insert wreck {P}\n")
        unusable = parse(f"{HEAD}Insert light, Fl.X.5s {P}\n")
        line = parse(f"{HEAD}Insert submarine cable, joining {P} {Q}\n")
        for bulletin in (other, unusable, line):
            (found,) = read(bulletin)
            assert (found["lat_deg"], found["lon_deg"]) == ("", "")
            assert found["positions"].startswith("47°12.34'S 123°45.67'W")

    def test_unusable_says_so_and_why(self) -> None:
        found = row(f"Insert light, Fl.X.5s {P}")
        assert (found["usable"], row(f"Insert wreck {P}")["usable"]) == ("false", "true")
        assert found["findings"].startswith("error light-")

    def test_doubt_and_validity_are_not_lost(self) -> None:
        text = HEAD.replace("2417/26", "2417(T)/26") + f"Insert wreck {P} (PA)\n"
        (found,) = read(parse(f"{text}\nThis notice is valid until 1 October 2026.\n"))
        doubt = {found["position_quality"], *found["status"].split(", ")}
        assert doubt & {"approximate", "position_approximate"}
        assert (found["notice_status"], found["valid_until"]) == ("temporary", "2026-10-01")

    def test_figures_are_plain(self) -> None:
        found = row(f"Amend light to Fl(3)WRG.15s21m15-11M {P}")
        assert found["changes"] == "light to Fl(3)WRG.15s21m15-11M"
        found = row(f"Insert light, Fl.5s10m12M {P}")
        assert (found["light_period_s"], found["light_ranges_nm"]) == ("5", "12")

    def test_figures_without_end_are_those_of_the_json(self) -> None:
        found = row(f"Insert fish haven, centred on {P}, radius 500 metres")
        assert found["radius_nm"] == "0.26997840172786175"

    @pytest.mark.parametrize("name", NAMES)
    def test_golden(self, name: str, request: pytest.FixtureRequest) -> None:
        found = written_of(name, "csv")
        assert found == kept(f"{name}.csv", found, request.config)

    def test_pointer_leads_to_the_action(self) -> None:
        bulletin = parse(WEEK, name="w.txt")
        whole = json.loads(bulletin.model_dump_json())
        for found, action in zip(read(bulletin), actions_of(bulletin), strict=True):
            assert resolve(whole, found["path"])["text"] == action.text


class TestForm:
    """The form of the file."""

    def test_lines_end_as_in_rfc_4180(self) -> None:
        text = written("csv", parse(WEEK))
        assert text.count("\n") == text.count("\r\n") == len(read(parse(WEEK))) + 1

    def test_one_row_of_titles(self) -> None:
        week = parse(WEEK)
        assert written("csv", week, week).count(",".join(TITLES)) == 1
        assert written("csv", parse("")) == ",".join(TITLES) + "\r\n"

    def test_mark(self) -> None:
        week = parse(WEEK)
        marked = written("csv", week, week, wishes=Wishes(has_mark=True))
        assert marked == "\ufeff" + written("csv", week, week)


DANGEROUS = ["=1+1", "+1", "-1", "@SUM(A1)", " =1", "\t=1", "＝1", "-47.2 -123.8"]


class TestGuard:
    """Cells that a spreadsheet would work out."""

    @pytest.mark.parametrize("words", DANGEROUS)
    def test_is_guarded_and_says_so(self, words: str) -> None:
        bulletin = with_legend(words)
        (found,) = read(bulletin)
        assert found["legend"] == f"'{words}"
        assert "legend" in found["guarded"].split(", ")
        assert unguarded(found)["legend"] == words

    @pytest.mark.parametrize("words", ["Foul", "'=1", "1-2", "a=b", ""])
    def test_others_are_left_alone(self, words: str) -> None:
        (found,) = read(with_legend(words))
        assert (found["legend"], found["guarded"]) == (words, "")

    def test_name_of_the_input_too(self) -> None:
        (found,) = read(parse(f"{HEAD}Insert wreck {P}\n", name="=cmd.txt"))
        assert (found["source"], found["guarded"]) == ("'=cmd.txt", "source")

    @given(st.text(max_size=12))
    def test_nothing_is_lost(self, words: str) -> None:
        (found,) = read(with_legend(words.encode("utf-8", "replace").decode()))
        assert unguarded(found)["legend"] == words.encode("utf-8", "replace").decode()
        for name, cell in found.items():
            is_figure = name.endswith(("_deg", "_m", "_nm")) and not name.startswith("positions")
            assert is_figure or not cell.lstrip().startswith(("=", "+", "-", "@"))


def with_legend(words: str) -> Bulletin:
    """A bulletin of one action whose legend is `words`."""
    bulletin = parse(f'{HEAD}Insert legend, "Foul" {P}\n')
    notice = bulletin.notices[0]
    section = notice.charts[0]
    action = section.actions[0]
    feature = action.feature.model_copy(update={"legend": words})
    changed = section.model_copy(
        update={"actions": [action.model_copy(update={"feature": feature})]}
    )
    notices = [notice.model_copy(update={"charts": [changed]})]
    return bulletin.model_copy(update={"notices": notices})
