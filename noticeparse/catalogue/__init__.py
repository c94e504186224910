"""The catalogue of finding codes: one entry per code, and nothing else.

A finding is made from a code, a span and the values its message names.  Codes are stable: they may
be retired, never reused.
"""

from __future__ import annotations

from noticeparse.catalogue import (
    actions,
    changes,
    chart_lists,
    clearances,
    depths,
    editions,
    features,
    files,
    geometry,
    lights,
    limits,
    marks,
    measures,
    moves,
    notices,
    panels,
    positions,
    rhythms,
    sectors,
    sheets,
    tables,
    texts,
    turns,
    verbs,
    years,
)
from noticeparse.faults import Entry

_SUBJECTS = (
    actions, changes, chart_lists, clearances, depths, editions, features, files, geometry,
    lights, limits, marks, measures, moves, notices, panels, positions, rhythms, sectors, sheets,
    tables, texts, turns, verbs, years,
)  # fmt: skip

ENTRIES: dict[str, Entry] = {entry.code: entry for module in _SUBJECTS for entry in module.ENTRIES}
"""Every code of the catalogue, in alphabetical order of the subject modules."""
