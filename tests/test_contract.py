"""The output contract: keys and their order, `usable`, paths, the order of findings.

The key tables stand in `contract_keys`.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given

from noticeparse import parse
from noticeparse.catalogue import ENTRIES

from .contract_keys import KEYS, records, resolve
from .laws.strategies import anything

EDITION = """\
TAVRENNE HYDROGRAPHIC SERVICE
Weekly list 26/2026
Issued 26 June 2026

INDEX OF CHARTS AFFECTED
802    2417, 2418
803    2417

NOTICES

2417/26
TAVRENNE ISLANDS - Quill Sound - Buoyage. Lights.
Source: Port Ellory Harbour Office
Chart 802 (INT 9871) [2301/26] WGS84
Insert
  (a) starboard-hand light-buoy, Fl.G.5s No 4, with topmark    46°48'.22S., 125°17'.41W.
  (b) obstruction, least depth 4.2m, enclosed by 10m contour   46°49'.22S., 125°18'.41W.
  (c) virtual AIS, racon (K)   46°50'.22S., 125°18'.41W.
  (d) light, Fl.R.5s8m6M & F.R.7m4M, Horn(2)30s    46°50'.52S., 125°18'.41W.
  (e) light, Dir Fl.WR.4s 12m 12/9M W 171°-195°, R 195°-268°   46°50'.62S., 125°18'.41W.
  (f) overhead cable, safe clearance 24m   46°50'.72S., 125°18'.41W.
  (g) wreck 137°T, 2.4M from Brannoch Rock light in 46°48'.22S., 125°17'.41W.
  (h) restricted area, radius 2 miles, centred on 46°52'.22S., 125°17'.41W.
  (i) special buoy, Fl.Y.5s (PA)   46°50'.92S., 125°18'.41W.
Delete depth 8₆, close W of:   (a) above
Amend light to Fl(3)W.20s33m19M   46°51'.22S., 125°19'.41W.
Replace special buoy by special light-buoy, Fl.Y.5s   46°51'.32S., 125°19'.41W.
Move special buoy from 46°51'.42S., 125°19'.41W. to 46°51'.52S., 125°19'.41W.
Chart 803 [2301/26] WGS84
Insert submarine cable joining: 46°51'.42S., 125°19'.41W. 46°52'.42S., 125°19'.41W.

2418(T)/26
TAVRENNE ISLANDS - Brannoch Rock - Light.
The light in 46°53'.42S., 125°19'.41W. is unlit until 1 October 2026.
Notice 2288(T)/26 is cancelled.
"""

FAULTY = """\
2417/26
Quill Sound - Wrecks.
Chart 802 [2301/26] WGS84
Insert wreck   46-72.34S 125-17.41W
Insert obstruction   46-12.34S 125-17.41W
Insert depth 8.6m   46-12.3S 125-17.41W
Delete depth 9 6   46-13.34S 125-17.41W
Delete light, Fl.X.5s   46-14.34S 125-17.41W
Chart 803 [2301/26] WGS84
Insert rock, close N of   (z) above
"""

FRAGMENT = "Insert wreck   46-12.34S 125-17.41W\n"

SPECIMENS = {
    "edition": EDITION,
    "faulty": FAULTY,
    "fragment": FRAGMENT,
    "empty": "",
    "prose": "Hello",
}


def dumped(text: str) -> dict[str, Any]:
    return parse(text).model_dump(mode="json")


@pytest.mark.parametrize("text", SPECIMENS.values(), ids=SPECIMENS)
def test_keys_stand_in_the_order_of_the_contract(text: str) -> None:
    for kind, record in records(dumped(text)):
        assert tuple(record)[: len(KEYS[kind])] == KEYS[kind], kind


def test_the_specimens_hold_every_kind_of_record() -> None:
    seen = {kind for text in (EDITION, FAULTY) for kind, _ in records(dumped(text))}
    # An amendment's values are checked by their types; arcs have a specimen of their own, and
    # sheets need a chart list.
    assert seen == KEYS.keys() - {"Arc", "Sheet", "SheetPlace"}


def test_keys_of_an_arc() -> None:
    text = (
        "2417/26\nQuill Sound - Area.\nChart 802 [2301/26] WGS84\n"
        "Insert limit of restricted area, arc of a circle radius 1.5M centred on "
        "46-12.34S 125-17.41W, between the bearings 225° and 315°\n"
    )
    arcs = [record for kind, record in records(dumped(text)) if kind == "Arc"]
    assert [tuple(arc) for arc in arcs] == [KEYS["Arc"]]


def test_json_text_keeps_the_order() -> None:
    assert json.loads(parse(EDITION).model_dump_json()) == dumped(EDITION)
    assert tuple(json.loads(parse(EDITION).model_dump_json())) == KEYS["Bulletin"]


def test_fixed_values() -> None:
    dump = dumped(EDITION)
    assert dump["schema_version"] == "1"
    assert dump["generator"]["name"] == "noticeparse"
    for word in ("aid", "authority", "position"):
        assert word in dump["caution"]
    assert dump["source"]["characters"] == len(EDITION)


def test_the_fingerprint_is_that_of_the_text() -> None:
    text = "47°12.34'S 8₆"
    assert dumped(text)["source"]["sha256"] == hashlib.sha256(text.encode("utf-8")).hexdigest()


def test_a_fragment_is_a_notice_without_a_number() -> None:
    (notice,) = dumped(FRAGMENT)["notices"]
    assert (notice["id"], notice["number"], notice["year"]) == (None, None, None)
    assert [chart["chart"] for chart in notice["charts"]] == [None]
    assert {f["code"]: f["severity"] for f in notice["findings"]} == {
        "notice-head-missing": "info", "chart-not-named": "info",
    }  # fmt: skip


def actions_of(dump: dict[str, Any]) -> Iterator[tuple[str, dict[str, Any]]]:
    for n, notice in enumerate(dump["notices"]):
        for c, chart in enumerate(notice["charts"]):
            for a, action in enumerate(chart["actions"]):
                yield f"/notices/{n}/charts/{c}/actions/{a}", action


def obeys(dump: dict[str, Any]) -> None:
    """What holds for the findings of every bulletin."""
    bad = [p for f in dump["findings"] if f["severity"] == "error" for p in f["paths"]]
    for pointer, action in actions_of(dump):
        blamed = any(path == pointer or path.startswith(f"{pointer}/") for path in bad)
        assert action["usable"] is not blamed
    for finding in dump["findings"]:
        assert finding["code"] in ENTRIES
        assert len(set(finding["paths"])) == len(finding["paths"])
        for path in finding["paths"]:
            resolve(dump, path)
    starts = [f["span"]["start"] if f["span"] else -1 for f in dump["findings"]]
    assert starts == sorted(starts)
    for n, notice in enumerate(dump["notices"]):
        own = f"/notices/{n}"
        assert notice["findings"] == [
            finding
            for finding in dump["findings"]
            if any(path == own or path.startswith(f"{own}/") for path in finding["paths"])
        ]


@pytest.mark.parametrize("text", SPECIMENS.values(), ids=SPECIMENS)
def test_findings_of_a_specimen(text: str) -> None:
    obeys(dumped(text))


@given(anything)
def test_findings_of_any_text(text: str) -> None:
    obeys(parse(text).model_dump())


def test_faulty_actions_are_not_usable() -> None:
    usable = [action["usable"] for _, action in actions_of(dumped(FAULTY))]
    assert usable == [False, True, True, False, False, False]


def test_a_verb_that_is_none_is_never_read_as_the_verb_above() -> None:
    # `Deelte` must not insert what it was to delete.
    text = (
        f"{FAULTY}Insert obstruction   46-16.34S 125-17.41W\nDeelte buoy   46-15.34S 125-17.41W\n"
    )
    dump = dumped(text)
    inserted = [
        a["feature"]["text"] for _, a in actions_of(dump) if a["verb"] == "insert" and a["usable"]
    ]
    assert not [words for words in inserted if "buoy" in words]
    at = text.index("Deelte")
    assert [f["code"] for f in dump["findings"] if f["span"]["start"] <= at < f["span"]["end"]]


def test_a_list_of_the_edition_ends_where_a_notice_begins() -> None:
    dump = dumped(EDITION.replace("\nNOTICES\n", ""))
    (index,) = dump["lists"]
    assert index["title"] == "INDEX OF CHARTS AFFECTED"
    assert [entry["chart"] for entry in index["entries"]] == ["802", "803"]
    assert [notice["id"] for notice in dump["notices"]] == ["2417/26", "2418(T)/26"]
    assert [chart["chart"] for chart in dump["notices"][0]["charts"]] == ["802", "803"]


def test_every_message_names_the_words_it_is_about() -> None:
    for finding in dumped(FAULTY)["findings"]:
        assert "{" not in finding["message"]
        assert not finding["message"].endswith(".")


def test_units_of_a_section_are_asked_for_once() -> None:
    text = "\n".join(["2417/26", "Quill Sound - Depths.", "Chart 802 [2301/26] WGS84"])
    text += "".join(f"\nInsert depth 8₆   46-1{n}.34S 125-17.41W" for n in range(5))
    codes = [finding["code"] for finding in dumped(text)["findings"]]
    assert codes == ["depth-unit-not-stated"]
