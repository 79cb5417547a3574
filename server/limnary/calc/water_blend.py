"""How much of each water to mix for a wanted hardness and temperature."""

from limnary.calc.blend_solver import best_shares
from limnary.calc.refusal import Refusal

PROPERTIES = ("gh_dgh", "kh_dkh", "temperature_c")
# Nearer than this, in degrees of either kind, nobody measures (assumption).
CLOSE_ENOUGH = 0.1


def water_blend(*, sources: list[dict], target: dict, litres: float) -> dict:
    """Litres of each source for the target, or as near as these waters come.

    Hardness and warmth mix by volume. The shares make the sum of the squared misses least, one degree of
    hardness counting like one kelvin; among equals the fewest waters are used.

    Parameters: sources, each with name, gh_dgh, kh_dkh [°d], temperature_c [°C] and, where it is limited,
    litres [L]; target with at least one of gh_dgh, kh_dkh, temperature_c; litres to make [L].
    Returns litres, one for each source in order [L]; pour, the same with names, waters not needed left out;
    reached, each property known of every water used; notes.
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
    reached = _reached(sources, shares)
    missed = any(abs(reached[name] - target[name]) > CLOSE_ENOUGH for name in wanted)
    amounts = [share * litres for share in shares]
    pour = [
        {"name": source.get("name") or f"water {index + 1}", "litres": amount}
        for index, (source, amount) in enumerate(zip(sources, amounts, strict=True))
        if amount > 0
    ]
    return {"litres": amounts, "pour": pour, "reached": reached, "notes": ["missed"] if missed else []}


def _reached(sources: list[dict], shares: list[float]) -> dict:
    """What the mixture has, property by property, where every water used says it."""
    reached = {}
    for name in PROPERTIES:
        used = [(share, source) for share, source in zip(shares, sources, strict=True) if share > 0]
        if all(name in source for _, source in used):
            total = 0.0
            for share, source in used:
                total += share * source[name]
            reached[name] = total
    return reached
