"""How have the runs gone, and how will the next one? Each run with its account, the forecast of the next cut, wishes
for a fruit, waiting feints, and a still's card.
"""
