"""Gathers the parts of a description: lights on one side, other aids on the other.

In come the parts in the order written; out come the drafts of the lights, the aids, and a fault
for every part that belongs to none of them.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from noticeparse.readers.light_aids import Aids
from noticeparse.readers.light_assembly import Assembly
from noticeparse.readers.light_draft import Draft
from noticeparse.readers.light_notes import Notes
from noticeparse.readers.light_parts import Part

_AID_DETAILS = frozenset({"GROUP", "measure", "REMARK"})
_CLASSES = frozenset({"CLASS", "OLD_CLASS", "WORD_CLASS", "LIKE_CLASS", "morse"})


class Gathered(NamedTuple):
    """What the parts make; `notes` holds the faults found so far."""

    drafts: list[Draft]
    aids: Aids
    notes: Notes


def gather(text: str, parts: tuple[Part, ...]) -> Gathered:
    """Takes all parts in order; none is passed over without a fault."""
    notes = Notes(text)
    lights, aids = Assembly(notes), Aids(notes)
    for part in parts:
        kind = part.type
        before = lights.before
        if before is not None and kind not in _CLASSES:
            if before.type == "PLUS":
                notes.leave(before)
            elif before.type == "COUNT":
                notes.leave_figure(before)
        if aids.is_open and kind in _AID_DETAILS:
            aids.take_detail(part)
        elif kind in _TAKE_AID:
            lights.close_light()
            _TAKE_AID[kind](aids, part)
        else:
            aids.is_open = False
            _TAKE[kind](lights, part)
        lights.before = part
    if lights.before is not None and lights.before_is("JOIN", "PLUS", "LABEL"):
        notes.leave(lights.before)
    lights.close_light()
    notes.close()
    for draft in lights.drafts:
        if not draft.has_character:
            notes.add("light-leftover-words", draft.start, draft.end)
    return Gathered([one for one in lights.drafts if one.has_character], aids, notes)


_TAKE: dict[str, Callable[[Assembly, Part], None]] = {
    "CLASS": Assembly.take_class,
    "OLD_CLASS": Assembly.take_class,
    "WORD_CLASS": Assembly.take_class,
    "LIKE_CLASS": Assembly.take_look_alike,
    "morse": Assembly.take_morse,
    "ALTERNATING": Assembly.take_alternating,
    "FUNCTION": Assembly.take_prefix,
    "COUNT": Assembly.take_prefix,
    "GROUPED": Assembly.take_prefix,
    "GROUP": Assembly.take_group,
    "BROKEN_GROUP": Assembly.take_broken_group,
    "COLOURS": Assembly.take_colours,
    "COLOUR_WORD": Assembly.take_colours,
    "WORD": Assembly.take_word,
    "SHUT": Assembly.take_word,
    "measure": Assembly.take_measure,
    "LABEL": Assembly.take_label,
    "DISPOSITION": Assembly.take_mark,
    "REMARK": Assembly.take_mark,
    "SECTORS": Assembly.take_sectors,
    "PLUS": Assembly.take_joint,
    "JOIN": Assembly.take_joint,
    "LONE_BEARING": Assembly.take_bearing,
    "LONE_UNIT": Assembly.take_unit,
    "LONG_FIGURE": Assembly.take_figure,
}
_TAKE_AID: dict[str, Callable[[Aids, Part], None]] = {
    "sound": Aids.take_sound,
    "racon": Aids.take_racon,
    "AIS": Aids.take_ais,
}
