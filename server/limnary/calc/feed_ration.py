"""How much dry food a stock needs a day, from what its animals breathe."""

from limnary.calc.animals import resolve
from limnary.calc.oxygen_night import breathing_mg_h
from limnary.calc.tables import constants


def feed_ration(
    *,
    temperature_c: float,
    animals: list[dict],
    feed_g_day: float | None = None,
    food_dry_fraction: float = 0.92,
) -> dict:
    """Food that replaces the energy breathed, and what active and growing animals take.

    upkeep = oxygen a day x 13.56 kJ/g / usable energy of the food;  usual = 2 x, most = 3.5 x upkeep.
    The food's usable energy counts for its dry part: 15 kJ/g dry matter.

    Parameters: temperature_c [°C, 4 to 34], animals as in `resolve`; food_dry_fraction [1: 0.92 of flakes, about
    0.1 to 0.2 of frozen food], feed_g_day as fed now [g/day].
    Returns upkeep_g_day, usual_g_day, most_g_day [g/day of this food], usual_percent [% of the animals' mass],
    animals_g [g], oxygen_mg_day [mg/day]; notes.
    Raises Refusal as `resolve` does.
    Source: clarke_johnston_1999; fish_energy (from memory); the factors are an assumption.

    >>> fish = [{"species": "Paracheirodon innesi", "count": 10}]
    >>> round(feed_ration(temperature_c=24, animals=fish)["usual_g_day"], 2)
    0.13
    """
    stock = resolve(animals)
    energy, factors = constants("fish_energy"), constants("feed_ration")
    animals_g = sum(one["count"] * one["mass_g"] for one in stock)
    oxygen_mg_day = 24 * sum(one["count"] * breathing_mg_h(one["mass_g"], temperature_c) for one in stock)
    energy_kj_g = energy["food_kj_g_dry"] * food_dry_fraction
    upkeep_g_day = oxygen_mg_day / 1000 * energy["oxygen_kj_g"] / energy_kj_g
    answer = {
        "upkeep_g_day": upkeep_g_day,
        "usual_g_day": upkeep_g_day * factors["usual"],
        "most_g_day": upkeep_g_day * factors["most"],
        "animals_g": animals_g,
        "oxygen_mg_day": oxygen_mg_day,
    }
    if animals_g > 0:
        answer["usual_percent"] = answer["usual_g_day"] / animals_g * 100
    return {**answer, "notes": _notes(answer, feed_g_day, temperature_c)}


def _notes(answer: dict, feed_g_day: float | None, temperature_c: float) -> list[str]:
    notes = []
    if feed_g_day is not None and feed_g_day > answer["most_g_day"]:
        notes.append("more_than_eaten")
    elif feed_g_day is not None and feed_g_day < answer["upkeep_g_day"]:
        notes.append("less_than_upkeep")
    if temperature_c > constants("clarke_johnston_1999")["warmest_c"]:
        notes.append("warmer_than_measured")
    return notes
