"""Who and what belongs to the house? Vessels, people, phones, instruments, the site and its limits, as people set them
at the desk.
"""
