"""Measurements, by flag only."""
