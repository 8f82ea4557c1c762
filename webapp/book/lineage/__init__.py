"""Where does it come from, and where did it go? The trace from a bottle to the fruit and back, and the search that
finds its beginning."""
