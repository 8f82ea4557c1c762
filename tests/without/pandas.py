"""What only tests bring is not seen by the programs they start: pandas alone costs each of them half a second.

sqlite-utils takes it where it finds it; it is here because thermo needs it, and no house has it.
"""

raise ImportError("Programs under test run without it.")
