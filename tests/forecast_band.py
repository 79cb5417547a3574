"""The band of the water that the app shows, for tests that judge the forecast."""

from limnary.calc.bands import band
from limnary.calc.drift import mixed_band
from limnary.calc.outlook import even


def forecast_band(c: dict, belief, row: int) -> list[float]:
    """The 10, 50 and 90 % points [mg N/L] of TAN or NITRITE at the belief's hour."""
    values, drift = even(belief).cloud[row], belief.drifts.get(row)
    return list((mixed_band(c, values, drift, belief.at_h) if drift else band(values)).values())
