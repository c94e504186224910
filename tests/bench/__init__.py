"""Measurements, run by hand: `python -m tests.bench.bench_whole` and so on; none is a test."""
