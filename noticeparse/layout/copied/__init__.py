"""What a text brings along from where it was copied: marks, page furniture, exchanged letters."""
