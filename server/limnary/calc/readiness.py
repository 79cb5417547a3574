"""When a tank will likely process its load with ammonia and nitrite under their limits."""

import math

import numpy as np

from limnary.calc import acidity
from limnary.calc import belief as b
from limnary.calc import kinetics as k
from limnary.calc.bands import band
from limnary.calc.tank_load import levels_of, load_of, per_gram_of, untested_or_over


def readiness(
    c, even_belief, tank, limits, records: dict, planned_feed_g_day: float | None
) -> tuple[dict | None, list]:
    """(the band of `settled_band` or None, notes that say why None).

    The load is the greatest of the usual or recorded food, the planned food, and the regular doses of ammonia.
    Without a load, without a test of ammonia and of nitrite, or while the last of either is over its limit, nothing is
    known about a date. records: the lists readings, changes, doses, feedings.
    """
    load = load_of(c, tank, even_belief.at_h, records["doses"], records["feedings"])
    per_gram = per_gram_of(c, tank)
    usual = c["unknown_input"] if load["feed_g_day"] is None else load["feed_g_day"] * per_gram
    fed = max(usual, (planned_feed_g_day or 0.0) * per_gram)
    dosed = load["dosed_mg_n_l_day"]
    open_questions = untested_or_over(even_belief, limits, records["readings"])
    if fed <= 0.0 and dosed <= 0.0:
        open_questions.append("no_load")
    if open_questions:
        return None, open_questions
    found = settled_band(c, even_belief, records["changes"], limits, usual, fed, dosed)
    return found, [] if found else ["not_settled_in_sight"]


def settled_band(
    c: dict, even_belief: b.Belief, changes: list, limits: dict, usual: float, fed: float, dosed: float = 0.0
) -> dict | None:
    """When the tank will likely process its load [h since start]; None if not within `far_h`.

    A draw is ready once what it processes at `levels_of` its limits covers `fed` [mg N/L/day], with what food has
    really brought, and `dosed` [mg N/L/day]. Until then the `usual` food and the doses go on.
    Over weeks the model itself errs, so a random factor lengthens or shortens each draw's wait. The water
    changes of the last week continue in a draw as long as its water calls for them. Hardness is taken to be kept up, as
    `kh_gone` tells when it is not; the changes move it towards the new water's. A point of the band beyond the far
    horizon is None.
    """
    thinned = even_belief.thinned(int(c["far_every"]))
    thinned.base = max(thinned.base, usual)
    luck = thinned.draw(1)[0]
    now_h = even_belief.at_h
    kept = math.exp(-b.daily_change(changes, now_h) * c["walk_h"] / 24.0)
    levels = levels_of(c, thinned, limits)
    ready_at = np.full(thinned.cloud.shape[1], math.inf)
    # Steps can add up to slightly less than the horizon. That counts as reached: `advance` would not move further.
    far_h = now_h + c["far_h"]
    while True:
        rates = k.processed(thinned.cloud, acidity.water_of(c, thinned), c, *levels)
        ready = rates >= np.maximum(thinned.cloud[k.INPUT] * fed, dosed)
        ready_at[ready & np.isinf(ready_at)] = thinned.at_h
        if thinned.at_h >= far_h - 1e-9 or np.mean(np.isfinite(ready_at)) >= 0.95:
            break
        before_h, kh = thinned.at_h, thinned.cloud[k.KH].copy()
        b.advance(c, thinned, min(before_h + c["walk_h"], far_h))
        thinned.cloud[k.TAN] += dosed * (thinned.at_h - before_h) / 24.0
        wanting = (thinned.cloud[k.TAN] > c["care_tan_mg_n_l"]) | (thinned.cloud[k.NITRITE] > c["care_nitrite_mg_n_l"])
        thinned.cloud[:3] *= np.where(wanting, kept, 1.0)
        thinned.cloud[k.KH] = kept * kh + (1.0 - kept) * thinned.cloud[k.SOURCE_KH]
    # The error of a date grows in proportion to how far away it is.
    ready_at = now_h + (ready_at - now_h) * np.exp(c["sd_far"] * luck)
    found = {name: at_h if math.isfinite(at_h) else None for name, at_h in band(ready_at).items()}
    return None if found["p10"] is None else found
