"""GeoJSON by the rules of RFC 7946, and as independent readers see it."""

from __future__ import annotations

import json
from collections import Counter
from pathlib import Path

import pyogrio
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import shape

from noticeparse import parse
from noticeparse.caution import CAUTION
from noticeparse.testing.generator import generate
from noticeparse.writers import AS_USUAL, Wishes, new_writer, write
from noticeparse.writers.geojson_out import COUNTS, PROPERTIES
from tests.corpus_files import TEXTS, name_of
from tests.geojson_rules import (
    FAULTY,
    HEAD,
    P,
    Q,
    check_rules,
    collection,
    read,
)
from tests.golden_files import NAMES, kept, written_of


class TestRules:
    """RFC 7946 over many outputs."""

    @pytest.mark.parametrize("path", TEXTS, ids=name_of)
    def test_of_the_corpus(self, path: Path) -> None:
        bulletin = parse(path.read_text("utf-8"), name=path.name)
        for wishes in (AS_USUAL, Wishes(with_unusable=True)):
            check_rules(collection(bulletin, wishes=wishes))

    @given(st.integers(0, 2**20))
    def test_of_generated_bulletins(self, seed: int) -> None:
        check_rules(read(generate(seed, size_bytes=3000).text))

    def test_of_texts_without_actions(self) -> None:
        made = read("", "Fair winds to all.")
        check_rules(made)
        assert made["features"] == []

    @pytest.mark.parametrize("name", NAMES)
    def test_golden(self, name: str, request: pytest.FixtureRequest) -> None:
        found = written_of(name, "geojson")
        check_rules(json.loads(found))
        assert found == kept(f"{name}.geojson", found, request.config)


class TestCollection:
    """What stands around the features."""

    def test_several_inputs_are_one(self) -> None:
        one = f"{HEAD}Insert wreck {P}\n"
        made = read(one, "", f"{HEAD}{FAULTY}\n", one)
        check_rules(made)
        assert [f["properties"]["source"] for f in made["features"]] == ["0.txt", "3.txt"]
        assert made["caution"] == CAUTION
        assert [*made][-2:] == ["counts", "bulletins"]
        assert [one["source"]["name"] for one in made["bulletins"]] == [
            "0.txt", "1.txt", "2.txt", "3.txt",
        ]  # fmt: skip

    def test_counts(self) -> None:
        radio = "TAVRENNE COASTAL WARNING 41/26\nDANGEROUS WRECK IN 47-13.05S 123-44.20W.\n"
        text = f"{HEAD}Move buoy from {P} to {Q}\n{FAULTY}\nDelete depth 4m, close N of {P}\n"
        made = read(text, radio)
        assert made["counts"] == {
            "notices": 2, "notices_without_action": 1, "actions": 3, "unusable": 1,
            "unusable_left_out": 1, "errors_outside_actions": 0, "features": 3,
            "without_geometry": 1, "datum_not_stated": 0,
        }  # fmt: skip
        total = Counter[str]()
        for one in made["bulletins"]:
            assert [*one["counts"]] == [*COUNTS]
            total.update(one["counts"])
        assert dict(total) == {key: value for key, value in made["counts"].items() if value} | {
            "errors_outside_actions": 0, "datum_not_stated": 0,
        }  # fmt: skip
        assert len(made["features"]) == 3

    def test_errors_without_an_action_are_counted(self) -> None:
        made = read(f"{HEAD}Insert wreck {P}\nZap the mark in {Q}\n")
        assert made["counts"]["errors_outside_actions"] == 1


class TestOtherReaders:
    """What GDAL and shapely make of it."""

    def test_gdal(self, tmp_path: Path) -> None:
        bulletins = [parse(path.read_text("utf-8"), name=path.name) for path in TEXTS[:12]]
        path = tmp_path / "all.geojson"
        path.write_text("".join(write(new_writer("geojson"), bulletins)), "utf-8")
        made = json.loads(path.read_text("utf-8"))
        meta, _, drawn, fields = pyogrio.raw.read(path)
        assert meta["crs"] == "EPSG:4326"
        assert [*meta["fields"]] == [*PROPERTIES]
        assert len(drawn) == len(made["features"]) > 150
        for wkb, one in zip(drawn, made["features"], strict=True):
            assert (wkb is None) == (one["geometry"] is None)
        notices = fields[[*meta["fields"]].index("notice")]
        assert [*notices] == [one["properties"]["notice"] for one in made["features"]]

    @pytest.mark.parametrize("path", TEXTS[::3], ids=name_of)
    def test_shapely_finds_them_valid(self, path: Path) -> None:
        bulletin = parse(path.read_text("utf-8"), name=path.name)
        crossing = {
            p for f in bulletin.findings if f.code == "area-crosses-itself" for p in f.paths
        }
        drawn = [
            (one["properties"]["path"], shape(one["geometry"]))
            for one in collection(bulletin)["features"]
            if one["geometry"]
        ]
        assert all(geometry.is_valid for pointer, geometry in drawn if pointer not in crossing)
