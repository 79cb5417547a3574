"""The invented tanks' water, hour by hour: food to ammonia to nitrite to nitrate, plants, changes.

Both steps saturate (Monod) and their oxidisers grow and decay, with Metcalf & Eddy's 5th edition figures.
Half-saturations and decay are from the low end of the published ranges, because old tanks show almost no ammonia.
"""

from dataclasses import dataclass

from limnary.contracts import run
from limnary.demo.scenario import Tank

AMMONIA = {"growth_day": 0.9, "theta": 1.072, "half_mg_n_l": 0.14}
NITRITE = {"growth_day": 1.0, "theta": 1.063, "half_mg_n_l": 0.05}
DECAY_DAY, DECAY_THETA = 0.1, 1.029
# Hours over which a meal reaches the water (assumption).
MEAL_HOURS = 8
UPTAKE_HALF_MG_N_L = 0.05


@dataclass
class Water:
    """One tank's water at one hour, mg N/L; capacities in mg N/L a day."""

    tank: Tank
    water_l: float

    def __post_init__(self):
        self.ammonia, self.nitrite, self.nitrate, self.eats_ammonia, self.eats_nitrite = self.tank.start
        self.meal_mg_n_l, self.meal_left_h = 0.0, 0

    def feed(self, feed_g: float) -> None:
        """Add a meal, by the calculation `nitrogen_load`."""
        load = run(
            "nitrogen_load",
            {"feed_g_day": feed_g, "protein_fraction": self.tank.protein_fraction, "volume_l": self.water_l},
        )
        self.meal_mg_n_l = self.meal_mg_n_l * self.meal_left_h / MEAL_HOURS + load["tan_mg_n_l_day"]
        self.meal_left_h = MEAL_HOURS

    def change(self, fraction: float, source: dict, freed_mg_n_l: float) -> None:
        """Replace part of the water."""
        new = {
            "ammonia": source.get("tan_mg_n_l", 0) + freed_mg_n_l,
            "nitrite": source.get("nitrite_mg_n_l", 0),
            "nitrate": source.get("nitrate_mg_n_l", 0),
        }
        for name, mg_n_l in new.items():
            after = run(
                "dilution", {"before_mg_l": getattr(self, name), "source_mg_l": mg_n_l, "fractions": [fraction]}
            )
            setattr(self, name, after["after_mg_l"])

    def hour(self) -> None:
        """Let one hour pass. Losses are implicit, so nothing falls below zero."""
        day = 1 / 24
        if self.meal_left_h:
            self.ammonia += self.meal_mg_n_l / MEAL_HOURS
            self.meal_left_h -= 1
        oxidised, grown = self._step(AMMONIA, self.ammonia, self.eats_ammonia)
        taken = self.tank.uptake_mg_n_l_day / (UPTAKE_HALF_MG_N_L + self.ammonia)
        before = self.ammonia
        self.ammonia = before / (1 + (oxidised + taken) * day)
        to_nitrite = oxidised * self.ammonia * day
        self.eats_ammonia *= 1 + grown * day
        self.nitrite += to_nitrite
        oxidised, grown = self._step(NITRITE, self.nitrite, self.eats_nitrite)
        self.nitrite /= 1 + oxidised * day
        to_nitrate = oxidised * self.nitrite * day
        self.eats_nitrite *= 1 + grown * day
        # Plants take as nitrate what they do not find as ammonia.
        hungry = max(0.0, self.tank.uptake_mg_n_l_day * day - taken * self.ammonia * day)
        self.nitrate = max(0.0, self.nitrate + to_nitrate - hungry)

    def _step(self, kinetics: dict, food_mg_n_l: float, capacity: float) -> tuple[float, float]:
        """Loss rate [1/day] of the substrate and net growth [1/day] of its oxidisers."""
        warm = self.tank.temperature_c - 20
        share = 1 / (kinetics["half_mg_n_l"] + food_mg_n_l)
        growth = kinetics["growth_day"] * kinetics["theta"] ** warm * food_mg_n_l * share
        return capacity * share, growth - DECAY_DAY * DECAY_THETA**warm
