"""One search over everything that has a name or a remark. The index is derived: it can be thrown away and made anew."""
