"""The smallest water change now that keeps every limit until the next test, within the keeper's risk."""

import math

from limnary.calc import belief as b
from limnary.calc import kinetics as k
from limnary.calc.outlook import Watch, band, even, notes_of, recent_doubts, working_limits
from limnary.calc.tank_events import believed, follow


def change_plan(
    *,
    tank: dict,
    now_h: float,
    readings: list = (),
    changes: list = (),
    doses: list = (),
    feedings: list = (),
    source: dict | None = None,
    limits: dict | None = None,
    risk: float = 0.1,
    next_test_h: float = 24.0,
    max_fraction: float = 0.9,
    seed: int = 1,
) -> dict:
    """The fraction and litres to change now; the chance and peaks that then remain; what else to do.

    Parameters and returns: shared_schema/calc/change_plan.json; limits in mg N/L. If no single change is
    enough, the plan assumes half the food, then a second change. If even these are not enough, it answers the
    change with the least time over a limit, weighted by how far over, and the advice says so. Where food is
    the cause, a smaller change with half the food replaces a change of more than half the water.
    Raises Refusal reading_after_now. Source: the belief of `outlook`.

    >>> tank = dict(volume_l=90, temperature_c=24, ph=7.4, planting="none", seeded="none", feed_g_day=0.2)
    >>> plan = change_plan(tank=tank, now_h=0)
    >>> plan["fraction"], plan["enough"], plan["advice"]
    (0.0, True, ['no_change'])
    """
    c = k.settings()
    belief, plans, _ = believed(c, tank, now_h, readings, changes, doses, feedings, seed)
    return plan_of(c, belief, plans, tank, source, limits, risk, next_test_h, max_fraction)


def plan_of(c, belief, plans, tank, source, limits, risk, next_test_h, max_fraction) -> dict:
    """The answer of `change_plan` from a belief that has reached now."""
    trial = Trial(c, even(belief), plans, tank, source or {}, working_limits(limits), next_test_h)
    fraction, watch = trial.smallest(risk, max_fraction)
    enough = watch.chance_of_any() <= risk
    halves = None
    if not enough or fraction > c["lean_from"]:
        # Half the food is easier on tank, animals and keeper than a second change or a change of most of the water.
        trial.feed = c["lean_feed"]
        leaner, lean_watch = trial.smallest(risk, max_fraction)
        if enough and leaner > fraction - c["lean_gain"]:
            trial.feed = 1.0
        else:
            enough, fraction, watch = False, leaner, lean_watch
            halves = None if watch.chance_of_any() <= risk else trial.two_changes(risk, max_fraction)
    chance = watch.chance_of_any()
    return {
        "fraction": fraction,
        "litres": fraction * tank["volume_l"],
        "pass_chance": chance,
        "pass_chance_without": trial.run(0.0, feed=1.0).chance_of_any(),
        "enough": enough,
        "two_changes": halves,
        "advice": _advice_of(trial, watch, fraction, enough, halves, risk),
        "peak": {f"{name}_mg_n_l": band(values) for name, values in watch.peaks.items()},
        "doubts": recent_doubts(c, belief),
        "notes": notes_of(c, belief),
    }


class Trial:
    """Tries changes on copies of one belief with the same random numbers, so that they can be compared."""

    def __init__(self, c, belief, plans, tank, source, limits, next_test_h):
        self.c, self.belief, self.plans, self.tank = c, belief, plans, tank
        self.source, self.limits, self.hours = source, limits, next_test_h
        self.feed = 1.0

    def run(self, fraction: float, again: float = 0.0, feed: float | None = None, hours: float | None = None) -> Watch:
        """The `Watch` until the next test (or for `hours`) after changing `fraction` now and `again` half-way."""
        feed = self.feed if feed is None else feed
        ahead = self.belief.copy()
        now_h, hours = ahead.at_h, self.hours if hours is None else hours
        b.change_water(ahead, fraction, self.source)
        plans = [p if p["kind"] != "feeding" else {**p, "feed_g": p["feed_g"] * feed} for p in self.plans]
        watch = Watch(ahead, self.limits)
        if again:
            half = {"kind": "change", "at_h": now_h + hours / 2, "fraction": again, "source": self.source}
            plans = sorted([*plans, half], key=lambda plan: plan["at_h"])
        if feed != 1.0:
            # Food already eaten still releases its nitrogen, so the smaller ration counts only from `turn_h` on.
            turn_h = now_h + min(self.c["lean_after_h"], hours)
            follow(self.c, ahead, self.tank, plans, turn_h, watch.see)
            ahead.base *= feed
            plans = [plan for plan in plans if plan["at_h"] > turn_h]
        follow(self.c, ahead, self.tank, plans, now_h + hours, watch.see)
        return watch

    def smallest(self, risk: float, max_fraction: float) -> tuple[float, Watch]:
        """The smallest fraction, in hundredths, that keeps the risk.

        If none does: the smallest tenth whose time over a limit is within `plan_slack` of the least.
        """
        tried = []
        for fraction in _tenths(max_fraction):
            watch = self.run(fraction)
            if watch.chance_of_any() <= risk:
                return self._refine(fraction, watch, risk, self.run)
            tried.append((fraction, watch, watch.mean_over_h()))
        most = min(over for *_, over in tried) + self.c["plan_slack"] * self.hours
        return next((fraction, watch) for fraction, watch, over in tried if over <= most)

    def two_changes(self, risk: float, max_fraction: float) -> dict | None:
        """The smallest two equal changes, in hundredths, now and half-way, that keep the risk; None if none do."""
        for fraction in _tenths(max_fraction)[1:]:
            watch = self._twice(fraction)
            if watch.chance_of_any() <= risk:
                fraction, watch = self._refine(fraction, watch, risk, self._twice)
                return {"fraction_each": fraction, "after_h": self.hours / 2, "pass_chance": watch.chance_of_any()}
        return None

    def _twice(self, fraction: float) -> Watch:
        return self.run(fraction, again=fraction)

    def _refine(self, fraction: float, watch: Watch, risk: float, run) -> tuple[float, Watch]:
        """Bisect between `fraction`, which keeps the risk, and the tenth below it, to whole hundredths."""
        # `max_fraction` may not be a whole hundredth: try the hundredth below it, never the one above.
        low, high = max(0, math.ceil(fraction * 10 - 1e-9) * 10 - 10), math.ceil(fraction * 100 - 1e-9)
        if fraction == 0.0:
            return fraction, watch
        while high - low > 1:
            middle = (low + high) // 2
            tried = run(middle / 100)
            if tried.chance_of_any() <= risk:
                high, fraction, watch = middle, middle / 100, tried
            else:
                low = middle
        return fraction, watch


def _tenths(max_fraction: float) -> list[float]:
    """0, 0.1, ... below `max_fraction`, then `max_fraction` itself."""
    return [tenth / 10 for tenth in range(10) if tenth / 10 < max_fraction] + [max_fraction]


def _advice_of(
    trial: Trial, watch: Watch, fraction: float, enough: bool, halves: dict | None, risk: float
) -> list[str]:
    """Codes of what else to do; the effect of feeding or testing differently is tried on the belief first."""
    names = ("nitrite_mg_n_l", "nitrate_mg_n_l")
    dirty = any(trial.source.get(name, 0.0) > trial.limits[name] for name in names)
    advice = ["source_over_limit"] if dirty else []
    if fraction > 0.5:
        advice.append("large_change")
    if enough:
        return advice if fraction else [*advice, "no_change"]
    if watch.chance_of_any() <= risk:
        return [*advice, "feed_half"]
    if halves:
        advice.append("two_changes")
    chances = watch.chances()
    if chances["nh3"] <= risk and chances["nitrite"] <= risk and chances["nitrate"] > risk:
        return [*advice, "feed_less", "nitrate_slowly"]
    if trial.run(fraction, feed=0.0).chance_of_any() <= risk:
        advice.append("feed_nothing")
    else:
        advice.append("feed_less")
    if trial.run(fraction, hours=trial.hours / 2).chance_of_any() <= risk:
        advice.append("test_at_half_time")
    else:
        advice.append("test_sooner")
    return advice
