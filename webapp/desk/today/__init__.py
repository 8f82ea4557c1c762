"""The desk's first page: what needs somebody today, and what the house holds."""
