"""`python -m tests.virtual_tank`: the full run; about ten minutes on an idle core."""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2] / "server"))

from tests.virtual_tank.report import write

write()
