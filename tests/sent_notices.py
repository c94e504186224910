"""A notice as it is sent: in a mail, or as a Word file."""

from __future__ import annotations

import io
from email.message import EmailMessage
from typing import Any

import docx

from tests.pdf_notices import NOTICE

HEAD = "\n".join(NOTICE) + "\n"
WHERE = "47°13'.05S., 123°44'.20W."


def mail(text: str, **head: str) -> EmailMessage:
    message = EmailMessage()
    message["Subject"], message["From"] = "Notices", "a@example.org"
    message["Date"] = "Wed, 01 Jul 2026 10:00:00 +0000"
    for name, value in head.items():
        message[name] = value
    message.set_content(text)
    return message


def word(paint: Any = None) -> bytes:
    document_ = docx.Document()
    if paint is None:
        for line in NOTICE:
            document_.add_paragraph(line)
        one = document_.add_paragraph("Delete depth 8")
        one.add_run("6").font.subscript = True
        one.add_run(f" {WHERE}")
    else:
        paint(document_)
    made = io.BytesIO()
    document_.save(made)
    return made.getvalue()
