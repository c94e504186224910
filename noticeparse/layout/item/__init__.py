"""Items of a section: verb, description and places, in the order in which they are written."""
