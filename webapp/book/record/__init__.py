"""What has been handed in, exactly as it came? The log with its chain, the file it lies in and the one write door,
the tables, who changed what of the registry, the clocks and months that order it, and a proved copy. Nothing here
reads a vessel's state."""
