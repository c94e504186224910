"""Laws that hold for every text, tried on drawn ones."""
