"""Coverage-guided fuzzing: the harness, and the texts it starts from."""
