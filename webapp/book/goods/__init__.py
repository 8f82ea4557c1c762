"""What is in bottles? Bottlings, and goods on hand with where their cases went."""
