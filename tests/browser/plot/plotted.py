"""Actions and frames that a test has plotted, and where their symbols stand."""

from __future__ import annotations

import json
import re
from typing import Any

import noticeparse
from tests.browser.chromium import CORPUS

Json = dict[str, Any]
HEAD = "2417/26\nQuill Sound - Various.\nChart 802 [12/26] WGS84\n"
ALL = f"""{HEAD}Insert (a) dangerous wreck 47°13'.05S., 123°44'.20W.
 legend, "Foul", close NE of (a) above
 obstruction, between 47°15'.05S., 123°41'.20W. and 47°15'.55S., 123°40'.20W.
 fish haven, centred on 47°18'.15S., 123°36'.50W., radius 0.8M
 submarine cable, joining 47°20'.15S., 123°30'.50W. 47°20'.62S., 123°31'.74W.
 restricted area, bounded by 47°08'.15S., 123°50'.50W. 47°08'.15S., 123°45'.50W. 47°10'.15S., 123°45'.50W.
Amend light to Fl(3)WRG.15s21m15-11M 47°11'.90S., 123°46'.20W.
Delete depth 12.4m 47°13'.02S., 123°44'.31W.
Move port-hand light-buoy, from 47°12'.34S., 123°51'.67W. to 47°13'.91S., 123°53'.58W.
Replace port-hand buoy by light-beacon, Q.R 47°14'.10S., 123°43'.80W.
"""  # noqa: E501


def actions_of(text: str) -> list[Json]:
    """The actions of a text as the page hands them to the plot."""
    found = []
    bulletin = json.loads(noticeparse.parse(text).model_dump_json())
    for row, notice in enumerate(bulletin["notices"]):
        for at, chart in enumerate(notice["charts"]):
            found += [
                {
                    "path": f"/notices/{row}/charts/{at}/actions/{number}",
                    "notice": notice["id"],
                    "chart": chart["chart"],
                    "verb": action["verb"],
                    "kind": action["feature"]["kind"],
                    "label": action["feature"]["text"],
                    "usable": action["usable"],
                    "geometry": action["geometry"],
                    "destination": action.get("destination"),
                }
                for number, action in enumerate(chart["actions"])
            ]
    return found


def frames() -> list[Json]:
    charts = noticeparse.read_chart_list(CORPUS / "charts.csv").charts
    return [json.loads(chart.model_dump_json()) for chart in charts]


def show(page: Any, text: str, *, has_frames: bool = False) -> list[Json]:
    actions = actions_of(text)
    wish = {"actions": actions, "frames": frames() if has_frames else []}
    page.evaluate("wish => window.plot.show(wish)", wish)
    drawn(page)
    return actions


def drawn(page: Any) -> None:
    """Wait for the drawing that has been asked for."""
    page.evaluate("() => new Promise((done) => requestAnimationFrame(() => setTimeout(done)))")


def places(page: Any) -> list[tuple[float, float]]:
    """The screen positions of all symbols, in order."""
    moved = page.eval_on_selector_all(
        ".symbol:not(.sample *)", "all => all.map((one) => one.getAttribute('transform'))"
    )
    pattern = re.compile(r"translate\((\S+) (\S+)\)")
    return [(float(x), float(y)) for one in moved for x, y in pattern.findall(one or "")]
