"""A keeper who knows the future: tries changes on copies of the truth, which live through what will happen."""

import copy

import numpy as np

FRACTIONS = np.arange(91) / 100


class SameChance:
    """A copy of the truth's generator; what it draws for a tank, it gives to each copy of that tank."""

    def __init__(self, rng, count: int, places: np.ndarray):
        self.rng, self.count, self.places = copy.deepcopy(rng), count, places

    def standard_normal(self, _: int) -> np.ndarray:
        return self.rng.standard_normal(self.count)[self.places]

    def random(self, _: int) -> np.ndarray:
        return self.rng.random(self.count)[self.places]


def futures(tanks, places: np.ndarray):
    """Copies of the tanks at `places` (one may stand there often); each meets the future of the tank itself."""
    ahead = copy.copy(tanks)
    for name, value in vars(tanks).items():
        if isinstance(value, np.ndarray):
            setattr(ahead, name, value[..., places])
    ahead.count = len(places)
    ahead.rng = SameChance(tanks.rng, tanks.count, places)
    ahead.water_rng = SameChance(tanks.water_rng, tanks.count, places)
    return ahead


def hours_over(truth: dict, limits: dict) -> np.ndarray:
    """In how many hours each tank was over a limit of free ammonia or nitrite."""
    over = (truth["nh3"] > limits["nh3_mg_n_l"]) | (truth["nitrite"] > limits["nitrite_mg_n_l"])
    return np.sum(over, 0)


def hours_over_after(tanks, places: np.ndarray, fractions: np.ndarray, limits: dict, hours: int) -> np.ndarray:
    """Hours over a limit within `hours` after each of `fractions` is changed now, (fractions, places)."""
    ahead = futures(tanks, np.tile(places, len(fractions)))
    ahead.change(np.repeat(fractions, len(places)))
    return hours_over(ahead.run(hours), limits).reshape(len(fractions), len(places))


def best_change(tanks, limits: dict, hours: int, price: float = np.inf) -> np.ndarray:
    """The change with the fewest hours over a limit within `hours`, the smallest of those, for each tank.

    With a finite `price`, an hour over costs that much water [tank volumes] and the sum is the least possible;
    with none no water is worth it.
    All of FRACTIONS are tried: more water does not always mean fewer hours, for its alkalinity can end a stall, and
    then nitrite comes.
    """
    best = np.zeros(tanks.count)
    if price == 0:
        return best
    untouched = hours_over_after(tanks, np.arange(tanks.count), FRACTIONS[:1], limits, hours)[0]
    uneasy = np.flatnonzero(untouched)
    if len(uneasy):
        over = hours_over_after(tanks, uneasy, FRACTIONS, limits, hours)
        cost = over if np.isinf(price) else FRACTIONS[:, None] + price * over
        best[uneasy] = FRACTIONS[np.argmin(cost, 0)]
    return best
