"""Which notice goes on which chart first, and how it is shown."""

from __future__ import annotations

from noticeparse import parse
from noticeparse.chart_order import Panel, is_settled, order_by_chart
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.finding import Finding
from noticeparse.records.reference import NoticeRef
from noticeparse.writers.charts_out import write_charts
from tests.week import LINE, OTHER_LINE, WEEK, notice


def chart_list(*labelled: tuple[str, str]) -> list[Panel]:
    return order_by_chart((label, parse(text)) for label, text in labelled)


class TestCharts:
    """Order of application."""

    def test_block(self) -> None:
        assert "".join(write_charts(chart_list(("w.txt", WEEK)))) == (
            "Chart 95\n"
            "  2425/26  1 action  after 2311/26 (not in this input)  w.txt:14\n"
            "\n"
            "Chart 802\n"
            "  2417/26     2 actions, 1 not usable, 1 warning  "
            "after 2310/26 (not in this input)  w.txt:9\n"
            "  2420/26     1 action                            "
            "after 2417/26                      w.txt:5\n"
            "  2431(T)/26  1 action                            "
            "after 2417/26                      w.txt:1\n"
        )

    def test_chain_comes_before_number(self) -> None:
        order = ids(
            notice("2401/26", "802", "2450/26", LINE)
            + notice("2450/26", "802", "2440/26", LINE)
            + notice("2440/26", "802", "2300/26", LINE)
            + notice("2405/26", "802", "2299/26", LINE)
        )
        assert order == ["2405/26", "2440/26", "2450/26", "2401/26"]

    def test_years_before_numbers(self) -> None:
        order = ids(
            notice("12/26", "802", "4000/25", LINE) + notice("4100/25", "802", "3999/25", LINE)
        )
        assert order == ["4100/25", "12/26"]

    def test_temporary_and_preliminary_last(self) -> None:
        order = ids(
            notice("11(T)/26", "802", "9/26", LINE)
            + notice("10(P)/26", "802", "9/26", LINE)
            + notice("30/26", "802", "9/26", LINE)
        )
        assert order == ["30/26", "10(P)/26", "11(T)/26"]

    def test_circle_is_told(self) -> None:
        panels = chart_list(
            ("a", notice("11/26", "802", "12/26", LINE) + notice("12/26", "802", "11/26", LINE))
        )
        assert [step.notice.id for step in panels[0].steps] == ["11/26", "12/26"]
        assert "settle the order by hand" in "".join(write_charts(panels))

    def test_charts_by_number(self) -> None:
        text = "".join(
            notice(f"{n}/26", chart, "1/26", LINE) for n, chart in ((10, "1001"), (11, "802"))
        )
        assert [panel.chart for panel in chart_list(("a", text))] == ["802", "1001"]

    def test_panels_apart_with_one_chain(self) -> None:
        text = notice("10/26", "802 (plan A, Port Ellory)", "1/26", LINE) + notice(
            "11/26", "802", "10/26", LINE
        )
        panels = chart_list(("a", text))
        assert [(panel.chart, bool(panel.panel)) for panel in panels] == [
            ("802", False),
            ("802", True),
        ]
        assert panels[0].steps[0].previous_is_here
        assert "Chart 802, plan A, Port Ellory\n" in "".join(write_charts(panels))

    def test_same_notice_in_two_inputs(self) -> None:
        one = notice("10/26", "802", "1/26", LINE)
        two = notice("10/26", "802", "1/26", OTHER_LINE)
        shown = "".join(write_charts(chart_list(("a", one), ("b", one), ("c", two))))
        assert [line.split(", ")[-1].split() for line in shown.splitlines()[2:]] == [
            ["the", "same", "as", "a:1", "b:1"],
            ["differs", "from", "a:1", "c:1"],
        ]

    def test_same_actions_behind_another_notice_differ(self) -> None:
        one = notice("10/26", "802", "1/26", LINE)
        two = notice("10/26", "802", "2/26", LINE)
        (panel,) = chart_list(("a", one), ("b", two))
        assert [(step.same_as, step.differs) for step in panel.steps] == [
            (None, False),
            ("a:1", True),
        ]
        assert "differs from a:1" in "".join(write_charts([panel]))

    def test_twice_or_in_a_circle_is_not_settled(self) -> None:
        one = notice("10/26", "802", "1/26", LINE)
        assert is_settled(chart_list(("a", one)))
        assert not is_settled(chart_list(("a", one), ("b", one)))
        circle = notice("11/26", "95", "12/26", LINE) + notice("12/26", "95", "11/26", LINE)
        assert not is_settled(chart_list(("a", one), ("b", circle)))

    def test_previous_of_another_status_is_another_notice(self) -> None:
        (panel,) = chart_list(
            ("a", notice("9(T)/26", "802", "1/26", LINE) + notice("10/26", "802", "9/26", LINE))
        )
        assert [(step.notice.id, step.previous_is_here) for step in panel.steps] == [
            ("10/26", False),
            ("9(T)/26", False),
        ]

    def test_without_year_behind_those_with_one(self, week: Bulletin) -> None:
        first = parse(notice("9/26", "802", "1/25", LINE)).notices[0]
        undated = first.model_copy(update={"number": 8, "year": None, "id": "8"})
        changed = week.model_copy(update={"notices": [undated, first]})
        (panel,) = order_by_chart([("a", changed)])
        assert [step.notice.id for step in panel.steps] == ["9/26", "8"]

    def test_notice_that_only_cancels(self) -> None:
        text = notice("10/26", "802", "1/26", LINE) + (
            "11/26 TAVRENNE ISLANDS - Quill Sound - Wreck.\n"
            "Notices 2310(T)/26 and 2311(P)/26 are cancelled.\n"
        )
        shown = "".join(write_charts(chart_list(("a", text))))
        assert shown.endswith(
            "\n\nNo chart named\n  11/26  cancels 2310(T)/26, 2311(P)/26    a:5\n"
        )

    def test_cancelling_stands_beside_the_actions(self, week: Bulletin) -> None:
        cancels = [NoticeRef(number=9, year=2026, status="temporary")]
        changed = [
            one.model_copy(update={"cancels": cancels, "status": status})
            for one, status in zip(week.notices, ["radio_warning", "permanent"], strict=False)
        ]
        panels = order_by_chart([("a", week.model_copy(update={"notices": changed}))])
        shown = "".join(write_charts(panels))
        assert "  1 action, cancels 9(T)/26 " in shown
        assert "  changes no chart, cancels 9(T)/26 " in shown

    def test_no_chart_named(self) -> None:
        shown = "".join(write_charts(chart_list(("a", LINE))))
        assert shown == "No chart named\n  no number  1 action    a:1\n"

    def test_lost_words_are_counted(self) -> None:
        bulletin = parse(notice("10/26", "802", "1/26", LINE))
        head = bulletin.notices[0]
        lost = Finding(
            code="text-action-lost", severity="error", message="m", hint=None, span=None,
            notice="10/26", chart=None, paths=["/notices/0"],
        )  # fmt: skip
        changed = bulletin.model_copy(
            update={"notices": [head.model_copy(update={"findings": [lost]})]}
        )
        (panel,) = order_by_chart([("a", changed)])
        assert panel.steps[0].unread == 1
        assert "1 action, 1 not read" in "".join(write_charts([panel]))

    def test_what_is_found_on_another_chart_is_not_counted(self) -> None:
        bulletin = parse(
            notice("10/26", "802", "1/26", LINE, "Chart 95 [last correction 2/26]", LINE)
        )
        head = bulletin.notices[0]
        found = [
            Finding(
                code="text-unread", severity=severity, message="m", hint=None, span=None,
                notice="10/26", chart=chart, paths=[f"/notices/0{path}"],
            )
            for severity, chart, path in (
                ("error", "95", "/charts/1"),
                ("warning", "95", "/charts/1/actions/0"),
                ("warning", None, "/charts/1"),
                ("warning", None, ""),
                ("info", "802", "/charts/0"),
            )
        ]  # fmt: skip
        changed = bulletin.model_copy(
            update={"notices": [head.model_copy(update={"findings": found})]}
        )
        other, chart = order_by_chart([("a", changed)])
        assert (chart.chart, chart.steps[0].unread, chart.steps[0].warnings) == ("802", 0, 1)
        assert (other.chart, other.steps[0].unread, other.steps[0].warnings) == ("95", 1, 3)
        assert "1 action, 1 not read, 3 warnings  after" in "".join(write_charts([other]))
        assert "1 action, 1 warning  after" in "".join(write_charts([chart]))

    def test_many_notices_in_linear_time(self, week: Bulletin) -> None:
        first = parse(notice("1/26", "802", "1/25", LINE)).notices[0]
        many = [first.model_copy(update={"number": n, "id": f"{n}/26"}) for n in range(3000)]
        (panel,) = order_by_chart([("a", week.model_copy(update={"notices": many}))])
        assert [step.notice.number for step in panel.steps] == [*range(3000)]


def ids(text: str) -> list[str | None]:
    """The notices of the only chart, in order."""
    (panel,) = chart_list(("a", text))
    return [step.notice.id for step in panel.steps]
