"""The outlook: what a tank will do before its next test, as bands, chances and a date range."""

import math
from dataclasses import replace

import numpy as np

from limnary.calc import belief as b
from limnary.calc import kinetics as k
from limnary.calc.bands import band
from limnary.calc.drift import mixed_band
from limnary.calc.free_ammonia import free_ammonia
from limnary.calc.hardness_ahead import kh_gone
from limnary.calc.readiness import readiness
from limnary.calc.tables import constants, table
from limnary.calc.tank_events import believed, follow
from limnary.calc.tank_load import load_of, per_gram_of, processed_at_limits
from limnary.calc.water_limits import water_limits

WATCHED = ("nh3", "nitrite", "nitrate")
# These harm within hours; nitrate harms over weeks.
QUICK = ("nh3", "nitrite")


def outlook(
    *,
    tank: dict,
    now_h: float,
    horizon_h: float = 72.0,
    readings: list = (),
    changes: list = (),
    doses: list = (),
    feedings: list = (),
    planned_feed_g_day: float | None = None,
    limits: dict | None = None,
    seed: int = 1,
) -> dict:
    """Bands for ammonia, nitrite, nitrate to a horizon; chance of passing each limit; when the tank is ready.

    Also when its carbonate hardness will be used up, where that is known.

    Parameters and returns: shared_schema/calc/outlook.json; concentrations in mg N/L, times in hours
    since the tank's start. Changes, doses and feedings after `now_h` are plans and are applied.
    Raises Refusal reading_after_now.
    Sources: metcalf_eddy_2014, ekama_wentzel_2008, emerson_1975.

    >>> tank = dict(volume_l=90, temperature_c=24, ph=7.4, planting="light", seeded="none", feed_g_day=0.2)
    >>> answer = outlook(tank=tank, now_h=0, horizon_h=24)
    >>> answer["notes"][0], len(answer["series"])
    ('prior_only', 9)
    """
    c = k.settings()
    records = {"readings": readings, "changes": changes, "doses": doses, "feedings": feedings}
    belief, plans, _ = believed(c, tank, now_h, **records, seed=seed)
    return outlook_of(c, belief, plans, tank, now_h, horizon_h, records, limits, planned_feed_g_day)


def outlook_of(c, belief, plans, tank, now_h, horizon_h, records, limits=None, planned_feed_g_day=None) -> dict:
    """The answer of `outlook` from a belief that has reached `now_h`."""
    cloud = even(belief)
    watch = Watch(cloud, working_limits(tank, limits))
    limits_now = watch.limits
    series = [watch.bands(c, cloud)]
    # How urgent a change is rests on the equations alone, as every plan does.
    now = {name: value for name, value in watch.bands(c, replace(cloud, drifts={})).items() if name != "at_h"}
    every = max(1, math.ceil(horizon_h / c["step_h"] / c["series_points"])) * c["step_h"]
    ahead, before_h = cloud.copy(), now_h
    count = math.ceil(horizon_h / every - 1e-9)
    for i in range(count):
        at_h = min(now_h + (i + 1) * every, now_h + horizon_h)
        # Start at `before_h`, not at `ahead.at_h`: rounding can leave `at_h` slightly earlier, and a plan in the
        # gap would be applied twice.
        follow(c, ahead, tank, [e for e in plans if before_h < e["at_h"] <= at_h], at_h, watch.see)
        series.append(watch.bands(c, ahead))
        before_h = at_h
    settled, unsettled = readiness(c, cloud, tank, limits_now, records, planned_feed_g_day)
    load = load_of(c, tank, now_h, records["doses"], records["feedings"])
    fed = (load["feed_g_day"] or 0.0) * per_gram_of(c, tank)
    gone = kh_gone(c, cloud, records["changes"], load["dosed_mg_n_l_day"], fed)
    capacity = processed_at_limits(c, cloud, limits_now) * tank["volume_l"]
    return {
        "series": series,
        "now": now,
        "pass_chance": watch.chances(),
        "settled_h": settled,
        "kh_gone_h": gone,
        "capacity_mg_n_day": band(capacity),
        "doubts": recent_doubts(c, belief),
        "notes": notes_of(c, belief) + unsettled,
    }


def working_limits(tank: dict, given: dict | None):
    """The limits to keep [mg N/L] as a function of (pH, temperature_c): those given, else those of `water_limits`.

    Free ammonia is held to what it is at the limit of total ammonia in this water.
    """

    def limits_at(ph: float, temperature_c: float) -> dict:
        found = water_limits(ph=ph, temperature_c=temperature_c, chloride_mg_l=tank.get("chloride_mg_l"))
        return {**{f"{name}_mg_n_l": found[f"{name}_mg_n_l"] for name in WATCHED}, **(given or {})}

    return limits_at


def _share_nh3(belief: b.Belief, ph: float, temperature_c: float) -> np.ndarray:
    """The un-ionised share of each draw's ammonia at its own pH (emerson_1975)."""
    pka = free_ammonia(tan_mg_n_l=0.0, ph=ph, temperature_c=temperature_c)["pka"]
    return 1.0 / (1.0 + 10.0 ** (pka - ph - belief.cloud[k.PH_OFFSET]))


def _eifac_nh3_mg_n_l() -> float:
    """EIFAC's limit of free ammonia [mg N/L] (eifac_1970)."""
    return table("limits")["limits"]["free_ammonia_mg_l"]["value"] / constants("nitrogen_species")["nh3_per_n"]


def even(belief: b.Belief) -> b.Belief:
    """The same belief with equal weights, so that a quantile is a rank."""
    out = belief.copy()
    out.cloud = belief.cloud[:, b.systematic(belief)]
    out.weight = np.full(len(belief.weight), 1.0 / len(belief.weight))
    return out


class Watch:
    """Records, while the belief moves, which draws pass which limit, for how long and how far.

    limits_at: from `working_limits`; water: a `ChangedWater` where changes move pH and temperature; else the belief's
    own pH counts.
    """

    def __init__(self, belief: b.Belief, limits_at, water=None):
        self.limits_at, self.water = limits_at, water
        n = belief.cloud.shape[1]
        self.passed = {name: np.zeros(n, bool) for name in WATCHED}
        self.peaks = {name: np.zeros(n) for name in WATCHED}
        self.over_h = np.zeros(n)
        self.passed_last = np.zeros(n, bool)
        self.free, self.free_limit = np.zeros(n, bool), _eifac_nh3_mg_n_l()
        self._in_water(belief, belief.ph, belief.temperature_c)
        self.see(belief, 0.0)

    def _in_water(self, belief: b.Belief, ph: float, temperature_c: float) -> None:
        self.ph = belief.ph
        self.limits = self.limits_at(ph, temperature_c)
        self.share_nh3 = _share_nh3(belief, ph, temperature_c)

    def see(self, belief: b.Belief, hours: float) -> None:
        """Record each draw's concentrations after a step of `hours`."""
        if self.water and self.water.known:
            self._in_water(belief, *self.water.at(belief.at_h))
        elif belief.ph != self.ph:
            self._in_water(belief, belief.ph, belief.temperature_c)
        found = {
            "nh3": belief.cloud[k.TAN] * self.share_nh3,
            "nitrite": belief.cloud[k.NITRITE],
            "nitrate": belief.cloud[k.NITRATE],
        }
        self.free |= found["nh3"] > self.free_limit
        for name, values in found.items():
            np.maximum(self.peaks[name], values, out=self.peaks[name])
            share = values / self.limits[f"{name}_mg_n_l"]
            self.passed[name] |= share > 1.0
            if name in QUICK:
                self.passed_last |= share > 1.0
                self.over_h += hours * np.where(share > 1.0, share, 0.0)

    def changed(self, belief: b.Belief) -> None:
        """Record the concentrations right after a further change; `last_chance` counts from here."""
        self.passed_last[:] = False
        self.see(belief, 0.0)

    def bands(self, c: dict, belief: b.Belief) -> dict:
        """One row of the series. In total ammonia and nitrite the drift counts by its weight beside the equations;
        free ammonia, a matter of limits, rests on the equations alone, as all plans and chances do."""

        def mixed(row):
            values, drift = belief.cloud[row], belief.drifts.get(row)
            return mixed_band(c, values, drift, belief.at_h) if drift else band(values)

        return {
            "at_h": belief.at_h,
            "total_ammonia_mg_n_l": mixed(k.TAN),
            "nitrite_mg_n_l": mixed(k.NITRITE),
            "nitrate_mg_n_l": band(belief.cloud[k.NITRATE]),
            "nh3_mg_n_l": band(belief.cloud[k.TAN] * self.share_nh3),
        }

    def chances(self) -> dict:
        """The chance that each limit is passed at any time watched."""
        return {name: float(np.mean(passed)) for name, passed in self.passed.items()}

    def chance(self) -> float:
        """The chance that ammonia or nitrite passes its limit at any time watched."""
        return float(np.mean(self.passed["nh3"] | self.passed["nitrite"]))

    def last_chance(self) -> float:
        """The chance that ammonia or nitrite passes its limit after the last change."""
        return float(np.mean(self.passed_last))

    def mean_over_h(self) -> float:
        """Mean over the draws of the hours over ammonia's and nitrite's limits, each times concentration / limit."""
        return float(np.mean(self.over_h))

    def harms_no_more_than(self, other: "Watch") -> bool:
        """Whether neither the chance of passing a limit nor the time over one is higher than in `other`."""
        return self.chance() <= other.chance() and self.mean_over_h() <= other.mean_over_h()

    def free_chance(self) -> float:
        """The chance that free ammonia passes EIFAC's limit, in sour water higher than the limit of total ammonia."""
        return float(np.mean(self.free))


def recent_doubts(c: dict, belief: b.Belief) -> list:
    """Readings of the last days that did not fit what was expected."""
    return [doubt for doubt in belief.doubts if belief.at_h - doubt["at_h"] <= c["doubt_stands_h"]]


def notes_of(c: dict, belief: b.Belief) -> list[str]:
    """Note codes: what a keeper should know about this belief."""
    notes = []
    if belief.readings == 0:
        notes.append("prior_only")
    elif belief.readings < c["few_readings"]:
        notes.append("few_readings")
    if recent_doubts(c, belief):
        notes.append("doubted")
    return notes
