"""Space for fish by rules of the trade: surface for each centimetre of fish, and length to swim."""

from limnary.calc.tables import constants
from limnary.calc.tolerance import TOLERANCE


def surface_asked_cm2(one: dict) -> float:
    """Surface that one grown fish needs [cm²]; 0 for shrimp and snails.

    30 cm² for each centimetre of a slim fish up to 8 cm. Longer fish are bulkier, so above that the surface
    grows with the square of the length. `one` is an animal of `animals.resolve`. Source: trade_stocking.

    >>> surface_asked_cm2({"kind": "fish", "adult_cm": 4.0}), surface_asked_cm2({"kind": "fish", "adult_cm": 16.0})
    (120.0, 960.0)
    """
    if one["kind"] != "fish":
        return 0.0
    rule = constants("room_practice")
    return rule["surface_cm2_per_cm"] * one["adult_cm"] * max(1.0, one["adult_cm"] / rule["slim_to_cm"])


def long_enough(one: dict, length_cm: float) -> bool:
    """Whether the tank is long enough for one grown fish to swim; always True for shrimp and snails.

    Shoaling and restless fish need six times their grown length, others four times. Source: trade_stocking.

    >>> long_enough({"kind": "fish", "adult_cm": 15.0, "row": None}, 50)
    False
    """
    rule = constants("room_practice")
    row = one["row"] or {}
    swims = row.get("social") == "shoal" or row.get("temperament") == "restless"
    lengths = rule["swimmer_lengths"] if swims else rule["other_lengths"]
    return one["kind"] != "fish" or length_cm >= lengths * one["adult_cm"] - TOLERANCE
