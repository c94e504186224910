"""Reads the plain text of notices to mariners into typed chart-correction records.

An aid to a qualified officer only: the issuing authority's notice governs, and every position is
checked against it before use.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from noticeparse.version import VERSION as __version__

if TYPE_CHECKING:
    from noticeparse.api import (
        find_positions,
        iter_notices,
        parse,
        parse_depth,
        parse_light,
        parse_position,
        read_chart_list,
        read_file,
        render,
    )
    from noticeparse.errors import NoticeParseError
    from noticeparse.intake import NotReadable

__all__ = [
    "NotReadable",
    "NoticeParseError",
    "__version__",
    "find_positions",
    "iter_notices",
    "parse",
    "parse_depth",
    "parse_light",
    "parse_position",
    "read_chart_list",
    "read_file",
    "render",
]


def __getattr__(name: str) -> Any:
    """Import on first use, so that `--version` and `--help` answer at once."""
    if name == "NoticeParseError":
        from noticeparse.errors import NoticeParseError

        return NoticeParseError
    if name == "NotReadable":
        from noticeparse.intake import NotReadable

        return NotReadable
    if name in __all__:
        from noticeparse import api

        return getattr(api, name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
