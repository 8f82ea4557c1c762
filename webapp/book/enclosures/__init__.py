"""Pictures, papers and voice notes: where their files lie, what they may be, and which entry they belong to."""
