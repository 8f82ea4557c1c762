"""The trace at the desk: the page with its pictures, the lists, and the files."""
