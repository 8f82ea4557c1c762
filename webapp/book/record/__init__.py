"""What has been handed in, exactly as it came? The log with its chain, its file and the one write door, the tables, the
changes of the registry, the clocks and months that order it, and a verified copy. Nothing here reads a vessel's
state.
"""
