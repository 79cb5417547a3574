"""A second, plain forecast beside the belief's equations: the water stays as it last read, but for doses and changes.

Equations can be wrong about a tank: bacteria stall, soil frees ammonia. Each forecast counts by how well it foretold
this tank's readings so far, with some forgetting (dynamic model averaging, Raftery et al. 2010).
"""

import math

import numpy as np

from limnary.calc.kit_reading import share_below


def after_reading(
    c: dict, drift: dict | None, prior: float, at_h: float, reading: tuple, equations_chance: float
) -> dict:
    """The drift from this reading on: {level and offset [mg N/L], at_h, weight, doubted}.

    doubted: neither forecast expected the reading, so that the test may be wrong; the level then counts half.
    reading: (value, low, high, offset) [mg N/L]; equations_chance: the chance that the equations gave the interval;
    prior: the weight before any forecast was tested.
    """
    value, low, high, offset = reading
    weight, doubted = prior, False
    if drift is not None:
        chance = _chance_of(c, drift, at_h, low, high)
        weight = _reweighed(c, drift["weight"], chance, equations_chance)
        doubted = max(chance, equations_chance) < c["doubt_chance"]
    return {"level": value, "offset": offset, "at_h": at_h, "weight": weight, "doubted": doubted}


def _chance_of(c: dict, drift: dict, at_h: float, low: float | None, high: float | None) -> float:
    """The chance of a reading between `low` and `high` [mg N/L] at `at_h`."""
    scale = _scale_of(math.sqrt(_spread(c, drift, at_h) ** 2 + c["reading_sd"] ** 2))
    level = np.array([drift["level"]])
    below_high = share_below(level, high, drift["offset"], scale, 1.0)
    return float((below_high - share_below(level, low, drift["offset"], scale, 0.0))[0])


def _reweighed(c: dict, weight: float, chance: float, equations_chance: float) -> float:
    """w' = w^f p / (w^f p + (1 - w)^f q): f is the forgetting, p and q are the chances that both gave the reading."""
    wrong = c["outlier"] * c["outlier_spread"]
    mine = weight ** c["forgetting"] * ((1.0 - c["outlier"]) * chance + wrong)
    theirs = (1.0 - weight) ** c["forgetting"] * ((1.0 - c["outlier"]) * equations_chance + wrong)
    return mine / (mine + theirs)


def _spread(c: dict, drift: dict, at_h: float) -> float:
    """Spread of ln(level + offset): the kit's error and what a level drifts by, which grows with the root of time."""
    return math.sqrt(c["reading_sd"] ** 2 + c["walk_drift"] ** 2 * (at_h - drift["at_h"]) / 24.0)


def _scale_of(sd: float) -> float:
    return sd * math.sqrt(3.0) / math.pi


def weight_at(c: dict, drift: dict, at_h: float) -> float:
    """What the drift counts at `at_h`: an old reading says little of the water, so it halves daily after some days."""
    counts = 0.5 * drift["weight"] if drift["doubted"] else drift["weight"]
    return counts * 0.5 ** (max(at_h - drift["at_h"] - c["drift_stands_h"], 0.0) / 24.0)


def levels_at(c: dict, drift: dict, at_h: float) -> np.ndarray:
    """Evenly likely levels of the water [mg N/L] at `at_h`, rising, shape (drift_points,)."""
    share = (np.arange(c["drift_points"]) + 0.5) / c["drift_points"]
    scale = _scale_of(_spread(c, drift, at_h))
    return np.maximum((drift["level"] + drift["offset"]) * (share / (1.0 - share)) ** scale - drift["offset"], 0.0)


def mixed_band(c: dict, values: np.ndarray, drift: dict, at_h: float) -> dict:
    """The 10, 50 and 90 % points [mg N/L] of equally weighted draws `values` and of the drifting levels together.

    Each is the smallest value whose cumulative weight reaches the share.
    """
    drift_weight, levels = weight_at(c, drift, at_h), levels_at(c, drift, at_h)
    both = np.concatenate([values, levels])
    of_draw, of_level = 1.0 / len(values) * (1.0 - drift_weight), drift_weight / len(levels)
    order = np.argsort(both, kind="stable")
    total = np.cumsum(np.where(order < len(values), of_draw, of_level))
    marks = np.searchsorted(total, np.array((0.1, 0.5, 0.9)) * total[-1] - 1e-9)
    return dict(zip(("p10", "p50", "p90"), (float(both[order[mark]]) for mark in marks), strict=True))
