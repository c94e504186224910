"""Sentences, and what stands before them on their line."""
