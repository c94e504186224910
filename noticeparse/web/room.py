"""How much is under way at one time: requests, requests from one address, bytes held for them.

A body also holds the bytes of the answer that is to be expected, until that is there.  Only large
bodies are refused for want of bytes: small ones come to little, as there are so many places.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from contextlib import contextmanager

from noticeparse.web.problems import try_again
from noticeparse.web.settings import ANSWER_TO_BODY, LARGE, ServiceSettings


class Room:
    """The room of one service."""

    def __init__(self, settings: ServiceSettings) -> None:
        self._settings = settings
        self._of_client: Counter[str] = Counter()
        self.held = 0
        """Bytes of bodies and answers."""

    @property
    def taken(self) -> int:
        """Places taken."""
        return self._of_client.total()

    @contextmanager
    def place(self, client: str) -> Iterator[Place]:
        """A place for one request of `client`, given back at the end of the block.

        Raises Refused.
        """
        if self._of_client[client] >= self._settings.places_of_one:
            words = f"at most {self._settings.places_of_one} at one time from one address"
            raise try_again("too-many-requests", words)
        if self.taken >= self._settings.places:
            raise try_again("busy", f"{self.taken} requests are under way; try again")
        self._of_client[client] += 1
        place = Place(self, self._settings.max_held)
        try:
            yield place
        finally:
            self.held -= place.held
            self._of_client[client] -= 1
            if not self._of_client[client]:
                del self._of_client[client]


class Place:
    """The place of one request, and the bytes held for it."""

    def __init__(self, room: Room, most: int) -> None:
        self._room = room
        self._most = most
        self.held = 0

    def hold(self, count: int) -> None:
        """Hold `count` bytes more of a body.

        Raises Refused where that is large, and the room full.
        """
        self._add(count * (1 + ANSWER_TO_BODY))
        is_large = self.held > LARGE * (1 + ANSWER_TO_BODY)
        if is_large and self._room.held > self._most:
            raise try_again("busy", "too many large bodies are under way; try again")

    def hold_instead(self, count: int) -> None:
        """Hold these in place of all others: the answer is there, and the body is not needed."""
        self._add(count - self.held)

    def _add(self, count: int) -> None:
        self.held += count
        self._room.held += count
