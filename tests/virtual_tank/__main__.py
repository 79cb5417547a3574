"""`python -m tests.virtual_tank`: the full run; about ten minutes on two idle cores.

`python -m tests.virtual_tank 12 1000 1001` only prints the tables, of 12 tanks of each of these seeds.
"""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2] / "server"))

from tests.virtual_tank.report import tables, write

if __name__ == "__main__":
    if sys.argv[1:]:
        count, *seeds = map(int, sys.argv[1:])
        tables(tuple(seeds), count)
    else:
        write()
