"""Faults planted in clean texts: each is found every time, and clean texts stay silent."""
