"""What goes with charts: the plot beside the actions, work sheets, positions in all forms."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

pytest.importorskip("playwright", reason="playwright is not installed")

from playwright.sync_api import expect

from noticeparse.caution import CAUTION
from tests.browser.desk import CHARTS, DEMO, FAULTY, clipboard, drop, eventually, paste, selected

if TYPE_CHECKING:
    from playwright.sync_api import Page

    from tests.browser.conftest import Opener

WIDE = {"width": 1920, "height": 1080}


class TestPlot:
    """The plot and the actions lead to each other."""

    def test_what_is_shown_is_plotted(self, opened: Opener) -> None:
        page = opened(viewport=WIDE)
        paste(page, DEMO)
        marks = page.locator("#plot [role=option]")
        expect(marks.first).to_be_visible()
        all_marks = marks.count()
        page.locator("#by-verb").select_option("move")
        expect(marks).not_to_have_count(all_marks)

    def test_a_symbol_leads_to_its_action(self, opened: Opener) -> None:
        page = opened(viewport=WIDE)
        paste(page, DEMO)
        page.locator("#by-kind").select_option("obstruction")
        page.locator("#plot [role=option]").first.click()
        expect(page.locator(".slip[aria-current]")).to_contain_text("obstruction")
        eventually(page, selected, lambda words: words.startswith("Delete   obstruction"))

    def test_it_is_opened_by_a_button_and_stays_so(self, page: Page) -> None:
        paste(page, DEMO)
        expect(page.locator("#plot-part")).to_be_hidden()
        page.locator("#plot-switch").click()
        expect(page.locator("#plot [role=option]").first).to_be_visible()
        page.reload()
        expect(page.locator("#plot [role=option]").first).to_be_visible()


class TestSheets:
    """Work sheets of a chart."""

    def test_open_to_print(self, page: Page) -> None:
        paste(page, DEMO)
        page.locator("[data-sheet-of='803']").first.click()
        expect(page.locator("#sheet-chart")).to_have_value("803")
        with page.expect_popup() as opening:
            page.get_by_role("button", name="Open to print").click()
        sheet = opening.value
        expect(sheet.locator("#print")).to_be_visible()
        expect(sheet.locator("#sheet")).to_contain_text("2417/26")
        expect(sheet.locator("#sheet")).to_contain_text("Chart 803")
        expect(sheet.locator("#sheet")).to_contain_text(CAUTION)
        assert sheet.evaluate("document.adoptedStyleSheets.length") > 0
        assert sheet.evaluate("document.documentElement.scrollWidth") <= 1280

    @pytest.mark.parametrize(
        ("button", "name", "head"),
        [
            ("[data-sheet=pdf]", "chart-802-sheet.pdf", b"%PDF"),
            ("[data-plot=svg]", "chart-802-plot.svg", b"<"),
            ("[data-plot=pdf]", "chart-802-plot.pdf", b"%PDF"),
        ],
    )
    def test_saved(self, page: Page, button: str, name: str, head: bytes) -> None:
        paste(page, DEMO)
        drop(page, "charts.csv", CHARTS.encode())
        expect(page.locator("#charts-answer")).to_contain_text("charts.csv is in use")
        page.keyboard.press("Escape")
        page.locator("#sheets").click()
        page.locator("#sheet-chart").select_option("802")
        with page.expect_download() as download:
            page.locator(button).click()
        assert download.value.suggested_filename == name
        assert download.value.path().read_bytes().startswith(head)

    def test_a_plot_needs_the_chart_in_a_list(self, page: Page) -> None:
        paste(page, DEMO)
        page.locator("#sheets").click()
        expect(page.locator("[data-plot=svg]")).to_be_disabled()
        expect(page.locator("#sheet-plot-words")).to_contain_text("load a chart list")

    def test_a_list_that_comes_while_they_are_open_counts(self, page: Page) -> None:
        paste(page, DEMO)
        page.locator("#sheets").click()
        page.locator("#sheet-chart").select_option("802")
        expect(page.locator("[data-plot=pdf]")).to_be_disabled()
        drop(page, "charts.csv", CHARTS.encode())
        expect(page.locator("#charts-answer")).to_contain_text("charts.csv is in use")
        page.keyboard.press("Escape")
        expect(page.locator("[data-plot=pdf]")).to_be_enabled()


class TestPositionBox:
    """One position, in all forms."""

    def test_forms_can_be_copied(self, page: Page) -> None:
        page.locator("#position").click()
        page.keyboard.type("47 12.34S 123 45.67W")
        forms = page.locator("#position-answer dd")
        expect(forms.nth(3)).to_be_visible()
        expect(page.locator("#position-answer")).to_contain_text("-4712.34-12345.67/")
        expect(page.locator("#position-answer .rounded").first).to_contain_text("rounded to")
        forms.first.locator(".copy").click()
        expect(page.locator("#said")).to_contain_text("Copied")
        eventually(page, clipboard, forms.first.locator(".cell-words").inner_text())

    def test_on_a_phone_a_form_stands_on_one_line(self, opened: Opener) -> None:
        page = opened(viewport={"width": 390, "height": 844}, has_touch=True)
        page.locator("#position").tap()
        page.keyboard.type("47 12.34S 123 45.67W")
        form = page.locator("#position-answer dd").first
        expect(form).to_be_visible()
        assert form.evaluate("one => one.getBoundingClientRect().height") < 50

    def test_what_is_in_doubt_is_refused(self, page: Page) -> None:
        page.keyboard.press("Alt+p")
        page.keyboard.type("47°12'.34, 123°45'.67W.")
        expect(page.locator("#position-answer .refused")).to_contain_text("no hemisphere")
        expect(page.locator("#position-answer dd")).to_have_count(0)

    def test_it_takes_what_is_selected_in_the_text(self, page: Page) -> None:
        paste(page, FAULTY)
        page.locator(".finding-go", has_text="60 miles").click()
        page.keyboard.press("Alt+p")
        expect(page.locator("#position-text")).to_have_value("48°20'.44S., 123°31'.02W.")
        expect(page.locator("#position-answer")).to_contain_text("-4820.44-12331.02/")
