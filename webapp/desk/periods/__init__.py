"""Periods at the desk: the tax accounts by month and quarter, seasons, casks by year, records of the law."""
