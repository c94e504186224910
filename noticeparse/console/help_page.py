"""What ends the help page of a command: examples, exit statuses, and the caution."""

from __future__ import annotations

from noticeparse.caution import CAUTION

_STATUSES = """\b
Exit status:
  0  read, no finding is an error
  1  read, with error findings (or warnings: check --fail-on warning)
  2  could not be read at all: no such file, no text, wrong usage"""

EXPLAIN_STATUSES = """\b
Exit status:
  0  every code is known
  2  a code is not known, or wrong usage"""

SERVE_STATUSES = """\b
Exit status:
  0  served until it was interrupted
  2  could not be begun: the address is taken, a package is missing, wrong usage"""


def examples(*lines: str, statuses: str | None = _STATUSES, caution: str | None = CAUTION) -> str:
    """What ends a help page: examples, exit status, and the caution."""
    lead = "\b\nExamples:\n" + "\n".join(f"  {line}" for line in lines)
    return "\n\n".join(filter(None, [lead, statuses, caution]))
