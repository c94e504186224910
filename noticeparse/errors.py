"""The one exception of the package."""

from __future__ import annotations

from noticeparse.records.finding import Finding


class NoticeParseError(ValueError):
    """A value that cannot be read for certain; `finding` says what is wrong and what to do."""

    def __init__(self, finding: Finding) -> None:
        super().__init__(finding.message)
        self.finding = finding
