"""Whatever the text, every format takes its records, and nothing in them gets lost on the way."""

from __future__ import annotations

import csv
import io
import json
from functools import partial
from itertools import chain

from hypothesis import given
from hypothesis import strategies as st

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from noticeparse.testing.generator import generate
from noticeparse.writers import FORMATS, Wishes
from tests.geojson_rules import check_rules
from tests.golden_files import written
from tests.short_notices import actions_of

from .strategies import anything

everything = partial(written, wishes=Wishes(has_mark=True, with_unusable=True))


@given(st.lists(anything, min_size=1, max_size=3))
def test_any_texts(texts: list[str]) -> None:
    hold([parse(text, name="=a.txt") for text in texts])


@given(st.lists(st.integers(0, 2**20), min_size=1, max_size=2))
def test_generated_bulletins(seeds: list[int]) -> None:
    hold([parse(generate(seed, size_bytes=2000).text) for seed in seeds])


def hold(bulletins: list[Bulletin]) -> None:
    """Each output has every action once, as often as its format says."""
    for form in FORMATS:
        everything(form, *bulletins).encode("utf-8")
    verbs = [action.verb for bulletin in bulletins for action in actions_of(bulletin)]
    table = everything("csv", *bulletins).removeprefix("\ufeff")
    assert [row["verb"] for row in csv.DictReader(io.StringIO(table, newline=""))] == verbs
    layer = json.loads(everything("geojson", *bulletins))
    check_rules(layer)
    ends = chain.from_iterable((verb, verb) if verb == "move" else (verb,) for verb in verbs)
    assert [one["properties"]["verb"] for one in layer["features"]] == [*ends]
    copy = everything("text", *bulletins)
    assert copy.count("\n  [ ] ") + copy.count("\n   X  ") >= len(verbs)
