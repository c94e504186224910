"""Many files in one run: the same bytes however it is done, and nothing half done."""
