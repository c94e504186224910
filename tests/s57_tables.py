"""The code lists of S-57, as GDAL ships them."""

from __future__ import annotations

import csv
from pathlib import Path

import pyogrio


def s57_table(name: str) -> list[dict[str, str]]:
    """The rows of a list by the names of its columns."""
    path = Path(pyogrio.get_gdal_data_path()) / name
    with path.open(encoding="latin-1", newline="") as stream:
        return list(csv.DictReader(stream))
