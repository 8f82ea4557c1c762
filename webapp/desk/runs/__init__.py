"""Still runs at the desk: the list, one run, several beside each other, yields, feints, plans."""
