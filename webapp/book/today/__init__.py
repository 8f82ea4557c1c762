"""What needs somebody today, and what does the house hold? Asked of what the fold keeps, never of all entries."""
