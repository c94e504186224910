"""Words in the place of a verb that deny it, or name two: none is chosen."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.verbs import canonical_verb
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, actions_of, errors, told


@pytest.mark.parametrize(
    ("written", "verb"),
    [
        ("insert/delete", None),
        ("Delete / Insert", None),
        ("not insert", None),
        ("has not been removed", None),
        ("never inserted", None),
        ("add/insert", "insert"),
        ("Insert/", "insert"),
        ("to be inserted", "insert"),
    ],
)
def test_what_denies_a_verb_or_names_two_is_none(written: str, verb: str | None) -> None:
    assert canonical_verb(written) == verb


def test_a_heading_of_two_verbs_commands_nothing() -> None:
    bulletin = parse(f"{HEAD}Insert/Delete\n wreck {P}\n rock {Q}\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"item-without-verb"}


def test_two_verbs_before_a_feature_command_nothing() -> None:
    bulletin = parse(f"{HEAD}Insert/Delete wreck {P}\nAdd/insert rock {Q}\n")
    assert [verb for verb, _, _ in told(bulletin)] == ["insert"]
    assert errors(bulletin) == {"verb-within-words"}


def test_a_key_that_denies_its_verb() -> None:
    text = (
        f"{HEAD}Object: Rock\nAction: not inserted\nPosition: {Q}\n\n"
        f"Object: Wreck\nAction: delete\nPosition: {P}\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [("delete", "wreck", [AT_P])]
    assert "verb-unknown" in errors(bulletin)


def test_a_column_of_verbs() -> None:
    text = (
        "Notice | Chart | Verb | Object | Position\n"
        f"30/26 | 16 | not insert | buoy | {P}\n31/26 | 16 | insert/delete | rock | {Q}\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == []
    assert errors(bulletin) == {"verb-unknown"}


ROWS = [
    f"{P}   Insert wreck.\n{Q}   {{}} special buoy.\n{R}   Delete pile.",
    f"1. Insert wreck at {P}.\n2. Insert rock at {R}.\n3. {{}} at {Q} the pile.",
    f"Please delete the wreck in {P}.\nPlease {{}} the rock in {Q}.\nPlease insert a pile in {R}.",
    f"Insert wreck {P}\n       rock {R}\n{{}} legend \"Fish Traps\" {Q}",
]  # fmt: skip


@pytest.mark.parametrize(
    "slip", ["Dleete", "Delte", "INSRET", "amen", "Remvoe", "Eraie", "repalce"]
)
@pytest.mark.parametrize("rows", ROWS)
def test_a_misspelt_verb_in_a_row_is_not_the_verb_above(rows: str, slip: str) -> None:
    bulletin = parse(f"{HEAD}{rows.format(slip)}\n")
    assert "verb-unknown" in errors(bulletin)
    assert all(AT_Q not in places for _, _, places in told(bulletin))
    assert len(told(bulletin)) == 2


@pytest.mark.parametrize("word", ["Later", "Charted", "Remote", "Old", "Yellow"])
def test_words_near_a_verb_are_none(word: str) -> None:
    bulletin = parse(f"{HEAD}{P}   Insert wreck.\n{Q}   Insert {word} special buoy.\n")
    assert "verb-unknown" not in errors(bulletin)


@pytest.mark.parametrize(
    "rows",
    [
        f" 1  DELETE   {P}   rock\n 2  DELETE   {R}   wreck\n 5  INSET    {Q}   legend \"Works\"",
        f"Del  rock            {P}\nIn   legend \"Foul\"   {Q}\nIns  wreck           {R}",
        f"INS RK {P}\nAM  LT TO FL(2) W 12S {Q}\nDEL WK {R}",
        f"Delete the depth of 9.4 m in {P} and innsert a depth of 11.8 m.\nDelete rock {R}",
    ],
)  # fmt: skip
def test_a_verb_cut_short_or_behind_the_first_is_none(rows: str) -> None:
    bulletin = parse(f"{HEAD}{rows}\n")
    assert "verb-unknown" in errors(bulletin)
    assert all(AT_Q not in places for _, _, places in told(bulletin))


def test_a_misspelt_verb_ends_the_area_above() -> None:
    text = (
        f"INSERT  Fish farm, bounded by     {P}\n                                  {Q}\n"
        f"                                  {R}\n"
        "DELTE   Legend \"Fish Traps\"       46-00.80S 122-00.80W"
    )  # fmt: skip
    bulletin = parse(f"{HEAD}{text}\n")
    assert told(bulletin) == [("insert", "marine_farm", [AT_P, AT_Q, AT_R])]
    assert "verb-unknown" in errors(bulletin)


HEADINGS = [
    ("=== INSERT ===", "=== DaLETE ==="), ("--- INSERT ---", "--- REMOFE ---"),
    ("Insertar / Insert", "Supprimer / Deltee"), ("INSERTAR / INSERT", "SUPRIMIR / DELEET"),
    ("Insertar / Insert", "Retirar / Withdra"), ("Insert / Insertar", "Deltee / Suprimir"),
]  # fmt: skip


@pytest.mark.parametrize(("above", "lost"), HEADINGS)
@pytest.mark.parametrize("item", ["{} {}", "{1}   {0}"])
def test_a_misspelt_verb_heading_ends_the_list_above(above: str, lost: str, item: str) -> None:
    rows = [above, item.format("rock", P), lost, item.format("wreck", Q), item.format("pile", R)]
    bulletin = parse(HEAD + "\n".join(rows) + "\n")
    assert told(bulletin) == [("insert", "rock", [AT_P])]
    assert "verb-unknown" in errors(bulletin)
    assert [a.feature.name for a in actions_of(bulletin)][:1] == [None]


@pytest.mark.parametrize(
    ("above", "name"),
    [("=== INSERT ===", "=== QUILL SOUND ==="), ("Insertar / Insert", "Costa Norte / North Coast"),
     ("--- INSERT ---", "--- Tarn Channel ---")],
)  # fmt: skip
def test_a_name_between_items_leaves_the_verb_in_force(above: str, name: str) -> None:
    bulletin = parse(f"{HEAD}{above}\nrock {P}\n{name}\nwreck {Q}\n")
    assert [verb for verb, _, _ in told(bulletin)] == ["insert", "insert"]
