"""Faults of one description while it is read, neighbouring leftovers told as one."""

from __future__ import annotations

from noticeparse.faults import Fault
from noticeparse.readers.light_parts import Part, end_of, fault, start_of


class Notes:
    """Collects faults of `text`; a part that belongs nowhere is a leftover, never dropped."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.faults: list[Fault] = []
        self._leftover: tuple[int, int] | None = None

    def add(self, code: str, start: int, end: int, **values: str) -> None:
        """A fault at a stretch."""
        self.faults.append(fault(code, self.text, start, end, **values))

    def add_at(self, code: str, part: Part, **values: str) -> None:
        """A fault at a part."""
        self.add(code, start_of(part), end_of(part), **values)

    def leave(self, part: Part) -> None:
        """A part without figures that belongs to nothing."""
        start, end = start_of(part), end_of(part)
        if self._leftover is not None:
            first, last = self._leftover
            if last <= start and not self.text[last:start].strip(" .,;:·\t\n"):
                self._leftover = (first, end)
                return
        self.close()
        self._leftover = (start, end)

    def leave_figure(self, part: Part) -> None:
        """A part with a figure that belongs to nothing."""
        self.add_at("light-leftover-figure", part)

    def close(self) -> None:
        """Nothing more will be left."""
        if self._leftover is not None:
            self.add("light-leftover-words", *self._leftover)
            self._leftover = None
