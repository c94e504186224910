"""Runs the law under Atheris: `python -m tests.fuzz.harness -runs=100000`, from `corpus/`.

Takes libFuzzer's options.  Texts that reach new code are kept in the folder that is named first,
else nowhere.  A text that breaks the law is shown with its code points and written to `crash-…`
where it runs; named alone, such a file is put to the law once more.
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

    def put(data: bytes) -> None:
        try:
            check(data)
        except Exception as error:
            print("", *error.__notes__, sep="\n", file=sys.stderr)
            raise

    options = [argument for argument in sys.argv[1:] if argument.startswith("-")]
    named = [argument for argument in sys.argv[1:] if not argument.startswith("-")]
    with tempfile.TemporaryDirectory() as nowhere:
        is_file = any(Path(name).is_file() for name in named)
        inputs = named if is_file else [*(named or [nowhere]), str(CORPUS)]
        atheris.Setup([sys.argv[0], *options, *inputs], put)
        atheris.Fuzz()


if __name__ == "__main__":
    main()
