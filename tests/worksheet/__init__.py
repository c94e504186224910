"""Work sheets and plots."""
