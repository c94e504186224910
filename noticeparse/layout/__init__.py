"""Layout: what each line of a bulletin is, told by the evidence in it and beside it."""
