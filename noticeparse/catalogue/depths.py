"""Finding codes about depths."""

from noticeparse.faults import Entry

ENTRIES = ()
