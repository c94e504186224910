"""Finding codes about features."""

from noticeparse.faults import Entry

ENTRIES = ()
