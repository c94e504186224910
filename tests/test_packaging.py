"""Wheel, sdist and editable install: what is in them, and a notice read elsewhere by each."""

from __future__ import annotations

import json
import shutil
import sys
import tarfile
import zipfile
from pathlib import Path

import pytest

from noticeparse.version import VERSION
from tests.bare_venv import OFFLINE, copy_checkout, make_bare_venv, run

NOTICE = """\
2417/26 TAVRENNE ISLANDS - Quill Sound - Wreck.
Chart 802 [last correction 2310/26] WGS84
Insert dangerous wreck, least depth 8.6m 47°13'.05S., 123°44'.20W.
"""


@pytest.fixture(scope="module")
def checkout(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A copy, so that building leaves nothing in the checkout itself."""
    return copy_checkout(tmp_path_factory.mktemp("source") / "checkout")


def build(source: Path, to: Path, *kinds: str) -> None:
    run([sys.executable, "-m", "build", "--no-isolation", *kinds, "--outdir", to, source])


@pytest.fixture(scope="module")
def built(checkout: Path, tmp_path_factory: pytest.TempPathFactory) -> dict[str, Path]:
    """The wheel of the checkout, the sdist, and the wheel made from the unpacked sdist."""
    out = tmp_path_factory.mktemp("built")
    build(checkout, out, "--sdist", "--wheel")
    (wheel,), (sdist,) = out.glob("*.whl"), out.glob("*.tar.gz")
    unpacked = tmp_path_factory.mktemp("unpacked")
    shutil.unpack_archive(sdist, unpacked)
    again = tmp_path_factory.mktemp("again")
    build(unpacked / f"noticeparse-{VERSION}", again, "--wheel")
    (second,) = again.glob("*.whl")
    return {"wheel": wheel, "sdist": sdist, "wheel of the sdist": second}


def install(python: Path, *given: str | Path) -> None:
    pip = (sys.executable, "-m", "pip", "--python", python)
    run([*pip, "install", *given], environment=OFFLINE)


def names_in(wheel: Path) -> dict[str, int]:
    with zipfile.ZipFile(wheel) as archive:
        return {one.filename: one.CRC for one in archive.infolist()}


def shipped(checkout: Path) -> set[str]:
    """What must be in a wheel: every module, grammar and table, the mark of types, the licence."""
    package = {
        path.relative_to(checkout).as_posix()
        for path in (checkout / "noticeparse").rglob("*")
        if path.is_file()
    }
    grammars = {f"noticeparse/grammars/{path.name}" for path in (checkout / "grammars").iterdir()}
    return package | grammars


class TestWheel:
    """What the wheel holds."""

    def test_files(self, checkout: Path, built: dict[str, Path]) -> None:
        expected = shipped(checkout)
        found = {name for name in names_in(built["wheel"]) if ".dist-info/" not in name}
        assert found == expected
        assert "noticeparse/py.typed" in found
        assert "noticeparse/LICENSE" in found
        assert {
            "noticeparse/grammars/position.lark",
            "noticeparse/vocabulary/phrases.csv",
            "noticeparse/worksheet/sheet.css",
            "noticeparse/worksheet/fonts/NotoSans-Regular.ttf",
        } <= found

    def test_licence(self, built: dict[str, Path]) -> None:
        info = f"noticeparse-{VERSION}.dist-info"
        with zipfile.ZipFile(built["wheel"]) as archive:
            metadata = archive.read(f"{info}/METADATA").decode("utf-8")
            vendored = f"{info}/licenses/noticeparse/web/static/vendor/swagger-ui"
            assert {f"{vendored}/LICENSE", f"{vendored}/NOTICE"} <= set(archive.namelist())
            licence = archive.read(f"{info}/licenses/noticeparse/LICENSE").decode("utf-8")
            typeface = archive.read(f"{info}/licenses/noticeparse/worksheet/fonts/LICENSE")
        licences = "Apache-2.0 AND MIT AND BSD-3-Clause AND ISC AND OFL-1.1"
        assert f"\nLicense-Expression: {licences}\n" in metadata
        assert b"SIL OPEN FONT LICENSE" in typeface
        assert "\nLicense-File: noticeparse/LICENSE\n" in metadata
        assert "Apache License" in licence
        assert "END OF TERMS AND CONDITIONS" in licence

    def test_sdist_makes_the_same(self, built: dict[str, Path]) -> None:
        assert names_in(built["wheel of the sdist"]) == names_in(built["wheel"])


def test_sdist_holds_what_the_tests_need(built: dict[str, Path]) -> None:
    with tarfile.open(built["sdist"]) as archive:
        names = {name.partition("/")[2] for name in archive.getnames()}
    assert {
        ".ci/run", ".pre-commit-config.yaml", "DEVELOPERS.md", "README.md", "pyproject.toml",
        "corpus_synthetic/demo.txt", "grammars/position.lark", "tests/test_packaging.py",
    } <= names  # fmt: skip


@pytest.mark.parametrize("kind", ["wheel", "wheel of the sdist", "sdist", "editable"])
def test_reads_a_notice_when_installed(
    kind: str, checkout: Path, built: dict[str, Path], tmp_path: Path
) -> None:
    python = make_bare_venv(tmp_path / "venv")
    given = (f"--editable={checkout}",) if kind == "editable" else (built[kind],)
    install(python, *given)

    elsewhere = tmp_path / "elsewhere"
    elsewhere.mkdir()
    (elsewhere / "notice.txt").write_text(NOTICE, "utf-8")
    where = run([python, "-c", "import noticeparse; print(noticeparse.__file__)"], cwd=elsewhere)
    home = checkout if kind == "editable" else tmp_path / "venv"
    assert Path(where.strip()).is_relative_to(home)

    command = tmp_path / "venv" / "bin" / "noticeparse"
    record = json.loads(run([command, "parse", "notice.txt"], cwd=elsewhere))
    (action,) = record["notices"][0]["charts"][0]["actions"]
    assert (action["verb"], action["feature"]["kind"]) == ("insert", "wreck_dangerous")
    assert action["geometry"]["positions"][0]["iso6709"] == "-4713.05-12344.20/"
    assert record["findings"] == []


def test_editable_sees_an_edited_grammar(tmp_path: Path) -> None:
    # An editable install leaves a copy of the grammars in site-packages; it must not be read.
    checkout = copy_checkout(tmp_path / "checkout")
    python = make_bare_venv(tmp_path / "venv")
    install(python, f"--editable={checkout}")
    code = "from noticeparse import grammar; print(grammar.folder())"
    assert run([python, "-c", code], cwd=tmp_path).strip() == str(checkout / "grammars")
