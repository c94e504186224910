"""The canonical layout: a notice written from its record alone, so that it reads back the same.

The design is the project's own: one action a line, each with its verb, its letter and its
positions in one column; every position in the unit and with the digits that its `iso6709` holds,
every depth with its unit.
"""

from noticeparse.canonical.notices import Refused, Written, written_notice

__all__ = ["Refused", "Written", "written_notice"]
