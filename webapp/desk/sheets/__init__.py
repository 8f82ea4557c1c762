"""Sheets at the desk: taken, looked over, put in, taken back."""
