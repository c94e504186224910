"""Between the arguments of the command line and the writers: streams, messages, statuses."""
