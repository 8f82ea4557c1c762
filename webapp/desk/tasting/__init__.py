"""Blind tastings at the desk: set out, poured by a sheet, opened."""
