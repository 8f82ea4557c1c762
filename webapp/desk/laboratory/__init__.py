"""Certificates of laboratories at the desk."""
