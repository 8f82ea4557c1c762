"""What vat can be made of what lies in the cellar? Sources, the sum of their draws, the choice by a solver, and plans
that were made."""
