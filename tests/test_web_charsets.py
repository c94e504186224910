"""Bodies sent to the HTTP service: what they say of their kind and characters, true or not."""

from __future__ import annotations

import hashlib

import httpx2
import pytest

from tests.service import PLAIN, refused

SCHOOL = """\
2417/26 TAVRENNE ISLANDS.
Chart 802 [2310/26] WGS84
Insert school, Léon, 47°12'.34S., 123°45'.67W.
"""


class TestCharsets:
    """What a body says of its characters, and what it holds."""

    def post(self, client: httpx2.Client, body: bytes, kind: str) -> httpx2.Response:
        return client.post("/v1/parse", content=body, headers={"Content-Type": kind})

    @pytest.mark.parametrize(
        ("charset", "encoding"),
        [
            ("utf-8", "utf-8"), ('"UTF-8"', "utf-8"), ("utf-8", "utf-8-sig"),
            ("iso-8859-1", "latin-1"), ("windows-1252", "cp1252"), ("ISO-8859-15", "iso8859-15"),
            ("utf-16", "utf-16"),
        ],
    )  # fmt: skip
    def test_true(self, client: httpx2.Client, charset: str, encoding: str) -> None:
        body = SCHOOL.encode(encoding)
        record = self.post(client, body, f"text/plain; charset={charset}").json()
        (action,) = record["notices"][0]["charts"][0]["actions"]
        assert "Léon" in action["text"]
        assert action["geometry"]["positions"][0]["iso6709"] == "-4712.34-12345.67/"
        assert record["source"]["sha256"] == hashlib.sha256(body).hexdigest()
        is_told = "text-other-encoding" in {one["code"] for one in record["findings"]}
        assert is_told == (not encoding.startswith("utf-8"))

    def test_minute_marks_of_windows_under_the_name_of_iso(self, client: httpx2.Client) -> None:
        body = SCHOOL.replace("'", "’").encode("cp1252")
        record = self.post(client, body, "text/plain; charset=iso-8859-1").json()
        positions = record["notices"][0]["charts"][0]["actions"][0]["geometry"]["positions"]
        assert positions[0]["written"] == "47°12’.34S., 123°45’.67W."

    @pytest.mark.parametrize(
        ("charset", "encoding"),
        [
            ("utf-8", "latin-1"), ("utf-8", "utf-16"), ("us-ascii", "utf-8"),
            ("iso-8859-1", "utf-8"), ("windows-1252", "utf-8"), ("iso-8859-15", "utf-16"),
            ("utf-16", "utf-8"), ("utf-16", "utf-16-le"), ("windows-1252", "utf-8-sig"),
        ],
    )  # fmt: skip
    def test_lie(self, client: httpx2.Client, charset: str, encoding: str) -> None:
        answer = self.post(client, SCHOOL.encode(encoding), f"text/plain; charset={charset}")
        refused(answer, "charset-contradicted")

    def test_none_is_read_as_a_file(self, client: httpx2.Client) -> None:
        answer = self.post(client, SCHOOL.encode("latin-1"), "text/plain")
        assert "text-not-utf8" in {one["code"] for one in answer.json()["findings"]}
        mail = f"Content-Type: text/plain; charset=windows-1252\n\n{SCHOOL}"
        answer = self.post(client, mail.encode("cp1252"), "text/plain; format=flowed")
        assert "text-other-encoding" in {one["code"] for one in answer.json()["findings"]}

    @pytest.mark.parametrize("charset", ["utf-7", "ebcdic", "utf-16le", "x" * 500, "koi8-r"])
    def test_unknown(self, client: httpx2.Client, charset: str) -> None:
        answer = self.post(client, b"x", f"text/plain; charset={charset}")
        assert "utf-8" in refused(answer, "charset-unsupported")["detail"]
        answer = self.post(client, b"{}", f"application/json; charset={charset}")
        refused(answer, "charset-unsupported")

    @pytest.mark.parametrize(
        "body", [b"", b" \r\n", b"%PDF-1.7 \xc2", b"PK\x03\x04", b"\0" * 99, b"\x1f\x8b\x08"]
    )
    def test_no_text(self, client: httpx2.Client, body: bytes) -> None:
        answer = self.post(client, body, "text/plain")
        assert "the file is" not in refused(answer, "text-unreadable")["detail"]

    @pytest.mark.parametrize(
        "kind",
        ["text/rtf", "application/x-www-form-urlencoded", "garbage", "text/plain; charset",
         "text/plain; =", "application/jsonx", "text/plain, application/json"],
    )  # fmt: skip
    def test_other_types(self, client: httpx2.Client, kind: str) -> None:
        refused(self.post(client, b"x", kind), "media-type-unsupported")

    def test_no_type_two_types_and_compressed(self, client: httpx2.Client) -> None:
        refused(client.post("/v1/parse", content=b"x"), "media-type-unsupported")
        both = [("Content-Type", "text/plain"), ("Content-Type", "application/json")]
        refused(client.post("/v1/parse", content=b"x", headers=both), "media-type-unsupported")
        packed = {**PLAIN, "Content-Encoding": "gzip"}
        refused(client.post("/v1/parse", content=b"x", headers=packed), "media-type-unsupported")
