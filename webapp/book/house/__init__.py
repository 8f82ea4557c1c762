"""Who and what belongs to the house? Vessels, people, phones, instruments, the site and its limits, as a person at
the desk sets them."""
