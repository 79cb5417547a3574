"""Litres of a tank: to the rim, and of water when filled, less substrate and hardscape."""

import math

from limnary.calc.refusal import Refusal
from limnary.calc.tank_shapes import floor_cm2
from limnary.calc.tolerance import TOLERANCE

CM3_PER_L = 1000


def volume(
    *,
    shape: str,
    height_cm: float,
    measures: str = "inside",
    glass_mm: float = 0.0,
    fill_height_cm: float | None = None,
    substrate_l: float = 0.0,
    substrate_porosity: float = 0.4,
    hardscape_kg: float = 0.0,
    hardscape_density_kg_l: float = 2.6,
    metered_l: float | None = None,
    **plan: float,
) -> dict:
    """Gross litres to the rim and litres of water at the fill height.

    water = held(fill) - substrate (1 - porosity) - hardscape / density; a metered fill overrides it.
    Outside measures lose one glass thickness at every pane they cross, the bottom included.
    A bowl is a sphere cut off at the rim: held = pi h^2 (3 R - h) / 3.

    Parameters: shape; length_cm, width_cm, diameter_cm, bow_cm as the shape needs [cm];
    height_cm [cm]; glass_mm [mm], used for outside measures only; fill_height_cm from the inside
    bottom [cm], the rim when left out; substrate_l bulk [L]; hardscape_kg [kg]; metered_l [L].
    Returns gross_l, water_l [L], surface_cm2 [cm²], and intermediate figures; notes.
    Raises Refusal: glass_too_thick, bow_too_deep, bowl_too_tall, fill_above_rim,
    substrate_too_much, displaced_too_much.
    Source: solid_geometry; waltz_1969 and mineral_density for the defaults.

    >>> answer = volume(shape="cuboid", length_cm=80, width_cm=35, height_cm=40)
    >>> answer["gross_l"], answer["water_l"]
    (112.0, 112.0)
    """
    glass_cm = glass_mm / 10 if measures == "outside" else 0.0
    inside_height_cm = height_cm - glass_cm
    if inside_height_cm <= 0:
        raise Refusal("glass_too_thick")
    if fill_height_cm is not None and fill_height_cm > inside_height_cm + TOLERANCE:
        raise Refusal("fill_above_rim")
    filled_to_cm = inside_height_cm if fill_height_cm is None else min(fill_height_cm, inside_height_cm)
    if shape == "bowl":
        diameter_cm = plan["diameter_cm"] - 2 * glass_cm
        if diameter_cm <= 0:
            raise Refusal("glass_too_thick")
        if inside_height_cm > diameter_cm + TOLERANCE:
            raise Refusal("bowl_too_tall")
        gross_l, _ = _bowl(diameter_cm / 2, inside_height_cm)
        filled_l, surface_cm2 = _bowl(diameter_cm / 2, filled_to_cm)
    else:
        surface_cm2 = floor_cm2(shape, plan, glass_cm)
        gross_l = surface_cm2 * inside_height_cm / CM3_PER_L
        filled_l = surface_cm2 * filled_to_cm / CM3_PER_L
    if substrate_l >= filled_l and substrate_l > 0:
        raise Refusal("substrate_too_much")
    displaced_l = substrate_l * (1 - substrate_porosity) + hardscape_kg / hardscape_density_kg_l
    if displaced_l >= filled_l:
        raise Refusal("displaced_too_much")
    notes = []
    if fill_height_cm is None and metered_l is None:
        notes.append("filled_to_rim")
    if metered_l is not None and metered_l > gross_l + TOLERANCE:
        notes.append("metered_above_gross")
    return {
        "gross_l": gross_l,
        "water_l": filled_l - displaced_l if metered_l is None else metered_l,
        "surface_cm2": surface_cm2,
        "inside_height_cm": inside_height_cm,
        "filled_to_cm": filled_to_cm,
        "filled_l": filled_l,
        "displaced_l": displaced_l,
        "notes": notes,
    }


def _bowl(radius_cm: float, depth_cm: float) -> tuple[float, float]:
    """Litres and water surface [cm²] of a sphere filled to a depth from its lowest point."""
    depth_cm = min(depth_cm, 2 * radius_cm)
    held_cm3 = math.pi * depth_cm * depth_cm * (3 * radius_cm - depth_cm) / 3
    return held_cm3 / CM3_PER_L, math.pi * depth_cm * (2 * radius_cm - depth_cm)
