"""The checks measured as a detector: random houses, slips of people, and what is asked."""
