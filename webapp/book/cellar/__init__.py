"""How do ferments and casks change over time? Ferments with their end, casks with their loss, casks by year, yields of
the house.
"""
