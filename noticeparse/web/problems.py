"""Problem details (RFC 9457): every answer that is no success, and the table of their kinds.

Nothing of the server framework is imported here, since workers tell of problems too.
"""

from __future__ import annotations

import json
from typing import NamedTuple

MEDIA_TYPE = "application/problem+json"
_PREFIX = "urn:noticeparse:problem:"

KINDS: dict[str, tuple[int, str]] = {
    "bad-request": (400, "The request is not well formed"),
    "malformed-json": (400, "The body is not well-formed JSON"),
    "unauthorized": (401, "A token is needed"),
    "forbidden": (403, "The request is not for this service"),
    "not-found": (404, "There is nothing under this path"),
    "chart-not-touched": (404, "No notice touches the chart"),
    "chart-not-plotted": (404, "The chart cannot be plotted"),
    "method-not-allowed": (405, "The path does not answer to this method"),
    "head-too-slow": (408, "The head of the request did not arrive in time"),
    "body-too-slow": (408, "The body did not arrive in time"),
    "body-too-large": (413, "The body is too large"),
    "media-type-unsupported": (415, "The body is of a type that is not read"),
    "charset-unsupported": (415, "The charset is not read"),
    "charset-contradicted": (422, "The body is not in the charset it states"),
    "file-unreadable": (422, "The file cannot be turned into text"),
    "text-unreadable": (422, "The body is not a text that can be read"),
    "request-invalid": (422, "The request does not say what it should"),
    "chart-list-unusable": (422, "The chart list cannot be used as it stands"),
    "too-many-requests": (429, "Too many requests at one time"),
    "internal": (500, "The program failed"),
    "reader-lost": (500, "The reading process ended unexpectedly"),
    "package-missing": (501, "The service lacks a package for it"),
    "busy": (503, "The service is busy"),
    "took-too-long": (503, "Reading took too long"),
}
"""Status and title by the kind, which is the end of the problem's `type`."""

STATUS_KINDS = {400: "bad-request", 404: "not-found", 405: "method-not-allowed"}
"""What the server framework itself may answer."""


class Detail(NamedTuple):
    """One of several things that are wrong, and where in the request: a JSON Pointer or a name."""

    pointer: str
    detail: str


class Problem(NamedTuple):
    """Why a request has no success, and what to do about it."""

    kind: str
    detail: str
    errors: tuple[Detail, ...] = ()
    headers: tuple[tuple[str, str], ...] = ()

    @property
    def status(self) -> int:
        """The HTTP status of its kind."""
        return KINDS[self.kind][0]

    def body(self) -> bytes:
        """The problem as JSON."""
        status, title = KINDS[self.kind]
        members: dict[str, object] = {
            "type": _PREFIX + self.kind,
            "title": title,
            "status": status,
            "detail": self.detail,
        }
        if self.errors:
            members["errors"] = [one._asdict() for one in self.errors]
        return json.dumps(members, ensure_ascii=False).encode("utf-8", "replace")


class Refused(Exception):
    """A request that ends with a problem."""

    def __init__(self, kind: str, detail: str, errors: tuple[Detail, ...] = ()) -> None:
        super().__init__(kind)
        self.problem = Problem(kind, detail, errors)


def try_again(kind: str, detail: str) -> Refused:
    """A refusal that a later try may not meet; `Retry-After` says when."""
    refused = Refused(kind, detail)
    refused.problem = refused.problem._replace(headers=(("Retry-After", "2"),))
    return refused


def problem_schema() -> dict[str, object]:
    """The JSON Schema of a problem."""
    error = {
        "type": "object",
        "required": ["pointer", "detail"],
        "properties": {"pointer": {"type": "string"}, "detail": {"type": "string"}},
    }
    return {
        "type": "object",
        "description": "Problem details, RFC 9457.",
        "required": ["type", "title", "status", "detail"],
        "properties": {
            "type": {"type": "string", "enum": [_PREFIX + kind for kind in KINDS]},
            "title": {"type": "string"},
            "status": {"type": "integer"},
            "detail": {"type": "string", "description": "what is wrong and what to do"},
            "errors": {
                "type": "array",
                "description": "the places in the request, where there are several or one is told",
                "items": error,
            },
        },
    }
