"""How much feed a day, and so how many grams of fish, the tank can process now and in one and two weeks."""

import numpy as np

from limnary.calc import belief as b
from limnary.calc import kinetics as k
from limnary.calc.bands import band
from limnary.calc.outlook import even, notes_of, recent_doubts, working_limits
from limnary.calc.tank_events import believed, follow
from limnary.calc.tank_load import load_of, per_gram_of, processed_at_limits, tested_until, untested_or_over


def stock_headroom(
    *,
    tank: dict,
    now_h: float,
    readings: list = (),
    changes: list = (),
    doses: list = (),
    feedings: list = (),
    feed_share_of_mass: float | None = None,
    seed: int = 1,
) -> dict:
    """Feed and fish that the nitrifiers and plants can keep up with, as bands.

    feed = processed / (input per nominal input x protein x 0.092), processed with ammonia and nitrite under their
    limits (see tank_load.levels_of); fish = feed / share of body mass eaten a day. The figures for
    one and two weeks ahead assume that today's feeding continues: nitrifiers grow only on what they get.
    No figure exceeds what the tests have shown, see `_most_shown`.
    Parameters and returns: shared_schema/calc/stock_headroom.json. Raises Refusal reading_after_now.

    >>> tank = dict(volume_l=90, temperature_c=24, ph=7.4, planting="none", seeded="none", feed_g_day=0.2)
    >>> quiet = [dict(at_h=h, parameter=p, value=0, basis="n") for h in (24, 48) for p in ("total_ammonia", "nitrite")]
    >>> stock_headroom(tank=tank, now_h=48, readings=quiet)["feed_g_day_now"]["p90"] <= 0.4
    True
    """
    c = k.settings()
    records = {"readings": readings, "changes": changes, "doses": doses, "feedings": feedings}
    belief, plans, _ = believed(c, tank, now_h, **records, seed=seed)
    return headroom_of(c, belief, plans, tank, records, feed_share_of_mass)


def headroom_of(c, belief, plans, tank, records, feed_share_of_mass) -> dict:
    """The answer of `stock_headroom` from a belief that has reached now."""
    share = c["feed_of_fish"] if feed_share_of_mass is None else feed_share_of_mass
    per_gram = per_gram_of(c, tank)
    limits = working_limits(tank, None)(belief.ph, belief.temperature_c)
    most_g_day, unshown = _most_shown(c, belief, tank, limits, records)
    ahead, now_h = even(belief), belief.at_h
    out = {}
    for days, when in ((0, "now"), (7, "in_7_days"), (14, "in_14_days")):
        until = now_h + days * 24.0
        follow(c, ahead, tank, [e for e in plans if ahead.at_h < e["at_h"] <= until], until)
        feed = processed_at_limits(c, ahead, limits) / (ahead.cloud[k.INPUT] * per_gram)
        out[f"feed_g_day_{when}"] = band(np.minimum(feed, most_g_day))
        out[f"fish_g_{when}"] = {name: value / share for name, value in out[f"feed_g_day_{when}"].items()}
    return {
        **out,
        "feed_g_day_expected": b.nominal_input(c, tank)[0] / per_gram,
        "doubts": recent_doubts(c, belief),
        "notes": notes_of(c, belief) + unshown,
    }


def _most_shown(c: dict, belief: b.Belief, tank: dict, limits: dict, records: dict) -> tuple[float, list[str]]:
    """(the most feed a day [g/day] that the tests allow to promise, notes that say why).

    Tests under the limits show that the load given before them is processed; more than `shown_times` that load is not
    promised (assumption). While a test is over its limit the load itself is the most. Without tests, or without a
    load that they can show, nothing is promised.
    """
    notes = untested_or_over(belief, limits, records["readings"])
    if "untested" in notes:
        return 0.0, notes
    tested_h = tested_until(records["readings"], belief.at_h)
    load = load_of(c, tank, tested_h, records["doses"], records["feedings"])
    shown_g_day = max(load["feed_g_day"] or 0.0, load["dosed_mg_n_l_day"] / per_gram_of(c, tank))
    if shown_g_day <= 0.0:
        return 0.0, [*notes, "no_load"]
    return (1.0 if "over_limit" in notes else c["shown_times"]) * shown_g_day, notes
