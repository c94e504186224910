"""Tests of the plot alone, on a page that holds nothing else."""
