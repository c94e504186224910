"""Finding codes about positions."""

from noticeparse.faults import Entry

ENTRIES = ()
