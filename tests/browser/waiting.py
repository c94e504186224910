"""Waiting for a page that may be slower than its test."""

from __future__ import annotations

import time
from collections.abc import Callable
from typing import TYPE_CHECKING, TypeVar

if TYPE_CHECKING:
    from playwright.sync_api import Page

Seen = TypeVar("Seen")

PATIENCE = 30_000
"""Milliseconds that a page on a busy machine is waited for."""


def eventually(
    page: Page, look: Callable[[Page], Seen], wanted: Seen | Callable[[Seen], bool]
) -> None:
    """Wait until what is looked at is as wanted: equal to it, or such that it holds of it."""
    end = time.monotonic() + PATIENCE / 1000

    def is_so(found: Seen) -> bool:
        return bool(wanted(found)) if callable(wanted) else found == wanted

    while not is_so(found := look(page)) and time.monotonic() < end:
        page.wait_for_timeout(20)
    if callable(wanted):
        assert wanted(found), found
    else:
        assert found == wanted
