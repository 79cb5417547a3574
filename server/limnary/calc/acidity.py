"""The acidity of each draw's water: alkalinity and carbon dioxide, and the pH that goes with both.

Nitrification takes alkalinity, so pH falls and the bacteria stall before the alkalinity is gone. Readings of pH and of
carbonate hardness correct both by an ensemble Kalman step with perturbed readings (Evensen 1994; Burgers, van
Leeuwen, Evensen 1998): a cloud weighted by the pH alone would soon have few draws left.
"""

import math

import numpy as np

from limnary.calc import kinetics as k

# A water of less is taken as this much where its logarithm is needed [dKH].
LEAST_KH = 0.05
# What a tank can hold: alkalinity [dKH], dissolved carbon dioxide [mg/L]. Without these bounds, readings that fit no
# water would carry the draws further away with each reading.
MOST_KH, LEAST_CO2, MOST_CO2 = 100.0, 1e-3, 300.0


def begin(c: dict, belief, noise: np.ndarray) -> None:
    """Fill the rows of the water from what is told of it; `noise`: standard normals, shape (ROWS, N).

    pH errs by `sd_ph`. A hardness that is told errs by `sd_kh`; one that is not told is taken as enough for the
    bacteria until a test says otherwise.
    """
    cloud, at_c = belief.cloud, belief.temperature_c
    cloud[k.PH_OFFSET] = c["sd_ph"] * noise[k.PH_OFFSET]
    ph = belief.ph + cloud[k.PH_OFFSET]
    if belief.kh_dkh is None:
        cloud[k.KH] = c["unknown_kh_dkh"] * np.exp(c["sd_unknown_kh"] * noise[k.KH])
    else:
        cloud[k.KH] = belief.kh_dkh + c["sd_kh"] * noise[k.KH]
    # No open water holds much less carbon dioxide than the air gives it, so a high pH means some hardness.
    cloud[k.KH] = np.maximum(cloud[k.KH], np.maximum(k.kh_of_water(ph, c["least_co2_mg_l"], at_c), 0.0))
    cloud[k.CO2] = np.maximum(k.co2_of_water(ph, cloud[k.KH], at_c), c["least_co2_mg_l"])
    cloud[k.SOURCE_KH] = cloud[k.KH]
    cloud[k.ALKALI] = np.where(noise[k.ALKALI] > 0.0, 1.0, 0.0)
    cloud[k.PH_OFFSET] = k.ph_of_water(cloud[k.KH], cloud[k.CO2], at_c) - belief.ph


def water_of(c: dict, belief) -> k.Water:
    """What the water of each draw does to its bacteria now."""
    return k.conditions(c, belief.temperature_c, _ph_now(belief))


def _ph_now(belief) -> np.ndarray:
    return belief.ph + belief.cloud[k.PH_OFFSET]


def settle(belief) -> None:
    """Let each draw's pH follow its alkalinity and carbon dioxide; `ph` moves with the cloud's mean."""
    cloud, weight = belief.cloud, belief.weight
    for row in (k.KH, k.SOURCE_KH):
        np.minimum(cloud[row], MOST_KH, out=cloud[row])
    np.clip(cloud[k.CO2], LEAST_CO2, MOST_CO2, out=cloud[k.CO2])
    ph = k.ph_of_water(cloud[k.KH], cloud[k.CO2], belief.temperature_c)
    belief.ph += _mean_of(ph - _ph_now(belief), weight)
    cloud[k.PH_OFFSET] = ph - belief.ph
    if belief.kh_dkh is not None:
        belief.kh_dkh = _mean_of(cloud[k.KH], weight)


def warm(belief, temperature_c: float) -> None:
    """Take in a reading of the temperature: the pH stays, and carbon dioxide is what goes with it."""
    ph = _ph_now(belief)
    belief.temperature_c = temperature_c
    belief.cloud[k.CO2] = np.maximum(k.co2_of_water(ph, belief.cloud[k.KH], temperature_c), LEAST_CO2)


def observe(c: dict, belief, parameter: str, value: float) -> None:
    """Correct alkalinity, the source's, carbon dioxide and what doses bring by a reading of `ph` or `kh` [dKH].

    A reading that lies far outside the cloud widens it first, so that a water which something else moved is believed.
    """
    cloud, weight = belief.cloud, belief.weight
    log_kh, log_source = (np.log(np.maximum(cloud[row], LEAST_KH)) for row in (k.KH, k.SOURCE_KH))
    log_co2 = np.log(cloud[k.CO2])
    if parameter == "kh":
        if belief.kh_dkh is None:
            belief.kh_dkh = value
        seen, error = log_kh, c["sd_kh"] / (max(value, 0.0) + c["sd_kh"])
        wanted = math.log(max(value, LEAST_KH))
    else:
        seen, error, wanted = _ph_now(belief), c["sd_ph_reading"], value
    mean = _mean_of(seen, weight)
    off = seen - mean
    spread = _product_of(off, off, weight)
    far = (wanted - mean) ** 2 / c["far_sd"] ** 2 - error * error
    wide = max(1.0, far / max(spread, 1e-9))
    root = math.sqrt(wide)
    share = (wanted + error * belief.draw(1)[0] - mean - root * off) / (wide * spread + error * error)

    def corrected(row: np.ndarray) -> np.ndarray:
        centre = _mean_of(row, weight)
        away = row - centre
        gain = wide * _product_of(away, off, weight)
        return centre + root * away + gain * share

    # Beyond 50 the bounds of `settle` hold anyway.
    for row, logs in ((k.KH, log_kh), (k.SOURCE_KH, log_source), (k.CO2, log_co2)):
        cloud[row] = np.exp(np.minimum(corrected(logs), 50.0))
    cloud[k.ALKALI] = np.clip(corrected(cloud[k.ALKALI]), 0.0, 1.0)
    settle(belief)


def _mean_of(values: np.ndarray, weight: np.ndarray) -> float:
    return float(np.sum(weight * values))


def _product_of(one: np.ndarray, other: np.ndarray, weight: np.ndarray) -> float:
    return float(np.sum(weight * one * other))
