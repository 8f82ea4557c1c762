"""The check-up of a site: what keeps phones away, or would lose what they hand in, and the one next step for each."""
