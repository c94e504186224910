"""Positions: every written form gives one exact value, every doubtful form is refused.

The forms are those in use in notices, radio warnings and ISO 6709; `(m)` in a comment: IMO
MSC.1/Circ.1310, message element 6.  All values are exact fractions of a degree.
"""

from __future__ import annotations

from fractions import Fraction

import pytest

from noticeparse import NoticeParseError, find_positions, parse, parse_position
from noticeparse.records import Bulletin, Finding, Position
from tests.short_notices import HEAD_WITHOUT_UNIT as HEAD
from tests.short_notices import actions_of


def degrees(whole: int, minutes: str = "0", seconds: str = "0") -> Fraction:
    """Degrees, minutes and seconds as exact degrees, with the sign of the degrees."""
    size = abs(whole) + Fraction(minutes) / 60 + Fraction(seconds) / 3600
    return -size if whole < 0 else size


POINT = (degrees(-47, "12.34"), degrees(-123, "45.67"))
WHOLE_MINUTES = (degrees(-47, "12"), degrees(-123, "45"))
DECIMAL = (Fraction("-47.20567"), Fraction("-123.76117"))

SAME_POINT = {
    "symbols": "47°12.34'S 123°45.67'W",
    "primes, blanks, comma": "47° 12.34′ S, 123° 45.67′ W",
    "mark before the decimals": "47° 12'.34S 123° 45'.67W",
    "acute, middle dot, stop": "47° 12´·34S., 123° 45´·67W.",
    "apostrophe, middle dot": "47° 12'·34 S 123° 45'·67 W",
    "mark behind the decimals": "47°12·34'S 123°45·67'W",
    "hyphens (m)": "47-12.34S 123-45.67W",
    "hemisphere between": "47S12.34 123W45.67",
    "hemisphere between, marks": "47S12.34' 123W45.67'",
    "hyphens, blanks": "47-12.34 S, 123-45.67 W",
    "hyphens, solidus": "47-12.34S / 123-45.67W",
    "hyphens, close solidus": "47-12.34S/123-45.67W",
    "hyphens, and": "47-12.34S and 123-45.67W",
    "blanks": "47 12.34 S 123 45.67 W",
    "compact": "4712.34S 12345.67W",
    "compact, letter first": "S4712.34 W12345.67",
    "letter first, blanks": "S47 12.34 W123 45.67",
    "letter first, hyphens": "S47-12.34 W123-45.67",
    "letter first, symbols": "S 47°12.34' W 123°45.67'",
    "axis words": "Lat 47°12.34'S Long 123°45.67'W",
    "axis words with stops": "Lat. S 47°12.34' Long. W 123°45.67'",
    "whole words": "Latitude 47°12.34' South, Longitude 123°45.67' West",
    "capital words": "47°12.34'SOUTH 123°45.67'WEST",
    "seconds": "47°12'20.4\"S 123°45'40.2\"W",
    "seconds, mark before decimals": "47° 12' 20\".4 S 123° 45' 40\".2 W",
    "seconds, double primes": "47°12′20.4″S 123°45′40.2″W",
    "seconds, two apostrophes": "47°12'20.4''S 123°45'40.2''W",
    "seconds, two acutes": "47°12´20.4´´S 123°45´40.2´´W",
    "seconds, quotation mark": "47°12'20.4”S 123°45'40.2”W",
    "seconds, words": "47 deg 12 min 20.4 sec S, 123 deg 45 min 40.2 sec W",
    "seconds, hyphens": "47-12-20.4S 123-45-40.2W",
    "seconds, compact": "471220.4S 1234540.2W",
    "ISO 6709, minutes": "-4712.34-12345.67/",
    "ISO 6709, seconds": "-471220.4-1234540.2/",
    "ISO 6709, height": "-471220.4-1234540.2+12.5CRSWGS_84/",
    "ISO 6709, comma": "-4712,34-12345,67/",
    "decimal comma": "47°12,34'S 123°45,67'W",
    "decimal comma, semicolon": "47°12,34'S; 123°45,67'W",
    "decimal comma, solidus": "47°12,34'S / 123°45,67'W",
    "decimal comma, hyphens": "47-12,34S 123-45,67W",
    "masculine ordinal": "47º12.34'S 123º45.67'W",
    "ring above": "47˚12.34'S 123˚45.67'W",
    "deg": "47 deg 12.34'S 123 deg 45.67'W",
    "degrees": "47 degrees 12.34'S 123 degrees 45.67'W",
    "d": "47d12.34'S 123d45.67'W",
    "o": "47o12.34'S 123o45.67'W",
    "right quotation mark": "47°12.34’S 123°45.67’W",
    "grave": "47°12.34`S 123°45.67`W",
    "modifier prime": "47°12.34ʹS 123°45.67ʹW",
    "min": "47°12.34 min S 123°45.67 min W",
    "m": "47°12.34m S 123°45.67m W",
    "bullet": "47°12•34'S 123°45•67'W",
    "bullet operator": "47°12∙34'S 123°45∙67'W",
    "dot operator": "47°12⋅34'S 123°45⋅67'W",
    "hyphen U+2010": "47‐12.34S 123‐45.67W",
    "hyphen U+2011": "47‑12.34S 123‑45.67W",
    "en dash": "47–12.34S 123–45.67W",
    "em dash": "47—12.34S 123—45.67W",
    "minus as hyphen": "47−12.34S 123−45.67W",
    "no-break and thin spaces": "47°\u00a012.34'\u2009S\u00a0123°\u00a045.67'\u2009W",
    "full-width figures": "４７°１２.３４'S １２３°４５.６７'W",
    "line break between": "47°12'.34S\n123°45'.67W",
    "line break within": "47° 12'.34S 123°\n45'.67W",
    "line break, indent": "47° 12'.34S,\n      123° 45'.67W",
}

OTHER_POINTS = {
    "whole minutes (m)": ("47-12S 123-45W", WHOLE_MINUTES),
    "whole minutes, symbols": ("47°12'S 123°45'W", WHOLE_MINUTES),
    "compact whole minutes": ("4712S 12345W", WHOLE_MINUTES),
    "one decimal": ("47-12.3S 123-45.6W", (degrees(-47, "12.3"), degrees(-123, "45.6"))),
    "three decimals": (
        "47°12.345'S 123°45.678'W", (degrees(-47, "12.345"), degrees(-123, "45.678")),
    ),
    "single figures": ("5°2.5'N 8°3.5'E", (degrees(5, "2.5"), degrees(8, "3.5"))),
    "leading zeros": ("05-02.50N 008-03.50E", (degrees(5, "2.5"), degrees(8, "3.5"))),
    "decimal degrees": ("47.20567°S 123.76117°W", DECIMAL),
    "decimal degrees, no sign": ("47.20567S 123.76117W", DECIMAL),
    "decimal degrees, letter first": ("S47.20567 W123.76117", DECIMAL),
    "signed decimals": ("-47.20567, -123.76117", DECIMAL),
    "signed decimals, minus signs": ("−47.20567, −123.76117", DECIMAL),
    "ISO 6709, degrees": ("-47.20567-123.76117/", DECIMAL),
    "ISO 6709, north and east": ("+4712.34+12345.67/", (-POINT[0], -POINT[1])),
    "degrees only": ("47°S 123°W", (Fraction(-47), Fraction(-123))),
    "degrees only, no sign": ("47S 123W", (Fraction(-47), Fraction(-123))),
    "equator": ("0°00.00'N 123°45.67'W", (Fraction(0), POINT[1])),
    "equator, south": ("00-00.00S 123-45.67W", (Fraction(0), POINT[1])),
    "prime meridian": ("47-12.34S 000-00.00E", (POINT[0], Fraction(0))),
    "pole": ("90°00.00'S 0°00.00'E", (Fraction(-90), Fraction(0))),
    "180th meridian, east": ("47-12.34S 180-00.00E", (POINT[0], Fraction(-180))),
    "180th meridian, west": ("47-12.34S 180-00.00W", (POINT[0], Fraction(-180))),
    "just short of 180": ("47-12.34S 179-59.99E", (POINT[0], degrees(179, "59.99"))),
}  # fmt: skip

FORMS = {**{name: (text, POINT) for name, text in SAME_POINT.items()}, **OTHER_POINTS}

# In running text the letters of these are words or units, so that only a whole text is read.
ONLY_ALONE = {"degrees only, no sign"}
IN_TEXT = {name: row for name, row in FORMS.items() if name not in ONLY_ALONE}

REFUSED = {
    "60 minutes": ("47°60.00'S 123°45.67'W", "position-minutes-out-of-range"),
    "72 minutes": ("47-72.34S 123-45.67W", "position-minutes-out-of-range"),
    "three figures of minutes": ("47-123.4S 123-45.67W", "position-minutes-out-of-range"),
    "60 seconds": ("47°12'60\"S 123°45'40\"W", "position-seconds-out-of-range"),
    "75 seconds": ("47-12-20S 123-45-75W", "position-seconds-out-of-range"),
    "latitude 91": ("91°12.34'S 123°45.67'W", "position-degrees-out-of-range"),
    "past the pole": ("90°00.01'S 123°45.67'W", "position-degrees-out-of-range"),
    "longitude 181": ("47-12.34S 181-45.67W", "position-degrees-out-of-range"),
    "past 180": ("47-12.34S 180-00.01W", "position-degrees-out-of-range"),
    "no hemisphere": ("47°12.34' 123°45.67'", "position-hemisphere-missing"),
    "no hemisphere, decimals": ("47.20567, 123.76117", "position-hemisphere-missing"),
    "no hemisphere, blanks": ("47 12.34 123 45.67", "position-hemisphere-missing"),
    "one hemisphere": ("47°12.34'S 123°45.67'", "position-hemisphere-missing"),
    "the other hemisphere": ("47°12.34' 123°45.67'W", "position-hemisphere-missing"),
    "O for west or east": ("47°12.34'S 123°45.67'O", "position-hemisphere-missing"),
    "minus and letter": ("-47.20567°S 123.76117°W", "position-sign-and-hemisphere"),
    "minus and letter, minutes": ("-47°12.34'S 123°45.67'W", "position-sign-and-hemisphere"),
    "minus and letter, second": ("47.20567°S -123.76117°W", "position-sign-and-hemisphere"),
    "plus and letter": ("+47.20567°N 123.76117°W", "position-sign-and-hemisphere"),
    "two latitudes": ("47-12.34S 45-45.67S", "position-hemisphere-conflict"),
    "two longitudes": ("147-12.34W 123-45.67W", "position-hemisphere-conflict"),
    "letter on both sides": ("S47°12.34'N W123°45.67'E", "position-hemisphere-conflict"),
    "axis word and letter": (
        "Lat 47°12.34'W Long 123°45.67'S", "position-hemisphere-conflict",
    ),
    "longitude first": ("123-45.67W 47-12.34S", "position-exchanged"),
    "two figures of longitude": ("47-12.34S 23-45.67W", "position-longitude-digits"),
    "letter O": ("47-O2.34S 123-45.67W", "position-letter-for-figure"),
    "letter l": ("47-l2.34S 123-45.67W", "position-letter-for-figure"),
    "letter Z": ("47-1Z.34S 123-45.67W", "position-unreadable"),
    "lost degree sign": ("47\ufffd12.34'S 123\ufffd45.67'W", "position-symbol-lost"),
    "asterisk for degree sign": ("47*12.34'S 123*45.67'W", "position-symbol-lost"),
    "figure or degree sign lost": ("4\ufffd 12.34 S 123 45.67 W", "position-unreadable"),
    "figure of longitude lost": ("47 12.34 S 12\ufffd 45.67 W", "position-unreadable"),
    "figure of minutes lost": ("47 \ufffd2.34 S 123 45.67 W", "position-unreadable"),
    "seconds or decimals": ("47° 12' 34S 123° 45' 40W", "position-seconds-unclear"),
    "seconds mark behind minutes": ("47°12.34\"S 123°45.67\"W", "position-seconds-unclear"),
    "both marks": ("47°12'.34\"S 123°45'.67\"W", "position-seconds-unclear"),
    "broken off": ("47°12.34'S 123°", "position-cut-off"),
    "broken off at the hyphen": ("47-12.34S 123-", "position-cut-off"),
    "minutes without degrees": ("12'.90S 46'.20W", "position-shared-degrees-unknown"),
    "decimals of degrees and minutes": ("47.5°12.34'S 123°45.67'W", "position-unreadable"),
    "decimals of minutes and seconds": ("47°12.5'30\"S 123°45'40\"W", "position-unreadable"),
    "compact longitude short": ("4712.34S 1234.67W", "position-unreadable"),
    "compact latitude short": ("471.34S 12345.67W", "position-unreadable"),
    "compact figures too many": ("4712345S 1234540W", "position-unreadable"),
    "ISO minutes": ("-4772.34-12345.67/", "position-minutes-out-of-range"),
    "ISO latitude": ("-9100-12345/", "position-degrees-out-of-range"),
    "ISO longitude": ("-4712-18100/", "position-degrees-out-of-range"),
    "ISO figures of latitude": ("-471-123/", "position-unreadable"),
    "ISO figures of longitude": ("-4712.34-1234.67/", "position-unreadable"),
    "two letters": ("47°12.34'SE 123°45.67'W", "position-unreadable"),
}  # fmt: skip

NO_POSITION = {
    "half": "47°12.34'S",
    "compass direction behind": "47°12'.34S W of the pier",
    "unsigned decimals": "47.2 123.7",
    "dots between the fields": "47.12.34S 123.45.67W",
    "four fields": "47-12-34.5-6S 123-45-40W",
    "exponent": "1E5S 123-45.67W",
    "either hemisphere": "47°12.34'N/S 123°45.67'W",
    "Arabic-Indic figures": "٤٧-١٢.٣٤S ١٢٣-٤٥.٦٧W",
    "Devanagari figures": "४७°१२.३४'S १२३°४५.६७'W",
    "light character": "Fl(3)WRG.15s21m15-11M",
    "sector": "W 171°-195°, R 195°-268°",
    "bearing and distance": "137°T, 2.4M",
    "nothing": "",
    "degree sign lost to a nought": "470 12.34'S 1230 45.67'W",
}
"""Texts that hold no position that could be read for certain, whatever is said of them."""


def read_exactly(position: Position) -> tuple[Fraction, Fraction]:
    lat, lon = position.exact()
    assert (position.lat, position.lon) == (float(lat), float(lon))
    return lat, lon


def refusal(text: str) -> Finding:
    with pytest.raises(NoticeParseError) as caught:
        parse_position(text)
    return caught.value.finding


def notice_with(words: str) -> Bulletin:
    return parse(f"{HEAD}Insert depth 8.6m   {words}\n")


def positions_of(bulletin: Bulletin) -> list[Position]:
    return [position for action in actions_of(bulletin) for position in action.geometry.positions]


@pytest.mark.parametrize(("text", "exact"), FORMS.values(), ids=FORMS)
def test_form_alone(text: str, exact: tuple[Fraction, Fraction]) -> None:
    position = parse_position(text)
    assert read_exactly(position) == exact
    assert position.via == "stated"


@pytest.mark.parametrize(("text", "exact"), IN_TEXT.values(), ids=IN_TEXT)
def test_form_in_running_text(text: str, exact: tuple[Fraction, Fraction]) -> None:
    found = find_positions(f"A wreck lies in {text}, dangerous to navigation.")
    assert [read_exactly(position) for position in found] == [exact]


@pytest.mark.parametrize(("text", "exact"), IN_TEXT.values(), ids=IN_TEXT)
def test_form_in_an_action(text: str, exact: tuple[Fraction, Fraction]) -> None:
    bulletin = notice_with(text)
    assert [read_exactly(position) for position in positions_of(bulletin)] == [exact]
    assert not [finding for finding in bulletin.findings if finding.severity == "error"]


@pytest.mark.parametrize(("text", "code"), REFUSED.values(), ids=REFUSED)
def test_doubtful_form_is_refused(text: str, code: str) -> None:
    assert refusal(text).code == code
    assert find_positions(f"A wreck lies in {text}, dangerous to navigation.") == []


@pytest.mark.parametrize(("text", "code"), REFUSED.values(), ids=REFUSED)
def test_doubtful_form_in_an_action_has_its_finding(text: str, code: str) -> None:
    bulletin = notice_with(text)
    found = [finding for finding in bulletin.findings if finding.code == code]
    assert found
    assert all(finding.paths for finding in found)
    if found[0].severity == "error":
        assert positions_of(bulletin) == []
        assert not bulletin.notices[0].charts[0].actions[0].usable


@pytest.mark.parametrize("text", NO_POSITION.values(), ids=NO_POSITION)
def test_no_position(text: str) -> None:
    refusal(text)
    assert find_positions(f"A wreck lies in {text}, dangerous to navigation.") == []
    bulletin = notice_with(text)
    assert positions_of(bulletin) == []
    assert not any(action.usable for action in bulletin.notices[0].charts[0].actions)
