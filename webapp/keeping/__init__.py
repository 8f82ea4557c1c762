"""Keeping the book for decades: backups by the clock, rehearsals of a restore, open files out and in again."""
