"""Tests of the page in a real browser; without one they are skipped."""
