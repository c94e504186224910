"""Checks: records in, faults out, records untouched, in ordered lists.

Each check is a plain function over one notice, over one chart section with its chart in a chart
list, over a whole bulletin, or over several that are given together.  It reports what is readable
but suspicious; what could not be read was reported where it was read.  `running` runs them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from noticeparse.checks.chains import check_chain, check_chains
from noticeparse.checks.datums import check_datum_stated, check_datums_agree
from noticeparse.checks.depths import check_depths
from noticeparse.checks.duplicates import check_duplicates, check_places_in_a_row
from noticeparse.checks.given import Given, Whole
from noticeparse.checks.idle_charts import check_idle_charts
from noticeparse.checks.lateral_marks import check_lateral_marks
from noticeparse.checks.letters import check_letters
from noticeparse.checks.lights import check_signal_periods
from noticeparse.checks.listed_charts import (
    check_datum,
    check_depth_units,
    check_edition,
    check_listed,
    check_previous,
)
from noticeparse.checks.lists import (
    check_cancellations,
    check_cancelled_list,
    check_cancelled_permanent,
    check_in_force,
    check_index_of_charts,
)
from noticeparse.checks.marks import check_cardinal_marks, check_other_marks
from noticeparse.checks.moves import (
    check_changes,
    check_come_and_gone,
    check_moves,
    check_replaced_places,
)
from noticeparse.checks.numbers import (
    check_numbers_differ,
    check_numbers_in_order,
    check_numbers_once,
    check_stated_range,
)
from noticeparse.checks.outliers import check_stray_corners
from noticeparse.checks.rings import check_rings, check_told_rings
from noticeparse.checks.sections import check_places_on_charts
from noticeparse.checks.sheet_positions import (
    check_limits,
    check_moves_on_sheet,
    check_precision,
)
from noticeparse.checks.sheet_sections import SheetSection
from noticeparse.checks.trouble import Trouble
from noticeparse.checks.validity import check_ended, check_temporary_actions
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.notice import Notice

CHECKS: tuple[Callable[[Notice], Iterator[Trouble]], ...] = (
    check_stray_corners,
    check_places_on_charts,
    check_moves,
    check_changes,
    check_replaced_places,
    check_duplicates,
    check_places_in_a_row,
    check_come_and_gone,
    check_letters,
    check_idle_charts,
    check_rings,
    check_told_rings,
    check_cardinal_marks,
    check_other_marks,
    check_lateral_marks,
    check_signal_periods,
    check_depths,
)
"""In the order in which they run; adding a check is one function and one line here."""

SHEET_CHECKS: tuple[Callable[[SheetSection], Iterator[Trouble]], ...] = (
    check_listed,
    check_previous,
    check_edition,
    check_datum,
    check_depth_units,
    check_limits,
    check_moves_on_sheet,
    check_precision,
)
"""The same over a chart list, for each chart section."""
EDITION_CHECKS: tuple[Callable[[Bulletin, Given], Iterator[Trouble]], ...] = (
    check_numbers_once,
    check_numbers_in_order,
    check_stated_range,
    check_index_of_charts,
    check_in_force,
    check_cancelled_list,
    check_cancelled_permanent,
    check_chain,
)
"""The same for a bulletin of which all notices and lists are known, held against each other."""

BULLETIN_CHECKS: tuple[Callable[[Bulletin, Given], Iterator[Trouble]], ...] = (
    *EDITION_CHECKS,
    check_ended,
    check_temporary_actions,
    check_datum_stated,
    check_datums_agree,
)
"""These, and others that ask for what the edition says of itself, and may look at a part of it."""

TOGETHER_CHECKS: tuple[Callable[[Sequence[Whole]], Iterator[tuple[int, Trouble]]], ...] = (
    check_numbers_differ,
    check_cancellations,
    check_chains,
)
"""The same for several bulletins given together; each trouble comes with the bulletin it is of."""
