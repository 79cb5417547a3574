"""The carbonate system of fresh water: equilibria, activity, and the pH that goes with alkalinity and carbon."""

import math
from collections.abc import Callable

from limnary.calc.tables import constants

# Halving pH 0 to 14 this often leaves a span below 1e-13.
HALVINGS = 47


def equilibrium(name: str, kelvin: float) -> float:
    """The constant of one equilibrium: 10^(a + b T + c/T + d log10 T + e/T^2), T in kelvin.

    Source: plummer_busenberg_1982.
    """
    k = constants(f"equilibrium_{name}")
    exponent = k["a"] + k["b"] * kelvin + k["c"] / kelvin + k["d"] * math.log10(kelvin) + k["e"] / (kelvin * kelvin)
    return 10**exponent


def davies(ionic_strength: float) -> float:
    """The activity coefficient of singly charged ions at this ionic strength [mol/L]. Source: davies_1962."""
    constant = constants("davies_1962")
    root = math.sqrt(ionic_strength)
    return 10 ** (-constant["a_25c"] * (root / (1 + root) - constant["linear"] * ionic_strength))


def carbon_ratios(ph: float, kelvin: float, activity: float) -> dict:
    """carbon_dioxide (CO2 / HCO3), carbonate (CO3 / HCO3) and hydroxide (OH - H [mol/L]) at a pH.

    `activity` is the coefficient g of singly charged ions; doubly charged ones have g^4 after Davies.
    """
    hydrogen = 10**-ph
    carbon_dioxide = activity * hydrogen / equilibrium("carbonic_1", kelvin)
    carbonate = equilibrium("carbonic_2", kelvin) * activity / (activity**4 * hydrogen)
    hydroxide = (equilibrium("water", kelvin) / hydrogen - hydrogen) / activity
    return {"carbon_dioxide": carbon_dioxide, "carbonate": carbonate, "hydroxide": hydroxide}


def ph_of(alkalinity: float, alkalinity_at: Callable[[float], float]) -> float:
    """The pH at which `alkalinity_at`, which rises with pH, equals `alkalinity` [mol/L]; by halving pH 0 to 14."""
    low, high = 0.0, 14.0
    for _ in range(HALVINGS):
        middle = (low + high) / 2
        if alkalinity_at(middle) < alkalinity:
            low = middle
        else:
            high = middle
    return (low + high) / 2
