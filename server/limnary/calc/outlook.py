"""The outlook: what a tank will do before its next test, as bands, chances and a date range."""

import math

import numpy as np

from limnary.calc import belief as b
from limnary.calc import kinetics as k
from limnary.calc.free_ammonia import free_ammonia
from limnary.calc.tables import constants, table
from limnary.calc.tank_events import believed, follow

BAND = (("p10", 0.1), ("p50", 0.5), ("p90", 0.9))


def outlook(
    *,
    tank: dict,
    now_h: float,
    horizon_h: float = 72.0,
    readings: list = (),
    changes: list = (),
    doses: list = (),
    feedings: list = (),
    limits: dict | None = None,
    seed: int = 1,
) -> dict:
    """Bands for ammonia, nitrite, nitrate to a horizon; chance of passing each limit; when the tank is ready.

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
    belief, plans, _ = believed(c, tank, now_h, readings, changes, doses, feedings, seed)
    return outlook_of(c, belief, plans, tank, now_h, horizon_h, changes, limits)


def outlook_of(c, belief, plans, tank, now_h, horizon_h, changes, limits) -> dict:
    """The answer of `outlook` from a belief that has reached `now_h`."""
    allowed = working_limits(limits)
    cloud = even(belief)
    watch = Watch(cloud, allowed)
    series = [watch.bands(cloud)]
    every = max(1, math.ceil(horizon_h / c["step_h"] / c["series_points"])) * c["step_h"]
    ahead, before_h = cloud.copy(), now_h
    count = math.ceil(horizon_h / every - 1e-9)
    for i in range(count):
        at_h = min(now_h + (i + 1) * every, now_h + horizon_h)
        # Start at `before_h`, not at `ahead.at_h`: rounding can leave `at_h` slightly earlier, and a plan in the
        # gap would be applied twice.
        follow(c, ahead, tank, [e for e in plans if before_h < e["at_h"] <= at_h], at_h, watch.see)
        series.append(watch.bands(ahead))
        before_h = at_h
    settled = settled_band(c, cloud, changes)
    capacity = k.processed(cloud.cloud, conditions_of(c, cloud), c) * tank["volume_l"]
    return {
        "series": series,
        "now": {name: value for name, value in series[0].items() if name != "at_h"},
        "pass_chance": watch.chances(),
        "settled_h": settled,
        "capacity_mg_n_day": band(capacity),
        "doubts": recent_doubts(c, belief),
        "notes": notes_of(c, belief) + ([] if settled else ["not_settled_in_sight"]),
    }


def working_limits(limits: dict | None) -> dict:
    """The limits to keep [mg N/L]: those given, else the working limits of tables/limits.json."""
    known = table("limits")["limits"]
    working = {
        "nh3_mg_n_l": known["free_ammonia_mg_l"]["value"] / constants("nitrogen_species")["nh3_per_n"],
        "nitrite_mg_n_l": known["nitrite_mg_n_l"]["value"],
        "nitrate_mg_n_l": known["nitrate_mg_n_l"]["value"],
    }
    return {**working, **(limits or {})}


def even(belief: b.Belief) -> b.Belief:
    """The same belief with equal weights, so that a quantile is a rank."""
    out = belief.copy()
    out.cloud = belief.cloud[:, b.systematic(belief)]
    out.weight = np.full(len(belief.weight), 1.0 / len(belief.weight))
    return out


def conditions_of(c: dict, belief: b.Belief) -> tuple:
    """`kinetics.conditions` of the belief's water."""
    return k.conditions(c, belief.temperature_c, belief.ph, belief.kh_dkh)


def band(values: np.ndarray) -> dict:
    """The 10 %, 50 % and 90 % points of equally weighted draws."""
    ranked = np.sort(values)
    return {name: float(ranked[math.ceil(share * len(ranked) - 1e-9) - 1]) for name, share in BAND}


class Watch:
    """Records, while the belief moves, which draws pass which limit, for how long and how far."""

    def __init__(self, belief: b.Belief, limits: dict):
        self.limits = limits
        n = belief.cloud.shape[1]
        self.passed = {name: np.zeros(n, bool) for name in ("nh3", "nitrite", "nitrate")}
        self.peaks = {name: np.zeros(n) for name in ("nh3", "nitrite", "nitrate")}
        self.over_h = np.zeros(n)
        # The un-ionised share of each draw's ammonia at its own pH (emerson_1975).
        pka = free_ammonia(tan_mg_n_l=0.0, ph=belief.ph, temperature_c=belief.temperature_c)["pka"]
        self.share_nh3 = 1.0 / (1.0 + 10.0 ** (pka - belief.ph - belief.cloud[k.PH_OFFSET]))
        self.see(belief, 0.0)

    def see(self, belief: b.Belief, hours: float) -> None:
        """Record each draw's concentrations after a step of `hours`."""
        found = {
            "nh3": belief.cloud[k.TAN] * self.share_nh3,
            "nitrite": belief.cloud[k.NITRITE],
            "nitrate": belief.cloud[k.NITRATE],
        }
        worst = np.zeros(belief.cloud.shape[1])
        for name, values in found.items():
            np.maximum(self.peaks[name], values, out=self.peaks[name])
            share = values / self.limits[f"{name}_mg_n_l"]
            self.passed[name] |= share > 1.0
            np.maximum(worst, share, out=worst)
        self.over_h += hours * np.where(worst > 1.0, worst, 0.0)

    def bands(self, belief: b.Belief) -> dict:
        """One row of the series."""
        return {
            "at_h": belief.at_h,
            "total_ammonia_mg_n_l": band(belief.cloud[k.TAN]),
            "nitrite_mg_n_l": band(belief.cloud[k.NITRITE]),
            "nitrate_mg_n_l": band(belief.cloud[k.NITRATE]),
            "nh3_mg_n_l": band(belief.cloud[k.TAN] * self.share_nh3),
        }

    def chances(self) -> dict:
        """The chance that each limit is passed at any time watched."""
        return {name: float(np.mean(passed)) for name, passed in self.passed.items()}

    def mean_over_h(self) -> float:
        """Mean over the draws of the hours over any limit, each hour times the worst concentration / limit."""
        return float(np.mean(self.over_h))

    def chance_of_any(self) -> float:
        """The chance that any limit is passed at any time watched."""
        return float(np.mean(self.passed["nh3"] | self.passed["nitrite"] | self.passed["nitrate"]))


def settled_band(c: dict, even_belief: b.Belief, changes: list) -> dict | None:
    """When the tank will likely process its load [h since start]; None if not within `far_h`.

    A draw is ready once what it processes with ammonia and nitrite at `ready_mg_n_l` covers its input.
    Over weeks the model itself errs, so a random factor lengthens or shortens each draw's wait. The water
    changes of the last week continue in a draw as long as its water calls for them. A point of the band
    beyond the far horizon is None.
    """
    thinned = even_belief.copy()
    thinned.cloud = even_belief.cloud[:, :: int(c["far_every"])].copy()
    thinned.weight = np.full(thinned.cloud.shape[1], 1.0 / thinned.cloud.shape[1])
    luck = thinned.draw(1)[0]
    now_h = even_belief.at_h
    recent = [e["fraction"] for e in changes if now_h - 168.0 <= e["at_h"] <= now_h]
    daily = sum(-math.log(1.0 - min(f, 0.99)) for f in recent) / 7.0
    kept = math.exp(-daily * c["walk_h"] / 24.0)
    water = conditions_of(c, thinned)
    ready_at = np.full(thinned.cloud.shape[1], math.inf)
    # Steps can add up to slightly less than the horizon. That counts as reached: `advance` would not move further.
    far_h = now_h + c["far_h"]
    while True:
        ready = k.processed(thinned.cloud, water, c) >= thinned.cloud[k.INPUT] * thinned.base
        ready_at[ready & np.isinf(ready_at)] = thinned.at_h
        if thinned.at_h >= far_h - 1e-9 or np.mean(np.isfinite(ready_at)) >= 0.95:
            break
        b.advance(c, thinned, min(thinned.at_h + c["walk_h"], far_h))
        wanting = (thinned.cloud[k.TAN] > c["care_tan_mg_n_l"]) | (thinned.cloud[k.NITRITE] > c["care_nitrite_mg_n_l"])
        thinned.cloud[:3] *= np.where(wanting, kept, 1.0)
    # The error of a date grows in proportion to how far away it is.
    ready_at = now_h + (ready_at - now_h) * np.exp(c["sd_far"] * luck)
    found = {name: at_h if math.isfinite(at_h) else None for name, at_h in band(ready_at).items()}
    return None if found["p10"] is None else found


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
