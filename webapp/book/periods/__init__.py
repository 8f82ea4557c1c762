"""What does the law ask of a month, a quarter or a season? Ledgers by account, their lines and warnings, closes, and
the records for an officer.
"""
