"""An independent virtual tank: hourly truth that the belief's code never imports.

It differs from the belief on purpose. Rates follow free ammonia and free nitrous acid with
substrate inhibition (form and centre values: Hiatt & Grady 2008, Water Environ. Res. 80:2145;
temperature after Ratkowsky as used there; decay after Guo; K_FNA lies between the two published
calibrations, 1e-6 and 1e-4 mg N/L). Meals come as pulses, leftovers decay, plants follow the
lamp, pH and temperature drift, oxygen dips at night. Everything drawn for a tank is an
assumption, wide enough to cover what keepers meet; steps of 12 minutes, all tanks at once.
"""

from dataclasses import dataclass

import numpy as np

STEPS_AN_HOUR = 5
PLANTING = ("none", "light", "medium", "dense")
SEEDED = ("none", "starter", "mature_media")
# An invented coarse kit, steps in mg/L of the ion (total ammonia as NH4, nitrite, nitrate).
KIT_STEPS = {
    "total_ammonia": (0.0, 0.25, 0.5, 1.0, 2.0, 4.0, 8.0),
    "nitrite": (0.0, 0.1, 0.25, 0.5, 1.0, 2.0, 5.0),
    "nitrate": (0.0, 5.0, 10.0, 20.0, 40.0, 80.0, 160.0),
}
ION_PER_N = {"total_ammonia": 1.28786, "nitrite": 3.28443, "nitrate": 4.42664}
KIT_NOISE = 0.12
READY_TAN_MG_N_L, READY_NITRITE_MG_N_L = 0.25, 0.1


@dataclass
class VirtualTanks:
    """``count`` tanks drawn from ``seed``; ``stocking`` is "light", "heavy" or "mixed"."""

    count: int
    seed: int
    stocking: str = "mixed"
    hour: float = 0.0

    def __post_init__(self):
        rng = self.rng = np.random.default_rng(self.seed)
        n = self.count

        def spread(centre, sd):
            return centre * np.exp(sd * rng.standard_normal(n))

        self.volume_l = np.round(rng.uniform(20, 240, n))
        self.temperature_mean = rng.uniform(21.5, 27.0, n)
        self.ph_mean = rng.uniform(6.7, 7.9, n)
        light = {"light": np.ones(n, bool), "heavy": np.zeros(n, bool)}.get(self.stocking, rng.random(n) < 0.5)
        self.load = np.where(light, rng.uniform(0.046, 0.185, n), rng.uniform(0.23, 0.42, n))
        self.light_stock = light
        self.protein = rng.uniform(0.32, 0.5, n)
        yield_n = spread(0.092, 0.2)
        self.feed_g_day = self.load * self.volume_l / 1000 / (self.protein * yield_n)
        self.excreted = yield_n
        self.leftover = rng.uniform(0.03, 0.2, n)
        self.leftover_decay = rng.uniform(0.2, 0.5, n)
        self.meals = rng.integers(1, 3, n)
        self.fasts = rng.random(n) < 0.5
        self.planting = rng.integers(0, 4, n)
        self.uptake = np.choose(self.planting, [np.zeros(n), spread(0.03, 0.4), spread(0.08, 0.4), spread(0.2, 0.4)])
        self.seeded = rng.choice(3, n, p=[0.6, 0.25, 0.15])
        # Hiatt & Grady centre values, spread
        self.mu_scale = np.array([spread(1.0, 0.15), spread(1.0, 0.15)])
        self.k_fa, self.k_fna = spread(0.005, 0.4), spread(1e-5, 0.6)
        self.ki_fa = np.array([1.0, 0.2])
        self.ki_fna = np.array([0.1, 0.04])
        self.decay_scale = spread(1.0, 0.25)
        self.k_oxygen = np.array([0.6, 1.2])
        self.yields = np.array([0.18, 0.06])
        biomass = np.choose(
            self.seeded, [spread(1e-4, 0.8), spread(3e-3, 0.8), 0.18 * self.load / 0.9 * rng.uniform(0.2, 1.0, n)]
        )
        third = np.array([np.ones(n), np.full(n, 1 / 3) * spread(1.0, 0.3)])
        self.biomass = biomass * third
        self.tan = spread(0.02, 0.5)
        self.nitrite = spread(0.005, 0.5)
        self.source_nitrate = rng.uniform(0.2, 5.0, n)
        self.nitrate = self.source_nitrate.copy()
        self.gut = np.zeros(n)
        self.scraps = np.zeros(n)
        self.ph_drift = np.zeros(n)
        self.temperature_drift = np.zeros(n)
        self.oxygen_mean = rng.uniform(6.0, 8.0, n)
        self.feed_share = np.ones(n)
        # what the keeper says about the tank
        self.told = {
            "temperature_c": np.round(self.temperature_mean + rng.normal(0, 0.4, n), 1),
            "ph": np.round(self.ph_mean + rng.normal(0, 0.15, n), 1),
            "feed_g_day": self.feed_g_day * np.exp(rng.normal(0, 0.2, n)),
            "protein_fraction": np.round(self.protein, 2),
        }

    def keeper_says(self, i: int) -> dict:
        """Tank ``i`` as its keeper describes it."""
        return {
            "volume_l": float(self.volume_l[i]),
            "planting": PLANTING[self.planting[i]],
            "seeded": SEEDED[self.seeded[i]],
            **{name: float(values[i]) for name, values in self.told.items()},
        }

    def climate(self):
        """Current temperature, pH, oxygen, and whether the lamp is on."""
        clock = self.hour % 24
        wave = np.sin(2 * np.pi * (clock - 9) / 24)
        planted = self.planting > 0
        return (
            self.temperature_mean + 0.3 * wave + self.temperature_drift,
            self.ph_mean + (0.04 + 0.08 * planted) * wave + self.ph_drift,
            self.oxygen_mean + (0.3 + 0.5 * planted) * wave,
            10 <= clock < 19,
        )

    def rates(self, tan, nitrite):
        """Oxidation [mg N/L/day] and growth [1/day] of both groups at these concentrations."""
        temperature, ph, oxygen, _ = self.climate()
        kelvin = temperature + 273.15
        fa = tan / (1 + 10 ** (0.09018 + 2729.92 / kelvin - ph))
        fna = nitrite / (1 + np.exp(-2300 / kelvin) * 10**ph)
        ratkowsky = np.array(
            [
                (0.0255 * (temperature + 15) * (1 - np.exp(0.15 * (temperature - 50)))) ** 2,
                (0.0235 * (temperature + 25) * (1 - np.exp(0.05 * (temperature - 57)))) ** 2,
            ]
        )
        mu = ratkowsky * self.mu_scale
        food = np.array(
            [
                fa / (self.k_fa + fa + fa**2 / self.ki_fa[0]) / (1 + fna / self.ki_fna[0]),
                fna / (self.k_fna + fna + fna**2 / self.ki_fna[1]) / (1 + fa / self.ki_fa[1]),
            ]
        )
        growth = mu * food * oxygen / (self.k_oxygen[:, None] + oxygen)
        decay = 0.028 * 1.116 ** (temperature - 15) * self.decay_scale
        return growth * self.biomass / self.yields[:, None], growth - decay

    def run(self, hours: int):
        """Let ``hours`` pass; returns hourly arrays (hours, count) of tan, nitrite, nitrate, nh3."""
        out = {name: np.empty((hours, self.count)) for name in ("tan", "nitrite", "nitrate", "nh3")}
        dt = 1 / (24 * STEPS_AN_HOUR)
        for k in range(hours):
            self._feed()
            self._drift()
            for _ in range(STEPS_AN_HOUR):
                oxidised, growth = self.rates(self.tan, self.nitrite)
                *_, lamp = self.climate()
                demand = self.uptake * (1.9 if lamp else 0.35)
                by_plants = demand * self.tan / (0.07 + self.tan)
                from_gut = self.gut * 24 / 7
                from_scraps = self.scraps * self.leftover_decay
                first = np.minimum(oxidised[0] + by_plants, self.tan / dt)
                share = first / np.maximum(oxidised[0] + by_plants, 1e-30)
                second = np.minimum(oxidised[1], self.nitrite / dt + oxidised[0] * share)
                self.tan += dt * (from_gut + from_scraps - first)
                self.nitrite = np.maximum(self.nitrite + dt * (oxidised[0] * share - second), 0)
                spare = (demand - by_plants) * lamp
                self.nitrate = np.maximum(self.nitrate + dt * (second - spare * self.nitrate / (0.6 + self.nitrate)), 0)
                self.gut -= dt * from_gut
                self.scraps -= dt * from_scraps
                self.biomass = self.biomass * np.exp(dt * growth)
                self.hour += 1 / STEPS_AN_HOUR
            self.hour = round(self.hour)
            temperature, ph, *_ = self.climate()
            out["tan"][k], out["nitrite"][k], out["nitrate"][k] = self.tan, self.nitrite, self.nitrate
            out["nh3"][k] = self.tan / (1 + 10 ** (0.09018 + 2729.92 / (temperature + 273.15) - ph))
        return out

    def _feed(self):
        clock, day = self.hour % 24, int(self.hour // 24)
        noise, binge = np.exp(0.25 * self.rng.standard_normal(self.count)), self.rng.random(self.count)
        meal = ((clock == 8) & (self.meals == 2)) | (clock == 17)
        if not np.any(meal):
            return
        grams = self.feed_g_day / self.meals * noise * np.where(binge < 0.03, 2.5, 1.0)
        grams = self.feed_share * grams
        grams = np.where(meal & ~(self.fasts & (day % 7 == 6)), grams, 0.0)
        nitrogen = grams * self.protein * 1000 / self.volume_l
        self.gut += nitrogen * self.excreted * (1 - self.leftover)
        self.scraps += nitrogen * 0.16 * self.leftover * 0.8

    def _drift(self):
        self.ph_drift = 0.99 * self.ph_drift + 0.015 * self.rng.standard_normal(self.count)
        self.temperature_drift = 0.985 * self.temperature_drift + 0.06 * self.rng.standard_normal(self.count)

    def change(self, fraction):
        """Exchange ``fraction`` (count,) for source water."""
        self.tan = self.tan * (1 - fraction)
        self.nitrite = self.nitrite * (1 - fraction)
        self.nitrate = self.nitrate * (1 - fraction) + fraction * self.source_nitrate

    def kit(self, parameter: str):
        """One reading of every tank in mg/L of the ion, on the kit's own coarse steps."""
        truth = {"total_ammonia": self.tan, "nitrite": self.nitrite, "nitrate": self.nitrate}[parameter]
        seen = truth * ION_PER_N[parameter] * np.exp(KIT_NOISE * self.rng.standard_normal(self.count))
        steps = np.array(KIT_STEPS[parameter])
        return steps[np.searchsorted((steps[1:] + steps[:-1]) / 2, seen)]

    def ready(self):
        """Whether each tank can process its mean load with tan and nitrite at the levels of READY."""
        tan, nitrite = (np.full(self.count, level) for level in (READY_TAN_MG_N_L, READY_NITRITE_MG_N_L))
        oxidised, _ = self.rates(tan, nitrite)
        load = self.load * (1 - self.leftover) + self.load / self.excreted * 0.16 * 0.8 * self.leftover
        need = np.maximum(load - self.uptake, 0)
        return (oxidised[0] >= need) & (oxidised[1] >= need)
