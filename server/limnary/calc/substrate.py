"""Litres, kilograms and shop bags of a layered, sloping bed."""

import math

from limnary.calc.refusal import Refusal
from limnary.calc.tables import constants
from limnary.calc.tolerance import TOLERANCE


def substrate(
    *,
    length_cm: float,
    width_cm: float,
    layers: list[dict],
    support_bags: int = 0,
    support_bag_l: float | None = None,
    support_fill: float = 0.5,
) -> dict:
    """Amounts of each layer of a bed whose depth changes linearly from front to back.

    litres = length x width x (front + back) / 2;  mesh bags under the slope are subtracted from the lowest layer

    Parameters: length_cm, width_cm [cm, inside, width from front to back]; layers, the lowest first, each
    {role, material, front_cm, back_cm [cm], density_kg_l [kg/L], pack_l [L] or pack_kg [kg]};
    support_bags [count], support_bag_l [L when full], support_fill [1].
    Returns litres [L], kg [kg, dry], layers [{litres, kg, packs}], support_l [L], front_cm, back_cm [cm],
    slope_deg [°] and, above a nutrient layer, cap_front_cm and cap_back_cm [cm].
    Raises Refusal: density_needed, one_pack_size, bag_size_needed, bags_do_not_fit.
    Source: substrate_densities, en_1991_1_1 (angle of repose), keepers_practice (depths).

    >>> substrate(length_cm=80, width_cm=35, layers=[{"material": "sand", "front_cm": 5, "back_cm": 5}])["litres"]
    14.0
    """
    if support_bags > 0 and support_bag_l is None:
        raise Refusal("bag_size_needed")
    support_l = support_bags * support_bag_l * support_fill if support_bags > 0 else 0.0
    base_cm2 = length_cm * width_cm
    amounts = []
    for place, layer in enumerate(layers):
        litres = base_cm2 * (layer["front_cm"] + layer["back_cm"]) / 2 / 1000
        if place == 0:
            if support_l > litres + TOLERANCE:
                raise Refusal("bags_do_not_fit")
            litres = max(0.0, litres - support_l)
        amounts.append(_amount_of(layer, litres, place))
    front_cm = sum(layer["front_cm"] for layer in layers)
    back_cm = sum(layer["back_cm"] for layer in layers)
    rise = (back_cm - front_cm) / width_cm
    out = {
        "litres": sum(amount["litres"] for amount in amounts),
        "kg": sum(amount["kg"] for amount in amounts),
        "layers": amounts,
        "support_l": support_l,
        "front_cm": front_cm,
        "back_cm": back_cm,
        "slope_deg": math.degrees(math.atan(rise)),
    }
    notes = []
    nutrient = [place for place, layer in enumerate(layers) if layer.get("role") == "nutrient"]
    if nutrient:
        cap = layers[nutrient[-1] + 1 :]
        out["cap_front_cm"] = sum(layer["front_cm"] for layer in cap)
        out["cap_back_cm"] = sum(layer["back_cm"] for layer in cap)
        notes += _cap_notes(out["cap_front_cm"], out["cap_back_cm"])
        if any(_deepest(layers[place]) > _practice("nutrient_most_cm") for place in nutrient):
            notes.append("deep_nutrient")
    if max(front_cm, back_cm) > _practice("bed_most_cm"):
        notes.append("deep_bed")
    if abs(rise) > math.tan(math.radians(constants("angle_of_repose")["sand_deg"])):
        notes.append("steep")
    return {**out, "notes": notes}


def _amount_of(layer: dict, litres: float, place: int) -> dict:
    density = layer.get("density_kg_l")
    if density is None:
        if layer["material"] == "other":
            raise Refusal("density_needed", f"layers.{place}.density_kg_l")
        density = constants("bulk_density")[layer["material"]]
    kg = litres * density
    if "pack_l" in layer and "pack_kg" in layer:
        raise Refusal("one_pack_size", f"layers.{place}.pack_kg")
    amount = {"litres": litres, "kg": kg}
    if "pack_l" in layer:
        amount["packs"] = _packs(litres / layer["pack_l"])
    elif "pack_kg" in layer:
        amount["packs"] = _packs(kg / layer["pack_kg"])
    return amount


def _packs(exact: float) -> int:
    """Whole bags, rounded up; an excess of 1e-9 bag is float rounding and needs no further bag."""
    return math.ceil(exact - 1e-9)


def _cap_notes(front_cm: float, back_cm: float) -> list[str]:
    if max(front_cm, back_cm) == 0:
        return ["no_cap"]
    thin = ["thin_cap"] if min(front_cm, back_cm) < _practice("cap_least_cm") else []
    thick = ["thick_cap"] if max(front_cm, back_cm) > _practice("cap_most_cm") else []
    return thin + thick


def _deepest(layer: dict) -> float:
    return max(layer["front_cm"], layer["back_cm"])


def _practice(name: str) -> float:
    return constants("substrate_practice")[name]
