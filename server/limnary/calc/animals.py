"""A keeper's list of animals as lengths and masses: rows of the species table, or the keeper's own figures."""

from limnary.calc.refusal import Refusal
from limnary.calc.tables import table


def resolve(animals: list[dict]) -> list[dict]:
    """Each animal with its length and mass; mass = a x length^b.

    `animals` is a list of {species?, name?, count, length_cm?, shape?, mass_a?, mass_b?}. An animal without a
    species, or with a species that is not in the table, is the keeper's own and needs length_cm. Without a mass
    law of its own it uses the law of its body shape.
    Returns a list of {name, kind, shape, row, count, length_cm, mass_g, adult_cm, adult_g}; row is None
    for the keeper's own, and an adult is never shorter than the length given.
    Raises Refusal: length_needed, mass_pair. Source: amp_fishbase, froese_2014.

    >>> [round(one["mass_g"], 3) for one in resolve([{"species": "Paracheirodon innesi", "count": 8}])]
    [0.57]
    """
    return [_one(index, animal) for index, animal in enumerate(animals)]


def mixture(animals: list[dict]) -> list[float]:
    """Counts of the mix that is scaled up to a limit: the counts given, or one of each if all are zero."""
    counts = [float(animal["count"]) for animal in animals]
    return counts if any(counts) else [1.0] * len(counts)


def _one(index: int, animal: dict) -> dict:
    species = table("species")
    row = species["rows"].get(animal.get("species"))
    if ("mass_a" in animal) != ("mass_b" in animal):
        raise Refusal("mass_pair", f"animals.{index}.mass_a")
    if row is None and "length_cm" not in animal:
        raise Refusal("length_needed", f"animals.{index}.length_cm")
    if row is None:
        shape = animal.get("shape", "fusiform")
        kind = shape if shape in species["invertebrates"] else "fish"
        law = species["invertebrates"][shape] if kind != "fish" else species["shapes"][shape]
    else:
        kind, law = row["kind"], row
        shape = row["shape"] if kind == "fish" else "snail" if kind == "snail" else "shrimp"
    a, b = animal.get("mass_a", law["a"]), animal.get("mass_b", law["b"])
    length = float(animal.get("length_cm", row["length_cm"] if row else 0))
    adult = max(length, float(row["length_cm"])) if row else length
    return {
        "name": animal.get("name") or (row["name"] if row else animal.get("species", "own animal")),
        "kind": kind,
        "shape": shape,
        "row": row,
        "count": animal["count"],
        "length_cm": length,
        "mass_g": a * length**b,
        "adult_cm": adult,
        "adult_g": a * adult**b,
    }
