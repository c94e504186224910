"""Verbs that a copy has broken, and two contrary ones: the verb above holds for neither."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.broken_verbs import broken_verb_end
from noticeparse.readers.verbs import canonical_verb
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, errors, told


@pytest.mark.parametrize(
    ("words", "broken"),
    [
        ("D E L E T E", "D E L E T E"),
        ("D e l e t e rock", "D e l e t e"),
        ("Del- ete the depth", "Del- ete"),
        ("Del ete rock", "Del ete"),
        ("in sert rock", "in sert"),
        ("m oved from", "m oved"),
        ("De1efe the depth", "De1efe"),
        ("lu5ert a depth", "lu5ert"),
        ("TAKE OUTbarge buoy", "TAKE OUTbarge"),
        ("Deleterock", "Deleterock"),
        ("XXXX ferry route", "XXXX"),
        ("with draw bridge", None),
        ("A B C buoy", None),
        ("No4 buoy", None),
        ("Fl3s10m", None),
        ("Alterations", None),
        ("light-buoy", None),
        ("rock awash", None),
    ],
)
def test_what_opens_words_as_a_broken_verb(words: str, broken: str | None) -> None:
    end = broken_verb_end(words)
    assert (None if end is None else words[:end]) == broken


@pytest.mark.parametrize(
    "body",
    [
        f"INSERT\n  wreck {P}\nD E L E T E\n  rock {Q}\n  pile {R}\n",
        f"INSERT:\n  wreck {P}\nD E L E T E :\n  rock {Q}\n",
        f"INSERT\n  wreck {P}\nD  E  L  E  T  E\n  rock {Q}\n  pile {R}\n",
        f"Insert wreck {P}\nD e l e t e rock {Q}\n       pile {R}\n",
        f"PUT IN   wreck {P}\nTAKE OUTrock {Q}\n         pile {R}\n",
        f"Insert wreck {P}; Del- ete rock {Q}.\n",
        f"insert wreck, {P}; XXXX rock, {Q}.\n",
        f"Insert wreck {P}\nDe1efe the rock {Q}\n",
        f"{P}  Insert wreck\n{Q}  Del- ete rock\n",
        f"INS WRECK {P}\nEL ROCK {Q}\n",
        f"INSERT WRECK {P} STOP Modificar ROCK {Q}\n",
        f"INSERT WRECK {P}. MODIFICAR ROCK {Q}.\n",
        f"Verb | Object | Position\nInsert | wreck | {P}\nD E L E T E | rock | {Q}\n",
    ],
)
def test_the_verb_above_does_not_hold_for_a_broken_one(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert "verb-unknown" in errors(bulletin)


@pytest.mark.parametrize("indent", [0, 1, 2, 4, 6])
def test_an_unknown_verb_a_few_blanks_beside_the_column_of_the_verbs(indent: int) -> None:
    rows = f"   Insert  wreck  {P}\n   Delete  pile   {R}\n{' ' * indent}Station rock   {Q}\n"
    bulletin = parse(HEAD + rows)
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "pile", [AT_R])]
    assert "verb-unknown" in errors(bulletin)


@pytest.mark.parametrize("indent", [2, 4, 11])
def test_a_thing_below_a_row_keeps_the_verb_above(indent: int) -> None:
    rows = f"   Insert  wreck  {P}\n{' ' * indent}dangerous rock   {Q}\n"
    bulletin = parse(HEAD + rows)
    assert [verb for verb, _, _ in told(bulletin)] == ["insert", "insert"]
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    "row",
    [
        f"Delete Insert rock {Q}",
        f"Cancel Insert special buoy {Q}",
        f"Insert - Delete rock {Q}",
        f"Delete, insert rock {Q}",
        f"Delete and insert rock {Q}",
        f"Insert delete rock {Q}",
    ],
)
def test_two_contrary_commands_are_neither(row: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{row}\nInsert pile {R}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("insert", "pile", [AT_R])]
    assert errors(bulletin) & {"verb-unknown", "verb-within-words"}


@pytest.mark.parametrize("verbs", ["Insert or delete", "delete and insert", "Delete - Insert"])
def test_a_key_with_two_contrary_verbs(verbs: str) -> None:
    bulletin = parse(f"{HEAD}Action: {verbs}\nObject: rock\nPosition: {Q}\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"verb-unknown"}


def test_two_verbs_that_say_one_thing() -> None:
    assert canonical_verb("Insert or add") == "insert"
    assert canonical_verb("taken up and removed") == "delete"
    bulletin = parse(f"{HEAD}Action: insert or add\nObject: rock\nPosition: {Q}\n")
    assert told(bulletin) == [("insert", "rock", [AT_Q])]
