"""Checks of marks, lights and depths: what is told, what lies near it and is in order, regions."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from noticeparse import parse
from noticeparse.checks.features import features_of
from noticeparse.checks.regions import Region
from noticeparse.cli import main
from noticeparse.records import Bulletin
from noticeparse.records.action import Amend, Replace
from tests.short_notices import HEAD, P, Q


def codes(body: str, region: Region | None = None) -> list[str]:
    """The codes of warnings and errors."""
    found = parse(HEAD + body + "\n", region=region).findings
    return [one.code for one in found if one.severity != "info"]


TOLD = {
    f"Insert west cardinal buoy, black with yellow band {P}": ["mark-cardinal-colours"],
    f"Insert north cardinal buoy, yellow and black {P}": ["mark-cardinal-colours"],
    f"Insert preferred channel to port buoy, red and green {P}": ["mark-preferred-colours"],
    f"Insert isolated danger buoy, RBR {P}": ["mark-colours"],
    # The state after a change is held against what stays.
    f"Amend red port-hand light-buoy, Fl.R.10s: colour to green {P}": ["mark-colour-light"],
    f"Amend port-hand buoy, topmark can: topmark to cone point up {P}": ["mark-lateral-topmark"],
    f"Amend isolated danger light-buoy, Fl(2)5s to Fl(3)10s {P}": ["mark-light"],
    f"Replace wreck with port-hand buoy, black {P}": ["mark-lateral-colours"],
    # A mark of which only its paint tells what it is.
    f"Insert light-buoy, BYB, Q(9)15s {P}": ["mark-cardinal-light"],
    f"Insert can buoy, red, topmark cone point up {P}": ["mark-lateral-topmark"],
    f"Insert green light-buoy, Fl.R.3s {P}": ["mark-colour-light"],
    f"Insert red light-buoy, Fl(2+1)R.10s {P}": ["mark-lateral-composite"],
    # A cardinal mark whose quarter nothing tells.
    f"Insert cardinal light-buoy, Q(4)10s {P}": ["mark-light"],
    f"Insert cardinal light-buoy, YBY, Q(3)10s {P}": ["mark-cardinal-light"],
    # The south mark is told by its long flash.
    f"Insert south cardinal light-buoy, Q(6)15s {P}": ["mark-cardinal-light"],
    f"Insert port-hand light-buoy, Fl.R.5s and Fl.G.3s {P}": ["mark-colour-light"],
    f"Insert safe water light-buoy, LFl.8s {P}": ["mark-light"],
    f"Insert safe water buoy, red and white horizontal stripes {P}": ["mark-colours"],
    f"Insert emergency wreck-marking light-buoy, BuY, Al.BuY.10s {P}": ["mark-light"],
    f"Insert depth 12m, enclosed by 10m contour {P}": ["depth-deeper-than-contour"],
    f"Replace rock with depth 18m, enclosed by 10m contour {P}": ["depth-deeper-than-contour"],
    f"Insert depth 12m and associated 10m contour {P}": ["depth-deeper-than-contour"],
    f"Insert bridge, depth 12m {P}": ["depth-of-overhead"],
}

SILENT = (
    f"Insert east cardinal buoy, black with yellow band {P}",
    f"Insert west cardinal beacon, yellow with a broad black band {P}",
    f"Insert preferred channel to starboard buoy, red with green band {P}",
    f"Insert isolated danger buoy, black with red bands {P}",
    f"Insert isolated danger buoy, red and black {P}",
    f"Insert port-hand light-buoy {P}",
    f"Insert port-hand buoy, Fl.R.5s {P}",
    f"Insert port-hand light-buoy, Fl.5s {P}",
    f"Insert port-hand pillar light-buoy, red, topmark can, Q.R {P}",
    f"Insert starboard-hand light-beacon, Fl.WRG.5s {P}",
    f"Insert starboard-hand beacon, green, topmark triangle point up {P}",
    f"Insert preferred channel to port light-buoy, GRG, topmark cone point up, Fl(2+1)G.10s {P}",
    f"Insert light-buoy RGR Fl(2+1)R.10s {P}",
    f"Insert white tower with red bands, Fl.G.3s {P}",
    f"Insert red lattice tower, Fl.G.3s {P}",
    f"Insert emergency wreck-marking light-buoy, BuY, Al.Oc.BuY.3s, topmark upright cross {P}",
    f"Insert isolated danger beacon, black with red bands, topmark 2 spheres {P}",
    f"Insert safe water light-buoy, RW, topmark sphere, Mo(A)10s {P}",
    f"Insert special light-buoy, yellow, topmark X, Fl(5)Y.20s {P}",
    f"Insert west cardinal light-buoy, YBY, VQ(9)10s {P}",
    f"Insert light, Fl(2)30s, Horn(2)60s {P}",
    f"Insert light, Fl(4)30s, Horn(2)30s {P}",
    f"Insert depth 8.6m, enclosed by 10m contour {P}",
    f"Insert depth 8.6m and associated 10m contour {P}",
    f"Insert wreck, least depth 9.5m, depth 12m {P}",
    f"Insert dredged area, dredged to 8.0m {P}",
)


@pytest.mark.parametrize(("body", "expected"), TOLD.items())
def test_what_is_told(body: str, expected: list[str]) -> None:
    assert codes(body) == expected


@pytest.mark.parametrize("body", SILENT)
def test_what_is_in_order(body: str) -> None:
    assert codes(body) == []


def test_states_of_an_action() -> None:
    body = f"Amend red light-buoy, Fl.R.10s: period to 5s {P}\nReplace wreck with rock {P}"
    amend, replace = parse(HEAD + body).notices[0].charts[0].actions
    assert isinstance(amend, Amend)
    assert isinstance(replace, Replace)
    assert [f.light and f.light.period_s for f in features_of(amend)] == [10, 5]
    assert [f.kind for f in features_of(replace)] == ["wreck", "rock"]


# Regions of buoyage

REGIONS = [
    # Body, findings in no region, in A, in B.
    (f"Insert port-hand buoy, red {P}", 0, 0, 1),
    (f"Insert port-hand buoy, green {P}", 0, 1, 0),
    (f"Insert starboard-hand light-buoy, Fl.R.5s {P}", 0, 1, 0),
    (f"Insert preferred channel to starboard light-buoy, Fl(2+1)G.10s {P}", 0, 1, 0),
    (f"Insert red conical buoy {P}", 0, 1, 0),
    (f"Insert green conical buoy {P}", 0, 0, 1),
    (f"Insert red pillar buoy {P}", 0, 0, 0),
    (f"Insert red conical buoy {P}\nInsert red can buoy {Q}", 1, 1, 1),
    (f"Amend port-hand light-buoy, Fl.R.5s to Fl.G.5s {P}", 1, 1, 1),
    (f"Insert port-hand buoy, red {P}\nInsert starboard-hand buoy, green {Q}", 0, 0, 2),
    (f"Insert port-hand buoy {P}\nInsert starboard-hand buoy {Q}", 0, 0, 0),
]


@pytest.mark.parametrize(("body", "of_none", "of_a", "of_b"), REGIONS)
def test_region(body: str, of_none: int, of_a: int, of_b: int) -> None:
    assert codes(body) == ["mark-region"] * of_none
    assert codes(body, "A") == ["mark-region"] * of_a
    assert codes(body, "B") == ["mark-region"] * of_b


def test_region_of_most_marks_is_that_of_the_notice() -> None:
    body = (
        f"Insert port-hand buoy, green {P}\nInsert port-hand buoy, red {Q}\n"
        "Insert starboard-hand buoy, green 46-00.60S 122-00.00W"
    )
    (finding,) = parse(HEAD + body + "\n").findings
    assert finding.span is not None
    assert (finding.code, finding.span.line) == ("mark-region", 3)
    assert finding.message == "green on a port-hand mark is region B, not A"


def test_what_is_no_region() -> None:
    with pytest.raises(ValueError, match="region"):
        parse("", region="C")  # type: ignore[arg-type]


@pytest.mark.parametrize(("options", "told"), [((), 0), (("--region", "A"), 1)])
def test_region_on_the_command_line(
    options: tuple[str, ...], told: int, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "notice.txt"
    path.write_text(f"{HEAD}Insert port-hand buoy, green {P}\n", "utf-8")
    for command in ("check", "parse"):
        with pytest.raises(SystemExit):
            main([command, *options, str(path)])
        assert ("mark-region" in capsys.readouterr().out) == bool(told)


# Depths that may have lost their small figure


def depths(bulletin: Bulletin) -> list[str | None]:
    """The depths of the first section, as written."""
    features = [action.feature for action in bulletin.notices[0].charts[0].actions]
    return [feature.depth and feature.depth.written for feature in features]


LOST = [
    ("depth 8₆", "depth 86", True),
    ("depth 8₆", "wreck, least depth 92", True),
    ("depth 8₆m", "depth 86m", True),
    ("depth 8₆", "depth 86m", False),
    ("depth 8₆", "depth 8.6m", False),
    ("depth 8₆", "depth 12", False),
    ("depth 8₆", "depth 25", False),
    ("depth 12₆", "depth 126", True),
    ("drying height 1₂", "drying height 14", True),
    # A height above the datum says nothing of a depth below it.
    ("drying height 1₂", "depth 14", False),
    # Where other depths are as great, the waters are deep.
    ("depth 8₆", "depth 86\nInsert depth 520 46-00.70S 122-00.00W", False),
]


@pytest.mark.parametrize(("beside", "phrase", "is_lost"), LOST)
def test_lost_small_figure(beside: str, phrase: str, is_lost: bool) -> None:
    first, _, more = phrase.partition("\n")
    bulletin = parse(f"{HEAD}Insert {beside} {P}\nInsert {first} {Q}\n{more}\n")
    found = [one for one in bulletin.findings if one.code == "depth-subscript-lost"]
    action = bulletin.notices[0].charts[0].actions[1]
    assert bool(found) == is_lost
    assert (action.feature.depth is None) == is_lost
    assert action.usable != is_lost


def test_feet_of_a_fathom_are_five_at_most() -> None:
    head = HEAD.replace("metres", "fathoms and feet")
    for figure, expected in (("84", None), ("86", "86")):
        bulletin = parse(f"{head}Insert depth 8₅ {P}\nInsert depth {figure} {Q}\n")
        assert depths(bulletin)[1] == (expected and f"depth {expected}")


@pytest.mark.parametrize("body", ["Amend depth 8₆ to 86", "Replace depth 9₂ with depth 86"])
def test_new_depth_that_lost_its_small_figure(body: str) -> None:
    text = f"{HEAD}{body} {P}\n"
    bulletin = parse(text)
    (finding,) = bulletin.findings
    action = bulletin.notices[0].charts[0].actions[0]
    assert finding.span is not None
    assert finding.code == "depth-subscript-lost"
    assert text[finding.span.start : finding.span.end] == "86"
    assert finding.paths == ["/notices/0/charts/0/actions/0"]
    if isinstance(action, Amend):
        assert [change.new for change in action.changes] == [None]
    else:
        assert isinstance(action, Replace)
        assert action.replacement.depth is None
    assert not action.usable
    json.loads(bulletin.model_dump_json())
