"""The group book: the entries of several sites side by side, on PostgreSQL. docs/decisions/0011-group-book.md.

Only `webapp.group.sender` runs at a site; it needs no more than the site has. All else runs at the group's server.
"""
