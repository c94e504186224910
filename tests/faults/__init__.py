"""Faults planted in clean texts: each must be found wherever it stands, and nothing without it."""
