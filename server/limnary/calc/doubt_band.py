"""How far an answer may lie below and above the usual, when each uncertain figure is varied alone."""

from math import sqrt


def doubt_band(usual: float, others: list[float]) -> tuple[float, float]:
    """(low, high): the deviations of `others` from `usual`, combined as the root of their squares; never negative.

    >>> doubt_band(10.0, [7.0, 6.0, 12.0])
    (5.0, 12.0)
    """
    below = sqrt(sum((other - usual) ** 2 for other in others if other < usual))
    above = sqrt(sum((other - usual) ** 2 for other in others if other > usual))
    return max(0.0, usual - below), usual + above
