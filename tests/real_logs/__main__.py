"""`python -m tests.real_logs`: judges the forecast on real start-ups and writes the table of README.md."""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2] / "server"))

from tests.real_logs.report import write

write()
