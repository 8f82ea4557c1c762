"""Spreadsheets on their way into the book: read, recognised, looked over, put in, kept, taken back. Knows no page."""
