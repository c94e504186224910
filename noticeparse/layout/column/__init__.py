"""Columns: their titles, the role of each, and the hemispheres that only titles state."""
