"""When carbonate hardness will be used up, so that pH falls and nitrification stalls."""

import math

import numpy as np

from limnary.calc import belief as b
from limnary.calc import kinetics as k
from limnary.calc.bands import band


def kh_gone(
    c: dict, even_belief: b.Belief, changes: list, dosed_mg_n_l_day: float, fed_mg_n_l_day: float = 0.0
) -> dict | None:
    """The hour at which hardness falls to `kh_floor_dkh`, as p10, p50, p90 [h since start].

    None where nobody told or read the hardness, and where it holds for `kh_far_h` in half of the draws or more; a point
    beyond that horizon is None. Usual food, or the recorded (`fed_mg_n_l_day`) where that is more, the doses of ammonia
    (`dosed_mg_n_l_day`) and the water changes of the last week go on as they are.
    """
    if even_belief.kh_dkh is None:
        return None
    cloud = even_belief.thinned(int(c["far_every"]))
    cloud.base = max(cloud.base, fed_mg_n_l_day)
    kept = math.exp(-b.daily_change(changes, even_belief.at_h) * c["walk_h"] / 24.0)
    gone_at = np.full(len(cloud.weight), math.inf)
    far_h = even_belief.at_h + c["kh_far_h"]
    while True:
        gone_at[(cloud.cloud[k.KH] <= c["kh_floor_dkh"]) & np.isinf(gone_at)] = cloud.at_h
        if cloud.at_h >= far_h - 1e-9 or np.mean(np.isfinite(gone_at)) >= 0.95:
            break
        before_h = cloud.at_h
        b.advance(c, cloud, min(before_h + c["walk_h"], far_h))
        dosed = dosed_mg_n_l_day * (cloud.at_h - before_h) / 24.0
        cloud.cloud[k.TAN] += dosed
        cloud.cloud[k.KH] += k.dkh_per_mg_n() * dosed * cloud.cloud[k.ALKALI]
        cloud.cloud[: k.NITRATE + 1] *= kept
        cloud.cloud[k.KH] = kept * cloud.cloud[k.KH] + (1.0 - kept) * cloud.cloud[k.SOURCE_KH]
    found = {name: at_h if math.isfinite(at_h) else None for name, at_h in band(gone_at).items()}
    return None if found["p50"] is None else found
