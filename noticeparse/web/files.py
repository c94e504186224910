"""A body that is a file: its text, as `/v1/intake` answers it."""

from __future__ import annotations

import json

from noticeparse.caution import CAUTION
from noticeparse.files import intake_findings
from noticeparse.intake import Intake, NotReadable, read
from noticeparse.intake.kinds import MEDIA_TYPES
from noticeparse.web.problems import Refused

FILE_TYPES = frozenset(MEDIA_TYPES.values())
"""The media types of files that are no plain text."""


def intake_of(body: bytes, name: str | None) -> Intake:
    """The text of a file.

    Raises Refused where it cannot be read.
    """
    try:
        return read(body, name)
    except NotReadable as error:
        raise Refused("file-unreadable", str(error)) from None


def file_answer(body: bytes, name: str | None) -> bytes:
    """The text of a file, what is to be said of it, and where its lines stand, as JSON.

    Raises Refused where it cannot be read.
    """
    intake = intake_of(body, name)
    answer = {
        "caution": CAUTION,
        "name": name,
        "media_type": intake.media_type,
        "sha256": intake.sha256,
        "text": intake.text,
        "findings": [one.model_dump(mode="json") for one in intake_findings(intake)],
        "places": [one._asdict() for one in intake.places],
    }
    return (json.dumps(answer, ensure_ascii=False) + "\n").encode("utf-8", "replace")
