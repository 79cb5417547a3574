"""Mass of animals from their length, and the food that they eat in a day."""

from limnary.calc.animals import resolve


def animal_mass(*, animals: list[dict], feed_share_day: float = 0.012) -> dict:
    """Mass of each animal in a list and of all together, and their dry food per day.

    mass of one = a x length^b;  food = mass of all x feed_share_day

    Parameters: animals, as in `animals.resolve` [count, length_cm in cm]; feed_share_day [1/day].
    Returns total_g [g], feed_g_day [g/day], each: a list of {name, count, length_cm, each_g, total_g}.
    Raises Refusal: length_needed, mass_pair.
    Source: amp_fishbase; froese_2014 for builds.

    >>> tetras = {"species": "Paracheirodon innesi", "count": 8, "length_cm": 3}
    >>> round(animal_mass(animals=[tetras])["total_g"], 2)
    2.83
    """
    each = [
        {
            "name": one["name"],
            "count": one["count"],
            "length_cm": one["length_cm"],
            "each_g": one["mass_g"],
            "total_g": one["count"] * one["mass_g"],
        }
        for one in resolve(animals)
    ]
    total_g = sum(one["total_g"] for one in each)
    return {"total_g": float(total_g), "feed_g_day": total_g * feed_share_day, "each": each}
