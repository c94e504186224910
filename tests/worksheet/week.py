"""A week for one chart and its panel, with everything that a sheet must tell apart; invented."""

from __future__ import annotations

import noticeparse
from noticeparse.records.chart_list import ChartList
from noticeparse.worksheet.collecting import chart_sheets
from noticeparse.worksheet.model import ChartSheet
from tests.documents import ROOT

CORPUS = ROOT / "corpus_synthetic"
LIST = str(CORPUS / "charts.csv")

WEEK = """\
TAVRENNE ISLANDS NOTICES TO MARINERS (invented, not for navigation)
Weekly Edition 27/2026, 8 July 2026

2430/26  TAVRENNE ISLANDS - Quill Sound - Works. Lights.
Source: Port Ellory Harbour Master
Chart 803 [last correction 2425/26] WGS84
Insert   limit of works area, joining               47°12'.00S., 123°45'.00W.
                                                    47°12'.00S., 123°44'.00W.
                                                    47°12'.60S., 123°44'.00W.
                                                    47°12'.00S., 123°45'.00W.
         (a) light, Fl(2)WRG.10s12m15-11M           47°12'.30S., 123°44'.50W.
         legend, "<script>alert(1)</script>"        47°12'.80S., 123°44'.60W.
         rock, close NE of                          (a) above
Amend    depth 8.6m to 7.9m                         47°12'.95S., 123°44'.65W.
Delete   depth 12m                                  47°73'.95S., 123°44'.65W.
Insert   fish haven, centred on 47°20'.15S., 123°40'.50W., radius 0.5M

Chart 803 (Panel A) [last correction 2425/26] WGS84
Replace  port-hand buoy by port-hand light-buoy, Q.R 47°12'.05S., 123°43'.80W.
Move     north cardinal light-buoy, VQ, from        47°11'.88S., 123°45'.63W.
         to                                         47°11'.95S., 123°45'.57W.

2431(T)/26  TAVRENNE ISLANDS - Quill Sound - Buoy.
Chart 803 WGS84
Insert   special light-buoy, Fl.Y.5s                47°14'.00S., 123°40'.00W.

2432(P)/26  TAVRENNE ISLANDS - Quill Sound - Works.
Chart 803
A new breakwater will be built during 2027 from 47°13'.50S., 123°46'.00W.

TAVRENNE COASTAL WARNING 41/26
CHART 803
1. DANGEROUS WRECK IN 47-13.05S 123-44.20W.
"""


def chart_list() -> ChartList:
    return noticeparse.read_chart_list(LIST)


def sheets_of(text: str, *wanted: str, charts: ChartList | None = None) -> list[ChartSheet]:
    bulletin = noticeparse.parse(text, name="week.txt", charts=charts)
    return chart_sheets([("week.txt", bulletin)], charts, wanted)


def week_sheet() -> ChartSheet:
    (sheet,) = sheets_of(WEEK, "803", charts=chart_list())
    return sheet
