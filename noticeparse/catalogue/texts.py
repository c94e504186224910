"""Finding codes about texts."""

from noticeparse.faults import Entry

ENTRIES = ()
