"""The HTTP service: what each path answers, and what it says to a request that is not right."""

from __future__ import annotations

import hashlib
import json
from datetime import date
from typing import Any

import httpx2
import pytest

import noticeparse
from noticeparse.catalogue import ENTRIES
from noticeparse.caution import CAUTION
from noticeparse.schema import bulletin_schema
from noticeparse.web.guard import POLICY
from noticeparse.web.work import MEDIA_TYPES
from noticeparse.writers import FORMATS, new_writer, write
from tests.command import BAD, GOOD, POSITION
from tests.documents import ROOT
from tests.service import PLAIN, refused

DEMO = (ROOT / "corpus_synthetic" / "demo.txt").read_text("utf-8")
CHARTS = (ROOT / "corpus_synthetic" / "charts.csv").read_text("utf-8")
SCHOOL = """\
2417/26 TAVRENNE ISLANDS.
Chart 802 [2310/26] WGS84
Insert school, Léon, 47°12'.34S., 123°45'.67W.
"""


class TestParse:
    """Reading notices."""

    def test_text(self, client: httpx2.Client) -> None:
        answer = client.post("/v1/parse", content=DEMO, headers=PLAIN, params={"name": "demo"})
        assert answer.status_code == 200
        assert answer.headers["content-type"] == "application/json"
        assert answer.text == noticeparse.parse(DEMO, name="demo").model_dump_json() + "\n"

    def test_json(self, client: httpx2.Client) -> None:
        given = {"text": DEMO, "name": "demo", "region": "B", "as_of": "2027-01-01"}
        answer = client.post("/v1/parse", json=given)
        expected = noticeparse.parse(DEMO, name="demo", region="B", as_of=date(2027, 1, 1))
        assert answer.text == expected.model_dump_json() + "\n"
        assert client.post("/v1/parse", json={"text": DEMO}).text != answer.text

    def test_every_format_has_its_media_type(self, client: httpx2.Client) -> None:
        for form in FORMATS:
            query = {"format": form}
            answer = client.post("/v1/parse", content=GOOD, headers=PLAIN, params=query)
            assert answer.headers["content-type"] == MEDIA_TYPES[form]
            assert answer.text
            assert client.post("/v1/parse", json={"text": GOOD, **query}).text

    def test_lines(self, client: httpx2.Client) -> None:
        answer = client.post("/v1/parse?format=jsonl", content=DEMO, headers=PLAIN)
        assert answer.text == "".join(write(new_writer("jsonl"), [noticeparse.parse(DEMO)]))

    def test_findings_are_no_failure(self, client: httpx2.Client) -> None:
        record = client.post("/v1/parse", content=BAD, headers=PLAIN).json()
        assert [one["code"] for one in record["findings"]] == ["position-minutes-out-of-range"]
        assert record["notices"][0]["charts"][0]["actions"][0]["usable"] is False

    def test_option_in_the_body_holds(self, client: httpx2.Client) -> None:
        given = {"text": GOOD, "name": "of the body"}
        record = client.post("/v1/parse?name=of+the+query", json=given).json()
        assert record["source"]["name"] == "of the body"
        record = client.post("/v1/parse?name=of+the+query", json={"text": GOOD}).json()
        assert record["source"]["name"] == "of the query"

    def test_chart_list(self, client: httpx2.Client) -> None:
        record = client.post("/v1/parse", json={"text": DEMO, "charts": CHARTS}).json()
        charts = noticeparse.read_chart_list(ROOT / "corpus_synthetic" / "charts.csv")
        assert record == json.loads(noticeparse.parse(DEMO, charts=charts).model_dump_json())
        action = record["notices"][0]["charts"][0]["actions"][0]
        assert action["sheet"]["positions"]

    @pytest.mark.parametrize(
        ("charts", "words"),
        [
            ("", "chart-list-unreadable"),
            ("number,scale\n802,75000\n", "chart-list-column-missing"),
            (CHARTS.replace("75000", "no scale"), "chart-list-value-unread"),
        ],
    )
    def test_chart_list_that_cannot_be_used(
        self, client: httpx2.Client, charts: str, words: str
    ) -> None:
        answer = client.post("/v1/parse", json={"text": DEMO, "charts": charts})
        errors = refused(answer, "chart-list-unusable")["errors"]
        assert errors[0]["pointer"] == "/charts"
        assert words in errors[0]["detail"]

    def test_chart_list_alone(self, client: httpx2.Client) -> None:
        answer = client.post("/v1/chart-list", content=CHARTS.encode(), headers=PLAIN)
        record = noticeparse.read_chart_list(ROOT / "corpus_synthetic" / "charts.csv")
        assert answer.json()["charts"] == json.loads(record.model_dump_json())["charts"]
        bad = CHARTS.replace("75000", "no scale").encode()
        refused(client.post("/v1/chart-list", content=bad, headers=PLAIN), "chart-list-unusable")
        given = client.post("/v1/chart-list", json={"charts": CHARTS})
        refused(given, "media-type-unsupported")

    def test_half_a_character(self, client: httpx2.Client) -> None:
        body = json.dumps({"text": GOOD + "\ud83d"})
        answer = client.post(
            "/v1/parse", content=body, headers={"Content-Type": "application/json"}
        )
        assert answer.text == noticeparse.parse(GOOD + "\ud83d").model_dump_json() + "\n"
        assert "text-surrogate" in answer.text

    def test_nul_characters(self, client: httpx2.Client) -> None:
        text = GOOD.replace("45'.67", "45'.6\0007")
        expected = noticeparse.parse(text).model_dump_json() + "\n"
        assert client.post("/v1/parse", json={"text": text}).text == expected
        assert client.post("/v1/parse", content=text.encode(), headers=PLAIN).text == expected
        assert "text-control-character" in expected


class TestValues:
    """Reading single values."""

    @pytest.mark.parametrize(
        ("path", "text", "wrong", "read"),
        [
            ("/v1/positions", POSITION, "47°12'.34", noticeparse.parse_position),
            ("/v1/lights", "Fl(3)WRG.15s21m15-11M", "Fl(", noticeparse.parse_light),
            ("/v1/depths", "3fm 2ft", "8..6m", noticeparse.parse_depth),
        ],
    )
    def test_each(
        self, client: httpx2.Client, path: str, text: str, wrong: str, read: Any
    ) -> None:
        expected = json.loads(read(text).model_dump_json())
        with pytest.raises(noticeparse.NoticeParseError) as caught:
            read(wrong)
        refusal = {"error": caught.value.finding.model_dump(mode="json"), "text": wrong}
        whole = {"caution": CAUTION, "results": [expected, refusal]}
        assert client.post(path, json={"texts": [text, wrong]}).json() == whole
        lines = f"{text}\r\n\n{wrong}"
        results = client.post(path, content=lines, headers=PLAIN).json()["results"]
        assert results[0]["written"] == expected["written"]
        assert results[1]["error"]["code"] == caught.value.finding.code
        assert client.post(path, json={"text": text}).json()["results"] == [expected]

    def test_blank_text_keeps_its_place(self, client: httpx2.Client) -> None:
        results = client.post("/v1/depths", json={"texts": ["", "8m"]}).json()["results"]
        assert "error" in results[0]
        assert results[1]["value_m"] == 8

    def test_half_a_character(self, client: httpx2.Client) -> None:
        answer = client.post(
            "/v1/depths",
            content=r'{"text": "8\ud800m"}',
            headers={"Content-Type": "application/json"},
        )
        assert answer.json()["results"][0]["text"] == "8\ufffdm"

    @pytest.mark.parametrize(
        "given", [{}, {"texts": []}, {"text": "8m", "texts": ["8m"]}, {"texts": "8m"},
        {"texts": [8]}, {"text": None}, {"texts": ["8m"] * 1001}, {"text": "8" * 2001},
        {"text": "8m", "unit": "ft"}, ["8m"], "8m", 8],
        ids=lambda given: repr(given)[:30],
    )  # fmt: skip
    def test_wrong_body(self, client: httpx2.Client, given: object) -> None:
        refused(client.post("/v1/depths", json=given), "request-invalid")

    def test_too_many_lines(self, client: httpx2.Client) -> None:
        for body in ("8m\n" * 1001, "8" * 2001, "?"):
            path = "/v1/depths?unit=ft" if body == "?" else "/v1/depths"
            refused(client.post(path, content=body, headers=PLAIN), "request-invalid")

    def test_body_that_is_not_utf8(self, client: httpx2.Client) -> None:
        body = POSITION.encode("latin-1")
        refused(client.post("/v1/positions", content=body, headers=PLAIN), "text-unreadable")


class TestTables:
    """What the service tells of itself."""

    def test_schema(self, client: httpx2.Client) -> None:
        answer = client.get("/v1/schema")
        assert answer.headers["content-type"] == "application/schema+json"
        assert answer.json() == json.loads(json.dumps(bulletin_schema()))

    def test_findings(self, client: httpx2.Client) -> None:
        told = client.get("/v1/findings").json()
        assert told["caution"] == CAUTION
        assert [one["code"] for one in told["findings"]] == sorted(ENTRIES)
        assert told["findings"][0]["hint"]

    def test_health(self, client: httpx2.Client) -> None:
        told = client.get("/healthz").json()
        assert told == {"status": "ok", "version": noticeparse.__version__}
        for path in ("/healthz", "/v1/schema", "/v1/findings", "/openapi.json"):
            answer = client.head(path)
            assert (answer.status_code, answer.content) == (200, b"")

    def test_document(self, client: httpx2.Client) -> None:
        document = client.get("/openapi.json").json()
        assert set(document["paths"]) == {
            "/v1/parse", "/v1/positions", "/v1/position-forms", "/v1/lights", "/v1/depths",
            "/v1/sheet", "/v1/intake", "/v1/chart-list", "/v1/schema", "/v1/findings", "/healthz",
        }  # fmt: skip
        assert CAUTION in document["info"]["description"]
        for operations in document["paths"].values():
            for operation in operations.values():
                assert operation["summary"]

    def test_examples_of_the_document_are_read(self, client: httpx2.Client) -> None:
        document = client.get("/openapi.json").json()
        for path, operations in document["paths"].items():
            for media_type, one in (
                operations.get("post", {}).get("requestBody", {}).get("content", {}).items()
            ):
                example = one["example"]
                body = example if isinstance(example, str) else json.dumps(example)
                answer = client.post(path, content=body, headers={"Content-Type": media_type})
                assert answer.status_code == 200, answer.text


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


class TestRefusals:
    """Requests that are not right."""

    @pytest.mark.parametrize(
        ("body", "kind"),
        [
            (b"", "malformed-json"),
            (b"{", "malformed-json"),
            (b'{"text": "\xe9"}', "malformed-json"),
            (b'{"text": "a", "text": "b"}', "malformed-json"),
            (b'{"text": NaN}', "malformed-json"),
            (b'{"text": ' + b"9" * 5000 + b"}", "malformed-json"),
            (b"[" * 200_000, "malformed-json"),
            (b'{"text": ' + b"[" * 100_000 + b"]" * 100_000 + b"}", "malformed-json"),
            (b'{"text": 1e999}', "request-invalid"),
            (b'{"text": 99999999999999999999999}', "request-invalid"),
            (b'{"text": null}', "request-invalid"),
            (b'{"text": " "}', "request-invalid"),
            (b'{"text": "a", "as_of": "2026-02-30"}', "request-invalid"),
            (b'{"text": "a", "as_of": 20260331}', "request-invalid"),
            (b'{"text": "a", "region": "C"}', "request-invalid"),
            (b'{"text": "a", "format": "pdf"}', "request-invalid"),
            (b'{"text": "a", "name": "\\ud800"}', "request-invalid"),
            (b'{"text": "a", "nmae": "b"}', "request-invalid"),
            (b"[]", "request-invalid"),
            (b"null", "request-invalid"),
        ],
        ids=lambda given: repr(given)[:40],
    )
    def test_json(self, client: httpx2.Client, body: bytes, kind: str) -> None:
        headers = {"Content-Type": "application/json"}
        refused(client.post("/v1/parse", content=body, headers=headers), kind)

    @pytest.mark.parametrize(
        "query", ["region=C", "regoin=A", "region=A&region=B", "as_of=20260331", "as_of=0",
        "as_of=2026-02-30", "format=pdf", "format=", "name=" + "x" * 201],
    )  # fmt: skip
    def test_query(self, client: httpx2.Client, query: str) -> None:
        answer = client.post(f"/v1/parse?{query}", content=GOOD, headers=PLAIN)
        problem = refused(answer, "request-invalid")
        assert problem["errors"][0]["pointer"] == query.partition("=")[0]

    @pytest.mark.parametrize("query", ["name=%ff", "name=%ed%a0%80", "&".join(["a=1"] * 9000)])
    def test_query_that_is_none(self, client: httpx2.Client, query: str) -> None:
        answer = client.post(f"/v1/parse?{query}", content=GOOD, headers=PLAIN)
        refused(answer, "request-invalid")
        assert answer.elapsed.total_seconds() < 1
        assert len(answer.content) < 1000

    def test_very_many_names(self, client: httpx2.Client) -> None:
        given = {f"name {number}": 1 for number in range(100_000)}
        for path in ("/v1/parse", "/v1/depths"):
            answer = client.post(path, json=given)
            refused(answer, "request-invalid")
            assert len(answer.content) < 1000

    def test_place_of_an_error_is_told(self, client: httpx2.Client) -> None:
        answer = client.post("/v1/depths", json={"texts": ["8m", 8], "a/b": 1})
        errors = refused(answer, "request-invalid")["errors"]
        assert {one["pointer"] for one in errors} == {"/texts/1", "/a~1b"}

    @pytest.mark.parametrize(
        "path", ["/v1/nothing", "/v1/parse/", "/static/../app.py", "/static/nothing", "//v1/parse"]
    )
    def test_no_such_path(self, client: httpx2.Client, path: str) -> None:
        refused(client.get(path), "not-found")

    def test_other_methods(self, client: httpx2.Client) -> None:
        for method in ("GET", "PUT", "DELETE", "OPTIONS"):
            answer = client.request(method, "/v1/parse")
            refused(answer, "method-not-allowed")
            assert answer.headers["allow"] == "POST"
        refused(client.post("/static/page.css", content=b"x"), "method-not-allowed")

    def test_parts_of_a_file_are_not_given(self, client: httpx2.Client) -> None:
        whole = client.get("/static/page.css").content
        for part in ("bytes=9999999-", "bytes=a-b", "bytes=0-1,3-4", "lines=1"):
            answer = client.get("/static/page.css", headers={"Range": part})
            assert (answer.status_code, answer.content) == (200, whole)


class TestEveryAnswer:
    """What holds for every answer, good or bad."""

    @pytest.mark.parametrize(
        "path", ["/", "/docs", "/static/page/main.js", "/healthz", "/openapi.json", "/v1/schema",
        "/v1/parse", "/nothing", "/static/nothing"],
    )  # fmt: skip
    def test_headers_of_safety(self, client: httpx2.Client, path: str) -> None:
        headers = client.get(path).headers
        assert headers["content-security-policy"] == POLICY
        assert headers["x-content-type-options"] == "nosniff"
        assert headers["referrer-policy"] == "no-referrer"
        assert "server" not in headers
        assert headers["cache-control"] == (
            "no-cache" if path == "/static/page/main.js" else "no-store"
        )

    def test_policy_lets_nothing_in(self) -> None:
        assert "unsafe" not in POLICY
        assert "http" not in POLICY
        assert "default-src 'none'" in POLICY
