"""Measurements, run by hand: `python -m tests.bench.bench_whole` and so on.  None of them is a test."""
