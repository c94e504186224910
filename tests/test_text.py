"""The repairs of the text, one table each, and the way back from every character read.

The tables list the characters that notices are seen with; they are not taken from the module.
"""

from __future__ import annotations

import unicodedata

import pytest

from noticeparse.text import repair

AS_ONE = {
    "degree": ("°", "\u00ba \u02da"),
    "minute": ("'", "\u2032 \u2019 \u2018 \u00b4 \u0060 \u02b9"),
    "second": ('"', "\u2033 \u201c \u201d \u201e \u00ab \u00bb"),
    "dash": ("-", "\u2010 \u2011 \u2012 \u2013 \u2014 \u2015 \u2212"),
    "slash": ("/", "\u2044 \u2215 \uff0f"),
    "figure": ("0", "\uff10"),
    "stop": (".", "\uff0e"),
}
"""What is read, and the characters that stand for it one for one."""

SPACES = (
    "\u00a0 no-break", "\u2002 en", "\u2003 em", "\u2007 figure", "\u2008 punctuation",
    "\u2009 thin", "\u200a hair", "\u202f narrow no-break", "\u205f mathematical",
    "\u3000 ideographic", "\u2028 line separator", "\u2029 paragraph separator",
    "\f form feed", "\v vertical tab", "\x85 next line",
)  # fmt: skip

INVISIBLE = (
    "\u00ad soft hyphen", "\u061c Arabic letter", "\u202e override", "\u2066 isolate",
    "\u200b zero-width space", "\u200c non-joiner", "\u200d joiner",
    "\u200e left-to-right", "\u2060 word joiner", "\ufeff byte order mark", "\x00 null",
    "\x07 bell", "\x1b escape", "\x7f delete", "\x9f last of C1",
)  # fmt: skip

LIGATURES = {
    "ﬀ": "ff", "ﬁ": "fi", "ﬂ": "fl", "ﬃ": "ffi", "ﬄ": "ffl", "ﬅ": "st", "ﬆ": "st",
    "‴": "'''",
}  # fmt: skip

KEPT = "₀₁₂₃₄₅₆₇₈₉⁰¹²³⁴⁵⁶⁷⁸⁹½¼¾⅓⅔⅛⅜⅝⅞éøñ\tA\n"
"""What compatibility normalisation would spoil, and ordinary characters."""

DAMAGED = "°º·½¼¾′″’‘“”–—−´₆•\u00a0"
"""What notices hold beyond ASCII; each may arrive as UTF-8 read as Windows-1252."""

CUT_WORDS = {
    "plain": ("danger-\nous wreck", "dangerous wreck"),
    "blanks": ("danger- \n   ous wreck", "dangerous wreck"),
    "return": ("danger-\r\nous wreck", "dangerous wreck"),
    "quoted mail": ("danger-\n> ous wreck", "dangerous wreck"),
    "soft hyphen": ("danger\u00ad\nous wreck", "danger\nous wreck"),
    "hyphen look-alike": ("danger\u2010\nous wreck", "dangerous wreck"),
    "behind a ligature": ("of\ufb01-\ncial notice", "official notice"),
    "two in a row": ("obstruc-\ntion and dan-\nger", "obstruction and danger"),
    "compound": ("starboard-hand light-\nbuoy", "starboard-hand light-buoy"),
    "hand": ("port-\nhand buoy", "port-hand buoy"),
    "word that begins like a compound": ("star-\nboard", "starboard"),
    "word that ends like a compound": ("import-\nant notice", "important notice"),
    "longer word that ends like one": ("ramshackle-nightlight-\ning", "ramshackle-nightlighting"),
    "capital compound": ("Port-\nhand buoy", "Port-hand buoy"),
    "second part of a compound": ("north-port-\nhand", "north-port-hand"),
    "return of its own": ("danger-\rous wreck", "dangerous wreck"),
    "figures": ("47-\n12.34S", "47-\n12.34S"),
    "capital": ("INT-\nERIM", "INT-\nERIM"),
    "dash between blanks": ("Ellory -\nnorth pier", "Ellory -\nnorth pier"),
    "paragraph": ("danger-\n\nous wreck", "danger-\n\nous wreck"),
}
"""A word cut at the line end is joined; a compound keeps its hyphen; a figure is left alone."""

MIDDLE_DOTS = {
    "between figures": ("2·5s", "2.5s"),
    "behind a minute mark": ("12'·34", "12'.34"),
    "behind a prime": ("12′·34", "12'.34"),
    "behind an acute": ("47° 12´·34S", "47° 12'.34S"),
    "bullet": ("12•34", "12.34"),
    "bullet operator": ("12∙34", "12.34"),
    "dot operator": ("12⋅34", "12.34"),
    "full width": ("１２·３４", "12.34"),
    "list mark": ("· buoy", "· buoy"),
    "behind a figure only": ("page 4 · 26", "page 4 · 26"),
    "between letters": ("Fl·R", "Fl·R"),
    "behind a zero-width space": ("2\u200b·\u200b5s", "2.5s"),
}


def leads_back(given: str) -> None:
    """Every character read that was not changed is the one its offset leads to."""
    read = repair(given)
    offsets = [read.original(at) for at in range(len(read.text) + 1)]
    ends = [read.original_end(at) for at in range(len(read.text) + 1)]
    assert offsets == sorted(offsets)
    assert ends == sorted(ends)
    assert all(0 <= at <= len(given) for at in offsets + ends)
    replaced = {at for one in read.repairs for at in range(one.start, one.end)}
    for at, char in enumerate(read.text):
        assert offsets[at] < ends[at + 1]
        if offsets[at] not in replaced:
            seen = given[offsets[at]]
            # A dot and a return are read by what stands beside them.
            assert (
                repair(seen).text == char
                or (char == "." and seen in "·•∙⋅")
                or (char == " " and seen == "\r")
            )


@pytest.mark.parametrize(
    ("read", "seen"),
    [
        pytest.param(read, char, id=f"{name}-{ord(char):04X}")
        for name, (read, chars) in AS_ONE.items()
        for char in chars.split(" ")
    ],
)
def test_look_alike(read: str, seen: str) -> None:
    given = f"ab{seen}c"
    repaired = repair(given)
    assert repaired.text == f"ab{read}c"
    assert [repaired.original(at) for at in range(4)] == [0, 1, 2, 3]


@pytest.mark.parametrize("row", SPACES, ids=lambda row: row[2:])
def test_space(row: str) -> None:
    assert repair(f"47{row[0]}12").text == "47 12"


@pytest.mark.parametrize("row", INVISIBLE, ids=lambda row: row[2:])
def test_invisible_character_is_left_out(row: str) -> None:
    repaired = repair(f"47{row[0]}{row[0]}12")
    assert repaired.text == "4712"
    assert [repaired.original(at) for at in range(4)] == [0, 1, 4, 5]
    assert [repaired.original_end(at) for at in range(1, 5)] == [1, 2, 5, 6]


@pytest.mark.parametrize(("seen", "read"), LIGATURES.items())
def test_ligature(seen: str, read: str) -> None:
    repaired = repair(f"a{seen}b")
    assert repaired.text == f"a{read}b"
    inside = range(1, 1 + len(read))
    assert [repaired.original(at) for at in inside] == [1] * len(read)
    assert repaired.original_end(1 + len(read)) == 2
    assert repaired.original(1 + len(read)) == 2


@pytest.mark.parametrize("char", KEPT, ids=lambda char: f"{ord(char):04X}")
def test_character_is_kept(char: str) -> None:
    assert repair(f"8{char}m").text == f"8{char}m"


def test_nothing_is_normalised_by_compatibility() -> None:
    text = "8₆ 6½ m² depth"
    assert repair(text).text == text != unicodedata.normalize("NFKC", text)


@pytest.mark.parametrize("char", DAMAGED, ids=lambda char: f"{ord(char):04X}")
def test_utf8_read_as_windows_1252(char: str) -> None:
    # Bytes that Windows-1252 leaves open come through as control characters.
    seen = "".join(_windows_1252(byte) for byte in char.encode("utf-8"))
    repaired = repair(f"8{seen}5 m")
    assert repaired.text == repair(f"8{char}5 m").text
    assert repaired.original(2) == 1 + len(seen)


def _windows_1252(byte: int) -> str:
    try:
        return bytes([byte]).decode("cp1252")
    except UnicodeDecodeError:
        return chr(byte)


@pytest.mark.parametrize("hidden", ["\x1b", "\u200b", "\u202e\x9d"])
@pytest.mark.parametrize("seen", ["Â·", "â€\x9d", "â€³", "â‚\x81", "â‚‚", "â…\x9d", "â…ž"])
def test_broken_encoding_is_found_through_invisible_characters(seen: str, hidden: str) -> None:
    given = "8" + hidden.join(seen) + "5"
    assert repair(given).text == repair(f"8{seen}5").text
    leads_back(given)


@pytest.mark.parametrize(
    ("seen", "read"), [("8ÂÂ·6", "8.6"), ("ÂÂ\x1bÂ°", "°"), ("8âˆâ€²6", "8-6"), ("âˆÂ´", "-")]
)
def test_what_a_repair_brings_together_is_repaired_too(seen: str, read: str) -> None:
    assert repair(seen).text == read
    leads_back(seen)


def test_line_ends() -> None:
    assert repair("a\r\nb\nc\rd").text == "a \nb\nc\nd"
    assert repair("a\r\r\nb\r\rc\r").text == "a  \nb\n\nc\n"
    assert [repair("a\rb").original(at) for at in range(4)] == [0, 1, 2, 3]


def test_lone_surrogate_is_a_replacement_character() -> None:
    repaired = repair("47\ud83012")
    assert repaired.text == "47\ufffd12"
    assert repaired.original(3) == 3


@pytest.mark.parametrize(("seen", "read"), CUT_WORDS.values(), ids=CUT_WORDS)
def test_word_cut_at_the_line_end(seen: str, read: str) -> None:
    repaired = repair(seen)
    assert " ".join(repaired.text.split(" ")) == read
    assert seen[repaired.original(len(repaired.text) - 1)] == seen[-1]


@pytest.mark.parametrize(("seen", "read"), MIDDLE_DOTS.values(), ids=MIDDLE_DOTS)
def test_middle_dot(seen: str, read: str) -> None:
    assert repair(seen).text == read


@pytest.mark.parametrize(
    ("seen", "read"),
    [
        ("ROCK IN 47-12.3S STOP DELETE BUOY", "ROCK IN 47-12.3S. DELETE BUOY"),
        ("47-12.3S\nSTOP DELETE BUOY", "47-12.3S.\n DELETE BUOY"),
        ("IN 123-52.0W STOP CHART 62", "IN 123-52.0W.\nCHART 62"),
        ("123-52.0W STOP\n", "123-52.0W.\n"),
        ("LEGEND QUOTE FOUL\nGROUND UNQUOTE IN", 'LEGEND "FOUL\nGROUND" IN'),
        # A word of a name, of small letters, or half of a pair, stands for no mark.
        ("Delete the bus stop", "Delete the bus stop"),
        ("legend Bus STOP", "legend Bus STOP"),
        ('LEGEND "FULL STOP AREA" IN', 'LEGEND "FULL STOP AREA" IN'),
        ("STOP PRESS: A WRECK\nALL STOP PRESS", "STOP PRESS: A WRECK\nALL STOP PRESS"),
        ("QUOTE FOUL GROUND", "QUOTE FOUL GROUND"),
    ],
)
def test_words_of_telegrams_stand_for_marks(seen: str, read: str) -> None:
    repaired = repair(seen)
    assert repaired.text == read
    last = len(read.rstrip()) - 1
    assert seen[repaired.original_end(last + 1) - 1] == seen.rstrip()[-1]


@pytest.mark.parametrize(
    ("seen", "read"),
    [
        ("legend 'Foul'", 'legend "Foul"'),
        ("legend ‘Foul ground (2026)’,", 'legend "Foul ground (2026)",'),
        ("name from 'A1' to 'Queen's Wharf'", 'name from "A1" to "Queen\'s Wharf"'),
        ("legend '7.5m'", 'legend "7.5m"'),
        # Primes of minutes and feet, and what else is no quotation.
        ("47 12 'S 123 45' W", "47 12 'S 123 45' W"),
        ("47°12'.34S 123°45'.67W", "47°12'.34S 123°45'.67W"),
        ("47 '12, 48 '13", "47 '12, 48 '13"),
        ("depth 12' and 14'", "depth 12' and 14'"),
        ("the pilots' and the seamen's", "the pilots' and the seamen's"),
        ("'Foul\nground'", "'Foul\nground'"),
    ],
)
def test_a_wording_in_single_quotes_stands_in_double_ones(seen: str, read: str) -> None:
    assert repair(seen).text == read


@pytest.mark.parametrize(
    "given",
    [
        "",
        "47°12.34'S",
        "\ufeff\u00ad47º12´·34\u200bS",
        "a ﬂashing\u00ad buoy, of\ufb01-\ncial\r\n8₆ m",
        "Â°Â½â€²â€³ and danger-\n> ous",
        "‴ﬃ\x00\x00ﬀ-\nx",
        "\u00ad" * 5,
        "abc-\ndef-\nghi-\njkl\u00ad",
    ],
)
def test_every_character_read_leads_back(given: str) -> None:
    leads_back(given)


def test_offsets_of_every_kind_of_repair_in_one_text() -> None:
    given = "\ufeffa ﬂash\u00ading dan-\nger 47Â°12´·34S"
    repaired = repair(given)
    assert repaired.text == "a flashing danger 47°12'.34S"
    for word, first in (("a", "a"), ("ashing", "a"), ("danger", "d"), ("47", "4"), ("34S", "3")):
        at = repaired.text.index(word)
        assert given[repaired.original(at)] == first
    start = repaired.text.index("danger")
    assert given[repaired.original(start) : repaired.original_end(start + 6)] == "dan-\nger"
    start = repaired.text.index("flashing")
    assert given[repaired.original(start) : repaired.original_end(start + 8)] == "ﬂash\u00ading"
