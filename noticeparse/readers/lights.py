"""Reads a light description, and the other aids that may stand on the same structure.

In comes the text of one description, as the terminals of `light_text.lark` cut it out of a longer
text; out come the records with faults.  Every character is read, or stands under a fault.  Whether
the light suits its mark is not judged here.  Form: INT 1 sections P, R and S.
"""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.readers.light_checks import (
    check_character,
    has_impossible_group,
    has_impossible_period,
)
from noticeparse.readers.light_draft import Draft
from noticeparse.readers.light_figures import Figures, settle_figures
from noticeparse.readers.light_gather import gather
from noticeparse.readers.light_parts import fault, parts_of
from noticeparse.readers.light_sectors import read_sectors
from noticeparse.readers.light_values import litchr_of, rhythm_of
from noticeparse.records.feature import Ais, Racon, Sound
from noticeparse.records.light import Light, LightColour, Rhythm, Sector


class LightReading(NamedTuple):
    """What stands in one description; faults count their offsets from its start."""

    lights: tuple[Light, ...]
    sound: Sound | None
    racon: Racon | None
    ais: Ais | None
    faults: tuple[Fault, ...]


@lru_cache(maxsize=4096)
def read_light(text: str) -> LightReading:
    """The lights of one description, with sectors, fog signal, racon and AIS; never raises.

    `Oc.3s12m10M & F.R.7m4M` holds two lights.  No light and no aid is an error fault.
    """
    reading = _read(text, "light-unreadable")
    if not reading.lights and text.islower():
        return _read_small(text)
    return reading


def _read_small(text: str) -> LightReading:
    """A light all in small letters, read as if in capitals: `fl(2)r.6s` is `FL(2)R.6S`."""
    # Letter by letter: `ß` has two capitals, which would shift every place behind it.
    capitals = "".join(char.upper() if len(char.upper()) == 1 else char for char in text)
    reading = _read(capitals, "light-unreadable")
    lights = []
    for light in reading.lights:
        start = capitals.find(light.written)
        written = text[start : start + len(light.written)]
        lights.append(light.model_copy(update={"written": written}))
    return reading._replace(lights=tuple(lights))


@lru_cache(maxsize=4096)
def read_aids(text: str) -> LightReading:
    """Aids standing alone: `Horn(2)30s`, `Racon(K)`, `V-AIS`; never raises."""
    return _read(text, "aid-unreadable")


def _read(text: str, code: str) -> LightReading:
    parts = parts_of(text)
    if parts is None:
        return LightReading((), None, None, None, (fault(code, text, 0, len(text)),))
    drafts, aids, notes = gather(text, parts)
    faults = notes.faults
    lights = tuple(_light(draft, text, faults) for draft in drafts if not draft.is_broken)
    faults += [_unknown(draft, text) for draft in drafts if draft.is_broken]
    if not drafts and aids.is_empty:
        faults = [fault(code, text, 0, len(text))]
    faults.sort(key=lambda one: (one.start, one.end))
    return LightReading(lights, aids.sound, aids.racon, aids.ais, tuple(faults))


def _unknown(draft: Draft, text: str) -> Fault:
    """Nothing of a light is read whose classes make no character."""
    end = max(draft.end, *(end for _, end in draft.sectors), 0)
    return fault("light-character-unknown", text, draft.start, end)


def _light(draft: Draft, text: str, faults: list[Fault]) -> Light:
    rhythm: Rhythm = rhythm_of(tuple(draft.classes)) or "Al"
    colours: list[LightColour] = [] if draft.has_lost_colour else list(draft.colours) or ["W"]
    figures = settle_figures(
        draft.figures, colours, text, is_telex=draft.is_telex, is_fixed=rhythm == "F"
    )
    faults += figures.faults
    faults += check_character(draft, rhythm, figures, text)
    groups = [] if has_impossible_group(draft, rhythm) else draft.groups
    return Light(
        written=text[draft.start : draft.end],
        rhythm=rhythm,
        alternating=draft.is_alternating,
        groups=groups,
        morse=draft.morse,
        colours=colours,
        colour_stated=bool(draft.colours) or draft.has_lost_colour,
        period_s=_period(draft, rhythm, figures),
        elevation_m=figures.elevation_m,
        ranges_nm=figures.ranges_nm,
        range_by_colour=figures.range_by_colour,
        sectors=list(_sectors(draft, colours, text, faults)),
        vertical=draft.is_vertical,
        horizontal=draft.is_horizontal,
        directional="dir" in draft.functions,
        leading="ldg" in draft.functions or "lea" in draft.functions,
        aero="aer" in draft.functions,
        count=draft.count,
        remarks=draft.remarks,
        litchr=litchr_of(
            rhythm,
            alternating=draft.is_alternating,
            plain_group=bool(groups) and not draft.has_group_colours,
        ),
    )


def _period(draft: Draft, rhythm: Rhythm, figures: Figures) -> Decimal | None:
    return None if has_impossible_period(draft, rhythm) else figures.period_s


def _sectors(
    draft: Draft, colours: list[LightColour], text: str, faults: list[Fault]
) -> tuple[Sector, ...]:
    if not draft.sectors:
        return ()
    # Lists parted by other words are read as one, so that the whole circle can be checked.
    masked = [" "] * draft.sectors[-1][1]
    for start, end in draft.sectors:
        masked[start:end] = text[start:end]
    first = draft.sectors[0][0]
    reading = read_sectors("".join(masked[first:]), tuple(colours))
    faults += [one.shifted(first) for one in reading.faults]
    return reading.sectors
