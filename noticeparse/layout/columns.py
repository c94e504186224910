"""Column titles and keys, and the role each gives to what stands under or behind it."""

from __future__ import annotations

import csv
from functools import cache
from importlib.resources import files


@cache
def _titles() -> dict[str, list[str]]:
    table = (files("noticeparse") / "vocabulary" / "columns.csv").read_text("utf-8")
    roles: dict[str, list[str]] = {}
    for row in csv.DictReader(table.splitlines()):
        for title in row["titles"].split("|"):
            roles.setdefault(title, []).append(row["role"])
    return roles


def column_role(title: str) -> str | None:
    """The role of a column with this title, or None where the title is not known."""
    plain = _plain(title)
    for part in (plain, *plain.replace(" or ", ",").replace(" and ", ",").replace("/", ",").split(",")):
        roles = _titles().get(part.strip())
        if roles:
            return roles[0]
    return None


def key_role(key: str, *, has_places: bool) -> str | None:
    """The role of a value behind this key; `Area:` without positions is a geographic heading."""
    roles = _titles().get(_plain(key.rstrip().rstrip(":")))
    if not roles:
        return None
    return "heading" if "heading" in roles and not has_places else roles[0]


def _plain(title: str) -> str:
    words = " ".join(title.lower().split())
    return words.partition(" (")[0]
