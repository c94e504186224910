"""Mail: its head, its alternatives, lines that flow, and what is attached."""

from __future__ import annotations

from email.message import EmailMessage
from email.policy import SMTP

import pytest

import noticeparse
from noticeparse.intake import kind_of, read
from noticeparse.intake.mail import unflowed
from tests.pdf_notices import NOTICE, facts, item, told
from tests.sent_notices import HEAD, WHERE, mail, word

pytestmark = pytest.mark.usefixtures("in_this_process")


class TestMail:
    """What a person reads of a message, and what is attached."""

    def test_the_head_makes_no_notice(self) -> None:
        text = f"{HEAD}Delete wreck {WHERE}\n"
        message = mail(text)
        message.replace_header("Subject", "Fwd: 2416/26 Chart 801, Delete buoy")
        found = noticeparse.read_file(message.as_bytes())
        assert facts(found) == facts(noticeparse.parse(text))
        assert [one.id for one in found.notices] == ["2417/26"]
        # What a subject may bear is told; one that says nothing is passed over.
        assert found.coverage.unread > 0
        assert noticeparse.read_file(mail(text).as_bytes()).coverage.unread == 0

    @pytest.mark.parametrize("charset", ["utf-8", "iso-8859-1", "windows-1252"])
    @pytest.mark.parametrize("transfer", ["quoted-printable", "base64"])
    def test_charsets(self, charset: str, transfer: str) -> None:
        message = mail("x")
        message.set_content("47°12'.34S., é\n", charset=charset, cte=transfer)
        assert read(message.as_bytes()).text.endswith("47°12'.34S., é\n")

    def test_the_plain_alternative_is_read_and_once(self) -> None:
        message = mail("plain words\n")
        message.add_alternative("<p>html words", subtype="html")
        text = read(message.as_bytes()).text
        assert "plain words" in text
        assert "html words" not in text

    @pytest.mark.parametrize(
        ("plain", "depth", "codes"),
        [
            ("{head}Insert depth 86m {where}", "8.6", []),
            ("{head}Insert depth 8.6m {where}", "8.6", []),
            ("see html", "8.6", ["text-hidden"]),
            ("{head}Insert depth 9m {where}", None, ["alternatives-differ"]),
            ("{head}Delete depth 86m {where}", None, ["alternatives-differ"]),
        ],
    )
    def test_html_keeps_the_small_figures(
        self, plain: str, depth: str | None, codes: list[str]
    ) -> None:
        message = mail(plain.format(head=HEAD, where=WHERE) + "\n")
        message.add_alternative(
            f"<p>{NOTICE[0]}<p>{NOTICE[1]}<p>Insert depth 8<sub>6</sub>m {WHERE}", subtype="html"
        )
        found = noticeparse.read_file(message.as_bytes())
        usable = [str(one[-3]) for one in facts(found) if one[-1]]
        shown = [str(one[-4]) for one in facts(found)]
        assert told(read(message.as_bytes())) == codes
        assert (bool(usable), shown) == (depth is not None, ["8.6"])

    def test_a_point_lost_in_html_is_told(self) -> None:
        message = mail("depth 8.6m and 1\n")
        message.add_alternative("<p>depth 86m and 1", subtype="html")
        assert told(read(message.as_bytes())) == ["alternatives-differ"]

    def test_html_alone(self) -> None:
        message = EmailMessage()
        message["Subject"] = "x"
        message.set_content("<p>depth 8<sub>6</sub> m", subtype="html")
        assert read(message.as_bytes(policy=SMTP), "a.eml").text.endswith("depth 8₆ m\n\n")

    FLOWED = [
        ("one line of two", "Insert wreck \nleast depth", "Insert wreck least depth"),
        ("a hard end", "Insert\nDelete", "Insert\nDelete"),
        ("quoted", "> Insert \n> wreck\n> Delete", "> Insert wreck\n> Delete"),
        ("another depth of quotes ends it", "> Insert \n>> wreck", "> Insert \n>> wreck"),
        ("a signature stands", "Insert \n-- \nname", "Insert \n-- \nname"),
        ("stuffed", " From here", "From here"),
    ]

    @pytest.mark.parametrize(
        ("given", "text"), [c[1:] for c in FLOWED], ids=[c[0] for c in FLOWED]
    )
    def test_flowed(self, given: str, text: str) -> None:
        assert unflowed(given) == text

    def test_flowed_words_cut_without_a_blank(self) -> None:
        assert unflowed("Insert wr \neck", deletes=True) == "Insert wreck"

    def test_attachments(self) -> None:
        message = mail("See the attachments.\n")
        message.add_attachment(f"{HEAD}Delete wreck {WHERE}\n", filename="a.txt")
        message.add_attachment(item(f"Insert buoy {WHERE}"), maintype="application",
                               subtype="octet-stream", filename="b.pdf")  # fmt: skip
        message.add_attachment("<p>8<sub>6</sub>", subtype="html", filename="c.html")
        message.add_attachment(word(), maintype="application", subtype="octet-stream",
                               filename="d.docx")  # fmt: skip
        message.add_attachment(b"\x00\x01" * 99, maintype="image", subtype="png", filename="e.png")
        message.add_attachment(mail("inner words\n"))
        intake = read(message.as_bytes())
        words = ["See the", "Delete wreck", "Insert buoy", "8₆", "Delete depth 8₆", "inner words"]
        places = [intake.text.index(one) for one in words]
        assert places == sorted(places)
        (doubt,) = [one for one in intake.doubts if one.code == "attachment-not-read"]
        assert doubt.values["name"] == "e.png"
        assert intake.places == ()
        assert len(facts(noticeparse.read_file(message.as_bytes()))) == 3

    def test_a_pasted_mail_stays_plain_text(self) -> None:
        pasted = f"From: x\nSubject: y\nDate: 1 July 2026\n\n{HEAD}"
        assert kind_of(pasted.encode()) is None
        assert kind_of(pasted.encode(), "a.eml") == "mail"
        assert read(pasted.encode()).text == pasted
