"""Which lines open a notice or a section, by their words and numbers alone."""
