"""The pages of the HTTP service: the caution, nothing from outside, vendored files unaltered."""

from __future__ import annotations

import hashlib
import re
from pathlib import Path

import httpx2
import pytest

from noticeparse.caution import CAUTION
from noticeparse.version import VERSION
from noticeparse.web.pages import STATIC

VENDORED = {
    # CodeMirror, put together by esbuild as package.json beside it tells
    "codemirror/LICENSE": "a2060da669a039114a15d38a9796e69a9017e71ad21b794c62c4265ede68fa08",
    "codemirror/codemirror.js": (
        "893609b4565f33944a284e9438e09f0b1b168a68b0fd8e7f2826ba1bcaf08795"
    ),
    "codemirror/entry.js": "7b9bb984786451b0ee4c092f276fce3b3ff4bf5a5cfeacd6a73dbb5dd6e158c7",
    "codemirror/package-lock.json": (
        "d73a2c0d70821acdbff805db6fe2290a3fc8ea21542a52491f630e6739256349"
    ),
    "codemirror/package.json": (
        "8f390a67d8a2e36a6da5a8e3b874e08cd85a686f092918760b09cb348bdde508"
    ),
    # d3-geo 3.1.2 with what it needs of d3-array 3.2.5, bundled as DEVELOPERS.md tells
    "d3-geo/LICENSE": "3ded44a2c7935c8f5236f0543069406fdf7256b61b9eaeaddd007e80f19bc959",
    "d3-geo/LICENSE.d3-array.txt": (
        "2a6d2d5f32ba0b755ddbc1c833f766e30cdbe6ebe9a6d4e3e24427721f0b63d3"
    ),
    "d3-geo/d3-geo.js": "0cf4ec83e32fd2d4215482eb623f762544717639b1046b0ead7b140999ea2b56",
    # swagger-ui-dist 5.35.0; LICENSE.bundle.txt came as swagger-ui-bundle.js.LICENSE.txt
    "swagger-ui/LICENSE": "cfc7749b96f63bd31c3c42b5c471bf756814053e847c10f3eb003417bc523d30",
    "swagger-ui/LICENSE.bundle.txt": (
        "37eb6e7e59aed57b2c1acf076574b818ea07b74265717e0bd67b59e0baf9abbb"
    ),
    "swagger-ui/NOTICE": "0d20d1adef18aee3f40dd258172155521ce702ac445cb5f7b7d60ed32dad2fb2",
    "swagger-ui/swagger-ui-bundle.js": (
        "e6a898692f2d768e807c3ba4626068a69a2c5dd960dd6c76f3e4d3a3de180af2"
    ),
    "swagger-ui/swagger-ui.css": (
        "5ed08757e53da3e026d6cbecc61fe5d43585c9560b302d534ad56692519a273d"
    ),
}
"""SHA-256 of each file that others wrote."""

OWN = [
    path
    for path in sorted(STATIC.rglob("*"))
    if path.is_file() and "vendor" not in path.relative_to(STATIC).parts
]


def test_vendored_files_are_as_they_came() -> None:
    vendor = STATIC / "vendor"
    found = {
        path.relative_to(vendor).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest()
        for path in vendor.rglob("*")
        if path.is_file()
    }
    assert found == VENDORED


@pytest.mark.parametrize(
    ("shipped", "name"),
    [("example_edition.txt", "demo_edition.txt"), ("example_charts.csv", "charts.csv")],
)
def test_the_examples_are_those_of_the_corpus(shipped: str, name: str) -> None:
    corpus = Path(__file__).resolve().parents[1] / "corpus_synthetic"
    assert (STATIC / shipped).read_bytes() == (corpus / name).read_bytes()


PARTS = sorted((STATIC / "page").glob("*.js"))
SCRIPTS = sorted(path for path in OWN if path.suffix == ".js")


@pytest.mark.parametrize("path", SCRIPTS, ids=lambda path: path.name)
def test_scripts_are_of_a_size_to_read_and_say_what_they_are(path: Path) -> None:
    words = path.read_text("utf-8")
    assert len(words.splitlines()) <= 300
    assert words.startswith(("// ", "/**"))


def test_every_file_that_a_script_imports_is_there() -> None:
    named = 0
    for path in SCRIPTS:
        for wanted in re.findall(r'from "([^"]+)"', path.read_text("utf-8")):
            base = STATIC if wanted.startswith("/static/") else path.parent
            named += 1
            assert (base / wanted.removeprefix("/static/")).is_file(), f"{path.name}: {wanted}"
    assert named > 50


class TestPages:
    """What stands under the bare address."""

    def test_caution_and_version(self, client: httpx2.Client) -> None:
        answer = client.get("/")
        assert answer.headers["content-type"] == "text/html; charset=utf-8"
        words = answer.text.replace("&#x27;", "'")
        assert words.count(CAUTION) == 4
        assert VERSION in words
        assert "{" not in words

    @pytest.mark.parametrize("page", ["/", "/docs"])
    def test_all_that_it_names_is_there(self, client: httpx2.Client, page: str) -> None:
        named = re.findall(r'(?:href|src)="([^"#]+)"', client.get(page).text)
        assert len(named) > 3
        for path in named:
            assert path.startswith("/")
            assert client.get(path).status_code == 200, path

    def test_head(self, client: httpx2.Client) -> None:
        answer = client.head("/")
        assert (answer.status_code, answer.content) == (200, b"")

    def test_every_part_that_the_scripts_ask_for_is_in_the_page(
        self, client: httpx2.Client
    ) -> None:
        words = "".join((STATIC / "page" / path.name).read_text("utf-8") for path in PARTS)
        asked = set(re.findall(r'element\("([\w-]+)"\)', words))
        assert len(asked) > 40
        page = client.get("/").text
        assert not [one for one in asked if f'id="{one}"' not in page]
