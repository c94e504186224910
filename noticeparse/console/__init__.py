"""What the command line does between its arguments and the writers: streams, messages, statuses."""
