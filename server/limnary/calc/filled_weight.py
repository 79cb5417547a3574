"""The weight of a filled tank with contents, equipment and stand, and its pressure on the floor."""

from limnary.calc.refusal import Refusal
from limnary.calc.tables import constants
from limnary.calc.tolerance import TOLERANCE
from limnary.calc.water_properties import density_kg_m3


def filled_weight(
    *,
    length_cm: float | None = None,
    width_cm: float | None = None,
    height_cm: float | None = None,
    measures: str = "outside",
    glass_mm: float | None = None,
    base_glass_mm: float | None = None,
    tank_kg: float | None = None,
    fill_height_cm: float | None = None,
    water_l: float | None = None,
    temperature_c: float = 25.0,
    substrate_kg: float = 0.0,
    hardscape_kg: float = 0.0,
    hardscape_density_kg_l: float = 2.6,
    equipment_kg: float = 0.0,
    stand_kg: float = 0.0,
    footprint_length_cm: float | None = None,
    footprint_width_cm: float | None = None,
) -> dict:
    """Total mass, and the pressure of its weight on the footprint.

    total = glass + water + substrate + hardscape + equipment + stand;  pressure = total x g / footprint

    Parameters: length_cm, width_cm, height_cm [cm], measures ("outside" | "inside"), glass_mm and base_glass_mm
    [mm] of a box open on top; or tank_kg [kg], which then needs water_l [L] and the footprint [cm].
    fill_height_cm [cm, from the inside bottom; by default the rim]; temperature_c [°C]; substrate_kg (dry),
    hardscape_kg, equipment_kg, stand_kg [kg]; hardscape_density_kg_l [kg/L]. water_l is the water alone, as metered.
    Returns total_kg, foot_kg, empty_tank_kg, water_kg [kg], footprint_kpa and dwelling_kpa, what floors are commonly
    designed for [kPa], density_kg_m3, footprint_m2.
    Raises Refusal: glass_too_thick, above_rim, more_than_it_holds, no_room_for_water, water_needed,
    footprint_needed, base_without_measures.
    Source: tanaka_2001 (water), solid_densities (glass, grains), si_brochure (g).

    >>> round(filled_weight(tank_kg=20, water_l=100, footprint_length_cm=80, footprint_width_cm=40)["total_kg"], 1)
    119.7
    """
    notes = []
    density = density_kg_m3(temperature_c)
    if tank_kg is not None:
        if base_glass_mm is not None:
            raise Refusal("base_without_measures")
        if water_l is None:
            raise Refusal("water_needed")
        if footprint_length_cm is None:
            raise Refusal("footprint_needed")
    else:
        box = _box_of(length_cm, width_cm, height_cm, measures, glass_mm, base_glass_mm)
        tank_kg = box["glass_l"] / 1000 * constants("solids")["glass_kg_m3"]
        if footprint_length_cm is None:
            footprint_length_cm, footprint_width_cm = box["length_cm"], box["width_cm"]
        if water_l is None:
            if fill_height_cm is None:
                notes.append("to_the_rim")
            pushed_out_l = substrate_kg / constants("solids")["grains_kg_l"] + hardscape_kg / hardscape_density_kg_l
            water_l = _litres_in(box, fill_height_cm, pushed_out_l)
        elif water_l > box["inside_cm2"] * box["inside_height_cm"] / 1000 + TOLERANCE:
            raise Refusal("more_than_it_holds")
    water_kg = water_l * density / 1000
    total_kg = tank_kg + water_kg + substrate_kg + hardscape_kg + equipment_kg + stand_kg
    footprint_m2 = footprint_length_cm * footprint_width_cm / 10_000
    footprint_kpa = total_kg * constants("standard_gravity")["g_m_s2"] / 1000 / footprint_m2
    if total_kg > constants("floor")["heavy_kg"]:
        notes.append("heavy")
    dwelling_kpa = constants("floor")["dwelling_kpa"]
    if footprint_kpa > dwelling_kpa:
        notes.append("over_room_figure")
    return {
        "total_kg": total_kg,
        "footprint_kpa": footprint_kpa,
        "dwelling_kpa": dwelling_kpa,
        "foot_kg": total_kg / 4,
        "empty_tank_kg": tank_kg,
        "water_kg": water_kg,
        "density_kg_m3": density,
        "footprint_m2": footprint_m2,
        "notes": notes,
    }


def _box_of(
    length_cm: float,
    width_cm: float,
    height_cm: float,
    measures: str,
    glass_mm: float,
    base_glass_mm: float | None,
) -> dict:
    """Outside and inside dimensions of a box of five panes, measured on either side."""
    walls_cm = 2 * glass_mm / 10
    base_cm = (glass_mm if base_glass_mm is None else base_glass_mm) / 10
    given = (length_cm, width_cm, height_cm)
    glass = (walls_cm, walls_cm, base_cm)
    # Use inside measures as given, never plus and minus the glass: 40 + 0.8 - 0.8 is not exactly 40, and a fill
    # to the rim would be refused.
    outside = [side + panes for side, panes in zip(given, glass, strict=True)] if measures == "inside" else given
    inside = given if measures == "inside" else [side - panes for side, panes in zip(given, glass, strict=True)]
    length, width, height = outside
    inside_length, inside_width, inside_height = inside
    if inside_length <= 0 or inside_width <= 0 or inside_height <= 0:
        raise Refusal("glass_too_thick")
    inside_cm2 = inside_length * inside_width
    return {
        "length_cm": length,
        "width_cm": width,
        "inside_cm2": inside_cm2,
        "inside_height_cm": inside_height,
        "glass_l": (length * width * height - inside_cm2 * inside_height) / 1000,
    }


def _litres_in(box: dict, fill_height_cm: float | None, pushed_out_l: float) -> float:
    """Water below the fill line, less what substrate and hardscape displace."""
    depth_cm = box["inside_height_cm"] if fill_height_cm is None else fill_height_cm
    if depth_cm > box["inside_height_cm"] + TOLERANCE:
        raise Refusal("above_rim")
    water_l = box["inside_cm2"] * depth_cm / 1000 - pushed_out_l
    if water_l < 0:
        raise Refusal("no_room_for_water")
    return water_l
