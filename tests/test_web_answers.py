"""What each path of the HTTP service answers, and what goes along with every answer."""

from __future__ import annotations

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
