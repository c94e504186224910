"""Whole bodies of sections: commands, prose, remarks, blocks below a place."""
