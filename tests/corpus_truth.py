"""Holds a bulletin against the truth written for it by hand, apart from the program.

`NAME.truth.json` lists what a careful reader finds in `NAME.txt`: notices, chart sections, actions
with verb, classes, positions, lights, depths and changes, and in faulty texts the planted faults.
A value that is null in the truth is not compared.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

Json = dict[str, Any]
_TOLERANCE_DEG = 2e-9


def load(path: Path) -> Json:
    """The truth that stands beside a text."""
    truth: Json = json.loads(path.with_suffix(".truth.json").read_text("utf-8"))
    return truth


def differences(bulletin: Json, truth: Json) -> Iterator[str]:
    """What the bulletin has otherwise than the truth, one sentence each."""
    for want in truth["notices"]:
        got = next((one for one in bulletin["notices"] if one["id"] == want["id"]), None)
        if got is None:
            yield f"notice {want['id']} is missing"
        else:
            yield from _notice(got, want, bulletin)
    wanted = {notice["id"] for notice in truth["notices"]}
    for notice in bulletin["notices"]:
        if notice["id"] not in wanted:
            yield f"notice {notice['id']} is not in the text"


def _notice(got: Json, want: Json, bulletin: Json) -> Iterator[str]:
    where = want["id"]
    if want.get("status") and got["status"] != want["status"]:
        yield f"{where}: status {got['status']}"
    if want.get("cancels") and [_reference(ref) for ref in got["cancels"]] != want["cancels"]:
        yield f"{where}: cancels {[_reference(ref) for ref in got['cancels']]}"
    positions = [p for remark in got["remarks"] for p in remark["positions"]]
    if not _same(positions, want.get("remark_positions") or [], _TOLERANCE_DEG):
        yield f"{where}: positions in remarks"
    left = list(got["charts"])
    for chart in want["charts"]:
        match = next((one for one in left if one["chart"] == chart["chart"]), None)
        if match is None:
            yield f"{where}: chart {chart['chart']} is missing"
            continue
        left.remove(match)
        yield from _chart(match, chart, f"{where} chart {chart['chart']}", bulletin)
    yield from (f"{where}: chart {chart['chart']} is not in the text" for chart in left)


def _chart(got: Json, want: Json, where: str, bulletin: Json) -> Iterator[str]:
    if want.get("previous") and _reference(got["previous"]) != want["previous"]:
        yield f"{where}: previous notice {got['previous']}"
    if want.get("international") and got["international"] != want["international"]:
        yield f"{where}: {got['international']}"
    datum = (got["datum"] or {}).get("name", "").replace(" ", "")
    if want.get("datum") and datum != want["datum"].replace(" ", ""):
        yield f"{where}: datum {datum}"
    if len(got["actions"]) != len(want["actions"]):
        lines = [action["span"]["line"] for action in got["actions"]]
        yield f"{where}: {len(got['actions'])} actions for {len(want['actions'])}, lines {lines}"
        return
    for action, truth in zip(got["actions"], want["actions"], strict=True):
        yield from _action(action, truth, f"{where} line {truth['line']}", bulletin)


def _action(got: Json, want: Json, where: str, bulletin: Json) -> Iterator[str]:
    if got["verb"] != want["verb"]:
        yield f"{where}: {got['verb']}"
        return
    tolerance = want.get("tolerance", _TOLERANCE_DEG)
    if want["positions"] is not None:
        if not _same(got["geometry"]["positions"], want["positions"], tolerance):
            yield f"{where}: positions {[p['iso6709'] for p in got['geometry']['positions']]}"
    elif got["geometry"]["positions"] and not _warned(bulletin, got["span"]["line"]):
        yield f"{where}: a doubtful position with nothing said"
    if want.get("destination") and not _same(
        got["destination"]["positions"], want["destination"], tolerance
    ):
        yield f"{where}: destination"
    if want.get("shape") and got["geometry"]["shape"] != want["shape"]:
        yield f"{where}: shape {got['geometry']['shape']}"
    yield from _feature(got["feature"], want, where)
    if want.get("replacement"):
        yield from _feature(got["replacement"], want["replacement"], f"{where} replacement")
    changes = {change["property"]: change["new"] for change in got.get("changes", [])}
    for change in want.get("changes") or []:
        if not _equal(changes.get(change["property"]), change["new"]):
            yield f"{where}: change {change['property']} {changes}"
    if want.get("new_light") and not _equal(changes.get("light"), want["new_light"]):
        yield f"{where}: new light {changes.get('light')}"


def _feature(got: Json, want: Json, where: str) -> Iterator[str]:
    if want.get("s57") is not None and sorted(got["s57"]) != sorted(want["s57"]):
        yield f"{where}: classes {got['s57']}"
    if want.get("s57_includes") and not set(want["s57_includes"]) <= set(got["s57"]):
        yield f"{where}: classes {got['s57']}"
    if want.get("light") and not _equal(got["light"], want["light"]):
        yield f"{where}: light {got['light']}"
    if want.get("depth_m") is not None:
        depth = (got["depth"] or {}).get("value_m")
        if depth is None or abs(depth - want["depth_m"]) > 1e-6:
            yield f"{where}: depth {depth}"
    for key in ("name", "legend"):
        if want.get(key) is not None and _plain(got[key]) != _plain(want[key]):
            yield f"{where}: {key} {got[key]!r}"


def unreported(bulletin: Json, truth: Json) -> Iterator[str]:
    """Planted faults near whose line no finding of warning or error stands."""
    for fault in truth["findings"]:
        levels = ("error",) if fault["severity"] == "error" else ("warning", "error")
        if not any(
            finding["severity"] in levels and abs(finding["span"]["line"] - fault["line"]) <= 1
            for finding in bulletin["findings"]
        ):
            yield f"line {fault['line']}: {fault['why']}"


def _warned(bulletin: Json, line: int) -> bool:
    return any(
        finding["severity"] != "info" and line <= finding["span"]["line"] <= line + 12
        for finding in bulletin["findings"]
    )


def _same(got: list[Json], want: list[list[str]], tolerance: float) -> bool:
    return len(got) == len(want) and all(
        abs(g["lat"] - float(lat)) <= tolerance and abs(g["lon"] - float(lon)) <= tolerance
        for g, (lat, lon) in zip(got, want, strict=True)
    )


def _equal(got: Any, want: Any) -> bool:
    """Whether `got` has all that `want` states; an object may state a part."""
    if isinstance(want, dict):
        return isinstance(got, dict) and all(
            _equal(got.get(key), value) for key, value in want.items() if value is not None
        )
    if isinstance(want, list):
        return isinstance(got, list) and len(got) == len(want) and all(map(_equal, got, want))
    if isinstance(want, str):
        return isinstance(got, str) and _plain(got) == _plain(want)
    return bool(got == want)


def _plain(words: str | None) -> str | None:
    if words is None:
        return None
    plain = " ".join(words.replace("’", "'").split()).strip(" .,;:\"'“”‘")
    return plain.casefold().replace("no. ", "no ").replace("number ", "no ")


def _reference(ref: Json | None) -> str | None:
    if ref is None:
        return None
    mark = {"temporary": "(T)", "preliminary": "(P)"}.get(ref["status"], "")
    year = "??" if ref["year"] is None else f"{ref['year'] % 100:02d}"
    return f"{ref['number']}{mark}/{year}"
