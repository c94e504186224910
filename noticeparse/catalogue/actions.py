"""Finding codes about actions."""

from noticeparse.faults import Entry

ENTRIES = ()
