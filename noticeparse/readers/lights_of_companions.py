"""Gives a light to what carries it: in `wreck marked by light-buoy Fl.R.4s` the buoy, no wreck.

In come the segments of a phrase, out come the same with such lights among the words of their
companions.  What is named first keeps the light where it is a mark or a light itself.
"""

from __future__ import annotations

from collections.abc import Sequence

from lark import Token

from noticeparse.readers.phrases import LIGHTS, CompanionRun, Segment
from noticeparse.readers.words import look_up
from noticeparse.vocabulary import kinds

_ROLES = ("on", "beside")
_CARRYING = ("LIGHTS", "LITVES", "LITFLT")


def with_lights_settled(segments: Sequence[Segment]) -> list[Segment]:
    """The segments, each light behind a companion with the one of the two that carries it."""
    settled: list[Segment] = []
    own: tuple[Token, ...] = ()
    for segment in segments:
        above = _waiting(settled, segment)
        if above is not None and own and not _carries(own):
            # `wreck marked by light-buoy, Fl.R.4s`
            settled[-1] = above
            continue
        settled.append(_settled(segment, own))
        own += settled[-1].pieces
    return settled


def _waiting(settled: Sequence[Segment], segment: Segment) -> Segment | None:
    """The segment above with the lights of this one, where its last words carry them."""
    opens = bool(segment.pieces) and segment.pieces[0].type in LIGHTS
    if not opens or segment.companions or not settled or not settled[-1].companions:
        return None
    above = settled[-1]
    last = above.companions[-1]
    if last.role not in _ROLES or last.lights or not _carries(last.pieces):
        return None
    last = last._replace(pieces=last.pieces + segment.pieces, lights=segment.pieces)
    return above._replace(companions=(*above.companions[:-1], last))


def _settled(segment: Segment, own: tuple[Token, ...]) -> Segment:
    pieces, companions = segment.pieces, list(segment.companions)
    for at, one in enumerate(companions):
        if not one.lights or one.role not in _ROLES:
            continue
        # Tokens of the same letters are equal, wherever they stand.
        places = {token.start_pos for token in one.lights}
        rest = tuple(token for token in pieces if token.start_pos not in places)
        has_name = bool(own + rest) and not _carries(own + rest)
        if has_name and (_carries(one.pieces) or _are_marks(one)):
            pieces = rest
            companions[at] = one._replace(pieces=one.pieces + one.lights)
    return Segment(pieces, tuple(companions))


def _are_marks(companion: CompanionRun) -> bool:
    """Whether the mark stands behind its light: `marked by Fl.Y.3s light-buoys`."""
    if companion.pieces:
        return False
    items = look_up(companion.lights)
    return any(item.role == "kind" and bool(kinds()[item.value].form) for item in items)


def _carries(tokens: Sequence[Token]) -> bool:
    """Whether words name a mark or a light, or hold the character of one."""
    items = look_up(tokens)
    named = (kinds()[item.value] for item in items if item.role == "kind")
    has_light = any(item.role in ("light", "light_words") for item in items)
    return has_light or any(one.form or one.s57 in _CARRYING for one in named)
