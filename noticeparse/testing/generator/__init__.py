"""Writes bulletins about the invented Tavrenne Islands with the truth of every action in them.

`generate(seed, size_bytes=…)` gives the same text for the same arguments.  The texts are clean: a
reader must find every action, exactly.  Nothing here imports the reader.
"""

from noticeparse.testing.generator.layouts import NAMES as ALL
from noticeparse.testing.generator.layouts import Bulletin, generate
from noticeparse.testing.generator.truth import Action, Truth

__all__ = ["ALL", "Action", "Bulletin", "Truth", "generate"]
