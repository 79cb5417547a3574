"""Limnary: definite figures at the tank side, offline, for keepers of planted freshwater tanks."""
