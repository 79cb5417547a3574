"""The belief about one tank: a weighted cloud of draws, moved by the model and corrected by readings.

A particle filter (Gordon, Salmond, Smith 1993) with systematic resampling (Kitagawa 1996) and a kernel
that keeps mean and spread (Liu and West 2001). Its pH, hardness and carbon dioxide: see acidity.py. Times are hours
since the tank's start.
"""

import math
from dataclasses import dataclass, field, replace

import numpy as np

from limnary.calc import acidity
from limnary.calc import drift as plain
from limnary.calc import kinetics as k
from limnary.calc.kit_reading import blur, interval, share_below
from limnary.calc.random_numbers import normals, uniform

_ROW_OF = {"total_ammonia": k.TAN, "nitrite": k.NITRITE, "nitrate": k.NITRATE}
_JITTERED = (
    k.CAPACITY_1,
    k.CAPACITY_2,
    k.INPUT,
    k.UPTAKE,
    k.GROWTH_1,
    k.GROWTH_2,
    k.HALF_1,
    k.HALF_2,
    k.DECAY,
    k.TOLERANCE,
    k.KH,
    k.SOURCE_KH,
    k.CO2,
)
# Hardness can be used up, so its logarithm needs a floor.
_HARDNESS = (k.KH, k.SOURCE_KH)
_CAPACITY_OF = {k.TAN: k.CAPACITY_1, k.NITRITE: k.CAPACITY_2}
# The parameters that have plain forecasts, see drift.py.
_PLAIN = {k.TAN: "tan", k.NITRITE: "nitrite"}
_WALKS = (
    (k.CAPACITY_1, "walk_capacity"),
    (k.CAPACITY_2, "walk_capacity"),
    (k.INPUT, "walk_input"),
    (k.UPTAKE, "walk_uptake"),
    (k.TAN, "walk_nitrogen"),
    (k.NITRITE, "walk_nitrogen"),
    (k.KH, "walk_kh"),
    (k.CO2, "walk_co2"),
)


@dataclass
class Belief:
    """The whole state of the filter: it can be copied, stored and resumed.

    cloud (ROWS, N) in the units of kinetics; weight (N,) sums to 1; position: next free random counter;
    base: nominal nitrogen input [mg N/L/day], sd_input the spread of its logarithm; meal_n: nitrogen of meals that is
    not released yet [mg N/L];
    input_known: whether food or fish are told; drifts: of TAN and NITRITE once they were tested, see drift.py;
    ph: the pH to which PH_OFFSET adds a draw's own; kh_dkh: the cloud's mean, None while nobody told or read it;
    fresh: the rows that still hold the prior of `begun_h`, because no reading, dose or water change came yet.
    """

    cloud: np.ndarray
    weight: np.ndarray
    seed: int
    position: int
    at_h: float
    base: float
    sd_input: float
    temperature_c: float
    ph: float
    kh_dkh: float | None
    input_known: bool
    meal_n: float = 0.0
    fed_until_h: float = -1.0
    readings: int = 0
    doubts: list = field(default_factory=list)
    begun_h: float = 0.0
    fresh: list = field(default_factory=lambda: list(_ROW_OF.values()))
    drifts: dict = field(default_factory=dict)

    def copy(self) -> "Belief":
        """An independent copy."""
        lists = {"doubts": list(self.doubts), "fresh": list(self.fresh)}
        lists["drifts"] = {row: dict(drift) for row, drift in self.drifts.items()}
        return replace(self, cloud=self.cloud.copy(), weight=self.weight.copy(), **lists)

    def thinned(self, every: int) -> "Belief":
        """A copy with every `every`th draw, all of equal weight, to look far ahead with."""
        out = self.copy()
        out.cloud = self.cloud[:, ::every].copy()
        out.weight = np.full(out.cloud.shape[1], 1.0 / out.cloud.shape[1])
        return out

    def draw(self, rows: int) -> np.ndarray:
        """Fresh standard normals, shape (rows, N)."""
        n = self.cloud.shape[1]
        out = normals(self.seed, self.position, rows * n)
        self.position += rows * n // 2
        return out.reshape(rows, n)


def nominal_input(c: dict, tank: dict) -> tuple[float, float]:
    """(input expected from the feed [mg N/L/day], spread of its logarithm); feed x protein x 0.092 / volume."""
    feed = tank.get("feed_g_day")
    if feed is None and "fish_g" in tank:
        feed = c["feed_of_fish"] * tank["fish_g"]
    if feed is None:
        return c["unknown_input"], c["sd_unknown_input"]
    protein = tank.get("protein_fraction", c["protein_fraction"])
    nominal = feed * protein * c["tan_per_protein"] * 1000.0 / tank["volume_l"]
    return max(nominal, c["least_input"]), c["sd_input"]


def prior(c: dict, tank: dict, seed: int, at_h: float) -> Belief:
    """The belief before any reading: lognormal draws around the published kinetics."""
    n = int(c["draws"])
    base, sd_input = nominal_input(c, tank)
    seeded = tank["seeded"]
    start = c["mature_share"] * base if seeded == "mature_media" else c[f"capacity_{seeded}"]
    belief = Belief(
        cloud=np.empty((k.ROWS, n)),
        weight=np.full(n, 1.0 / n),
        seed=seed,
        position=0,
        at_h=at_h,
        base=base,
        sd_input=sd_input,
        temperature_c=tank["temperature_c"],
        ph=tank["ph"],
        kh_dkh=tank.get("kh_dkh"),
        input_known="feed_g_day" in tank or "fish_g" in tank,
        begun_h=at_h,
    )
    centres = (
        (c["start_tan"], c["sd_start"]),
        (c["start_nitrite"], c["sd_start"]),
        (c["start_nitrate"], c["sd_start"]),
        (start, c[f"sd_capacity_{seeded}"]),
        (start, c[f"sd_capacity_{seeded}"]),
        (1.0, sd_input),
        (c[f"uptake_{tank['planting']}"], c["sd_uptake"]),
        (c["growth_1"], c["sd_growth"]),
        (c["growth_2"], c["sd_growth"]),
        (c["half_1"], c["sd_half"]),
        (c["half_2"], c["sd_half"]),
        (c["decay"], c["sd_decay"]),
        (1.0, 0.0),
        (1.0, c["sd_appetite"]),
    )
    noise = belief.draw(k.ROWS)
    for row, (centre, sd) in enumerate(centres):
        belief.cloud[row] = centre * np.exp(sd * noise[row])
    belief.cloud[k.TOLERANCE] = np.exp(c["sd_tolerance"] * noise[k.TOLERANCE])
    acidity.begin(c, belief, noise)
    return belief


def advance(c: dict, belief: Belief, until_h: float, seen=None) -> None:
    """Move the belief to `until_h` in place; `seen(belief, hours)` is called after every step.

    Steps are at most 3 h long; at every multiple of 12 h the unknowns take one step of their random walk.
    """
    while belief.at_h < until_h - 1e-9:
        water = acidity.water_of(c, belief)
        walk_at = _next_walk_h(c, belief.at_h)
        stop = min(walk_at, until_h)
        steps = max(1, math.ceil((stop - belief.at_h) / c["step_h"] - 1e-9))
        start, hours = belief.at_h, (stop - belief.at_h) / steps
        days = hours / 24.0
        kept = math.exp(-c["meal_rate"] * days)
        for i in range(steps):
            base = 0.0 if start + i * hours < belief.fed_until_h else belief.base
            released = belief.meal_n * (1.0 - kept)
            belief.meal_n *= kept
            k.step(belief.cloud, days, base, released, water, c)
            belief.at_h = start + (i + 1) * hours
            if seen:
                seen(belief, hours)
        belief.at_h = stop
        # Rounding can leave `stop` slightly before `walk_at`. That counts as reached: the next step looks beyond it.
        if _next_walk_h(c, stop) > walk_at:
            _wander(c, belief)
        acidity.settle(belief)


def _next_walk_h(c: dict, at_h: float) -> float:
    return (math.floor(at_h / c["walk_h"] + 1e-9) + 1.0) * c["walk_h"]


def _wander(c: dict, belief: Belief) -> None:
    root = math.sqrt(c["walk_h"] / 24.0)
    noise = belief.draw(len(_WALKS) + 1)
    for i, (row, name) in enumerate(_WALKS):
        belief.cloud[row] *= np.exp((c[name] * root) * noise[i])
    belief.cloud[k.APPETITE] = np.exp(c["sd_appetite"] * noise[len(_WALKS)])


def daily_change(changes: list, now_h: float) -> float:
    """What the changes of the week before `now_h` come to as a steady exchange [1/day]: -ln(1 - fraction) / 7 each."""
    recent = [change["fraction"] for change in changes if now_h - 168.0 <= change["at_h"] <= now_h]
    return sum(-math.log(1.0 - min(fraction, 0.99)) for fraction in recent) / 7.0


def change_water(belief: Belief, fraction: float, source: dict) -> None:
    """Replace `fraction` of the water by source water with its own nitrogen and hardness; exact, without a time step.

    Without a hardness the source has each draw's own; so it has where the tank's is not known, for then the draws only
    stand for enough of it. Carbon dioxide stays: surface and animals soon restore it.
    """
    belief.fresh.clear()
    own = belief.cloud[k.SOURCE_KH]
    brought = own if belief.kh_dkh is None else source.get("kh_dkh", own)
    belief.cloud[k.KH] = belief.cloud[k.KH] * (1.0 - fraction) + fraction * brought
    acidity.settle(belief)
    for row, name in ((k.TAN, "tan_mg_n_l"), (k.NITRITE, "nitrite_mg_n_l"), (k.NITRATE, "nitrate_mg_n_l")):
        belief.cloud[row] = belief.cloud[row] * (1.0 - fraction) + fraction * source.get(name, 0.0)
        if row in belief.drifts:
            drift = belief.drifts[row]
            drift["level"] = drift["level"] * (1.0 - fraction) + fraction * source.get(name, 0.0)


def add_ammonia(c: dict, belief: Belief, tan_mg_n_l: float) -> None:
    """Add a dose [mg N/L], which a keeper measures with an error of `sd_dose`.

    As ammonia water, which some draws suppose, it brings alkalinity, too.
    """
    given = tan_mg_n_l * np.exp(c["sd_dose"] * belief.draw(1)[0])
    belief.cloud[k.TAN] += given
    belief.cloud[k.KH] += k.dkh_per_mg_n() * given * belief.cloud[k.ALKALI]
    acidity.settle(belief)
    belief.fresh = [row for row in belief.fresh if row != k.TAN]
    if k.TAN in belief.drifts:
        belief.drifts[k.TAN]["level"] += tan_mg_n_l


def observe(c: dict, belief: Belief, parameter: str, value: float, steps: list[float] | None) -> None:
    """Weight the draws by one reading [mg N/L, `steps` too]; record a doubt when it does not fit.

    A doubted reading still counts. A few draws then assume that something happened (a death, a spill, bacteria that
    stall), the others that the test went wrong; the next reading decides between them. If that one agrees with a
    doubted one of the last days, half of the chance goes to the event. A first reading soon after the
    start contradicts only the prior, so it is not doubted: the belief starts from it (`_begin_at`).
    """
    row, kind = _ROW_OF[parameter], "nitrate" if parameter == "nitrate" else "reading"
    offset = blur(steps, c[f"{kind}_offset"])
    scale = c[f"{kind}_sd"] * math.sqrt(3.0) / math.pi
    low, high = interval(value, steps, offset, scale)
    first = _begin_at(c, belief, row, value, offset, scale)
    below_high = share_below(belief.cloud[row], high, offset, scale, 1.0)
    below_low = share_below(belief.cloud[row], low, offset, scale, 0.0)
    at_most = float(np.sum(belief.weight * below_high))
    at_least = float(np.sum(belief.weight * (1.0 - below_low)))
    belief.readings += 1
    if row in _PLAIN:
        prior = plain.priors(c, _PLAIN[row], belief.input_known)
        chance = float(np.sum(belief.weight * (below_high - below_low)))
        reading = (value, low, high, offset)
        belief.drifts[row] = plain.after_reading(c, belief.drifts.get(row), prior, belief.at_h, reading, chance)
    if not first and min(at_most, at_least) < c["doubt_chance"]:
        p10, p90 = weighted_quantiles(belief.cloud[row], belief.weight, (0.1, 0.9))
        doubt = {"at_h": belief.at_h, "parameter": parameter, "value_mg_n_l": value}
        again = any(_agrees(c, belief, one, parameter, low, high) for one in belief.doubts)
        belief.doubts.append({**doubt, "expected_p10_mg_n_l": p10, "expected_p90_mg_n_l": p90})
        _suppose_event(c, belief, row, value, offset, scale, again)
        below_high = share_below(belief.cloud[row], high, offset, scale, 1.0)
        below_low = share_below(belief.cloud[row], low, offset, scale, 0.0)
    fits = (1.0 - c["outlier"]) * (below_high - below_low) + c["outlier"] * c["outlier_spread"]
    weight = belief.weight * fits
    belief.weight = weight / np.sum(weight)
    if 1.0 / np.sum(belief.weight**2) < 0.5 * len(weight):
        resample(c, belief)


def _agrees(c: dict, belief: Belief, doubt: dict, parameter: str, low: float | None, high: float | None) -> bool:
    """Whether an earlier doubted reading of the last days lies between `low` and `high` as well."""
    recent = belief.at_h - doubt["at_h"] <= c["doubt_stands_h"]
    at_least = low is None or doubt["value_mg_n_l"] >= low
    at_most = high is None or doubt["value_mg_n_l"] <= high
    return recent and doubt["parameter"] == parameter and at_least and at_most


def _suppose_event(c: dict, belief: Belief, row: int, value: float, offset: float, scale: float, again: bool) -> None:
    """Let some draws start anew from the reading: its concentration, and its group's bacteria as unsure as a new
    tank's (for ammonia the input as well); `again`: the reading repeats one that was doubted."""
    resample(c, belief)
    n = len(belief.weight)
    every, chance = (2, c["repeat_chance"]) if again else (int(c["event_every"]), c["event_chance"])
    _redraw(belief, row, 0, every, value, offset, scale)
    unsure = [(_CAPACITY_OF[row], c["sd_event_capacity"])] if row in _CAPACITY_OF else []
    if row == k.TAN:
        unsure.append((k.INPUT, belief.sd_input))
    for of, sd in unsure:
        noise = belief.draw(1)[0]
        belief.cloud[of, ::every] *= np.exp(sd * noise[::every])
    weight = np.full(n, (1.0 - chance) / (n - n // every))
    weight[::every] = chance / (n // every)
    belief.weight = weight


def _begin_at(c: dict, belief: Belief, row: int, value: float, offset: float, scale: float) -> bool:
    """True for a first reading of `row` soon after the start; half of the draws then start from that reading.

    A tank that has only just been entered may have any past. The other half keeps the prior of a clean start,
    so a reading near that prior has no more effect than usual. Every draw keeps its own unknowns; weighting
    the prior alone would leave only a handful of draws.
    """
    if row not in belief.fresh:
        return False
    belief.fresh.remove(row)
    if belief.at_h - belief.begun_h > c["first_reading_h"]:
        return False
    _redraw(belief, row, 1, 2, value, offset, scale)
    return True


def _redraw(belief: Belief, row: int, start: int, every: int, value: float, offset: float, scale: float) -> None:
    """Replace every `every`th draw of `row`, from `start` on, by the reading `value`, spread by the kit's error."""
    noise = belief.draw(1)[0]
    redrawn = (value + offset) * np.exp(scale * math.pi / math.sqrt(3.0) * noise) - offset
    belief.cloud[row, start::every] = np.maximum(redrawn, 1e-4)[start::every]


def resample(c: dict, belief: Belief) -> None:
    """Resample the cloud by weight, then move each draw's unknowns a little towards a partner's.

    ln x_i -> mean + sqrt(1 - w^2) (ln x_i - mean) + w (ln x_j - mean): this keeps the mean, the spread and
    the correlations of the unknowns (the shrinkage of Liu and West 2001).
    """
    chosen = systematic(belief)
    n = len(chosen)
    belief.position += 1
    belief.cloud = belief.cloud[:, chosen]
    belief.weight = np.full(n, 1.0 / n)
    width = c["jitter"]
    keep = math.sqrt(1.0 - width * width)
    partner = _partners(belief)
    for row in _JITTERED:
        logs = np.log(np.maximum(belief.cloud[row], acidity.LEAST_KH) if row in _HARDNESS else belief.cloud[row])
        mean = np.sum(logs) / n
        off = logs - mean
        belief.cloud[row] = np.exp(mean + keep * off + width * off[partner])
    acidity.settle(belief)


def _partners(belief: Belief) -> np.ndarray:
    """A random partner for each draw, as indices (N,). An odd stride visits each of 2^m draws once."""
    n = len(belief.weight)
    stride = 2 * math.floor(uniform(belief.seed, belief.position) * n / 2) + 1
    start = math.floor(uniform(belief.seed, belief.position + 1) * n)
    belief.position += 2
    return (stride * np.arange(n) + start) % n


def systematic(belief: Belief) -> np.ndarray:
    """Systematic resampling: indices (N,), in order, of draws that represent the cloud with equal weights."""
    n = len(belief.weight)
    total = np.cumsum(belief.weight)
    marks = (np.arange(n) + uniform(belief.seed, belief.position)) / n * total[-1]
    return np.minimum(np.searchsorted(total, marks), n - 1)


def weighted_quantiles(values: np.ndarray, weight: np.ndarray, shares: tuple) -> list[float]:
    """For each share the smallest value whose cumulative weight reaches it."""
    order = np.argsort(values, kind="stable")
    total = np.cumsum(weight[order])
    marks = np.searchsorted(total, np.array(shares) * total[-1])
    return [float(values[order[min(int(mark), len(values) - 1)]]) for mark in marks]
