"""The QA kit: exact truths, mutations that this reader withstands, a judge that sees faults."""

from __future__ import annotations

import json
import re
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import noticeparse.testing as kit
from noticeparse import parse_position
from noticeparse.catalogue import ENTRIES
from noticeparse.testing.answering import answer
from noticeparse.testing.cases import Case, Kind, Mutation
from noticeparse.testing.fuzzing import fuzz
from noticeparse.testing.generator import ALL
from noticeparse.testing.generator.coordinates import FORMS, RARE_FORMS, Form
from noticeparse.testing.generator.truth import Coordinate, Point
from noticeparse.testing.judging import judge
from noticeparse.testing.strategies import ALL_FORMS
from noticeparse.testing.targets import ThisReader
from noticeparse.testing.written import WrittenPosition

KINDS: tuple[Kind, ...] = ("positions", "lights", "depths", "notices")
MIDDAY = Point(Coordinate(47 * 6000 + 1234, 1, 2), Coordinate(123 * 6000 + 4567, 1, 2))
SYMBOLS = next(form for form in FORMS if form.name == "dm_symbols")
WRITTEN = WrittenPosition.of(SYMBOLS, MIDDAY, "SW")

MINUTES_IN_A_NOTICE = next(
    one for one in kit.mutations_of("notices") if one.name == "position-minutes-of-60"
)


def case(outcome: str, *codes: str, written: WrittenPosition = WRITTEN) -> Case:
    return Case("positions", "any", outcome, written, frozenset(codes))  # type: ignore[arg-type]


def reply(**keys: object) -> str:
    record = {"lat": -47.205666666666666, "lon": -123.76116666666667}
    return json.dumps({**record, "iso6709": "-4712.34-12345.67/", **keys})


class TestTruth:
    """What the strategies say of their texts."""

    def test_position(self) -> None:
        assert WRITTEN.text == "47°12.34'S 123°45.67'W"
        assert WRITTEN.exact == (-47 - Fraction(1234, 6000), -123 - Fraction(4567, 6000))
        assert WRITTEN.iso6709 == "-4712.34-12345.67/"

    @pytest.mark.parametrize("letters", ["NE", "SW"])
    def test_meridian_of_180_is_west_and_nought_has_no_sign(self, letters: str) -> None:
        edge = Point(Coordinate(0, 1, 0), Coordinate(180 * 60, 1, 0))
        written = WrittenPosition.of(SYMBOLS, edge, letters)
        assert written.exact == (0, -180)
        assert written.iso6709 == "+0000-18000/"

    def test_every_form_has_its_own_name_and_can_be_drawn(self) -> None:
        names = [form.name for form in ALL_FORMS]
        assert len(names) == len(set(names)) == len(FORMS) + len(RARE_FORMS)

    @pytest.mark.parametrize("form", ALL_FORMS, ids=lambda form: form.name)
    @settings(max_examples=10)
    @given(data=st.data())
    def test_every_form_reads_as_its_truth(self, form: Form, data: st.DataObject) -> None:
        written = data.draw(kit.positions(forms=[form]))
        read = parse_position(written.text)
        assert read.exact() == written.exact
        assert read.iso6709 == written.iso6709

    @given(kit.positions(is_at_islands=True))
    def test_islands_are_where_they_are(self, written: WrittenPosition) -> None:
        lat, lon = written.exact
        assert -49 <= lat <= -46
        assert -128 <= lon <= -122

    @settings(max_examples=10)
    @given(kit.bulletins(most_notices=2, layouts=("tab_table",)))
    def test_bulletins_keep_to_their_layout_and_number(self, drawn: kit.WrittenBulletin) -> None:
        assert drawn.truth.layout == "tab_table"
        assert 1 <= len(drawn.truth.notices) <= 2

    def test_layouts_are_those_of_the_generator(self) -> None:
        assert "tab_table" in ALL


class TestMutations:
    """The names of the mutations, and what becomes of them here."""

    def test_names_are_unique_and_each_says_what_it_does(self) -> None:
        for kind in KINDS:
            found = kit.mutations_of(kind)
            assert len({one.name for one in found}) == len(found) > 10
        assert all(one.what and one.name == one.name.lower() for one in kit.MUTATIONS)
        assert sum(len(kit.mutations_of(kind)) for kind in KINDS) == len(kit.MUTATIONS)

    def test_codes_are_those_of_the_catalogue(self) -> None:
        assert set().union(*(one.codes for one in kit.MUTATIONS)) <= set(ENTRIES)

    def test_every_outcome_is_asked_for(self) -> None:
        outcomes = {(one.kind, one.outcome) for one in kit.MUTATIONS}
        assert {outcome for _, outcome in outcomes} == {"same", "as-written", "finding", "refused"}
        assert {kind for kind, outcome in outcomes if outcome == "refused"} == set(KINDS)

    @pytest.mark.parametrize("one", kit.MUTATIONS, ids=lambda one: f"{one.kind}-{one.name}")
    def test_this_reader_withstands(self, one: Mutation) -> None:
        examples = 8 if one.kind == "notices" else 30
        result = fuzz(one, ThisReader(one.kind), examples=examples, seed_number=0)
        assert result.failure is None, f"{result.failure.wrong}: {result.failure.case.text!a}"
        assert result.examples > 1


class TestJudge:
    """Right and wrong answers, in any reader's words."""

    def test_right_record(self) -> None:
        assert judge(case("same"), reply()) is None
        assert judge(case("as-written"), answer("positions", WRITTEN.text)) is None

    def test_two_signs_of_one_place_are_no_difference(self) -> None:
        edge = Point(Coordinate(0, 1, 1), Coordinate(180 * 600, 1, 1))
        put = Case("positions", "as-it-is", "same", WrittenPosition.of(SYMBOLS, edge, "SE"))
        for iso, lon in (("-0000.0+18000.0/", 180), ("+0000.0-18000.0/", -180.0)):
            assert judge(put, json.dumps({"lat": -0.0, "lon": lon, "iso6709": iso})) is None
        wrong = {"lat": 0, "lon": 180, "iso6709": "-0000.0+18000.00/"}
        assert "iso6709 is" in str(judge(put, json.dumps(wrong)))
        south = replace(
            put, truth=WrittenPosition.of(SYMBOLS, edge._replace(lat=Coordinate(1, 1, 1)), "SE")
        )
        north = {"lat": 1 / 600, "lon": -180, "iso6709": "+0000.1-18000.0/"}
        assert "iso6709 is +0000.1" in str(judge(south, json.dumps(north)))

    @pytest.mark.parametrize(
        ("line", "words"),
        [
            (reply(iso6709="+4712.34-12345.67/"), r"iso6709 is \+4712"),
            (reply(iso6709="-4712.3-12345.6/"), "iso6709 is -4712.3"),
            (reply(iso6709="47.2"), "is no ISO 6709 form"),
            (reply(iso6709=None), "is no ISO 6709 form"),
            (reply(iso6709="-4712.3e99999999-12345.67/"), "is no ISO 6709 form"),
            (100_000 * "[", "nested too deeply"),
            (reply(lat=-47.2056), "lat and lon are"),
            (reply(lat=None), "has not the form of the contract"),
            ('{"lat": 1}', "no key `iso6709`|no ISO 6709"),
            ("{", "no JSON of the contract"),
            ("[]", "must be an object or null"),
            ("null", "can be read for certain"),
            ('{"error": {"code": "position-unreadable"}}', r"refused \(position-unreadable\)"),
        ],
    )
    def test_wrong_answers(self, line: str, words: str) -> None:
        wrong = judge(case("same"), line)
        assert wrong is not None
        assert re.search(words, wrong), wrong

    def test_refusals(self) -> None:
        minutes = case("refused", "position-minutes-out-of-range")
        right = '{"error": {"code": "position-minutes-out-of-range"}}'
        other = '{"error": {"code": "position-unreadable"}}'
        assert judge(minutes, right) is None
        assert judge(minutes, "null") is None
        assert judge(minutes, '{"error": "minutes"}') is None
        assert judge(minutes, '{"error": {"code": "E17"}}') is None
        assert "told as position-unreadable" in str(judge(minutes, other))
        assert "cannot be read for certain" in str(judge(minutes, reply()))

    def test_findings(self) -> None:
        assert judge(case("finding"), "null") is None
        assert judge(case("finding"), reply(findings=[{"code": "E17"}])) is None
        assert "without a word" in str(judge(case("finding"), reply()))
        told = reply(iso6709="-4712.35-12345.67/", findings=[{"code": "E17"}])
        assert "iso6709 is -4712.35" in str(judge(case("finding"), told))


class TestJudgeOfNotices:
    """Bulletins: all actions exact, or told, or refused."""

    @settings(max_examples=5)
    @given(data=st.data())
    def test_a_usable_action_is_seen(self, data: st.DataObject) -> None:
        put = data.draw(MINUTES_IN_A_NOTICE.cases())
        told = json.loads(answer("notices", put.text))
        assert judge(put, json.dumps(told)) is None
        assert "no finding of severity error" in str(
            judge(put, json.dumps({**told, "findings": []}))
        )
        (section,) = told["notices"][0]["charts"]
        stated = json.loads(answer("positions", WRITTEN.text))
        for action in section["actions"]:
            action["usable"], action["geometry"]["positions"] = True, [stated]
        assert "usable all the same" in str(judge(put, json.dumps(told)))

    @settings(max_examples=5)
    @given(kit.notices())
    def test_a_wrong_value_is_seen(self, drawn: kit.WrittenBulletin) -> None:
        put = Case("notices", "as-it-is", "same", drawn)
        told = json.loads(answer("notices", drawn.text))
        assert judge(put, json.dumps(told)) is None
        told["notices"][0]["charts"][0]["actions"][0]["verb"] = "delete or not"
        assert "verb is 'delete or not'" in str(judge(put, json.dumps(told)))
        assert "missing" in str(judge(put, json.dumps({**told, "notices": []})))
        assert "no key `findings`" in str(judge(put, '{"notices": []}'))


def test_without_hypothesis_the_kit_says_what_to_install(monkeypatch: pytest.MonkeyPatch) -> None:
    def missing(name: str) -> object:
        raise ModuleNotFoundError(f"No module named {name!r}", name="hypothesis")

    monkeypatch.setattr(kit, "import_module", missing)
    with pytest.raises(ImportError, match=r"pip install 'noticeparse\[qa\]'"):
        kit.__getattr__("positions")
    with pytest.raises(AttributeError, match="no attribute 'nothing'"):
        kit.__getattr__("nothing")
