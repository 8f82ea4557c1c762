"""Vessels at the desk: the list, one vessel, its registry, and labels."""
