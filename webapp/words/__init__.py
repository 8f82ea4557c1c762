"""The sentences for people, made where they are read: one catalogue for each language, shared with the phone."""

from webapp.words.say import sentence

__all__ = ["sentence"]
