"""Two-step nitrification with plants: one stable step of the outlook's model, for a whole cloud of draws.

    dn1/dt = p - r1 - u n1/(Ku+n1),         r1 = e1 C1 n1 / ((K1 + n1 (1 + f/F1)) (1 + g/G1))
    dn2/dt = r1 - r2,                       r2 = e2 C2 n2 / ((K2 + n2 (1 + f/F2)) (1 + g/G2))
    dn3/dt = r2 - v,                        v = (the uptake that ammonia did not cover) n3/(Kn+n3)
    dC1/dt = m1 r1 - d b C1,                dC2/dt = m2 r2 - d b C2
    dA/dt  = a (p - u n1/(Ku+n1) - 2 r1 + v)

n: total ammonia, nitrite, nitrate [mg N/L]; p: input [mg N/L/day]; u: plant uptake [mg N/L/day];
C: capacity of the ammonia (1) and nitrite (2) oxidisers at saturation, 20 °C and pH 7.2 [mg N/L/day];
A: alkalinity [dKH], a [dKH/(mg N/L)]: one equivalent a mole of nitrogen, by electroneutrality (two for nitrification);
m: growth [1/day]; b: decay [1/day]; e and d: factors of the current water (see `activity` and `conditions`);
f, g: free ammonia and free nitrous acid [mg N/L]; F, G: what halves a rate, uncompetitive and noncompetitive.
Sources: metcalf_eddy_2014, ekama_wentzel_2008, park_bae_2009, iupac_atomic_weights.
"""

import math
from functools import cache
from typing import NamedTuple

import numpy as np

from limnary.calc.carbonate import equilibrium
from limnary.calc.free_ammonia import free_ammonia
from limnary.calc.model_settings import settings as settings
from limnary.calc.tables import constants, table

# One row per quantity, one column per draw.
TAN, NITRITE, NITRATE, CAPACITY_1, CAPACITY_2, INPUT, UPTAKE = range(7)
GROWTH_1, GROWTH_2, HALF_1, HALF_2, DECAY, PH_OFFSET, APPETITE = range(7, 14)
# Alkalinity of the tank and of the water that changes bring [dKH]; dissolved carbon dioxide [mg/L]; how much free
# ammonia and nitrous acid the bacteria bear, as a multiple of the published; alkalinity that a dose of ammonia brings
# (0: a salt, 1: ammonia water).
KH, SOURCE_KH, CO2, TOLERANCE, ALKALI = range(14, 19)
ROWS = 19


class Water(NamedTuple):
    """What the water of each draw does to its bacteria: acid and the shares of shape (N,), the others for all draws."""

    acid: np.ndarray
    warmth_1: float
    warmth_2: float
    decay: float
    share_nh3: np.ndarray
    share_hno2: np.ndarray


def conditions(c: dict, temperature_c: float, ph: np.ndarray) -> Water:
    """Factors of the waters `ph`, shape (N,), on the growth of both groups and on their decay [1].

    acid = 2.35^(min(pH, 7.2) - 7.2) x 1.13 (9.5 - pH)/(9.8 - pH); see `warmth`. Shares of total ammonia as NH3 and of
    nitrite as HNO2 [1].
    Sources: ekama_wentzel_2008 (pH), emerson_1975, hiatt_grady_2008.
    """
    below = np.minimum(ph, c["ph_zero"])
    acid = np.exp(np.log(c["ph_base"]) * np.minimum(ph - c["ph_cap"], 0.0))
    acid = acid * (c["ph_high"] * (c["ph_zero"] - below) / (c["ph_pole"] - below))
    warm_1, warm_2 = warmth(c, temperature_c)
    pka = free_ammonia(tan_mg_n_l=0.0, ph=7.0, temperature_c=temperature_c)["pka"]
    pka_hno2 = c["hno2_kelvin"] / (temperature_c + 273.15) / np.log(10.0)
    return Water(
        acid,
        warm_1,
        warm_2,
        c["theta_decay"] ** (temperature_c - 20.0),
        1.0 / (1.0 + 10.0 ** (pka - ph)),
        1.0 / (1.0 + 10.0 ** (ph - pka_hno2)),
    )


def activity(c: dict, water: Water, kh_dkh: np.ndarray, taken_dkh: float | np.ndarray = 0.0) -> np.ndarray:
    """Acid x min(KH / (2.4 + what a step would take at full activity), 1), never below 0.02; shape (N,).

    A step can so never take more alkalinity than there is: with the alkalinity at its end, which falls as the bacteria
    work, activity x (2.4 + taken) = KH. Source: biesterfeld_2003 (impaired below 2.4 °dKH, whatever the pH).
    """
    left = np.minimum(np.maximum(kh_dkh, 0.0) / (c["enough_kh_dkh"] + taken_dkh), 1.0)
    return np.maximum(water.acid * left, c["least_activity"])


def warmth(c: dict, temperature_c: float) -> tuple[float, float]:
    """Factors of the temperature on the growth of both groups, 1 at 20 °C: they rise, level off and fall in heat.

    theta^(T - 20) (1 - exp(k (T - Tmax)))^2, divided by its value at 20 °C; 0 beyond Tmax. The second factor is
    Ratkowsky's for heat; theta was measured up to about 30 °C.
    Sources: metcalf_eddy_2014 (theta), hiatt_grady_2008 (k, Tmax).
    """

    def borne(group: int, at_c: float) -> float:
        return (1.0 - math.exp(c[f"heat_{group}"] * min(at_c - c[f"hottest_{group}_c"], 0.0))) ** 2

    warm = temperature_c - 20.0
    return tuple(
        c[f"theta_growth_{group}"] ** warm * borne(group, temperature_c) / borne(group, 20.0) for group in (1, 2)
    )


def ph_of_water(kh_dkh: np.ndarray, co2_mg_l: np.ndarray, temperature_c: float) -> np.ndarray:
    """pH of water with this alkalinity [dKH] and dissolved carbon dioxide [mg/L], shape (N,).

    alkalinity = [HCO3-] + [OH-] - [H+] with [HCO3-] = K1 [CO2]/[H+]; carbonate and activity are left out, which matters
    above pH 9 only, because carbon dioxide is set from pH and hardness by the same equation.
    Source: plummer_busenberg_1982.
    """
    first, water = _equilibria(temperature_c)
    alkalinity = kh_dkh * _eq_per_dkh()
    product = first * co2_mg_l / _co2_mg_mol() + water
    root = np.sqrt(alkalinity * alkalinity + 4.0 * product)
    # Either form loses digits on one side of zero.
    return -np.log10(np.where(alkalinity > 0.0, 2.0 * product / (np.abs(alkalinity) + root), (root - alkalinity) / 2.0))


def co2_of_water(ph: np.ndarray, kh_dkh: np.ndarray, temperature_c: float) -> np.ndarray:
    """Dissolved carbon dioxide [mg/L] of water with this pH and alkalinity [dKH]: `ph_of_water` turned round."""
    first, water = _equilibria(temperature_c)
    h = 10.0**-ph
    return (h * (h + kh_dkh * _eq_per_dkh()) - water) / first * _co2_mg_mol()


def kh_of_water(ph: np.ndarray, co2_mg_l: float | np.ndarray, temperature_c: float) -> np.ndarray:
    """Alkalinity [dKH] of water with this pH and dissolved carbon dioxide [mg/L]: `ph_of_water` turned round."""
    first, water = _equilibria(temperature_c)
    h = 10.0**-ph
    return ((first * co2_mg_l / _co2_mg_mol() + water) / h - h) / _eq_per_dkh()


def _equilibria(temperature_c: float) -> tuple[float, float]:
    kelvin = temperature_c + 273.15
    return equilibrium("carbonic_1", kelvin), equilibrium("water", kelvin)


def _co2_mg_mol() -> float:
    return constants("molar_mass")["co2_g_mol"] * 1000.0


def _eq_per_dkh() -> float:
    """Equivalents of alkalinity a litre that one degree stands for."""
    return 2.0 * table("hardness_scales")["scales"]["dh"]["mmol_l"] / 1000.0


@cache
def dkh_per_mg_n() -> float:
    """Alkalinity [dKH] of one equivalent a mole of nitrogen, for each mg N/L."""
    return 1.0 / (constants("molar_mass")["n_g_mol"] * 1000.0 * _eq_per_dkh())


def step(cloud: np.ndarray, days: float, base: float, released: float, water: Water, c: dict) -> None:
    """Move `cloud`, shape (ROWS, N), forward by `days` in place; semi-implicit, so stable at any rate.

    `base`: nominal input [mg N/L/day]; `released`: what meals release during the step [mg N/L]; each draw scales
    both by its own INPUT and by APPETITE, its random factor for the current 12 h. `water`: from `conditions`.
    """
    n1, n2, n3 = cloud[TAN], cloud[NITRITE], cloud[NITRATE]
    nh3, hno2 = water.share_nh3 * n1 / cloud[TOLERANCE], water.share_hno2 * n2 / cloud[TOLERANCE]
    halved_1 = (cloud[HALF_1] + n1 * (1.0 + nh3 / c["nh3_half_1"])) * (1.0 + hno2 / c["hno2_half_1"])
    halved_2 = (cloud[HALF_2] + n2 * (1.0 + nh3 / c["nh3_half_2"])) * (1.0 + hno2 / c["hno2_half_2"])
    rate_u = days * cloud[UPTAKE] / (c["half_uptake"] + n1)
    given = cloud[INPUT] * cloud[APPETITE] * (days * base + released)
    full_1 = days * water.warmth_1 * cloud[CAPACITY_1] / halved_1
    at_most = full_1 * (n1 + given) / (1.0 + full_1 + rate_u)
    active = activity(c, water, cloud[KH], 2.0 * dkh_per_mg_n() * at_most)
    rate_1 = active * full_1
    n1 = (n1 + given) / (1.0 + rate_1 + rate_u)
    oxidised_1, taken = rate_1 * n1, rate_u * n1
    rate_2 = active * (days * water.warmth_2 * cloud[CAPACITY_2] / halved_2)
    n2 = (n2 + oxidised_1) / (1.0 + rate_2)
    oxidised_2 = rate_2 * n2
    spare = np.maximum(days * cloud[UPTAKE] - taken, 0.0)
    left = (n3 + oxidised_2) / (1.0 + spare / (c["half_nitrate"] + n3))
    cloud[KH] += dkh_per_mg_n() * (given - taken - 2.0 * oxidised_1 + (n3 + oxidised_2 - left))
    cloud[NITRATE] = left
    cloud[TAN], cloud[NITRITE] = n1, n2
    kept = 1.0 + (days * water.decay) * cloud[DECAY]
    cloud[CAPACITY_1] = (cloud[CAPACITY_1] + cloud[GROWTH_1] * oxidised_1) / kept
    cloud[CAPACITY_2] = (cloud[CAPACITY_2] + cloud[GROWTH_2] * oxidised_2) / kept


def processed(cloud: np.ndarray, water: Water, c: dict, tan_mg_n_l: float, nitrite_mg_n_l: float) -> np.ndarray:
    """What each draw's tank processes [mg N/L/day] while ammonia and nitrite stay at these concentrations.

    It is the lesser of the two groups' rates plus the plants' uptake. Shape (N,).
    """
    active = activity(c, water, cloud[KH])
    first = active * water.warmth_1 * cloud[CAPACITY_1] * tan_mg_n_l / (cloud[HALF_1] + tan_mg_n_l)
    second = active * water.warmth_2 * cloud[CAPACITY_2] * nitrite_mg_n_l / (cloud[HALF_2] + nitrite_mg_n_l)
    return np.minimum(first, second) + cloud[UPTAKE] * tan_mg_n_l / (c["half_uptake"] + tan_mg_n_l)
