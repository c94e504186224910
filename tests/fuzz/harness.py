"""Runs the law under Atheris: `python -m tests.fuzz.harness -runs=100000`, from `corpus/`.

Takes libFuzzer's options.  Texts that reach new code are kept in the folder that is named first,
else nowhere; a text that breaks the law is written to `crash-…` where it runs, and to be put to
`law.check` again.
"""

from __future__ import annotations

import sys
import tempfile
from pathlib import Path

CORPUS = Path(__file__).parent / "corpus"


def main() -> None:
    """Run until libFuzzer's options say to stop, or the law is broken."""
    import atheris

    # The package alone, and as it is imported: every parser library besides takes a minute.
    with atheris.instrument_imports(include=["noticeparse"]):
        from tests.fuzz.law import check
    options = [argument for argument in sys.argv[1:] if argument.startswith("-")]
    folders = [argument for argument in sys.argv[1:] if not argument.startswith("-")]
    with tempfile.TemporaryDirectory() as nowhere:
        atheris.Setup([sys.argv[0], *options, *(folders or [nowhere]), str(CORPUS)], check)
        atheris.Fuzz()


if __name__ == "__main__":
    main()
