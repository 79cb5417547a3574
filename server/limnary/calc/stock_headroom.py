"""How much feed a day, and so how many grams of fish, the tank can process now and in one and two weeks."""

from limnary.calc import belief as b
from limnary.calc import kinetics as k
from limnary.calc.outlook import band, conditions_of, even, notes_of, recent_doubts
from limnary.calc.tank_events import believed, follow


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

    feed = processed / (input per nominal input x protein x 0.092), processed at ammonia and nitrite of
    `ready_mg_n_l` (see kinetics.processed); fish = feed / share of body mass eaten a day. The figures for
    one and two weeks ahead assume that today's feeding continues: nitrifiers grow only on what they get.
    Parameters and returns: shared_schema/calc/stock_headroom.json. Raises Refusal reading_after_now.

    >>> tank = dict(volume_l=90, temperature_c=24, ph=7.4, planting="none", seeded="none", feed_g_day=0.2)
    >>> headroom = stock_headroom(tank=tank, now_h=0)
    >>> headroom["feed_g_day_now"]["p50"] < headroom["feed_g_day_in_14_days"]["p50"]
    True
    """
    c = k.settings()
    belief, plans, _ = believed(c, tank, now_h, readings, changes, doses, feedings, seed)
    return headroom_of(c, belief, plans, tank, feed_share_of_mass)


def headroom_of(c, belief, plans, tank, feed_share_of_mass) -> dict:
    """The answer of `stock_headroom` from a belief that has reached now."""
    share = c["feed_of_fish"] if feed_share_of_mass is None else feed_share_of_mass
    protein = tank.get("protein_fraction", c["protein_fraction"])
    per_gram = protein * c["tan_per_protein"] * 1000.0 / tank["volume_l"]
    ahead, now_h = even(belief), belief.at_h
    out = {}
    for days, when in ((0, "now"), (7, "in_7_days"), (14, "in_14_days")):
        until = now_h + days * 24.0
        follow(c, ahead, tank, [e for e in plans if ahead.at_h < e["at_h"] <= until], until)
        feed = k.processed(ahead.cloud, conditions_of(c, ahead), c) / (ahead.cloud[k.INPUT] * per_gram)
        out[f"feed_g_day_{when}"] = band(feed)
        out[f"fish_g_{when}"] = {name: value / share for name, value in out[f"feed_g_day_{when}"].items()}
    return {
        **out,
        "feed_g_day_expected": b.nominal_input(c, tank)[0] / per_gram,
        "doubts": recent_doubts(c, belief),
        "notes": notes_of(c, belief),
    }
