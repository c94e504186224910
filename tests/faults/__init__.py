"""Faults planted in clean texts: each is found wherever it stands, and clean twins stay silent."""
