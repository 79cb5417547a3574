"""Carbon dioxide from pH and carbonate hardness, by the carbonate equilibria instead of a rule of thumb."""

from limnary.calc.carbonate import carbon_ratios, davies, equilibrium
from limnary.calc.refusal import Refusal
from limnary.calc.tables import constants, table

PAIRING_ROUNDS = 8


def carbon_dioxide(*, ph: float, kh_dkh: float, temperature_c: float, gh_dgh: float = 0.0) -> dict:
    """Dissolved CO2, and the error of the rule 3 x KH x 10^(7 - pH).

    alkalinity = HCO3 (1 + 2 CO3/HCO3 + CaHCO3/HCO3 + 2 CaCO3/HCO3) + OH - H;  CO2 = g HCO3 H / K1
    K1, K2, Kw and both calcium ion pairs depend on temperature after Plummer and Busenberg. g is the activity
    coefficient of singly charged ions after Davies, g^4 that of doubly charged ones. The ionic strength comes
    from both hardnesses, with chloride or sodium to balance: max(alkalinity + M, 3 M), M the hardness in mol/L.

    Parameters: ph (of a meter), kh_dkh, gh_dgh [°d] (all hardness taken as calcium), temperature_c [°C].
    Returns co2_mg_l, rule_mg_l [mg/L], rule_off_percent [%], the intermediate bicarbonate_mmol_l; notes.
    Raises Refusal("no_such_water") when the pH is too high for so little alkalinity.
    Source: plummer_busenberg_1982, davies_1962; valid 0 to 40 °C here.

    >>> round(carbon_dioxide(ph=7, kh_dkh=4, temperature_c=25)["co2_mg_l"], 1)
    13.5
    """
    kelvin = temperature_c + constants("kelvin")["zero_celsius_k"]
    mmol_l_per_dh = table("hardness_scales")["scales"]["dh"]["mmol_l"]
    alkalinity = kh_dkh * mmol_l_per_dh * 2 / 1000
    hardness = gh_dgh * mmol_l_per_dh / 1000
    activity = davies(max(alkalinity + hardness, 3 * hardness))
    ratios = carbon_ratios(ph, kelvin, activity)
    carbonate = ratios["carbonate"]
    pair = equilibrium("calcium_bicarbonate", kelvin) * activity**4
    neutral_pair = equilibrium("calcium_carbonate", kelvin) * activity**8 * carbonate
    left = alkalinity - ratios["hydroxide"]
    if left <= 0:
        raise Refusal("no_such_water")
    calcium = hardness
    for _ in range(PAIRING_ROUNDS):
        bicarbonate = left / (1 + 2 * carbonate + (pair + 2 * neutral_pair) * calcium)
        calcium = hardness / (1 + (pair + neutral_pair) * bicarbonate)
    co2_mg_l = ratios["carbon_dioxide"] * bicarbonate * constants("molar_mass")["co2_g_mol"] * 1000
    rule_mg_l = 3 * kh_dkh * 10 ** (7 - ph)
    return {
        "co2_mg_l": co2_mg_l,
        "rule_mg_l": rule_mg_l,
        "rule_off_percent": (rule_mg_l / co2_mg_l - 1) * 100,
        "bicarbonate_mmol_l": bicarbonate * 1000,
        "notes": ["high"] if co2_mg_l > table("limits")["limits"]["carbon_dioxide_mg_l"]["value"] else [],
    }
