"""How the floor comes to a phone: what it keeps of a version, packed for the way."""
