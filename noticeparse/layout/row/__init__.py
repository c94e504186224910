"""Rows of tables and records: what each cell tells of one item."""
