"""Bottled goods at the desk: batches as they are bottled, what is on hand, and where cases went."""
