"""Tries water changes on copies of one belief until the next test."""

import math

from limnary.calc import belief as b
from limnary.calc.changed_water import ChangedWater
from limnary.calc.outlook import Watch
from limnary.calc.tank_events import follow
from limnary.calc.tank_load import tan_limit

# The fields of the new water that can be a reason not to change, in the order in which they are named.
_CAUSES = {
    "total_ammonia": ("tan_mg_n_l",),
    "nitrite": ("nitrite_mg_n_l",),
    "ph": ("ph", "kh_dkh", "temperature_c"),
}


class Trial:
    """Tries changes on copies of one belief with the same random numbers, so that they can be compared.

    belief: equally weighted, at now; plans: records after now; limits_at: from `working_limits`; hours: to the next
    test; risk: the chance of passing a limit that is accepted.
    feed: the share of the usual food that `run` assumes.
    """

    def __init__(self, c, belief, plans, tank, source, limits_at, risk, next_test_h):
        self.c, self.belief, self.plans, self.tank = c, belief, plans, tank
        self.source, self.limits_at, self.risk, self.hours = source, limits_at, risk, next_test_h
        self.limits = limits_at(belief.ph, belief.temperature_c)
        self.feed = 1.0

    def run(
        self,
        fraction: float,
        count: int = 1,
        *,
        feed: float | None = None,
        hours: float | None = None,
        source: dict | None = None,
    ) -> Watch:
        """The `Watch` until the next test (or for `hours`) with `count` equal changes, evenly spaced from now on."""
        feed = self.feed if feed is None else feed
        hours = self.hours if hours is None else hours
        source = self.source if source is None else source
        ahead = self.belief.copy()
        now_h = ahead.at_h
        water = ChangedWater(self.c, ahead, source)
        plans = [p if p["kind"] != "feeding" else {**p, "feed_g": p["feed_g"] * feed} for p in self.plans]
        b.change_water(ahead, fraction, source)
        water.change(fraction, now_h)
        watch = Watch(ahead, self.limits_at, water)
        # Food already eaten still releases its nitrogen, so a smaller ration counts only from `lean_after_h` on.
        turn_h = now_h + min(self.c["lean_after_h"], hours)
        moments = [(now_h + hours * i / count, fraction) for i in range(1, count)]
        if feed != 1.0:
            moments = sorted([*moments, (turn_h, None)], key=lambda moment: moment[0])
        for at_h, changed in moments:
            follow(self.c, ahead, self.tank, plans, at_h, watch.see)
            plans = [plan for plan in plans if plan["at_h"] > at_h]
            if changed is None:
                ahead.base *= feed
            else:
                b.change_water(ahead, changed, source)
                water.change(changed, at_h)
                watch.changed(ahead)
        follow(self.c, ahead, self.tank, plans, now_h + hours, watch.see)
        return watch

    def smallest(self, max_fraction: float) -> tuple[float, Watch]:
        """The smallest fraction, in hundredths, that keeps the risk.

        If none does: the smallest tenth whose time over a limit is within `plan_slack` of the least. Of the changes
        only those count that do more good than harm.
        """
        none = self.run(0.0)
        if self.enough(none):
            return 0.0, none
        tried = [(0.0, none)]
        for fraction in _tenths(max_fraction):
            watch = self.run(fraction)
            if self.harms_no_more(watch, none):
                if self.enough(watch):
                    return self._refine(fraction, watch, none, self.run)
                tried.append((fraction, watch))
        most = min(watch.mean_over_h() for _, watch in tried) + self.c["plan_slack"] * self.hours
        return next((fraction, watch) for fraction, watch in tried if watch.mean_over_h() <= most)

    def several(self, fraction: float, single: Watch) -> dict | None:
        """The fewest changes like `single`, up to `several_most`, `several_every_h` or more apart, that hold the risk.

        The risk counts after the last of them. If none hold it: as many as each lower the time over a limit by more
        than `plan_slack` of the time; None where not even a second one does. `single` is the best that one change
        can do, and `fraction` its share of the water.
        """
        found, last = None, single
        if fraction == 0.0:
            return None
        for count in range(2, int(self.c["several_most"]) + 1):
            every_h = self.hours / count
            if every_h < self.c["several_every_h"] - 1e-9:
                break
            watch = self.run(fraction, count)
            better = last.mean_over_h() - watch.mean_over_h() > self.c["plan_slack"] * self.hours
            holds = watch.last_chance() <= self.risk
            if not (self.harms_no_more(watch, last) and (better or holds)):
                break
            last = watch
            found = {"count": count, "fraction_each": fraction, "every_h": every_h, "pass_chance": watch.last_chance()}
            if holds:
                break
        return found

    def cause(self, max_fraction: float, watch: Watch) -> str | None:
        """What in the new water is the reason that a change does not do the good it could; None: nothing in it.

        With water that brings nothing the time over a limit would be lower than after the change that is planned
        (`watch`), by more than `plan_slack` of the time.
        """
        clean = self.run(max_fraction, source={})
        if watch.mean_over_h() - clean.mean_over_h() > self.c["plan_slack"] * self.hours:
            return self.worst_of_source(max_fraction)
        return None

    def worst_of_source(self, fraction: float) -> str | None:
        """What in the new water adds most to the time over a limit in a change of `fraction`; None: nothing."""
        found, least_h = None, self.run(fraction).mean_over_h()
        for name, fields in _CAUSES.items():
            without = {field: value for field, value in self.source.items() if field not in fields}
            over_h = self.run(fraction, source=without).mean_over_h()
            if over_h < least_h:
                found, least_h = name, over_h
        return found

    def ph_matters(self) -> bool:
        """Whether the unknown pH of the new water could free much ammonia: sour water with ammonia over its limit."""
        known = ChangedWater(self.c, self.belief, self.source).known
        return not known and self.belief.ph < self.c["sour_ph"] and self.run(0.0).chances()["nh3"] > self.risk

    def source_over_limit(self) -> bool:
        """Whether the new water's own ammonia, nitrite or nitrate is over the tank's limit."""
        allowed = {**self.limits, "tan_mg_n_l": tan_limit(self.belief, self.limits)}
        names = ("tan_mg_n_l", "nitrite_mg_n_l", "nitrate_mg_n_l")
        return any(self.source.get(name, 0.0) > allowed[name] for name in names)

    def enough(self, watch: Watch) -> bool:
        """Whether the chance of passing ammonia's or nitrite's limit is within the risk."""
        return watch.chance() <= self.risk

    def harms_no_more(self, watch: Watch, than: Watch) -> bool:
        """Whether a change raises neither the chance of passing a limit nor the time over one.

        Nor may it bring free ammonia over EIFAC's limit: in sour water the limit of total ammonia is lower, and a
        higher pH can lessen that excess while it frees ammonia.
        """
        return watch.harms_no_more_than(than) and watch.free_chance() <= max(than.free_chance(), self.risk)

    def _refine(self, fraction: float, watch: Watch, than: Watch, run) -> tuple[float, Watch]:
        """Bisect between `fraction`, which is enough, and the tenth below it, to whole hundredths."""
        # `max_fraction` may not be a whole hundredth: try the hundredth below it, never the one above.
        low, high = max(0, math.ceil(fraction * 10 - 1e-9) * 10 - 10), math.ceil(fraction * 100 - 1e-9)
        while high - low > 1:
            middle = (low + high) // 2
            tried = run(middle / 100)
            if self.enough(tried) and self.harms_no_more(tried, than):
                high, fraction, watch = middle, middle / 100, tried
            else:
                low = middle
        return fraction, watch


def _tenths(max_fraction: float) -> list[float]:
    """0.1, 0.2, ... below `max_fraction`, then `max_fraction` itself."""
    return [tenth / 10 for tenth in range(1, 10) if tenth / 10 < max_fraction] + [max_fraction]
