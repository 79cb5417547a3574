"""What one reading tells: the interval of the true value, and how well each draw agrees with it."""

import math

import numpy as np


def blur(steps: list[float] | None, otherwise: float) -> float:
    """Offset [mg N/L] near which a reading can hardly be told from zero: the kit's first step above zero,
    because a finer kit also shows smaller amounts; `otherwise` for a reading without steps.

    >>> blur([0, 0.25, 0.5, 1], 0.1)
    0.25
    """
    return min((step for step in steps or () if step > 0.0), default=otherwise)


def interval(value: float, steps: list[float] | None, offset: float, scale: float) -> tuple[float | None, float | None]:
    """(low, high) [mg N/L] between which the water reads as `value`; None stands for no bound.

    A colour test only says "between these two steps", so the bounds lie halfway to the neighbouring
    steps; the interval of a reading without steps is one error scale wide.

    >>> interval(0.5, [0, 0.25, 0.5, 1], 0.1, 0.1)
    (0.375, 0.75)
    """
    if not steps:
        half = math.exp(0.5 * scale)
        return (value + offset) / half - offset, (value + offset) * half - offset
    below = max((step for step in steps if step < value - 1e-12), default=None)
    above = min((step for step in steps if step > value + 1e-12), default=None)
    low = None if below is None else (below + value) / 2
    high = None if above is None else (value + above) / 2
    return low, high


def share_below(values: np.ndarray, bound: float | None, offset: float, scale: float, unbounded: float) -> np.ndarray:
    """Chance that a test of water at `values` [mg N/L] reads below `bound`, shape (N,).

    The error is logistic on ln(x + offset) with scale `scale`; without a bound the chance is `unbounded`.
    """
    if bound is None:
        return np.full(len(values), unbounded)
    reach = ((values + offset) / (bound + offset)) ** (1.0 / scale)
    return 1.0 / (1.0 + reach)
