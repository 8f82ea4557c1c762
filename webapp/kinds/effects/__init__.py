"""What each kind does to the fold, by topic. Pure: (read, view) -> Effect. Stock changes by flows alone: ../stock.py.

Flows of each effect are told in its docstring as `from -> to`. The shape of the states is in ../state.py.
"""
