"""What do ferments and casks do over time? Ferments with their end, casks with their loss, casks by year."""
