"""What follows from the entries? States of vessels and runs, flows, questions and the sums of months: evaluated entry
by entry in their order, replayed from where something changed, kept for readers."""
