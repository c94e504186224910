"""Places and offices of the invented Tavrenne Islands."""

from __future__ import annotations

WATERS = (
    "Quill Sound", "Port Ellory", "Dunmarrow Point", "Sable Tooth Rocks", "Brannoch Rock",
    "Ellory Roads", "Hollin Passage", "Marrow Bank", "Quill Narrows", "Cape Tessaly",
    "Wrenfold Bay", "Skerrow Channel", "Averness Reach", "Lantern Shoal", "Corran Deep",
)  # fmt: skip
PARTS = (
    "northern entrance", "southern part", "western approaches", "inner harbour", "outer roads",
    "eastern side",
)  # fmt: skip
SUBJECTS = (
    "Buoyage", "Depths", "Lights", "Wrecks", "Rocks", "Obstructions", "Submarine cables",
    "Restricted areas", "Beacons", "Pipelines", "Foul ground",
)  # fmt: skip
SOURCES = (
    "Port Ellory Harbour Office", "Quill Sound Pilots", "Tavrenne Lights Service",
    "Survey vessel BRANNOCH", "Ellory Cable Works",
)  # fmt: skip
MARK_NAMES = ("Quill", "Tessaly", "Marrow", "Skerrow", "Corran", "Hollin East", "Wrenfold Outer")
LEGENDS = (
    "Foul", "Works in progress", "Unsurveyed", "Power", "No Anchoring", "Rep (2026)",
    "Marine Farm", "Bridge under construction",
)  # fmt: skip
MONTHS = (
    "January", "February", "March", "April", "May", "June", "July", "August", "September",
    "October", "November", "December",
)  # fmt: skip
