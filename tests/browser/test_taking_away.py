"""What is taken away: copied, saved, printed."""

from __future__ import annotations

import csv
import io
import json
from typing import TYPE_CHECKING

import pytest

pytest.importorskip("playwright", reason="playwright is not installed")
pdfium = pytest.importorskip("pypdfium2", reason="pypdfium2 is not installed")

from playwright.sync_api import expect

from noticeparse import parse
from noticeparse.caution import CAUTION
from tests.browser.desk import DEMO, FAULTY, clipboard, paste

if TYPE_CHECKING:
    from playwright.sync_api import Page


def copied(page: Page, form: str, extent: str = "shown") -> str:
    page.locator("#take").click()
    page.locator(f"#take-dialog [value={extent}]").check()
    page.locator(f"[data-copy={form}]").click()
    expect(page.locator("#take-said")).to_contain_text("Copied")
    page.keyboard.press("Escape")
    return clipboard(page)


class TestCopies:
    """All actions, or those that are shown."""

    def test_table(self, page: Page) -> None:
        paste(page, FAULTY)
        rows = [line.split("\t") for line in copied(page, "table").split("\n")]
        assert len(rows) == 13
        table = [dict(zip(rows[0], row, strict=True)) for row in rows[1:-1]]
        assert rows[-1] == [CAUTION]
        assert table[0]["position ISO 6709"] == "-4713.05-12344.20/"
        bad = next(row for row in table if row["feature"] == "depth 12.4m")
        assert (bad["use"], bad["position ISO 6709"]) == ("NOT TO BE USED", "")
        assert "position-minutes-out-of-range" in bad["findings"]

    def test_only_what_is_shown(self, page: Page) -> None:
        paste(page, DEMO)
        page.locator("#by-verb").select_option("move")
        assert len(copied(page, "table").split("\n")) == 4
        shown = json.loads(copied(page, "json"))
        assert shown["caution"] == CAUTION
        assert [one["action"]["verb"] for one in shown["actions"]] == ["move", "move"]
        features = json.loads(copied(page, "geojson"))["features"]
        assert {one["properties"]["verb"] for one in features} == {"move"}

    def test_all_as_json_is_what_the_reader_writes(self, page: Page) -> None:
        paste(page, DEMO)
        page.locator("#by-verb").select_option("move")
        assert json.loads(copied(page, "json", "all")) == json.loads(parse(DEMO).model_dump_json())


class TestFiles:
    """The whole bulletin as a file."""

    @pytest.mark.parametrize(
        ("button", "name", "holds"),
        [
            ("CSV for a spreadsheet", "bulletin.csv", "\ufeff"),
            ("JSON", "bulletin.json", '"schema_version":"1"'),
            ("JSON Lines", "bulletin.jsonl", '{"record":"notice"'),
            ("GeoJSON", "bulletin.geojson", '"FeatureCollection"'),
            ("Text", "bulletin.txt", "2417/26"),
        ],
    )
    def test_each_format(self, page: Page, button: str, name: str, holds: str) -> None:
        paste(page, DEMO)
        page.locator("#take").click()
        with page.expect_download() as download:
            page.locator("[data-save]").get_by_text(button, exact=True).click()
        assert download.value.suggested_filename == name
        words = download.value.path().read_text("utf-8")
        assert words.startswith(holds) or holds in words
        assert CAUTION in words or button.startswith(("CSV", "Text"))

    def test_csv_has_a_row_for_each_action(self, page: Page) -> None:
        paste(page, FAULTY)
        page.locator("#take").click()
        with page.expect_download() as download:
            page.get_by_role("button", name="CSV", exact=True).click()
        rows = list(csv.DictReader(io.StringIO(download.value.path().read_text("utf-8"))))
        assert len(rows) >= 11
        assert [row["usable"] for row in rows].count("false") == 1


class TestPaper:
    """The page itself, printed."""

    def test_text_records_findings_and_caution(self, page: Page) -> None:
        paste(page, FAULTY)
        document = pdfium.PdfDocument(page.pdf())
        words = " ".join(" ".join(one.get_textpage().get_text_range().split()) for one in document)
        assert CAUTION in words
        for wanted in (
            "Actions: 11 of 11",
            "-4713.05-12344.20/",
            "73.02 minutes; 59 is the last",
            "Source: Survey vessel Brannoch Rock",
            'legend, "Works", by legend, "Marina"',
        ):
            assert wanted in words, wanted
        assert "not to be used" in words.lower()
        assert "Search words" not in words
        expect(page.locator("#paper")).to_be_hidden()
