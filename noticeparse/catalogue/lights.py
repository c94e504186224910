"""Finding codes about lights."""

from noticeparse.faults import Entry

ENTRIES = ()
