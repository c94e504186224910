"""Tables and blocks of keys within a bulletin, and the notice and chart that a row goes to."""
