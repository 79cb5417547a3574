"""Room for fish by the trade's rules: surface for each centimetre of fish, and length to swim."""

from limnary.calc.hair import HAIR
from limnary.calc.tables import constants


def surface_asked_cm2(one: dict) -> float:
    """Surface that one grown fish asks for [cm²]; none for shrimp and snails.

    30 cm² for each centimetre of a slim fish up to 8 cm; longer fish are bulkier, so theirs grows with the
    square. `one` is an animal of `animals.resolve`. Source: trade_stocking.

    >>> surface_asked_cm2({"kind": "fish", "adult_cm": 4.0}), surface_asked_cm2({"kind": "fish", "adult_cm": 16.0})
    (120.0, 960.0)
    """
    if one["kind"] != "fish":
        return 0.0
    rule = constants("room_practice")
    return rule["surface_cm2_per_cm"] * one["adult_cm"] * max(1.0, one["adult_cm"] / rule["slim_to_cm"])


def long_enough(one: dict, length_cm: float) -> bool:
    """Whether the tank is long enough for one grown fish to swim; shrimp and snails need not.

    Six grown lengths for shoaling and restless fish, four for others. Source: trade_stocking.

    >>> long_enough({"kind": "fish", "adult_cm": 15.0, "row": None}, 50)
    False
    """
    rule = constants("room_practice")
    row = one["row"] or {}
    swims = row.get("social") == "shoal" or row.get("temperament") == "restless"
    lengths = rule["swimmer_lengths"] if swims else rule["other_lengths"]
    return one["kind"] != "fish" or length_cm >= lengths * one["adult_cm"] - HAIR
