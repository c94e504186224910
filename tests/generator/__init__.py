"""Writes bulletins about the invented Tavrenne Islands together with the truth of every action.

`generate(seed, size_bytes=…)` gives the same text for the same arguments.  The texts are clean: a
reader must find every action, exactly.  Nothing here imports the reader.
"""

from tests.generator.layouts import NAMES as ALL
from tests.generator.layouts import Bulletin, generate
from tests.generator.truth import Action, Truth

__all__ = ["ALL", "Action", "Bulletin", "Truth", "generate"]
