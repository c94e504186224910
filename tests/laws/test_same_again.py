"""The same text gives the same bytes: again, after other texts, behind others, and in threads."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from noticeparse import parse

from .strategies import PIECES, anything, bulletins, notices


@given(anything, anything)
def test_parse_depends_on_the_text_alone(text: str, other: str) -> None:
    first = parse(text).model_dump()
    parse(other)
    assert parse(text).model_dump() == first


@given(bulletins)
def test_the_same_bytes(text: str) -> None:
    assert parse(text).model_dump_json() == parse(text).model_dump_json()


@given(anything, st.sampled_from(("a.txt", "", None)))
def test_the_name_changes_the_source_only(text: str, name: str | None) -> None:
    named, bare = parse(text, name=name).model_dump(), parse(text).model_dump()
    assert named["source"].pop("name") == name
    bare["source"].pop("name")
    assert named == bare


def moved(record: Any, characters: int, lines: int) -> Any:
    """A dump with its spans moved down."""
    if isinstance(record, dict):
        if record.keys() == {"start", "end", "line", "column"}:
            return {
                "start": record["start"] + characters,
                "end": record["end"] + characters,
                "line": record["line"] + lines,
                "column": record["column"],
            }
        return {key: moved(part, characters, lines) for key, part in record.items()}
    if isinstance(record, list):
        return [moved(part, characters, lines) for part in record]
    return record


@given(notices(), notices())
def test_a_notice_reads_the_same_behind_many_others(other: str, text: str) -> None:
    before = (other + "\n") * (3000 // len(other) + 1)
    alone = parse(text).notices[0].model_dump(mode="json", exclude={"findings"})
    behind = parse(before + text).notices[-1].model_dump(mode="json", exclude={"findings"})
    assert behind == moved(alone, len(before), before.count("\n"))


def test_four_threads_give_what_one_gives() -> None:
    texts = [
        "\n".join(
            f"{PIECES[(i * k) % len(PIECES)]} {PIECES[(i + k) % len(PIECES)]}" for k in range(1, 9)
        )
        for i in range(100)
    ]
    texts += [
        f"{n}/26\nQuill Sound - Buoy.\nChart 802 [12/26] WGS84\nInsert depth {n % 20}.{n % 10}m   "
        f"47-{n % 60:02d}.{n % 100:02d}S 123-45.67W\n"
        f"Delete light, Fl({n % 4 + 2})R.{n % 20 + 5}s   (a) above\n"
        for n in range(100, 200)
    ]
    with ThreadPoolExecutor(4) as pool:
        threaded = list(pool.map(lambda text: parse(text).model_dump(), texts))
    assert threaded == [parse(text).model_dump() for text in texts]
