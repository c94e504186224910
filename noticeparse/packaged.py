"""Files that lie beside the modules of the package: tables of words, a style sheet, typefaces."""

from __future__ import annotations

from pkgutil import get_data


def packaged(package: str, name: str) -> bytes:
    """A file of a package, `name` with slashes.

    Raises FileNotFoundError, also where the package was not loaded from files.
    """
    data = get_data(package, name)
    if data is None:
        raise FileNotFoundError(f"{name} of {package}")
    return data
