"""How the program is reached: addresses, certificates that phones can trust, and the server itself.

Nothing here knows what the book holds.
"""
