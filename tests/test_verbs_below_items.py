"""Lists of things with what was done to each on the line below it, as in a return of lights."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, actions_of, codes, told, usable_of

P, Q = "46° 00'.00 S   122° 00'.00 W", "46° 00'.50 S   122° 00'.10 W"
LIST = (
    f"1   Quill Head light\n    altered           {P}\n    formerly          Fl(2)W.10s22m15M\n"
    "    now               Fl(3)W.15s22m18M\n                      R 340°-025°, W 025°-060°\n"
    f"2   Marram west cardinal light-buoy\n    established       {Q}\n    now       VQ(9)10s\n"
    f"3   Marram racon\n    established       {Q}\n    now               Racon(K)\n"
    f"4   Quill port-hand light-buoy No 4\n    moved from        {P}\n    to                {Q}\n"
    "    light unchanged   Fl.R.2.5s\n"
    f"5   Quill Channel No 6\n    replaced          {P}\n    formerly          port-hand buoy\n"
    "    now               port-hand light-buoy, Fl.R.4s\n"
    f"6   Quill Ledge south cardinal beacon\n    discontinued      {Q}\n    unlit\n"
)
READ = [
    ("amend", "light"), ("insert", "buoy_cardinal_west"), ("insert", "racon"),
    ("move", "light_buoy_port"), ("replace", "buoy_lateral_port"), ("delete", "beacon_cardinal"),
]  # fmt: skip


def test_each_entry_is_read_as_the_command_it_tells() -> None:
    bulletin = parse(HEAD + LIST)
    assert usable_of(bulletin) == READ
    assert not [one for one in bulletin.findings if one.severity == "error"]
    amend, buoy, _, move, replace, _ = actions_of(bulletin)
    assert amend.verb == "amend"
    assert amend.changes[0].model_dump()["new"]["sectors"]
    assert move.verb == "move"
    assert move.destination is not None
    assert [one.iso6709 for one in move.destination.positions] == ["-4600.50-12200.10/"]
    assert replace.verb == "replace"
    assert (replace.replacement.kind, replace.replacement.light is not None) == (
        "light_buoy_port",
        True,
    )
    assert buoy.feature.light is not None
    assert buoy.feature.light.written == "VQ(9)10s"


def test_spans_are_those_of_the_text_as_given() -> None:
    text = HEAD + LIST
    for ends in ("\n", "\r\n"):
        given = text.replace("\n", ends)
        actions = actions_of(parse(given))
        assert [one.span.line for one in actions] == [3, 8, 11, 14, 18, 22]
        for action in actions:
            words = given[action.span.start : action.span.end]
            place = action.geometry.positions[0].written
            assert " ".join(place.split()) in " ".join(words.split())


WORDINGS = {
    "stops": f"1. Quill light\n   withdrawn:   {P}\n   formerly:  Fl.R.3s\n",
    "removed": f"7  Quill pile\n   removed at  {P}\n",
    "previously": f"1 Quill light\n  changed {P}\n  previously Fl.R.3s\n  now Fl.R.5s\n",
    "shifted": f"1 Quill light-buoy\n  shifted from {P}\n  to {Q}\n  character unchanged Q.R\n",
    "depth": f"1 Quill wreck\n  established {P}\n  now  least depth 5.2 m\n",
    "blank lines": f"1 Quill pile\n  removed {P}\n\n2 Marram light\n  removed {Q}\n",
    "a chart next": f"1 A pile\n  removed {P}\nChart 803 [4/26]\n2 Quill pile\n  removed {Q}\n",
    "foot of a page": f"1 Quill pile\n  removed {P}\n\n          - 2 -\n\n",
}


@pytest.mark.parametrize("body", WORDINGS.values(), ids=list(WORDINGS))
def test_other_wordings_are_read(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert all(action.usable for action in actions_of(bulletin))
    assert len(actions_of(bulletin)) == body.count("° 00'.00 W") + body.count("removed 46° 00'.50")


NOT_READ = {
    "another thing": f"1 Quill green buoy\n  discontinued {P}\n  formerly red buoy\n",
    "a thing in the value": f"1 Quill wreck\n  established {P}\n  now rock\n",
    "a thing unchanged": f"1 Quill beacon\n  moved from {P}\n  to {Q}\n  light unchanged pile\n",
    "light put out": f"1 Quill light-buoy\n  discontinued {P}\n  unlit\n",
    "place alone": f"1 Quill Bank\n  established {P}\n  now Fl.R.3s\n",
    "characters of a fairway": f"1 Quill Channel No 3\n  replaced {P}\n  formerly Q\n  now Q.R\n",
    "verb with another key": f"1 Quill light\n  discontinued {P}\n  now F.R\n",
    "key that is not known": f"1 Quill light\n  established {P}\n  now F.R\n  topmark can\n",
    "name on two lines": f"1 Quill light of the\n  office\n  discontinued {P}\n  formerly F\n",
    "blank within": f"1 Quill light-buoy\n  established {P}\n\n  now Q.R\n",
    "page within": f"1 Quill light-buoy\n  established {P}\n\n      - 2 -\n\n  now Q.R\n",
    "numbers that jump": f"1 A pile\n  removed {P}\n  unlit\n3 A mark\n  removed {Q}\n  unlit\n",
}


@pytest.mark.parametrize("body", NOT_READ.values(), ids=list(NOT_READ))
def test_lists_with_an_entry_that_is_not_sure_are_held(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert told(bulletin) == []
    assert codes(bulletin)
