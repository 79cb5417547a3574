"""The full evaluation, on seeds that no setting was tuned on; it writes the tables of README.md."""

from concurrent.futures import ProcessPoolExecutor
from math import inf
from pathlib import Path

from tests.virtual_tank.scores import (
    LIMITS,
    closed_loop,
    hardness_figures,
    hardness_gone,
    least_water,
    next_day_forecast,
    ready_date,
    stalls,
)

COUNT, SEEDS = 50, (9007, 9008)
README = Path(__file__).with_name("README.md")
MARK = "<!-- written by python -m tests.virtual_tank -->\n"
WHERE = {"mixed": "animals, any water", "soft": "animals, soft water", "none": "dosed, without animals"}
# What an hour over a limit may cost the oracle [tank volumes], by every how many hours it looks ahead.
PRICES = {24: (inf, 0.1), 6: (inf, 0.3, 0.1, 0.05, 0.0)}


def mean(found: list[dict]) -> dict:
    """Each figure's mean over the seeds."""
    return {name: sum(one[name] for one in found) / len(found) for name in found[0]}


class Seeds:
    """Runs a score on `count` tanks of each seed, the seeds side by side on two processors."""

    def __init__(self, pool: ProcessPoolExecutor, seeds: tuple[int, ...], count: int):
        self.pool, self.seeds, self.count = pool, seeds, count

    def runs(self, score, *arguments, **options) -> list[dict]:
        """What `score` found, seed by seed."""
        asked = [self.pool.submit(score, self.count, seed, *arguments, **options) for seed in self.seeds]
        return [one.result() for one in asked]

    def mean(self, score, *arguments, **options) -> dict:
        return mean(self.runs(score, *arguments, **options))


def forecast_lines(seeds: Seeds) -> list[str]:
    """Next-day forecast, one row per parameter, with animals, in soft water and in starts without animals."""
    lines = [
        "| next-day forecast | tanks | belief, mean error | same as last, diluted | less error | 80 % band holds "
        "| to 0.01 mg N/L |",
        "|---|---|---|---|---|---|---|",
    ]
    for stocking, where in WHERE.items():
        runs = seeds.runs(next_day_forecast, stocking=stocking)
        for name in runs[0]:
            f = mean([run[name] for run in runs])
            lines.append(
                f"| {name.replace('_', ' ')} | {where} | {f['mae']:.3f} mg N/L | {f['mae_same']:.3f} mg N/L "
                f"| {f['gain']:.0%} | {f['exactly']:.0%} | {f['held']:.0%} |"
            )
    return lines


def stall_lines(seeds: Seeds) -> list[str]:
    """How many of the tanks of the next-day forecast run out of alkalinity."""
    lines = [
        "| stalls in these tanks | alkalinity below 1 dKH | nitrification held back to a tenth | stalled "
        "| days of stall in those |",
        "|---|---|---|---|---|",
    ]
    for stocking, where in WHERE.items():
        f = seeds.mean(stalls, stocking)
        lines.append(
            f"| {where} | {f['kh_gone']:.0%} | {f['held_back']:.0%} | {f['stalled']:.0%} | {f['stalled_days']:.1f} |"
        )
    return lines


def hardness_lines(seeds: Seeds) -> list[str]:
    """When carbonate hardness is gone, by the outlook and in truth."""
    lines = [
        "| carbonate hardness gone, asked on days 5, 10, 15 and 20 | asked, dates within 60 days "
        "| p10 to p90 holds the date | median error of p50 | gone within 14 days, told so | told so, in vain |",
        "|---|---|---|---|---|---|",
    ]
    for stocking in ("none", "soft"):
        f = hardness_figures([one for run in seeds.runs(hardness_gone, stocking) for one in run])
        lines.append(
            f"| {WHERE[stocking]} | {f['asked']}, {f['dates']} | {f['held']:.0%} "
            f"| {f['error_days']:.1f} days ({f['late_days']:+.1f}) | {f['told']} of {f['soon']} "
            f"| {f['vain']} of {f['warned']} |"
        )
    return lines


USUAL = ("usual", "half at 0.5 / 0.25 mg/L, a quarter weekly", {})
LEAN = ("usual", "the same, and half the food on days of alarm", {"less_feed": True})
HALF = ("half daily", "half daily for two weeks", {})
PLAN = ("plan", "change_plan, risk 0.1", {})
FULL = ("plan", "change_plan, risk 0.1, never less food", {"lean_feed": 1.0})
CARE = {"light": (USUAL, LEAN, HALF, PLAN, FULL), "heavy": (USUAL, LEAN, HALF, PLAN, FULL), "soft": (USUAL, PLAN, FULL)}


def care_lines(seeds: Seeds) -> list[str]:
    """Closed loop, one row per rule and stocking."""
    lines = [
        "| 35 days of care | rule | hours over a limit | water, tank volumes | days on half the food "
        "| tanks that stalled | against the usual rule | water against an oracle's with as many hours |",
        "|---|---|---|---|---|---|---|---|",
    ]
    for stocking, followed in CARE.items():
        oracle = {
            (every_h, price): seeds.mean(closed_loop, stocking, "oracle", LIMITS, every_h=every_h, price=price)
            for every_h, prices in PRICES.items()
            for price in prices
        }
        rows = [
            (words, seeds.mean(closed_loop, stocking, rule, LIMITS, **options)) for rule, words, options in followed
        ]
        rows.append(("oracle (knows the future), once a day", oracle[24, inf]))
        rows.append(("oracle (knows the future), every 6 h", oracle[6, inf]))
        usual = rows[0][1]
        for words, f in rows:
            least = least_water(f["over"], list(oracle.values()))
            against = f"{f['water'] / least:.2f}" if least else "no oracle has so few"
            lines.append(
                f"| {stocking} | {words} | {f['over']:.2%} | {f['water']:.1f} | {f['lean']:.0%} | {f['stalled']:.0%} "
                f"| {f['over'] / usual['over']:.2f} of the hours, {f['water'] / usual['water']:.2f} of the water "
                f"| {against} |"
            )
    return lines


def ready_lines(seeds: Seeds) -> list[str]:
    """Ready date."""
    lines = [
        "| ready date, from day 10 on | 80 % range holds the true day | ready tanks that are known to be "
        "| median width of the range |",
        "|---|---|---|---|",
    ]
    for stocking in ("mixed", "soft"):
        f = seeds.mean(ready_date, stocking=stocking)
        lines.append(f"| {WHERE[stocking]} | {f['held']:.0%} | {f['known']:.0%} | {f['width_days']:.0f} days |")
    return lines


def tables(seeds: tuple[int, ...], count: int) -> list[str]:
    """Run everything; each table is printed as soon as it is there."""
    found = []
    with ProcessPoolExecutor(2) as pool:
        for lines in (forecast_lines, stall_lines, hardness_lines, care_lines, ready_lines):
            found.append("\n".join(lines(Seeds(pool, seeds, count))))
            print(found[-1], end="\n\n", flush=True)
    return found


def write() -> None:
    """Run everything and write the tables into README.md, below the mark."""
    head = README.read_text("utf-8").split(MARK)[0]
    README.write_text(head + MARK + "\n" + "\n\n".join(tables(SEEDS, COUNT)) + "\n", "utf-8")
