"""Many files in one run: directories, patterns and zip files, several processes, a manifest."""
