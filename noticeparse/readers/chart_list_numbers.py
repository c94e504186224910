"""The numbers of a list of charts: `Charts affected: 1. Chart 802 [2310/26]`, `(1) 802; (2) 803`.

They count the charts of a head, and are no charts themselves.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from noticeparse.readers.head_values import HeadPart

_CHARTS = frozenset({"CHART_WORD", "CHART_NUMBER", "INTERNATIONAL"})
_DETAILS = frozenset(
    "PREVIOUS PREVIOUS_IN_BRACKETS NEW_EDITION INTERNATIONAL EDITION NOTICE_NUMBER".split()
)
_MOST = 30
"""Charts of a head that are counted."""
_FEWEST = 2


def without_list_numbers(parts: Sequence[HeadPart]) -> tuple[HeadPart, ...]:
    """The parts of a head without the numbers that count its charts.

    They begin with 1 right behind the word for charts, and leave none out.  A number with a mere
    stop may be that of a chart: it counts where the word for a chart, or another such number and
    chart, or a notice before, stands behind it.
    """
    found = list(_counted(parts))
    if not found:
        return tuple(parts)
    first = found[0]
    is_open = first.stop - first.start == _FEWEST and parts[first.start + 1].text != ")"
    if is_open and len(found) < _FEWEST and not _is_told(parts, first.stop):
        return tuple(parts)
    counted = {at for one in found for at in one}
    return tuple(part for at, part in enumerate(parts) if at not in counted)


def _counted(parts: Sequence[HeadPart]) -> Iterator[range]:
    """The places of each number that counts a chart, with its brackets or its stop."""
    count = behind = 0
    for at, part in enumerate(parts):
        if part.kind != "CHART_NUMBER" or part.text != str(count + 1) or count == _MOST:
            continue
        if at < behind:
            # `Charts 1. 2. 3.`: the chart behind a number counts none.
            continue
        opens = at > 0 and parts[at - 1].text == "("
        start = at - opens
        end = at + 2
        closing = parts[at + 1].text if at + 1 < len(parts) else ""
        if closing not in (")",) if opens else closing not in (")", "."):
            continue
        if end >= len(parts) or parts[end].kind not in _CHARTS:
            continue
        if count or (start > 0 and parts[start - 1].kind == "CHART_WORD"):
            count += 1
            behind = end + 1 + (parts[end].kind == "CHART_WORD")
            yield range(start, end)


def _is_told(parts: Sequence[HeadPart], at: int) -> bool:
    """Whether a chart is named by its word, or has a notice before of its own."""
    if parts[at].kind == "CHART_WORD":
        return True
    behind = [part for part in parts[at + 1 : at + 3] if part.kind not in ("COMMA", "STOP")]
    return bool(behind) and behind[0].kind in _DETAILS
