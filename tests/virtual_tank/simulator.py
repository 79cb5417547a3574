"""An independent virtual tank: hourly truth that the belief's code never imports.

It differs from the belief on purpose. Rates follow free ammonia and free nitrous acid with
substrate inhibition (form and centre values: Hiatt & Grady 2008, Water Environ. Res. 80:2145;
temperature after Arrhenius, 68 and 44 kJ/mol: Vannecke & Volcke 2015; decay after Guo; K_FNA lies
between the two published calibrations, 1e-6 and 1e-4 mg N/L). Meals come as pulses, leftovers
decay, plants follow the lamp, carbon dioxide and temperature drift, oxygen dips at night. The pH is
the root of the charge balance (titration alkalinity with carbonate, hydroxide and ammonia; Harned
and Davis 1943, Harned and Scholes 1941). Ammonia oxidisers want bicarbonate (sigmoid, the form of
Wett & Rauch 2003). Everything drawn for a tank is an assumption, wide enough to cover what keepers
meet; steps of 12 minutes, all tanks at once.
"""

import copy
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
# Its colours of pH and drops of carbonate hardness: error (sd) and step; the colours end at 4 and 10.
PH_NOISE, PH_STEP, PH_COLOURS = 0.2, 0.2, (4.0, 10.0)
KH_NOISE_DKH, KH_DROP_DKH = 0.4, 1.0
MEQ_PER_DH = 0.35665
N_G_MOL = 14.007
READY_TAN_MG_N_L, READY_NITRITE_MG_N_L = 0.25, 0.1
# Hiatt & Grady's centre values, ammonia oxidisers first: inhibition [mg N/L], oxygen [mg/L], yield.
KI_FA, KI_FNA = (1.0, 0.2), (0.1, 0.04)
K_OXYGEN, YIELDS = np.array([[0.6], [1.2]]), np.array([[0.18], [0.06]])
# A stall: ammonia above this, oxidised by less than this share a day, a tenth of what hard water would allow.
STALL_TAN_MG_N_L, STALL_SHARE_DAY, STALL_HELD_BACK, HARD_DKH = 1.0, 0.05, 0.1, 4.0


def carbonate_constants(kelvin):
    """K1, K2 of carbonic acid and Kw [mol/L] (Harned and Davis 1943; Harned and Scholes 1941; Kw from memory)."""
    k1 = 10 ** -(3404.71 / kelvin + 0.032786 * kelvin - 14.8435)
    k2 = 10 ** -(2902.39 / kelvin + 0.02379 * kelvin - 6.4980)
    return k1, k2, 10 ** -(4470.99 / kelvin + 0.017060 * kelvin - 6.0875)


@dataclass
class VirtualTanks:
    """``count`` tanks drawn from ``seed``.

    ``stocking`` is "light", "heavy", "mixed", "soft" (mixed, all with water of 0.5 to 1.5 dKH) or,
    without animals, "none". Every array that is kept has the tanks along its last axis.
    """

    count: int
    seed: int
    stocking: str = "mixed"
    hour: float = 0.0

    def __post_init__(self):
        rng = self.rng = np.random.default_rng(self.seed)
        # Readings of pH and hardness have a chance of their own, so that they leave all else as it is.
        self.water_rng = np.random.default_rng((self.seed, 1))
        n = self.count

        def spread(centre, sd):
            return centre * np.exp(sd * rng.standard_normal(n))

        self.volume_l = np.round(rng.uniform(20, 240, n))
        self.temperature_mean = rng.uniform(21.5, 27.0, n)
        self.ph_mean = rng.uniform(6.7, 7.9, n)
        light = {"light": np.ones(n, bool), "heavy": np.zeros(n, bool)}.get(self.stocking, rng.random(n) < 0.5)
        self.load = np.where(light, rng.uniform(0.046, 0.185, n), rng.uniform(0.23, 0.42, n))
        if self.stocking == "none":
            self.load = np.zeros(n)
            self.ph_mean = rng.uniform(7.2, 8.4, n)
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
        self.decay_scale = spread(1.0, 0.25)
        ripe = 0.18 * np.maximum(self.load, 0.2) / 0.9 * rng.uniform(0.2, 1.0, n)
        biomass = np.choose(self.seeded, [spread(1e-4, 0.8), spread(3e-3, 0.8), ripe])
        third = np.array([np.ones(n), np.full(n, 1 / 3) * spread(1.0, 0.3)])
        self.biomass = biomass * third
        self.tan = spread(0.02, 0.5)
        self.nitrite = spread(0.005, 0.5)
        self.source_nitrate = rng.uniform(0.2, 5.0, n)
        self.nitrate = self.source_nitrate.copy()
        self.gut = np.zeros(n)
        self.scraps = np.zeros(n)
        self.co2_drift = np.zeros(n)
        self.temperature_drift = np.zeros(n)
        self.oxygen_mean = rng.uniform(6.0, 8.0, n)
        self.feed_share = np.ones(n)
        # a third of the tanks has soft water
        soft = rng.random(n) < 0.35
        self.source_meq = MEQ_PER_DH * np.where(soft, rng.uniform(0.3, 2.5, n), rng.uniform(2.5, 14, n))
        if self.stocking == "soft":
            self.source_meq = MEQ_PER_DH * rng.uniform(0.5, 1.5, n)
        self.alkalinity_meq = self.source_meq * np.exp(0.1 * rng.standard_normal(n))
        # wood and soil give acid, limestone takes it [meq/L/day]
        self.acid_meq_day = 0.006 * rng.standard_normal(n)
        self.bicarbonate_half = spread(0.35, 0.5)
        k1, _, _ = carbonate_constants(self.temperature_mean + 273.15)
        # none in the open air holds less than half of equilibrium with air, few more than 40 mg/L
        self.co2_mol = np.clip(10.0**-self.ph_mean * self.alkalinity_meq / 1000 / k1, 7e-6, 1e-3)
        self.ph = self.ph_now()
        self.ph_mean = self.ph.copy()
        # what the keeper says about the tank; every second one has measured the hardness
        self.kh_told = rng.random(n) < 0.5
        self.doses_water = rng.random(n) < 0.5
        self.told = {
            "temperature_c": np.round(self.temperature_mean + rng.normal(0, 0.4, n), 1),
            "ph": np.round(self.ph_mean + rng.normal(0, 0.15, n), 1),
            "feed_g_day": self.feed_g_day * np.exp(rng.normal(0, 0.2, n)),
            "protein_fraction": np.round(self.protein, 2),
            "kh_dkh": np.maximum(np.round(self.alkalinity_meq / MEQ_PER_DH + rng.normal(0, 0.4, n)), 0.0),
        }

    def keeper_says(self, i: int) -> dict:
        """Tank ``i`` as its keeper describes it."""
        return {
            "volume_l": float(self.volume_l[i]),
            "planting": PLANTING[self.planting[i]],
            "seeded": SEEDED[self.seeded[i]],
            **{name: float(values[i]) for name, values in self.told.items() if name != "kh_dkh" or self.kh_told[i]},
        }

    def ph_now(self):
        """The pH that balances the charges, by halving pH 2 to 11."""
        temperature = self.temperature_mean + self.temperature_drift
        k1, k2, water = carbonate_constants(temperature + 273.15)
        ammonium = 10 ** -(0.09018 + 2729.92 / (temperature + 273.15))
        planted = self.planting > 0
        wave = np.sin(2 * np.pi * (self.hour % 24 - 9) / 24)
        co2 = self.co2_mol * 10 ** -((0.04 + 0.08 * planted) * wave + self.co2_drift)
        low, high = np.full(self.count, 2.0), np.full(self.count, 11.0)
        for _ in range(32):
            middle = (low + high) / 2
            h = 10.0**-middle
            bicarbonate = k1 * co2 / h
            free = self.tan / N_G_MOL / 1000 / (1 + h / ammonium)
            below = bicarbonate * (1 + 2 * k2 / h) + water / h - h + free < self.alkalinity_meq / 1000
            low, high = np.where(below, middle, low), np.where(below, high, middle)
        return (low + high) / 2

    def climate(self):
        """Current temperature, pH, oxygen, and whether the lamp is on."""
        clock = self.hour % 24
        wave = np.sin(2 * np.pi * (clock - 9) / 24)
        planted = self.planting > 0
        return (
            self.temperature_mean + 0.3 * wave + self.temperature_drift,
            self.ph,
            self.oxygen_mean + (0.3 + 0.5 * planted) * wave,
            10 <= clock < 19,
        )

    def rates(self, tan, nitrite):
        """Oxidation [mg N/L/day] and growth [1/day] of both groups at these concentrations."""
        temperature, ph, oxygen, _ = self.climate()
        kelvin = temperature + 273.15
        fa = tan / (1 + 10 ** (0.09018 + 2729.92 / kelvin - ph))
        fna = nitrite / (1 + np.exp(-2300 / kelvin) * 10**ph)
        warmer = (1 / 293.15 - 1 / kelvin) / 8.314e-3
        mu = np.array([0.779 * np.exp(68 * warmer), 0.794 * np.exp(44 * warmer)]) * self.mu_scale
        food = np.array(
            [
                fa / (self.k_fa + fa + fa**2 / KI_FA[0]) / (1 + fna / KI_FNA[0]),
                fna / (self.k_fna + fna + fna**2 / KI_FNA[1]) / (1 + fa / KI_FA[1]),
            ]
        )
        bicarbonate = np.maximum(self.alkalinity_meq, 0)
        food[0] *= 1 / (1 + np.exp(-(bicarbonate / self.bicarbonate_half - 1) * 5))
        growth = mu * food * oxygen / (K_OXYGEN + oxygen)
        decay = 0.028 * 1.116 ** (temperature - 15) * self.decay_scale
        return growth * self.biomass / YIELDS, growth - decay

    def run(self, hours: int):
        """Let ``hours`` pass; returns hourly arrays (hours, count) of tan, nitrite, nitrate, nh3."""
        out = {name: np.empty((hours, self.count)) for name in ("tan", "nitrite", "nitrate", "nh3")}
        dt = 1 / (24 * STEPS_AN_HOUR)
        for k in range(hours):
            self._feed()
            self._drift()
            self.ph = self.ph_now()
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
                spare = (demand - by_plants) * lamp * self.nitrate / (0.6 + self.nitrate)
                self.nitrate = np.maximum(self.nitrate + dt * (second - spare), 0)
                charge = from_gut + from_scraps - first - oxidised[0] * share + spare
                self.alkalinity_meq = self.alkalinity_meq + dt * (charge / N_G_MOL - self.acid_meq_day)
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
        self.co2_drift = 0.99 * self.co2_drift + 0.015 * self.rng.standard_normal(self.count)
        self.temperature_drift = 0.985 * self.temperature_drift + 0.06 * self.rng.standard_normal(self.count)

    def change(self, fraction):
        """Exchange ``fraction`` (count,) for source water."""
        self.tan = self.tan * (1 - fraction)
        self.nitrite = self.nitrite * (1 - fraction)
        self.nitrate = self.nitrate * (1 - fraction) + fraction * self.source_nitrate
        self.alkalinity_meq = self.alkalinity_meq * (1 - fraction) + fraction * self.source_meq
        self.ph = self.ph_now()

    def dose(self, mg_n_l):
        """Add ammonia (count,) as the keeper measures it: off by a tenth; in half of the tanks as ammonia water."""
        added = mg_n_l * np.exp(0.1 * self.rng.standard_normal(self.count))
        self.tan = self.tan + added
        self.alkalinity_meq = self.alkalinity_meq + np.where(self.doses_water, added / N_G_MOL, 0.0)
        self.ph = self.ph_now()

    def kit(self, parameter: str):
        """One reading of every tank in mg/L of the ion, on the kit's own coarse steps."""
        truth = {"total_ammonia": self.tan, "nitrite": self.nitrite, "nitrate": self.nitrate}[parameter]
        seen = truth * ION_PER_N[parameter] * np.exp(KIT_NOISE * self.rng.standard_normal(self.count))
        steps = np.array(KIT_STEPS[parameter])
        return steps[np.searchsorted((steps[1:] + steps[:-1]) / 2, seen)]

    def water_kit(self) -> dict:
        """One reading of pH, a colour, and of carbonate hardness [dKH], in drops, of every tank."""
        ph = self.ph + PH_NOISE * self.water_rng.standard_normal(self.count)
        kh = self.alkalinity_meq / MEQ_PER_DH + KH_NOISE_DKH * self.water_rng.standard_normal(self.count)
        return {
            "ph": np.clip(np.round(np.round(ph / PH_STEP) * PH_STEP, 1), *PH_COLOURS),
            "kh": np.maximum(np.round(kh / KH_DROP_DKH) * KH_DROP_DKH, 0.0),
        }

    def ready(self):
        """Whether each tank can process its mean load with tan and nitrite at the levels of READY."""
        tan, nitrite = (np.full(self.count, level) for level in (READY_TAN_MG_N_L, READY_NITRITE_MG_N_L))
        oxidised, _ = self.rates(tan, nitrite)
        load = self.load * (1 - self.leftover) + self.load / self.excreted * 0.16 * 0.8 * self.leftover
        need = np.maximum(load - self.uptake, 0)
        return (oxidised[0] >= need) & (oxidised[1] >= need)

    def held_back(self):
        """What the ammonia oxidisers do, as a share of what they would do at 4 dKH and the pH that goes with it.

        At 1 mg N/L of ammonia, or what the water has if that is more: scarce ammonia holds nothing back.
        """
        tan = np.maximum(self.tan, STALL_TAN_MG_N_L)
        hard = copy.copy(self)
        hard.alkalinity_meq = np.full(self.count, HARD_DKH * MEQ_PER_DH)
        hard.ph = hard.ph_now()
        return self.rates(tan, self.nitrite)[0][0] / hard.rates(tan, self.nitrite)[0][0]

    def stalled(self):
        """Whether ammonia stays because the alkalinity is gone, though there are bacteria that would take it."""
        oxidised, _ = self.rates(self.tan, self.nitrite)
        slow = oxidised[0] < STALL_SHARE_DAY * self.tan
        return (self.tan > STALL_TAN_MG_N_L) & slow & (self.held_back() < STALL_HELD_BACK)
