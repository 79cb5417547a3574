"""Watts that keep a tank warm: heat lost through panes and top, and by evaporation."""

import math

from limnary.calc.evaporation import evaporation
from limnary.calc.tables import constants
from limnary.calc.water_properties import density_kg_m3

_LID_M = 0.004  # a common cover glass; its resistance hardly matters


def heater_power(
    *,
    length_cm: float,
    width_cm: float,
    height_cm: float,
    temperature_c: float,
    room_c: float,
    glass_mm: float = 6.0,
    humidity_percent: float = 50.0,
    open_fraction: float = 1.0,
    reserve: float = 1.25,
    water_l: float | None = None,
) -> dict:
    """Steady heat loss at the wanted temperature, and a heater with some reserve, rounded up to 5 W.

    loss = sum(U A) (T - T_room) + evaporation;  U = 1 / (1/h_water + d/k + R_surface)

    Parameters: length_cm, width_cm, height_cm [cm], glass_mm [mm], temperature_c [°C], room_c [°C],
    humidity_percent [%], open_fraction [1], reserve [1, 1 or more], water_l [L].
    Returns heater_w, loss_w, glass_loss_w, top_loss_w, evaporation_w [W], side_w_m2_k [W/m²/K] and, with
    water_l and a loss above 0, warming_c_hour and cooling_c_hour [°C/h] at the wanted temperature.
    A negative loss is a gain.
    Source: iso_6946, smith_lof_jones_1998; the resistance under a lid is our assumption.

    >>> heater_power(length_cm=80, width_cm=35, height_cm=38, temperature_c=25, room_c=18)["heater_w"]
    135
    """
    heat = constants("tank_heat_loss")
    film = 1 / heat["water_film_w_m2_k"]
    pane = glass_mm / 1000 / heat["glass_w_m_k"]
    side = 1 / (film + pane + heat["side_m2_k_w"])
    base = 1 / (film + pane + heat["board_m2_k_w"] + heat["down_m2_k_w"])
    bare = 1 / (film + heat["up_m2_k_w"])
    lid = 1 / (heat["under_lid_m2_k_w"] + _LID_M / heat["glass_w_m_k"] + heat["up_m2_k_w"])
    sides_m2 = 2 * (length_cm + width_cm) * height_cm / 10_000
    base_m2 = length_cm * width_cm / 10_000
    warmer = temperature_c - room_c
    glass_loss_w = (side * sides_m2 + base * base_m2) * warmer
    top_loss_w = (open_fraction * bare + (1 - open_fraction) * lid) * base_m2 * warmer
    evaporation_w = evaporation(
        temperature_c=temperature_c,
        room_c=room_c,
        length_cm=length_cm,
        width_cm=width_cm,
        humidity_percent=humidity_percent,
        open_fraction=open_fraction,
    )["heat_w"]
    loss_w = glass_loss_w + top_loss_w + evaporation_w
    practice = constants("heaters_in_practice")
    steps = math.ceil(max(loss_w, 0.0) * reserve / practice["step_w"] - 1e-9)
    heater_w = max(steps, 0) * practice["step_w"]
    out = {
        "heater_w": heater_w,
        "loss_w": loss_w,
        "glass_loss_w": glass_loss_w,
        "top_loss_w": top_loss_w,
        "evaporation_w": evaporation_w,
        "side_w_m2_k": side,
        "notes": _notes_on(loss_w, warmer, heater_w),
    }
    if water_l is not None and loss_w > 0:
        kj_k = water_l * density_kg_m3(temperature_c) / 1000 * heat["heat_of_water_kj_kg_k"]
        out["warming_c_hour"] = (heater_w - loss_w) * 3.6 / kj_k
        out["cooling_c_hour"] = loss_w * 3.6 / kj_k
    return out


def _notes_on(loss_w: float, warmer: float, heater_w: float) -> list[str]:
    notes = ["none_needed"] if loss_w <= 0 else []
    if warmer < 0:
        notes.append("warm_room")
    if heater_w >= constants("heaters_in_practice")["two_from_w"]:
        notes.append("two_heaters")
    return notes
