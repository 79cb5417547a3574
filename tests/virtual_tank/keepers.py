"""How keepers look after the virtual tanks: rules of thumb, and the belief's own plan."""

import numpy as np
from limnary.calc import belief as b
from limnary.calc import kinetics as k
from limnary.calc.change_plan import plan_of
from limnary.calc.hardness_ahead import kh_gone
from limnary.calc.outlook import even
from limnary.calc.tank_events import follow
from limnary.calc.tank_load import load_of

from tests.virtual_tank.oracle import best_change, hours_over
from tests.virtual_tank.simulator import ION_PER_N, KIT_STEPS

TEST_HOUR = 18  # the daily test is an hour after the evening meal: the worst time


def usual_rule(day: int, seen: dict) -> np.ndarray:
    """Change half when ammonia reads 0.5 mg/L or nitrite 0.25 mg/L or more, a quarter weekly."""
    alarm = (seen["total_ammonia"] >= 0.5) | (seen["nitrite"] >= 0.25)
    return np.where(alarm, 0.5, 0.25 if day % 7 == 6 else 0.0)


def half_daily(day: int, seen: dict) -> np.ndarray:
    """Change half every day for two weeks, then a quarter weekly."""
    fraction = 0.5 if day < 14 else (0.25 if day % 7 == 6 else 0.0)
    return np.full(len(seen["nitrite"]), fraction)


def patient_rule(day: int, seen: dict) -> np.ndarray:
    """Change half only when ammonia reads 4 mg/L or nitrite 2 mg/L or more, a quarter weekly."""
    alarm = (seen["total_ammonia"] >= 4) | (seen["nitrite"] >= 2)
    return np.where(alarm, 0.5, 0.25 if day % 7 == 6 else 0.0)


def fishless_dose(seen: dict) -> np.ndarray:
    """Add ammonia of 3 mg/L (as NH4) whenever it reads 0.25 mg/L or less [mg N/L]."""
    return np.where(seen["total_ammonia"] <= 0.25, 3.0, 0.0) / ION_PER_N["total_ammonia"]


def kit(tanks) -> dict:
    """One test of all three nitrogen species in every tank, mg/L of the ion."""
    return {parameter: tanks.kit(parameter) for parameter in KIT_STEPS}


def is_weekly(day: int) -> bool:
    """Whether nitrate, pH and carbonate hardness are tested, too: once a week, first on day 0."""
    return day % 7 == 0


class Believers:
    """One belief per tank, which knows only what a keeper could know."""

    def __init__(self, tanks, **settings):
        self.c = {**k.settings(), **settings}
        self.truth = tanks
        self.tanks = [tanks.keeper_says(i) for i in range(tanks.count)]
        self.beliefs = [b.prior(self.c, tank, 1, 0.0) for tank in self.tanks]
        self.sources = [{"nitrate_mg_n_l": float(x)} for x in tanks.source_nitrate]
        self.changes, self.doses = [[] for _ in self.tanks], [[] for _ in self.tanks]

    def wait(self, hour: float) -> None:
        """Let time pass without records."""
        for i, belief in enumerate(self.beliefs):
            follow(self.c, belief, self.tanks[i], [], hour)

    def test(self, day: int, seen: dict) -> None:
        """Take in the readings of the day's test; once a week nitrate as well, and pH and carbonate hardness.

        No rule looks at those two, so only a believer's keeper reads them, with a chance of their own.
        """
        hour = self.truth.hour
        read = {name: values for name, values in seen.items() if is_weekly(day) or name != "nitrate"}
        water = self.truth.water_kit() if is_weekly(day) else {}
        for i, belief in enumerate(self.beliefs):
            events = [
                {"parameter": name, "value": float(values[i]), "basis": "ion", "steps": list(KIT_STEPS[name])}
                for name, values in read.items()
            ]
            events += [{"parameter": name, "value": float(values[i])} for name, values in water.items()]
            follow(self.c, belief, self.tanks[i], [{"kind": "reading", "at_h": hour, **one} for one in events], hour)

    def changed(self, hour: float, fraction: np.ndarray) -> None:
        """Take in the water changes."""
        for i, belief in enumerate(self.beliefs):
            if fraction[i]:
                event = {"kind": "change", "at_h": hour, "fraction": float(fraction[i]), "source": self.sources[i]}
                follow(self.c, belief, self.tanks[i], [event], hour)
                self.changes[i].append(event)

    def dosed(self, hour: float, tan_mg_n_l: np.ndarray) -> None:
        """Take in the doses of ammonia [mg N/L]."""
        for i, belief in enumerate(self.beliefs):
            if tan_mg_n_l[i]:
                event = {"kind": "dose", "at_h": hour, "tan_mg_n_l": float(tan_mg_n_l[i])}
                follow(self.c, belief, self.tanks[i], [event], hour)
                self.doses[i].append(event)

    def plan(self, limits: dict, risk: float) -> list[dict]:
        """What `change_plan` would answer in each tank now."""
        return [
            plan_of(self.c, belief, [], tank, source, limits, risk, 24.0, 0.5)
            for belief, tank, source in zip(self.beliefs, self.tanks, self.sources, strict=True)
        ]

    def hardness_gone(self) -> list[dict | None]:
        """What `outlook` would answer as `kh_gone_h` in each tank now."""
        return [
            kh_gone(self.c, even(belief), changes, load_of(self.c, tank, belief.at_h, doses, [])["dosed_mg_n_l_day"])
            for belief, tank, changes, doses in zip(self.beliefs, self.tanks, self.changes, self.doses, strict=True)
        ]

    def advice(self, limits: dict, risk: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """All of the plan's advice: how much to change, every how many hours, and whether to feed less."""
        plans = self.plan(limits, risk)
        several = [p["several"] or {"fraction_each": p["fraction"], "every_h": 24} for p in plans]
        fraction = np.array([one["fraction_each"] for one in several])
        every_h = np.array([round(one["every_h"]) for one in several])
        return fraction, every_h, np.array([not p["enough"] for p in plans]) & (self.c["lean_feed"] < 1.0)


class Kept:
    """Tanks in care and what that costs, each by tank.

    over: hours over a limit; water: tank volumes changed; lean: days on half the food; stalled: at any daily test.
    """

    def __init__(self, tanks, limits: dict, believers: Believers | None):
        self.tanks, self.limits, self.believers = tanks, limits, believers
        self.over, self.water, self.lean = (np.zeros(tanks.count) for _ in range(3))
        self.stalled = np.zeros(tanks.count, bool)

    def run(self, hours: int) -> None:
        self.over += hours_over(self.tanks.run(hours), self.limits)

    def change(self, fraction: np.ndarray) -> None:
        self.tanks.change(fraction)
        self.water += fraction
        if self.believers:
            self.believers.changed(self.tanks.hour, fraction)

    def feed(self, less: np.ndarray) -> None:
        """Half the food until the next test where `less`."""
        self.tanks.feed_share = np.where(less, 0.5, 1.0)
        self.lean += less

    def day(self, hours: int, fraction: np.ndarray, every_h: np.ndarray) -> None:
        """Change `fraction` now and every `every_h`, 6, 8, 12 or 24, until the next test."""
        self.change(fraction)
        hour = 0
        for at_h in sorted({*range(6, hours, 6), *range(8, hours, 8)}):
            self.run(at_h - hour)
            hour = at_h
            if np.any(at_h % every_h == 0):
                self.change(np.where(at_h % every_h == 0, fraction, 0.0))
        self.run(hours - hour)

    def oracle_day(self, hours: int, every_h: int, price: float) -> None:
        """Change what the future asks for, now and every `every_h`, until the next test."""
        for hour in range(0, hours, every_h):
            ahead = min(every_h, hours - hour)
            self.change(best_change(self.tanks, self.limits, ahead, price))
            self.run(ahead)
