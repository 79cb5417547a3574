"""How long the oxygen of a closed vessel lasts, and what its water is like at the end."""

from limnary.calc.animals import resolve
from limnary.calc.carbonate import carbon_ratios, davies, equilibrium, ph_of
from limnary.calc.free_ammonia import free_ammonia
from limnary.calc.oxygen_night import breathing_mg_h
from limnary.calc.oxygen_saturation import KPA_PER_ATM, saturation_at_mg_l
from limnary.calc.refusal import Refusal
from limnary.calc.tables import constants, table
from limnary.calc.water_properties import saturation_kpa

# Longer than this nobody closes animals in, whatever the oxygen (common practice).
LONGEST_H = 48.0


def closed_water(
    *,
    water_l: float,
    temperature_c: float,
    animals: list[dict],
    air_l: float = 0.0,
    filling: str = "air",
    start_percent: float = 100.0,
    least_mg_l: float = 3.0,
    tan_mg_n_l: float = 0.0,
    ph: float | None = None,
    kh_dkh: float | None = None,
) -> dict:
    """Hours until the dissolved oxygen of a closed vessel falls to a limit, and its water then, or after 48 hours.

    oxygen = C V_water + G V_gas with G / C = share x (P - p_water) / (R T) x 32 / C_saturated (gas and water in
    balance: the vessel is carried or stirred);  hours = (oxygen - oxygen at the limit) / respiration.
    Carbon dioxide is 0.9 mol and ammonia 0.2 mol for each mole of oxygen; the pH follows from alkalinity and all
    inorganic carbon, of which the gas holds its share.

    Parameters: water_l, air_l (gas above it) [L]; filling "air" or "oxygen"; temperature_c [°C, 4 to 34]; animals as
    in `resolve`; start_percent [% of saturation with air]; least_mg_l [mg/L]; tan_mg_n_l [mg N/L]; ph and kh_dkh
    [°d], without both of which carbon dioxide and free ammonia are left out. At sea level.
    Returns, unless nobody breathes, hours, hours_low (animals at 2.5 times the rate, as when frightened) and
    hours_still (of the water's own oxygen alone) [h], tan_then_mg_n_l [mg N/L], and with ph and kh_dkh ph_then,
    co2_then_mg_l [mg/L], nh3_then_mg_n_l [mg N/L]; animals_g [g], animals_mg_h [mg/h], oxygen_mg (usable) [mg]; notes.
    Raises Refusal as `resolve` does, and "no_such_water".
    Source: benson_krause_1984, clarke_johnston_1999, plummer_busenberg_1982, fish_quotients (from memory),
    epa_1986_oxygen.

    >>> fish = [{"species": "Paracheirodon innesi", "count": 10}]
    >>> round(closed_water(water_l=1, air_l=2, temperature_c=24, animals=fish)["hours"])
    129
    """
    stock = resolve(animals)
    rate_mg_h = sum(one["count"] * breathing_mg_h(one["mass_g"], temperature_c) for one in stock)
    saturated_mg_l = saturation_at_mg_l(temperature_c, KPA_PER_ATM)
    own_mg = (saturated_mg_l * start_percent / 100 - least_mg_l) * water_l
    gas_mg = air_l * _gas_oxygen_mg_l(temperature_c, filling)
    gas_at_limit_mg = air_l * _gas_oxygen_mg_l(temperature_c, "air") * least_mg_l / saturated_mg_l
    oxygen_mg = max(own_mg + gas_mg - gas_at_limit_mg, 0.0)
    answer = {
        "oxygen_mg": oxygen_mg,
        "animals_g": sum(one["count"] * one["mass_g"] for one in stock),
        "animals_mg_h": rate_mg_h,
    }
    if rate_mg_h <= 0:
        return {**answer, "notes": []}
    hours = oxygen_mg / rate_mg_h
    used_mg = rate_mg_h * min(hours, LONGEST_H)
    used_mol = used_mg / constants("oxygen_molar_mass")["mg_per_mmol"] / 1000
    then = _water_then(water_l, air_l, temperature_c, ph, kh_dkh, tan_mg_n_l, used_mol)
    return {
        **answer,
        "hours": hours,
        "hours_low": hours / constants("animal_breathing")["frightened"],
        "hours_still": max(own_mg, 0.0) / rate_mg_h,
        **then,
        "notes": _notes(hours, then, temperature_c),
    }


def _gas_oxygen_mg_l(temperature_c: float, filling: str) -> float:
    """Oxygen [mg] in a litre of moist gas at one atmosphere: air, or pure oxygen."""
    gas = constants("gas")
    share = gas["oxygen_share_of_air"] if filling == "air" else 1.0
    mmol_l = share * (KPA_PER_ATM - saturation_kpa(temperature_c)) / (gas["r_j_mol_k"] * _kelvin(temperature_c)) * 1000
    return mmol_l * constants("oxygen_molar_mass")["mg_per_mmol"]


def _water_then(
    water_l: float,
    air_l: float,
    temperature_c: float,
    ph: float | None,
    kh_dkh: float | None,
    tan_mg_n_l: float,
    used_mol: float,
) -> dict:
    """Ammonia, and with pH and carbonate hardness carbon dioxide, pH and free ammonia, once `used_mol` is breathed."""
    quotients = constants("fish_quotients")
    n_mol_l = used_mol * quotients["ammonia_per_oxygen"] / water_l
    tan_then = tan_mg_n_l + n_mol_l * constants("molar_mass")["n_g_mol"] * 1000
    if ph is None or kh_dkh is None:
        return {"tan_then_mg_n_l": tan_then}
    kelvin = _kelvin(temperature_c)
    alkalinity = kh_dkh * table("hardness_scales")["scales"]["dh"]["mmol_l"] * 2 / 1000
    activity = davies(alkalinity)
    start = carbon_ratios(ph, kelvin, activity)
    left = alkalinity - start["hydroxide"] - _free_mol_l(tan_mg_n_l, ph, temperature_c)
    if left <= 0:
        raise Refusal("no_such_water")
    carbon = left / (1 + 2 * start["carbonate"]) * (1 + start["carbon_dioxide"] + start["carbonate"])
    carbon += used_mol * quotients["carbon_dioxide_per_oxygen"] / water_l
    # A litre of gas holds this many times the carbon dioxide of a litre of water.
    in_gas = KPA_PER_ATM / (equilibrium("carbon_dioxide_gas", kelvin) * constants("gas")["r_j_mol_k"] * kelvin)
    gas_share = 1 + in_gas * air_l / water_l

    def bicarbonate_at(ratios: dict) -> float:
        return carbon / (1 + ratios["carbon_dioxide"] * gas_share + ratios["carbonate"])

    def alkalinity_at(ph_then: float) -> float:
        ratios = carbon_ratios(ph_then, kelvin, activity)
        free = _free_mol_l(tan_then, ph_then, temperature_c)
        return bicarbonate_at(ratios) * (1 + 2 * ratios["carbonate"]) + ratios["hydroxide"] + free

    # An animal gives off ammonia as NH3, which takes up a hydrogen ion.
    ph_then = ph_of(alkalinity + n_mol_l, alkalinity_at)
    ratios = carbon_ratios(ph_then, kelvin, activity)
    co2_mol_l = bicarbonate_at(ratios) * ratios["carbon_dioxide"]
    return {
        "tan_then_mg_n_l": tan_then,
        "ph_then": ph_then,
        "co2_then_mg_l": co2_mol_l * constants("molar_mass")["co2_g_mol"] * 1000,
        "nh3_then_mg_n_l": free_ammonia(tan_mg_n_l=tan_then, ph=ph_then, temperature_c=temperature_c)["nh3_mg_n_l"],
    }


def _free_mol_l(tan_mg_n_l: float, ph: float, temperature_c: float) -> float:
    free = free_ammonia(tan_mg_n_l=tan_mg_n_l, ph=ph, temperature_c=temperature_c)["nh3_mg_n_l"]
    return free / constants("molar_mass")["n_g_mol"] / 1000


def _kelvin(temperature_c: float) -> float:
    return temperature_c + constants("kelvin")["zero_celsius_k"]


def _notes(hours: float, then: dict, temperature_c: float) -> list[str]:
    limits = table("limits")["limits"]
    act_nh3_mg_n_l = limits["free_ammonia_act_mg_l"]["value"] / constants("nitrogen_species")["nh3_per_n"]
    notes = []
    if hours <= 0:
        notes.append("no_oxygen")
    if hours > LONGEST_H:
        notes.append("too_long")
    if then.get("co2_then_mg_l", 0.0) > limits["carbon_dioxide_mg_l"]["value"]:
        notes.append("carbon_dioxide")
    if then.get("nh3_then_mg_n_l", 0.0) > act_nh3_mg_n_l:
        notes.append("free_ammonia")
    if temperature_c > constants("clarke_johnston_1999")["warmest_c"]:
        notes.append("warmer_than_measured")
    return notes
