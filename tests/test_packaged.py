"""Files beside the modules: one that is not there is told, and never read as an empty one."""

from __future__ import annotations

import pytest

from noticeparse.packaged import packaged


def test_a_file_is_read_whole() -> None:
    assert packaged("noticeparse.vocabulary", "columns.csv").startswith(b"role,titles\n")


@pytest.mark.parametrize(
    ("package", "name"), [("noticeparse.vocabulary", "none.csv"), ("builtins", "columns.csv")]
)
def test_one_that_is_not_there_is_told(package: str, name: str) -> None:
    with pytest.raises(FileNotFoundError):
        packaged(package, name)
