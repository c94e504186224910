"""Column titles and keys, and the role each gives to what stands under or behind it."""

from __future__ import annotations

import csv
import re
from functools import cache, lru_cache

from noticeparse.packaged import packaged


@cache
def _titles() -> dict[str, list[str]]:
    table = packaged("noticeparse.vocabulary", "columns.csv")
    roles: dict[str, list[str]] = {}
    for row in csv.DictReader(table.decode("utf-8").splitlines()):
        for title in row["titles"].split("|"):
            roles.setdefault(title, []).append(row["role"])
    return roles


# A single word that gives a longer title away: `Charted object and its data`.
_TELLING_WORDS = (
    "object",
    "feature",
    "item",
    "aid",
    "latitude",
    "longitude",
    "position",
    "command",
)


_ONE_CHART = re.compile(r"(?:chart|cht\.?|sheet) [a-z]{0,3} ?[0-9]{1,5}[a-z]?")
"""Titles of columns whose marks tell which rows are for that chart."""
_ON_ANOTHER_DATUM = re.compile(r"\b(?:local|old datum|other datum|former datum)\b")
_PREVIOUS = re.compile(
    r"(?:the )?(?:last|latest|previous|prev\.?|preceding|prec\.?|prior|former|earlier)"
    r" (?:n\.? ?t?\.? ?m|n\.? to m|notice|correction|corr|corr\.?n|update|amendment|amdt|circular"
    r"|memorandum|entry|advice|change|gazette|number)(?: (?:no|nr|number))?(?: applied)?"
)
"""Titles of the column of the notice before, in all their short forms: `Prec. N.T.M.`."""


@lru_cache(maxsize=512)
def column_role(title: str) -> str | None:
    """The role of a column with this title, or None where the title is not known."""
    plain = _plain(title)
    if _ONE_CHART.fullmatch(plain):
        return "chart_mark"
    parts = _parts(plain)
    words = [word for word in plain.split() if word in _TELLING_WORDS]
    found = [
        roles[0] for part in (plain, *parts, *words) if (roles := _titles().get(part.strip(" .;")))
    ]
    if not found and _PREVIOUS.fullmatch(plain.strip(" .")):
        return "previous"
    if _ON_ANOTHER_DATUM.search(plain) and found[:1] == ["position"]:
        return "rest"
    if plain.startswith("reference ") and "position" in found:
        # The place of another thing, from which the feature is reckoned.
        return None
    # `Chart and order`: heads of charts stand in the column of the verbs.
    return "verb" if "verb" in found else found[0] if found else None


def _parts(title: str) -> list[str]:
    return title.replace(" or ", ",").replace(" and ", ",").replace("/", ",").split(",")


def names_items(title: str) -> bool:
    """Whether a title is that of verb and feature side by side: `Action and feature`."""
    roles = {
        role for part in _parts(_plain(title)) for role in _titles().get(part.strip(" ."), ())
    }
    return {"verb", "feature"} <= roles


def key_role(key: str, *, has_places: bool) -> str | None:
    """The role of a value behind this key; `Area:` without positions is a geographic heading."""
    plain = _plain(key.rstrip().rstrip(":"))
    roles = _titles().get(plain)
    if _names_both_halves(plain):
        return "position"
    if not roles:
        return "numbered" if has_places and _is_numbered_position(plain) else None
    return "heading" if "heading" in roles and not has_places else roles[0]


def _names_both_halves(key: str) -> bool:
    """Whether a key is that of latitude and longitude at once: `latitude, longitude`."""
    words = [word for word in _PARTED.split(key) if word]
    return [_titles().get(word, [""])[0] for word in words] == ["latitude", "longitude"]


_PARTED = re.compile(r"[ ,/&]{1,3}(?:and )?")


def _is_numbered_position(key: str) -> bool:
    """Whether a key counts the positions of one feature: `position 2`, `corner b`."""
    word, _, count = key.replace(" no ", " ").replace(" no. ", " ").partition(" ")
    is_count = count.isdigit() or (len(count) == 1 and count.isalpha())
    return is_count and (word in ("corner", "vertex") or "position" in _titles().get(word, ()))


_HEMISPHERES = frozenset("n s e w north south east west".split())


def _plain(title: str) -> str:
    words = " ".join(title.lower().replace("_", " ").split()).partition(" (")[0]
    head, _, last = words.rpartition(" ")
    return head if last in _HEMISPHERES else words
