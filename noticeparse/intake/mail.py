"""Mail (RFC 5322, MIME): what a person reads of a message, its attachments behind it.

Of alternatives the HTML is read, which keeps small figures, where it holds any figure at all, and
what the plain one says otherwise is told.  Lines that were wrapped for the way are joined again
(format=flowed, RFC 3676).  What is attached is read by its kind, or told of.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from email import policy
from email.message import EmailMessage, MIMEPart
from email.parser import BytesParser

from noticeparse.faults import Fault
from noticeparse.intake.alternatives import differences
from noticeparse.intake.apart import require
from noticeparse.intake.composing import Composed, Composer
from noticeparse.intake.html import decoded, read_elements
from noticeparse.intake.kinds import HEAD, kind_of
from noticeparse.intake.plain import decode
from noticeparse.intake.records import NotReadable

MOST_PARTS = 200
_DEEPEST = 8
_HEADS = ("From", "To", "Date", "Subject")
_LONGEST_HEAD = 400
_QUOTES = re.compile(r">{0,200}")
_SIGNATURE = "-- "


def read_mail(data: bytes, deep: int = 0) -> Composed:
    """The text of a message.

    Raises NotReadable.
    """
    message = BytesParser(policy=policy.default.clone(max_line_length=None)).parsebytes(data)
    composer = Composer()
    _add_message(composer, message, [MOST_PARTS], deep)
    composer.end_line()
    return composer.made()


def _add_message(composer: Composer, message: EmailMessage, left: list[int], deep: int) -> None:
    _add_heads(composer, message)
    body = message.get_body(("plain", "html"))
    html = message.get_body(("html",))
    chosen = {id(body)} if body is not None else set()
    if body is not None:
        left[0] -= 1
        if html is not None and html is not body and _are_alternatives(message, body, html):
            chosen.add(id(html))
            _add_alternatives(composer, body, html)
        else:
            composer.take(_body(body))
    for part in _others(message, chosen, left):
        _add_attachment(composer, part, left, deep)


def _add_heads(composer: Composer, message: EmailMessage) -> None:
    """The lines of the head that a mail program shows, which the layout knows as such."""
    is_any = False
    for name in _HEADS:
        try:
            value = " ".join(str(message.get(name, "")).split())
        except (ValueError, LookupError, AttributeError, IndexError):
            value = ""
        if value:
            composer.add(f"{name}: {value[:_LONGEST_HEAD]}\n")
            is_any = True
    if is_any:
        composer.end_paragraph()


def _others(message: EmailMessage, chosen: set[int], left: list[int]) -> Iterator[EmailMessage]:
    """The parts of a message but for its body and the alternatives to that."""
    if message.get_content_type() == "message/rfc822":
        yield message
        return
    if not message.is_multipart():
        if not chosen:
            yield message
        return
    stack: list[tuple[EmailMessage, bool]] = [(message, False)]
    while stack:
        part, is_alternative = stack.pop()
        if id(part) in chosen:
            continue
        if part.is_multipart() and part.get_content_type() != "message/rfc822":
            inner = list(part.iter_parts())
            holds = any(id(one) in chosen for one in part.walk())
            is_one_of = part.get_content_type() == "multipart/alternative" and holds
            stack += [(one, is_one_of) for one in reversed(inner)]
            continue
        if is_alternative and part.get_content_maintype() == "text":
            continue
        left[0] -= 1
        if left[0] < 0:
            raise NotReadable(f"holds more than {MOST_PARTS} parts; take the mail apart first")
        yield part


def _are_alternatives(message: EmailMessage, one: MIMEPart, other: MIMEPart) -> bool:
    """Whether two parts say the same thing in two forms."""
    wanted = {id(one), id(other)}
    return any(
        part.get_content_type() == "multipart/alternative"
        and wanted <= {id(inner) for inner in part.walk()}
        for part in message.walk()
    )


def _add_alternatives(composer: Composer, plain: MIMEPart, html: MIMEPart) -> None:
    other = _body(plain)
    try:
        shown = _body(html)
    except NotReadable as error:
        composer.take(other)
        at = composer.length
        composer.doubt("attachment-not-read", at, at, name="text/html", why=str(error))
        return
    if not any(char.isdigit() for char in shown.text):
        composer.take(other)
        return
    composer.take(shown._replace(doubts=(*shown.doubts, *differences(shown.text, other.text))))


def _body(part: MIMEPart) -> Composed:
    data = part.get_payload(decode=True) or b""
    assert isinstance(data, bytes)
    charset = part.get_content_charset()
    text, is_lossy = decoded(data, charset)
    if part.get_content_type() == "text/html":
        require("html")
        return read_elements(text, is_lossy=is_lossy)
    text = text.replace("\r\n", "\n")
    if str(part.get_param("format", "")).lower() == "flowed":
        text = unflowed(text, deletes=str(part.get_param("delsp", "")).lower() == "yes")
    if not is_lossy:
        return Composed(text)
    at = max(text.find("\ufffd"), 0)
    values = {"encoding": (charset or "utf-8").upper(), "offset": str(at)}
    return Composed(text, (Fault("text-not-utf8", at, at + 1, values),))


def unflowed(text: str, *, deletes: bool = False) -> str:
    """The text with the lines that were wrapped for the way whole again (RFC 3676, 4)."""
    found: list[str] = []
    open_depth = -1
    for given in text.split("\n"):
        quotes = _QUOTES.match(given)
        depth = quotes.end() if quotes else 0
        line = given[depth:]
        line = line[1:] if line.startswith(" ") else line
        is_signature = line == _SIGNATURE
        if open_depth == depth and not is_signature:
            found[-1] += line
        else:
            found.append(f"{'>' * depth} {line}" if depth else line)
        goes_on = line.endswith(" ") and not is_signature
        if goes_on and deletes:
            found[-1] = found[-1][:-1]
        open_depth = depth if goes_on else -1
    return "\n".join(found)


def _add_attachment(composer: Composer, part: EmailMessage, left: list[int], deep: int) -> None:
    name = " ".join(str(part.get_filename() or part.get_content_type()).split())[:100]
    try:
        found = _attached(part, name, left, deep)
    except NotReadable as error:
        composer.end_paragraph()
        at = composer.length
        composer.doubt("attachment-not-read", at, at, name=name, why=str(error))
        return
    except (LookupError, ValueError, RecursionError) as error:
        at = composer.length
        why = f"it is damaged ({type(error).__name__})"
        composer.doubt("attachment-not-read", at, at, name=name, why=why)
        return
    composer.end_paragraph()
    composer.take(found)


def _attached(part: EmailMessage, name: str, left: list[int], deep: int) -> Composed:
    if deep >= _DEEPEST:
        raise NotReadable("messages are nested too deep")
    if part.get_content_type() == "message/rfc822":
        inner = part.get_payload(0)
        composer = Composer()
        assert isinstance(inner, EmailMessage)
        _add_message(composer, inner, left, deep + 1)
        return composer.made()
    data = part.get_payload(decode=True)
    if not isinstance(data, bytes) or not data.strip():
        raise NotReadable("it is empty")
    kind = kind_of(data[:HEAD], name)
    if kind is not None:
        require(kind)
    if kind == "html" or part.get_content_type() == "text/html":
        require("html")
        text, is_lossy = decoded(data, part.get_content_charset())
        return read_elements(text, is_lossy=is_lossy)
    if kind == "pdf":
        from noticeparse.intake.pdf import read_pdf

        return read_pdf(data)
    if kind == "docx":
        from noticeparse.intake.docx import read_docx

        return read_docx(data)
    if kind == "mail":
        return read_mail(data, deep + 1)
    if part.get_content_maintype() not in ("text", "application"):
        raise NotReadable(f"it is {part.get_content_type()}, which is no text")
    if part.get_content_charset():
        text, is_lossy = decoded(data, part.get_content_charset())
        if not is_lossy:
            data = text.encode()
    read = decode(data, name)
    faults = tuple(one._replace(start=0, end=0) for one in read.faults)
    return Composed(read.text.replace("\r\n", "\n"), faults)
