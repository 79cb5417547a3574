"""Whether a list of species can share one tank: water, company, temperament, and whose mouth fits whom."""

from itertools import combinations

from limnary.calc.animals import resolve
from limnary.calc.refusal import Refusal
from limnary.calc.tables import constants, table
from limnary.calc.tolerance import TOLERANCE

# Each range: its key in the species table, the fields of the keeper's own animal, and the field of the tank.
RANGES = {
    "temperature": ("temperature_c", "temperature_low_c", "temperature_high_c"),
    "ph": ("ph", "ph_low", "ph_high"),
    "hardness": ("gh_dgh", "gh_low_dgh", "gh_high_dgh"),
}
FIERCE = ("territorial", "aggressive")
# The note for each kind of finding, worst first.
NOTE_OF = {
    "tank_temperature": "tank_water",
    "tank_ph": "tank_water",
    "tank_hardness": "tank_water",
    "source_ph": "source_water",
    "source_hardness": "source_water",
    "temperature_apart": "water_apart",
    "ph_apart": "water_apart",
    "hardness_apart": "water_apart",
    "eaten": "someone_eaten",
    "may_be_eaten": "someone_eaten",
    "attacks": "someone_attacked",
    "group_small": "groups_small",
    "not_known": "not_known",
}


def compatibility(
    *,
    animals: list[dict],
    temperature_c: float | None = None,
    ph: float | None = None,
    gh_dgh: float | None = None,
    source_ph: float | None = None,
    source_gh_dgh: float | None = None,
    planting: str = "medium",
    cover: str = "lid",
) -> dict:
    """Reasons against keeping these animals together, and the water that suits them all.

    Each range is compared by itself: a gap wider than a margin bars, a narrower one calls for care. New water
    outside a range bars too, unless the tank's own water is known to be inside it. A tankmate's length is compared
    with the adult length of a predator or opportunist: any piscivore measured swallows prey of up to 32 % of its
    length, the largest-mouthed up to 46 %, and none prey deeper than 27 % of its standard length. An aggressive
    fish attacks what is half as long as it or less; a crayfish grips fish of up to one and a half of its lengths.

    Parameters: animals as in `resolve`, each with its own ranges, mouth and temperament where it is not in
    the table; temperature_c [°C], ph, gh_dgh [°dGH] of the tank, source_ph and source_gh_dgh [°dGH] of the new
    water, each if known; planting and cover as classes.
    Returns verdict ("together", "with_care", "not_together"), findings (a list of {kind, severity, a, b,
    a_low, a_high, b_low, b_high}; b is "" where one animal is enough) and the common window of each range,
    null where there is none. Raises Refusal as `resolve` does, and range_half, range_turned.
    Sources: gaeta_2018, mihalitsis_bellwood_2017; ranges and company as the species table says, by common practice.

    >>> found = compatibility(animals=[{"species": "Pterophyllum scalare", "count": 2},
    ...                                {"species": "Paracheirodon innesi", "count": 10}])
    >>> found["verdict"], [one["kind"] for one in found["findings"]]
    ('not_together', ['eaten'])
    """
    kept = [_needs(index, one, animals[index]) for index, one in enumerate(resolve(animals))]
    tank = {"temperature": temperature_c, "ph": ph, "hardness": gh_dgh}
    source = {"ph": source_ph, "hardness": source_gh_dgh}
    findings = []
    for one in kept:
        findings += _water_of(one, tank, source)
        findings += _alone(one, planting, cover)
    for one, other in combinations(kept, 2):
        findings += _water_between(one, other)
        findings += _company(one, other)
        for eater, eaten in ((one, other), (other, one)):
            findings += _mouth(eater, eaten)
    windows = {}
    for name, (_, low_field, high_field) in RANGES.items():
        known = [one[name] for one in kept if one[name]]
        low, high = (max(r[0] for r in known), min(r[1] for r in known)) if known else (None, None)
        met = known and low <= high
        windows[low_field], windows[high_field] = (low, high) if met else (None, None)
    severities = {found["severity"] for found in findings}
    kinds = {found["kind"] for found in findings}
    notes = [note for note in dict.fromkeys(NOTE_OF.values()) if any(NOTE_OF.get(kind) == note for kind in kinds)]
    return {
        "verdict": "not_together" if "bar" in severities else "with_care" if severities else "together",
        **windows,
        "findings": findings,
        "notes": notes,
    }


def _needs(index: int, one: dict, animal: dict) -> dict:
    """A resolved animal with its needs: from its row, else from the keeper's own figures."""
    row = one["row"] or {}
    ranges = {}
    for name, (column, low_field, high_field) in RANGES.items():
        given = row.get(column, (None, None))
        low, high = animal.get(low_field, given[0]), animal.get(high_field, given[1])
        if (low is None) != (high is None):
            raise Refusal("range_half", f"animals.{index}.{low_field if low is None else high_field}")
        if low is not None and low > high:
            raise Refusal("range_turned", f"animals.{index}.{low_field}")
        ranges[name] = None if low is None else (float(low), float(high))
    return {
        **one,
        **ranges,
        "social": row.get("social", "gregarious" if animal.get("group_min", 1) > 1 else "unknown"),
        "group_min": animal.get("group_min", row.get("group_min", 1)),
        "level": row.get("level", "all"),
        "temperament": animal.get("temperament", row.get("temperament", "peaceful")),
        "mouth": animal.get("mouth", row.get("mouth", "picker")),
        "traits": row.get("traits", []),
        "genus": (animal.get("species", "").split() or [""])[0] if one["row"] else "",
        "family": row.get("family", one["kind"]),
    }


def _finding(kind: str, severity: str, a: dict, b: dict | None = None, ranges: tuple = ()) -> dict:
    found = {"kind": kind, "severity": severity, "a": a["name"], "b": b["name"] if b else ""}
    return {**found, **dict(zip(("a_low", "a_high", "b_low", "b_high"), ranges, strict=False))}


def _water_of(one: dict, tank: dict, source: dict) -> list[dict]:
    """Findings where the tank's water, or the new water, lies outside what one animal wants."""
    found = []
    for name, here in tank.items():
        severity = _outside(one, name, here)
        if severity:
            found.append(_finding(f"tank_{name}", severity, one, None, (*one[name], here, here)))
    for name, here in source.items():
        severity = _outside(one, name, here)
        if severity:
            # A tank that is known to hold the right water bears some of the wrong at a change.
            suits = tank[name] is not None and not _outside(one, name, tank[name])
            severity = "care" if suits else severity
            found.append(_finding(f"source_{name}", severity, one, None, (*one[name], here, here)))
    return found


def _outside(one: dict, name: str, here: float | None) -> str | None:
    """How serious it is that a figure lies outside the animal's range; None where it does not or is not known."""
    if not one[name] or here is None:
        return None
    low, high = one[name]
    off = max(low - here, here - high)
    if off <= 0:
        return None
    return "bar" if off > constants("compatibility_margins")[name] + TOLERANCE else "care"


def _alone(one: dict, planting: str, cover: str) -> list[dict]:
    found = []
    if not all(one[name] for name in RANGES):
        found.append(_finding("not_known", "unknown", one))
    few = 0 < one["count"] < one["group_min"]
    if few and one["social"] in ("shoal", "gregarious"):
        found.append(_finding("group_small", "care", one, None, (one["count"], one["group_min"])))
    if one["social"] == "solitary" and one["count"] > 1:
        severity = "bar" if one["temperament"] == "aggressive" else "care"
        found.append(_finding("better_alone", severity, one, None, (one["count"], 1)))
    if one["social"] == "pair" and one["count"] > 2 and one["temperament"] in FIERCE:
        found.append(_finding("too_many_rivals", "care", one, None, (one["count"], 2)))
    if planting != "none":
        found += [_finding(trait, "care", one) for trait in ("eats_plants", "digs") if _harms_plants(one, trait)]
    if cover == "open" and "jumps" in one["traits"]:
        found.append(_finding("jumps", "care", one))
    return found


def _harms_plants(one: dict, trait: str) -> bool:
    return trait in one["traits"] and (trait == "eats_plants" or one["kind"] == "fish")


def _water_between(one: dict, other: dict) -> list[dict]:
    found = []
    margins = constants("compatibility_margins")
    for name in RANGES:
        if one[name] and other[name]:
            gap = max(one[name][0] - other[name][1], other[name][0] - one[name][1])
            if gap > 0:
                severity = "bar" if gap > margins[name] + TOLERANCE else "care"
                found.append(_finding(f"{name}_apart", severity, one, other, (*one[name], *other[name])))
    return found


def _company(one: dict, other: dict) -> list[dict]:
    found = []
    same_place = one["level"] == other["level"] or "all" in (one["level"], other["level"])
    both_fish = one["kind"] == other["kind"] == "fish"
    if both_fish and same_place and one["temperament"] in FIERCE and other["temperament"] in FIERCE:
        aggressive = "aggressive" in (one["temperament"], other["temperament"])
        found.append(_finding("rivals", "bar" if aggressive else "care", one, other))
    for fierce, meek in ((one, other), (other, one)):
        found += _attack(fierce, meek)
        if "nips_fins" in fierce["traits"] and "long_fins" in meek["traits"]:
            found.append(_finding("nips_fins", "bar", fierce, meek))
    like = one["genus"] == other["genus"] != "" and one["name"] != other["name"]
    if like and (one["family"] == "Poeciliidae" or one["kind"] == other["kind"] == "shrimp"):
        found.append(_finding("may_cross", "care", one, other))
    return found


def _attack(fierce: dict, meek: dict) -> list[dict]:
    """Findings if `fierce` attacks, bullies or drives away `meek`."""
    if fierce["kind"] != "fish" or fierce["temperament"] not in FIERCE:
        return []
    found = []
    aggressive = fierce["temperament"] == "aggressive"
    meek_fish = meek["kind"] == "fish" and meek["temperament"] not in FIERCE
    small = meek["length_cm"] <= constants("company_practice")["small_share"] * fierce["adult_cm"] + TOLERANCE
    if aggressive and (meek["kind"] == "shrimp" or (meek_fish and small)):
        lengths = (fierce["adult_cm"], meek["length_cm"])
        found.append(_finding("attacks", "bar" if small else "care", fierce, meek, lengths))
    elif aggressive and meek_fish:
        found.append(_finding("bullies", "care", fierce, meek))
    # More than one of them breed, and then hold the bottom against all who live there.
    breeds = fierce["social"] != "solitary" and fierce["count"] != 1 and fierce["level"] in ("bottom", "all")
    if breeds and meek_fish and meek["level"] == "bottom":
        found.append(_finding("guards_ground", "bar" if aggressive else "care", fierce, meek))
    return found


def _mouth(eater: dict, eaten: dict) -> list[dict]:
    """Findings if `eater` may eat `eaten`, also where it eats only snails or the young of shrimp."""
    limits, lengths = constants("prey_size"), (eater["adult_cm"], eaten["length_cm"])
    if "eats_snails" in eater["traits"] and eaten["kind"] == "snail" and eaten["name"] != eater["name"]:
        return [_finding("eats_snails", "bar", eater, eaten)]
    ratio = eaten["length_cm"] / eater["adult_cm"]
    shapes = {**table("species")["shapes"], **table("species")["invertebrates"]}
    depth = eaten["length_cm"] * shapes[eaten["shape"]]["depth_per_length"]
    fits = depth <= limits["depth_of_standard"] * limits["standard_per_total"] * eater["adult_cm"]
    hunts = eater["mouth"] == "predator"
    takes = eater["mouth"] == "opportunist" and eater["kind"] == "fish"
    # A fish of the bottom meets less of what swims above it.
    usual = limits["length_usual" if eater["level"] == "bottom" else "length_usual_most"]
    if fits and ((hunts and ratio <= limits["length_any"]) or (takes and ratio <= usual)):
        return [_finding("eaten", "bar", eater, eaten, lengths)]
    if fits and ((hunts and ratio <= limits["length_largest"]) or (takes and ratio <= limits["length_any"])):
        return [_finding("may_be_eaten", "care", eater, eaten, lengths)]
    if eater["kind"] == "crayfish":
        return _claws(eater, eaten, ratio, lengths)
    if eater["kind"] == "fish" and eater["mouth"] != "grazer" and eaten["kind"] == "shrimp":
        return [_finding("young_eaten", "care", eater, eaten)]
    return []


def _claws(eater: dict, eaten: dict, ratio: float, lengths: tuple) -> list[dict]:
    """Claws reach what rests on the bottom whatever its length, and by night small fish that sleep near it."""
    rests = eaten["kind"] == "fish" and eaten["level"] == "bottom"
    if rests and ratio <= 1 + TOLERANCE:
        return [_finding("may_be_eaten", "bar", eater, eaten, lengths)]
    near = eaten["kind"] == "fish" and ratio <= constants("company_practice")["claws_share"] + TOLERANCE
    if eaten["kind"] == "shrimp" or rests or near:
        return [_finding("may_be_eaten", "care", eater, eaten, lengths)]
    return []
