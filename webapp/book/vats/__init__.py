"""Which vat can be made of the spirit in the cellar? Sources, the sum of their draws, the choice by a solver, and plans
made earlier.
"""
