"""The exit statuses of the command line."""

READ = 0
"""All was read, and no finding is an error."""

WITH_ERRORS = 1
"""All was read, and some findings are errors, or as grave as was asked for."""

NOT_READ = 2
"""Something could not be read at all, or the command was not understood."""
