"""The body of a request: what it says it is, and its bytes, counted as they come.

The length that a client states is believed only where it is too large.
"""

from __future__ import annotations

import re
from collections.abc import Collection
from typing import NamedTuple

from anyio import move_on_after
from starlette.requests import Request

from noticeparse.web.charsets import CHARSETS
from noticeparse.web.problems import Refused
from noticeparse.web.room import Place
from noticeparse.web.settings import ServiceSettings

_TYPE = re.compile(r"[ \t]*([A-Za-z]+/[A-Za-z0-9.+-]+)[ \t]*((?:;.*)?)")
_PARAMETER = re.compile(r';[ \t]*([A-Za-z0-9-]+)=("[^"\\;]*"|[^\s";]+)[ \t]*')

_TELL = "say `Content-Type: text/plain` or `application/json`"
_JSON, _PLAIN = "application/json", "text/plain"


class Kind(NamedTuple):
    """What a body says it is."""

    is_json: bool
    charset: str | None
    is_file: bool = False
    """Whether it is a file of another kind than text."""


def require_uncompressed(request: Request) -> None:
    """Raise Refused where the body of a request is compressed."""
    coding = request.headers.get("content-encoding", "identity").strip().lower()
    if coding != "identity":
        raise Refused("media-type-unsupported", "send the body as it is, not compressed")


def kind_of(request: Request, files: Collection[str] = ()) -> Kind:
    """What the body of a request says it is; `files` are the media types of files that are read.

    Raises Refused where that is not read.
    """
    require_uncompressed(request)
    stated = request.headers.getlist("content-type")
    if len(stated) != 1:
        what = "no type is stated" if not stated else "more than one type is stated"
        raise Refused("media-type-unsupported", f"{what}; {_TELL}")
    match = _TYPE.fullmatch(stated[0])
    media_type = match[1].lower() if match else ""
    if match is not None and media_type in files:
        if _charset(match[2]) not in (None, "utf-8", "utf8", "us-ascii"):
            words = "say the charset of such a file in the file itself, or send UTF-8"
            raise Refused("charset-unsupported", words)
        return Kind(False, None, is_file=True)
    if match is None or media_type not in (_PLAIN, _JSON):
        raise Refused("media-type-unsupported", _TELL)
    charset = _charset(match[2])
    if media_type == _JSON and charset not in (None, "utf-8", "utf8", "us-ascii"):
        raise Refused("charset-unsupported", "JSON is UTF-8 (RFC 8259, 8.1)")
    return Kind(media_type == _JSON, charset)


def _charset(parameters: str) -> str | None:
    found = _PARAMETER.findall(parameters)
    if _PARAMETER.sub("", parameters).strip(" \t;"):
        raise Refused("media-type-unsupported", f"its parameters cannot be read; {_TELL}")
    charsets = [value.strip('"').lower() for name, value in found if name.lower() == "charset"]
    if len(charsets) > 1:
        raise Refused("charset-unsupported", "more than one charset is stated")
    if charsets and charsets[0] not in CHARSETS:
        known = ", ".join(name for name in CHARSETS if name != "utf8")
        raise Refused("charset-unsupported", f"these are read: {known}; best send UTF-8")
    return charsets[0] if charsets else None


async def read_body(request: Request, place: Place, settings: ServiceSettings) -> bytes:
    """The bytes of a body, which hold their room in `place`.

    Raises Refused where they are too many or come too slowly, ClientDisconnect where they end.
    """
    stated = request.headers.get("content-length", "0")
    if stated.isascii() and stated.isdigit() and _is_more(stated, settings.max_body):
        raise _too_large(settings)
    body = bytearray()
    with move_on_after(settings.arrive_seconds) as waiting:
        async for chunk in request.stream():
            if len(body) + len(chunk) > settings.max_body:
                raise _too_large(settings)
            place.hold(len(chunk))
            body += chunk
    if waiting.cancelled_caught:
        words = f"the whole body must arrive within {settings.arrive_seconds:g} seconds"
        raise Refused("body-too-slow", words)
    return bytes(body)


def _is_more(figures: str, most: int) -> bool:
    figures = figures.lstrip("0")
    return len(figures) > len(str(most)) or int(figures or "0") > most


def _too_large(settings: ServiceSettings) -> Refused:
    words = f"at most {settings.max_body} bytes; send the notices in parts"
    return Refused("body-too-large", words)
