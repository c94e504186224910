"""Readers: each turns one piece of repaired text into records and faults, and never raises."""
