"""Faults planted in clean notices: each is found every time, and its clean twin stays silent."""
