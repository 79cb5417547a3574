"""Bands of equally weighted draws."""

import math

import numpy as np

_POINTS = (("p10", 0.1), ("p50", 0.5), ("p90", 0.9))


def band(values: np.ndarray) -> dict:
    """The 10 %, 50 % and 90 % points of equally weighted draws."""
    ranked = np.sort(values)
    return {name: float(ranked[math.ceil(share * len(ranked) - 1e-9) - 1]) for name, share in _POINTS}
