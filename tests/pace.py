"""How much a run draws and simulates: LIMNARY_PACE is quick, usual or long, as tests/run sets it."""

import os

PACE = os.environ.get("LIMNARY_PACE", "usual")


def by_pace(*, quick: int, usual: int, long: int) -> int:
    """The number for this run."""
    return {"quick": quick, "usual": usual, "long": long}[PACE]
