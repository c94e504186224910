"""Slips of the pen: one letter left out, doubled, exchanged, or changed places with the next."""

from __future__ import annotations

from string import ascii_lowercase


def one_slip_from(word: str) -> set[str]:
    """A word in small letters, and all that it becomes when one slip is taken back."""
    parts = [(word[:at], word[at:]) for at in range(len(word) + 1)]
    found = {a + b[1:] for a, b in parts}
    found |= {a + b[1] + b[0] + b[2:] for a, b in parts if len(b) > 1}
    for letter in ascii_lowercase:
        found |= {a + letter + b for a, b in parts}
        found |= {a + letter + b[1:] for a, b in parts if b}
    return found
