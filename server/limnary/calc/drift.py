"""Plain forecasts beside the belief's equations, and what each counts.

The drift: the water stays as it last read, but for doses and changes. The past: it reads as this tank has read before.
Both are the usual standards to judge a forecast by (persistence and climatology, Murphy 1992). Equations can be wrong
about a tank: bacteria stall, nitrite comes and goes between two tests, soil frees ammonia. Each forecast counts by how
well it foretold this tank's readings so far, with some forgetting (dynamic model averaging, Raftery et al. 2010).
"""

import math

import numpy as np

from limnary.calc.kit_reading import share_below


def priors(c: dict, name: str, input_known: bool) -> tuple[float, float]:
    """What drift and past count before any forecast was tested; `name`: tan or nitrite.

    Where neither food nor fish are told, nothing says what ammonia comes in, and the drift alone counts.
    """
    return (c[f"drift_{name}"], c[f"past_{name}"]) if input_known else (c[f"drift_{name}_unknown"], 0.0)


def after_reading(
    c: dict, drift: dict | None, prior: tuple[float, float], at_h: float, reading: tuple, equations_chance: float
) -> dict:
    """Drift and past from this reading on: {level, offset and past [mg N/L], at_h, weight, past_weight, doubted}.

    past: the last readings, the oldest first; doubted: no forecast expected the reading, so that the test may be wrong;
    the level then counts half.
    reading: (value, low, high, offset) [mg N/L]; equations_chance: the chance that the equations gave the interval;
    prior: from `priors`.
    """
    value, low, high, offset = reading
    (weight, past_weight), past, doubted = prior, [], False
    if drift is not None:
        past = drift["past"]
        sd = c["reading_sd"]
        chance = _chance_of([drift["level"]], math.sqrt(_spread(c, drift, at_h) ** 2 + sd**2), low, high, offset)
        past_chance = _chance_of(past, math.sqrt(2.0) * sd, low, high, offset)
        weight, past_weight = _reweighed(c, drift, chance, past_chance, equations_chance)
        expected = max(chance, equations_chance, past_chance if past_weight > 0.0 else 0.0)
        doubted = expected < c["doubt_chance"]
    return {
        "level": value,
        "offset": offset,
        "at_h": at_h,
        "weight": weight,
        "past": [*past, value][-int(c["past_readings"]) :],
        "past_weight": past_weight,
        "doubted": doubted,
    }


def _chance_of(levels: list[float], sd: float, low: float | None, high: float | None, offset: float) -> float:
    """The chance of a reading between `low` and `high` [mg N/L] if each of `levels` is as likely; `sd` of its log."""
    scale = _scale_of(sd)
    below_high = share_below(np.array(levels), high, offset, scale, 1.0)
    return float(np.mean(below_high - share_below(np.array(levels), low, offset, scale, 0.0)))


def _reweighed(c: dict, drift: dict, chance: float, past_chance: float, equations_chance: float) -> tuple[float, float]:
    """w' = w^f p / sum of all w^f p: f is the forgetting, p the chance that each of the three forecasts gave."""

    def counts(weight: float, given: float) -> float:
        gave = (1.0 - c["outlier"]) * given + c["outlier"] * c["outlier_spread"]
        return max(weight, 0.0) ** c["forgetting"] * gave

    mine, past = counts(drift["weight"], chance), counts(drift["past_weight"], past_chance)
    total = mine + past + counts(1.0 - drift["weight"] - drift["past_weight"], equations_chance)
    return mine / total, past / total


def _spread(c: dict, drift: dict, at_h: float) -> float:
    """Spread of ln(level + offset): the kit's error and what a level drifts by, which grows with the root of time."""
    return math.sqrt(c["reading_sd"] ** 2 + c["walk_drift"] ** 2 * (at_h - drift["at_h"]) / 24.0)


def _scale_of(sd: float) -> float:
    return sd * math.sqrt(3.0) / math.pi


def weights_at(c: dict, drift: dict, at_h: float) -> tuple[float, float]:
    """What drift and past count at `at_h`: old readings say little of the water, so both halve daily after a while."""
    faded = 0.5 ** (max(at_h - drift["at_h"] - c["drift_stands_h"], 0.0) / 24.0)
    return (0.5 if drift["doubted"] else 1.0) * drift["weight"] * faded, drift["past_weight"] * faded


def levels_at(c: dict, drift: dict, at_h: float) -> np.ndarray:
    """Evenly likely levels of the water [mg N/L] at `at_h` by the drift, rising, shape (drift_points,)."""
    share = (np.arange(c["drift_points"]) + 0.5) / c["drift_points"]
    scale = _scale_of(_spread(c, drift, at_h))
    return np.maximum((drift["level"] + drift["offset"]) * (share / (1.0 - share)) ** scale - drift["offset"], 0.0)


def mixed_band(c: dict, values: np.ndarray, drift: dict, at_h: float) -> dict:
    """The 10, 50 and 90 % points [mg N/L] of equally weighted draws `values`, drifting levels and past readings.

    Each is the smallest value whose cumulative weight reaches the share.
    """
    drift_weight, past_weight = weights_at(c, drift, at_h)
    parts = (values, levels_at(c, drift, at_h), np.array(drift["past"]))
    shares = (1.0 - drift_weight - past_weight, drift_weight, past_weight)
    both = np.concatenate(parts)
    each = np.concatenate([np.full(len(part), share / len(part)) for part, share in zip(parts, shares, strict=True)])
    order = np.argsort(both, kind="stable")
    total = np.cumsum(each[order])
    marks = np.searchsorted(total, np.array((0.1, 0.5, 0.9)) * total[-1] - 1e-9)
    return dict(zip(("p10", "p50", "p90"), (float(both[order[mark]]) for mark in marks), strict=True))
