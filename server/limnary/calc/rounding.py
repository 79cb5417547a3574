"""Rounding for display: half away from zero, the only rounding in the product."""

from decimal import ROUND_HALF_UP, Decimal


def display(value: float, decimals: int) -> str:
    """`value` as text with `decimals` places, halves away from zero, never "-0".

    The exact binary value is rounded, as JavaScript's toFixed does, so both languages agree.

    >>> display(2.5, 0), display(-2.5, 0), display(0.125, 2), display(-0.001, 2)
    ('3', '-3', '0.13', '0.00')
    """
    places = Decimal(1).scaleb(-decimals)
    text = f"{Decimal(value).quantize(places, rounding=ROUND_HALF_UP):f}"
    return text.lstrip("-") if not any(digit in "123456789" for digit in text) else text
