"""What this reader answers to a text, as other readers are expected to.

`python -m noticeparse.testing.answering positions` answers line by line, so that it is a target of
`noticeparse fuzz`: one JSON string a line in, one JSON document a line out, each at once.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Callable

from pydantic import BaseModel

from noticeparse import api
from noticeparse.errors import NoticeParseError
from noticeparse.testing.cases import Kind

READERS: dict[Kind, Callable[[str], BaseModel]] = {
    "positions": api.parse_position,
    "lights": api.parse_light,
    "depths": api.parse_depth,
    "notices": api.parse,
}
"""The function of the package that reads each kind."""


def answer(kind: Kind, text: str) -> str:
    """The record of a text as JSON on one line, or the finding for which it is refused."""
    try:
        return READERS[kind](text).model_dump_json()
    except NoticeParseError as error:
        return json.dumps({"error": error.finding.model_dump(mode="json"), "text": text})


def main() -> None:
    """Answer each line of standard input."""
    kind = next((one for one in READERS if sys.argv[1:] == [one]), None)
    if kind is None:
        sys.exit(f"usage: python -m noticeparse.testing.answering {'|'.join(READERS)}")
    for line in sys.stdin:
        print(answer(kind, json.loads(line)), flush=True)


if __name__ == "__main__":
    main()
