"""Whether a request was meant for a service that only this machine reaches.

A page from elsewhere can have a browser send requests here: under a name of its own that leads to
this machine, or from its own origin.  Neither is answered on a loopback address.
"""

from __future__ import annotations

import ipaddress
from urllib.parse import urlsplit

from starlette.datastructures import Headers
from starlette.types import Scope

from noticeparse.web.problems import Problem

_OWN_NAMES = frozenset({"localhost", "127.0.0.1", "::1"})


def foreign(scope: Scope) -> Problem | None:
    """Why a request on a loopback address is refused; None for one that is not."""
    server = scope.get("server")
    if not server or not _is_loopback(server[0]):
        return None
    headers = Headers(scope=scope)
    host, origin = headers.get("host", ""), headers.get("origin")
    if host and _name(f"//{host}") not in _OWN_NAMES | {server[0]}:
        return Problem("forbidden", "open it as localhost, 127.0.0.1 or [::1]")
    if scope["method"] == "POST" and origin is not None and not _is_same(origin, host):
        return Problem("forbidden", "a page of another origin may not send anything here")
    return None


def _is_loopback(host: str) -> bool:
    try:
        return ipaddress.ip_address(host).is_loopback
    except ValueError:
        return False


def _name(url: str) -> str | None:
    try:
        return urlsplit(url).hostname
    except ValueError:
        return None


def _is_same(origin: str, host: str) -> bool:
    return origin.lower() in {f"{scheme}://{host.lower()}" for scheme in ("http", "https")}
