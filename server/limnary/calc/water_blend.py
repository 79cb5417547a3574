"""How much of each water to mix for a wanted hardness and temperature."""

from limnary.calc.blend_solver import best_shares
from limnary.calc.refusal import Refusal

PROPERTIES = ("gh_dgh", "kh_dkh", "temperature_c")
# A miss of at most this, in degrees of hardness or °C, is below what anybody measures (assumption).
CLOSE_ENOUGH = 0.1


def water_blend(*, sources: list[dict], target: dict, litres: float) -> dict:
    """Litres of each source for the target, or as near as these waters get.

    Hardness and temperature mix by volume. The shares minimise the sum of the squared misses, where one degree
    of hardness counts like one kelvin; of equally good answers the one with the fewest waters is taken.

    Parameters: sources, each with name, gh_dgh, kh_dkh [°d], temperature_c [°C] and, where it is limited,
    litres [L]; target with at least one of gh_dgh, kh_dkh, temperature_c; litres to make [L].
    Returns litres, one for each source in order [L]; pour, the same with names and without waters not needed;
    reached, each property that is known for every water used; notes.
    Raises Refusal: no_target, source_unknown (at the field), not_enough_water.
    Source: mass_balance.

    >>> tap, rain = {"gh_dgh": 16}, {"gh_dgh": 0}
    >>> water_blend(sources=[tap, rain], target={"gh_dgh": 6}, litres=40)["litres"]
    [15.0, 25.0]
    """
    wanted = [name for name in PROPERTIES if name in target]
    if not wanted:
        raise Refusal("no_target")
    for index, source in enumerate(sources):
        for name in wanted:
            if name not in source:
                raise Refusal("source_unknown", f"sources.{index}.{name}")
    caps = [min(1.0, source["litres"] / litres) if "litres" in source else 1.0 for source in sources]
    rows = [[source[name] for source in sources] for name in wanted]
    shares = best_shares(rows, [target[name] for name in wanted], caps)
    if shares is None:
        raise Refusal("not_enough_water")
    reached = _reached_by(sources, shares)
    missed = any(abs(reached[name] - target[name]) > CLOSE_ENOUGH for name in wanted)
    amounts = [share * litres for share in shares]
    pour = [
        {"name": source.get("name") or f"water {index + 1}", "litres": amount}
        for index, (source, amount) in enumerate(zip(sources, amounts, strict=True))
        if amount > 0
    ]
    return {"litres": amounts, "pour": pour, "reached": reached, "notes": ["missed"] if missed else []}


def _reached_by(sources: list[dict], shares: list[float]) -> dict:
    """The mixture's properties; only those that are known for every water used."""
    reached = {}
    for name in PROPERTIES:
        used = [(share, source) for share, source in zip(shares, sources, strict=True) if share > 0]
        if all(name in source for _, source in used):
            total = 0.0
            for share, source in used:
                total += share * source[name]
            reached[name] = total
    return reached
