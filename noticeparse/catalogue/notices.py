"""Finding codes about notices."""

from noticeparse.faults import Entry

ENTRIES = ()
