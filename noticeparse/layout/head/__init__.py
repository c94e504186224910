"""Heads of notices and charts, and the lists that an edition prints of itself."""
