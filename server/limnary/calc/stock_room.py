"""Space and company by rules of the trade: surface for each centimetre of fish, length to swim, more of a kind."""

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


def room_limit(surface_cm2: float, lot: dict) -> dict:
    """Grams of a mixture of animals that the surface has room for: surface / surface that the mixture needs.

    `lot`: mass g, surface cm2 [cm²] and whether each of it `fits` the tank's length. Returns limit_g, low_g and
    high_g [g], each None for animals that need no room. Source: trade_stocking.

    >>> room_limit(600, {"cm2": 300, "g": 2, "fits": True})["limit_g"]
    4.0
    """
    if lot["cm2"] <= 0:
        return {"limit_g": None, "low_g": None, "high_g": None}
    practice = constants("room_practice")
    limit = surface_cm2 / lot["cm2"] * lot["g"] if lot["fits"] else 0.0
    return {"limit_g": limit, "low_g": limit / practice["low_factor"], "high_g": limit * practice["high_factor"]}


def company_more(one: dict, temperament: str) -> int | None:
    """How many more of its own kind an animal bears; None where company does not limit it.

    A solitary animal bears none beyond one, a pair none beyond two. One that is aggressive bears none of its
    kind that comes later. Source: trade_stocking.

    >>> company_more({"row": {"social": "pair"}, "count": 1}, "peaceful")
    1
    """
    social = (one["row"] or {}).get("social")
    if temperament == "aggressive" and one["count"] > 0:
        return 0
    most = 2 if social == "pair" else 1 if social == "solitary" or temperament == "aggressive" else None
    return None if most is None else max(0, most - one["count"])
