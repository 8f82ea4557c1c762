"""The cellar at the desk: ferments, casks, the warehouse as a map, and the house's own rules."""
