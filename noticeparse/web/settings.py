"""What a service allows, and the token it may ask for."""

from __future__ import annotations

import os
from typing import NamedTuple

TOKEN_VARIABLE = "NOTICEPARSE_TOKEN"
MEBIBYTE = 1024 * 1024

LARGE = 128 * 1024
"""Bytes of a body that takes a good part of a second; below, nothing waits for its like."""
ANSWER_TO_BODY = 10
"""Bytes of an answer for one of a body, at most, in ordinary bulletins."""


class ServiceSettings(NamedTuple):
    """The limits of a service; every one of them has a problem that says it was met."""

    token: str | None = None
    """What a request for `/v1/` must carry as its bearer token."""
    max_body: int = 8 * MEBIBYTE
    """Bytes of one body."""
    max_held: int = 512 * MEBIBYTE
    """Bytes held at one time, beyond which no more large bodies are taken in."""
    read_seconds: float = 180.0
    """For the reading of one text; 8 MiB take about a quarter of it on a slow machine."""
    head_seconds: float = 15.0
    """For the head of a request to arrive."""
    arrive_seconds: float = 30.0
    """For the whole of a body to arrive."""
    wait_seconds: float = 60.0
    """For a worker to be free."""
    send_seconds: float = 60.0
    """For a client to take in the next piece of its answer; for all of it, more by its length."""
    workers: int = max(2, os.cpu_count() or 2)
    """Processes that read; at least two, since one is kept free of large bodies."""
    places: int = 64
    """Requests under way at one time."""
    places_of_one: int = 48
    """Requests under way from one address, so that nobody takes all the places."""
    connections: int = 200
    """Connections open at one time, below the count of files that systems allow by default."""
    connections_of_one: int = 150
    """Connections open from one address."""


class BadToken(ValueError):
    """The token in the environment cannot be used; the words say why."""


def token_of_environment() -> str | None:
    """The token that requests must carry, or None where none is set.

    Raises BadToken for one that is empty or cannot stand in a header (RFC 6750, 2.1).
    """
    token = os.environ.get(TOKEN_VARIABLE)
    if token is None:
        return None
    if not token:
        raise BadToken(f"{TOKEN_VARIABLE} is empty; give it a value or take it away")
    if not all("!" <= one <= "~" for one in token):
        raise BadToken(f"{TOKEN_VARIABLE} may hold visible ASCII characters only, and no space")
    return token
