"""Reads the plain text of notices to mariners into typed chart-correction records."""

from noticeparse.api import parse

__all__ = ["parse"]
