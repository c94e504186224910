"""Builds the records of the contract from the drafts of the layout."""
