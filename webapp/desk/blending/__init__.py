"""Blending at the desk: vats planned and how they went, and the planner."""
