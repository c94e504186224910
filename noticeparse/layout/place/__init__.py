"""Lists of places: lettered, numbered, counted, above or below what is told of them."""
