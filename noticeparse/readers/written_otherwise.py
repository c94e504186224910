"""Forms of a phrase that say the same as another form, which the grammars read.

In comes a phrase; out comes one of the same length, so that no offset moves, with the stretches
whose words are not kept.  `Racon Mo(K)` and `racon coded K` are `Racon (K)`, `Red Fl 3s` of a
light is `Fl R 3s`, a `red flashing light` is a `flashing red light`, and `15M(W), 12M(R), 11M(G)`
or `W15M R12M G11M` of a light in these colours is `15/12/11M`.
"""

from __future__ import annotations

import re
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.no_bottom import with_no_bottom
from noticeparse.readers.unchanged import without_the_rest
from noticeparse.readers.words_inverted import in_spoken_order

_MORSE = {
    ".-": "A", "-...": "B", "-.-.": "C", "-..": "D", ".": "E", "..-.": "F", "--.": "G",
    "....": "H", "..": "I", ".---": "J", "-.-": "K", ".-..": "L", "--": "M", "-.": "N",
    "---": "O", ".--.": "P", "--.-": "Q", ".-.": "R", "...": "S", "-": "T", "..-": "U",
    "...-": "V", ".--": "W", "-..-": "X", "-.--": "Y", "--..": "Z",
}  # fmt: skip

BEFORE_SECTORS = re.compile(r":(?= ?(?:[WRGY]|Bu|Obscd) ?[0-9]{3}(?:\.[0-9])?° ?-)")
"""`Oc.WRG.8s: G 200°-231°`: the colon parts sectors from the light as a comma would."""
_RACON = re.compile(
    r"(?P<racon>\b(?i:racon))[ ,:]{0,2}(?:"
    r"(?i:(?:with )?(?:mo(?:rse)?|coded?|identification)\b\.?(?: (?:code|letter))?)[ :]?"
    r"(?:\((?P<bracket>[A-Z]{1,2})\)|\"?(?P<bare>[A-Z]{1,2})\b\"?)"
    r"|\((?i:mo(?:rse)?)\.?[ :](?P<inner>[A-Z]{1,2})\)"
    r"|\"(?P<quoted>[A-Z]{1,2})\"|\((?P<signs>[.-]{1,4})\))"
)
"""`Racon Mo (K)`, `racon morse K`, `Racon "K"`, `racon coded K`, `racon (-.-)`"""
_COLOUR_FIRST = re.compile(
    r"(?P<light>^(?:the |an? )?(?:light|lt)s?,? )(?P<colour>red|green|white|yellow) "
    r"(?-i:(?P<rhythm>(?:LFl|Fl|Oc|Iso|VQ|Q|F)\.?(?:\([0-9+]{1,5}\))?))"
    r"(?P<figures>(?: [0-9]{1,3}(?:\.[0-9])?(?-i:[smM])\b){0,3})(?= [0-9]|,|$)",
    re.IGNORECASE,
)
"""`light, Red Fl 3s`: a light has no paint of its own."""
_COLOUR = r"(?:white|red|green|yellow|blue|amber|violet|orange)"
_BEHIND_LIGHT = (
    r"(?:light|lt)s?(?![a-z])(?![ -](?:buoy|beacon|float|vessel|ship|tower|structure|mark|pile)s?)"
)
_COLOUR_OF_RHYTHM = re.compile(
    rf"\b(?P<colour>{_COLOUR}) (?P<rhythm>fixed|flashing)"
    rf"(?= (?:(?:leading|aero|sector|directional|vertical) ){{0,2}}{_BEHIND_LIGHT})",
    re.IGNORECASE,
)
"""`red flashing light`: the paint of a mark stands so too, `red flashing light-buoy`."""
_BEFORE_PERIOD = re.compile(
    rf"\b(?P<words>(?:fixed|flashing|occulting|isophase)(?: {_COLOUR})?) (?P<light>light)"
    r"(?= (?:every|ev\.) [0-9])",
    re.IGNORECASE,
)
_LENGTHS = re.compile(
    r"(?<=[0-9]s) ?(?P<bracket>\((?:(?:fl|lt|ec)\.? ?[0-9]{1,2}(?:\.[0-9])?s?(?:, ?|\+| )?){1,3}\)"
    r"|\([0-9]{1,2}(?:\.[0-9])?(?: ?\+ ?[0-9]{1,2}(?:\.[0-9])?){1,5}\))"
    r"(?:,? (?P<figures>[0-9]{1,3}m [0-9]{1,2}M|[0-9]{1,3}m|[0-9]{1,2}M)\b)?(?= [0-9]|,|$)"
)
"""`Fl.5s (0.5+4.5), 12m`, `Fl.5s (fl 0.5s)`: how long the flash is and how long the dark."""
_RANGES = re.compile(
    r"(?:(?<![0-9A-Za-z])|(?<=[0-9]m))[0-9]{1,2}(?:\.[0-9])?M ?\((?:[WRGY](?:, ?| and |&)?){1,3}\)"
    r"(?:[, ]{0,2}(?:and )?[0-9]{1,2}(?:\.[0-9])?M ?\((?:[WRGY](?:, ?| and |&)?){1,3}\)){1,3}"
)
_EACH_RANGE = re.compile(r"(?P<range>[0-9.]+)M ?\((?P<letters>[^()]+)\)")
_LETTERED_RANGES = re.compile(
    r"(?:(?<![0-9A-Za-z])|(?<=[0-9]m))(?:(?:nominal )?ranges?:? )?\(?"
    r"(?:[WRGY]\.? ?[0-9]{1,2}(?:\.[0-9])? ?M?[, /]{1,2}(?:and )?){1,3}"
    r"[WRGY]\.? ?[0-9]{1,2}(?:\.[0-9])? ?(?:M\)?|\)M)(?![A-Za-z0-9])"
)
"""`W14M R11M`, `(W14,R11)M`: each range behind the letter of its colour."""
_LETTERED_RANGE = re.compile(r"(?P<letters>[WRGY])\.? ?(?P<range>[0-9]+(?:\.[0-9])?)")
_COLOURS = re.compile(r"(?<=[.)])[WRGY]{2,4}(?=[. ])")
_PAINT = re.compile(
    r"(?:(?<=, )|(?<= ))(?-i:(?P<first>[BRGYW])\.(?P<second>[BRGYW])\.(?:(?P<third>[BRGYW])\.)?)"
    r"(?=,|$| (?:[a-z]|\())"
)
"""`B.Y.B.`: the letters of paint, of which a light has none alone."""

_SINGLE_QUOTES = re.compile(r"(?<![\w'\"])'(?P<name>[A-Z0-9][A-Za-z0-9 -]{0,40})'(?![\w'\"])")
"""`platform 'A'`"""

_LEGEND_TOLD = re.compile(
    r'(?<!["\w] )((?:the )?legend(?: "[^"]*"(?=[,;:] ?(?:the )?legend to))?)'
    r'([,:] ?(?=")|[,;:] ?(?:the )?legend (?=to "))',
    re.IGNORECASE,
)
"""What parts a legend from its wording, or from the change of it: `legend "A": legend to "B"`."""
_DEPTH_OVER = re.compile(
    r"(?P<depth>(?:^|(?<=[,;] )|(?<= and ))(?:the )?(?:(?:least|swept|charted) )?depth)"
    r" (?P<over>over|above|on)(?= (?:the |an? )?(?:(?:dangerous|sunken|submerged|charted) )?"
    r"(?:wreck|rock|obstruction)(?:,? (?:from|to) |$))",
    re.IGNORECASE,
)
"""`depth over wreck from 9.1m to 8.6m`: the depth that the wreck has."""


_CHARACTER_TOLD = re.compile(
    r"(?P<lead>^(?:the )?(?:light )?characteristics? of (?:the )?[A-Za-z -]{3,40})"
    r": (?=[A-Z][A-Za-z]{0,3}[.(])(?!.{0,80} (?:to|from|by|for|now) )"
)
"""`characteristics of light: Fl.10s`: the colon leads to what it becomes."""
_FOR_READ = re.compile(r":? for (?P<old>[^:;\"]{1,30}),? read (?=[^:;\"]{1,30}$)")
"""`range of light: for 12M read 15M`"""


class Rewritten(NamedTuple):
    """A phrase of the same length in forms that are read, and what of it is not kept."""

    text: str
    faults: tuple[Fault, ...]


def in_known_forms(text: str) -> Rewritten:
    """The phrase in the forms that the grammars read."""
    faults: list[Fault] = []
    made = in_spoken_order(_COLOUR_FIRST.sub(_colour_behind, with_no_bottom(text)))
    made = _COLOUR_OF_RHYTHM.sub(lambda told: f"{told['rhythm']} {told['colour']}", made)
    made = _BEFORE_PERIOD.sub(lambda told: f"{told['light']} {told['words']}", made)
    made = _SINGLE_QUOTES.sub(lambda told: f'"{told["name"]}"', made)
    made = _PAINT.sub(_with_strokes, made)
    if "acon" in made or "ACON" in made:
        made = _RACON.sub(_with_letter, made)
    for told in _LENGTHS.finditer(made):
        start, end = told.span("bracket")
        written = {"written": shown(made[start + 1 : end - 1])}
        faults.append(Fault("feature-figure-in-brackets", start, end, written))
    made = _LENGTHS.sub(lambda told: f" {told['figures'] or ''}".ljust(len(told[0])), made)
    colours = _COLOURS.search(made)
    if colours is not None:
        made = _RANGES.sub(lambda told: _in_order(told[0], colours[0]), made)
        made = _LETTERED_RANGES.sub(
            lambda told: _in_order(told[0], colours[0], _LETTERED_RANGE), made
        )
    return Rewritten(made, tuple(faults))


def change_in_known_form(text: str) -> str:
    """The phrase of a change, of the same length, with legends and depths as they are read."""
    plain = _LEGEND_TOLD.sub(lambda told: f"{told[1]}{' ' * len(told[2])}", text)
    plain = _DEPTH_OVER.sub(lambda told: f"{told['depth']} {'of'.ljust(len(told['over']))}", plain)
    plain = _CHARACTER_TOLD.sub(lambda told: f"{told['lead']} →", plain)
    plain = _FOR_READ.sub(lambda told: f" from {told['old']} to ".ljust(len(told[0])), plain)
    return with_no_bottom(without_the_rest(plain)).rstrip(" .")


def _with_letter(told: re.Match[str]) -> str:
    letter = told["bracket"] or told["bare"] or told["quoted"] or told["inner"]
    letter = letter or _MORSE.get(told["signs"])
    short = f"{told['racon']}({letter})"
    return short.ljust(len(told[0])) if letter and len(short) <= len(told[0]) else told[0]


def _colour_behind(told: re.Match[str]) -> str:
    gap = "" if told["rhythm"].endswith((".", ")")) else " "
    character = f"{told['rhythm']}{gap}{told['colour'][0].upper()}{told['figures']}"
    return f"{told['light']}{character}".ljust(len(told[0]))


def _with_strokes(told: re.Match[str]) -> str:
    letters = filter(None, (told["first"], told["second"], told["third"]))
    return "/".join(letters).ljust(len(told[0]))


def _in_order(ranges: str, colours: str, each: re.Pattern[str] = _EACH_RANGE) -> str:
    """The ranges in the order of the colours; as they stand where not each has its own."""
    of_colour: dict[str, str] = {}
    for one in each.finditer(ranges):
        of_colour |= {letter: one["range"] for letter in one["letters"] if letter.isupper()}
    if sorted(of_colour) != sorted(colours):
        return ranges
    return ("/".join(of_colour[letter] for letter in colours) + "M").ljust(len(ranges))
