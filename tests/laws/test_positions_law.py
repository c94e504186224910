"""Every spelling of one position gives one position, wherever it stands."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from noticeparse import NoticeParseError, find_positions, parse, parse_position
from noticeparse.testing import WrittenPosition
from tests.short_notices import HEAD_WITHOUT_UNIT as HEAD

from .strategies import island_positions, spellings

FOREIGN = {
    "Arabic-Indic": "٠١٢٣٤٥٦٧٨٩", "Devanagari": "०१२३४५६७८९", "Bengali": "০১২৩৪৫৬৭৮৯",
    "superscript": "⁰¹²³⁴⁵⁶⁷⁸⁹", "subscript": "₀₁₂₃₄₅₆₇₈₉", "circled": "⓪①②③④⑤⑥⑦⑧⑨",
}  # fmt: skip


@given(spellings())
def test_alone(written: list[WrittenPosition]) -> None:
    for one in written:
        assert parse_position(one.text).exact() == one.exact


@given(spellings())
def test_in_running_text(written: list[WrittenPosition]) -> None:
    for one in written:
        found = find_positions(f"A wreck lies in {one.text}, dangerous to navigation.")
        assert [position.exact() for position in found] == [one.exact]


@given(spellings(most=2))
def test_in_an_action(written: list[WrittenPosition]) -> None:
    for one in written:
        bulletin = parse(f"{HEAD}Insert dangerous wreck   {one.text}\n")
        (action,) = bulletin.notices[0].charts[0].actions
        assert [position.exact() for position in action.geometry.positions] == [one.exact]
        assert action.usable


@given(spellings(most=2))
def test_its_own_iso_form_gives_it_back(written: list[WrittenPosition]) -> None:
    for one in written:
        position = parse_position(one.text)
        again = parse_position(position.iso6709)
        assert again.iso6709 == position.iso6709
        assert (again.lat, again.lon) == (position.lat, position.lon)
        assert again.resolution_m == position.resolution_m


@given(spellings(most=2))
def test_all_spellings_of_the_same_unit_have_one_record(written: list[WrittenPosition]) -> None:
    records = {parse_position(one.text).iso6709 for one in written}
    assert len({iso for iso in records if iso.count("-") + iso.count("+") == 2}) == len(records)
    assert len(records) <= 2


@given(island_positions(), st.sampled_from(sorted(FOREIGN)))
def test_figures_of_other_scripts_are_no_figures(text: str, script: str) -> None:
    strange = text.translate(str.maketrans("0123456789", FOREIGN[script]))
    assert find_positions(f"A wreck lies in {strange}.") == []
    try:
        parse_position(strange)
    except NoticeParseError:
        return
    raise AssertionError(f"{strange} was read")
