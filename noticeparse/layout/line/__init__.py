"""Lines, the elements they hold, and the evidence of both: the alphabet of the layout."""
