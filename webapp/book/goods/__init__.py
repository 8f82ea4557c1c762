"""What is in bottles? Bottlings, goods on hand, and the destinations of their cases."""
