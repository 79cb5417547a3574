"""The full evaluation, on seeds that no setting was tuned on; it writes the tables of README.md."""

from pathlib import Path

from tests.virtual_tank.scores import LIMITS, closed_loop, next_day_forecast, ready_date

COUNT, SEEDS = 50, (9007, 9008)
README = Path(__file__).with_name("README.md")
MARK = "<!-- written by python -m tests.virtual_tank -->\n"


def mean(found: list[dict]) -> dict:
    """Each figure's mean over the seeds."""
    return {name: sum(one[name] for one in found) / len(found) for name in found[0]}


def forecast_lines() -> list[str]:
    """Next-day forecast, one row per parameter, with animals and in starts without."""
    lines = [
        "| next-day forecast | belief, mean error | same as last, diluted | less error | 80 % band holds |",
        "|---|---|---|---|---|",
    ]
    for stocking, where in (("mixed", ""), ("none", ", dosed without animals")):
        runs = [next_day_forecast(COUNT, seed, stocking=stocking) for seed in SEEDS]
        for name in runs[0]:
            f = mean([run[name] for run in runs])
            lines.append(
                f"| {name.replace('_', ' ')}{where} | {f['mae']:.3f} mg N/L | {f['mae_same']:.3f} mg N/L "
                f"| {f['gain']:.0%} | {f['held']:.0%} |"
            )
    return lines


def care_lines() -> list[str]:
    """Closed loop, one row per rule and stocking."""
    lines = [
        "| 35 days of care | rule | hours over a limit | water, tank volumes | days on half the food "
        "| against the usual rule |",
        "|---|---|---|---|---|---|",
    ]
    rules = [
        ("usual", "half at 0.5 / 0.25 mg/L, a quarter weekly", {}),
        ("usual", "the same, and half the food on days of alarm", {"less_feed": True}),
        ("half daily", "half daily for two weeks", {}),
        ("plan", "change_plan, risk 0.1", {}),
    ]
    full = ("plan", "change_plan, risk 0.1, never less food", {"lean_feed": 1.0})
    for stocking, followed in (("light", [*rules, full]), ("heavy", rules)):
        usual = None
        for rule, words, options in followed:
            f = mean([closed_loop(COUNT, seed, stocking, rule, LIMITS, **options) for seed in SEEDS])
            usual = usual or f
            lines.append(
                f"| {stocking} | {words} | {f['over']:.2%} | {f['water']:.1f} | {f['lean']:.0%} "
                f"| {f['over'] / usual['over']:.2f} of the hours, {f['water'] / usual['water']:.2f} of the water |"
            )
    return lines


def ready_lines() -> list[str]:
    """Ready date."""
    f = mean([ready_date(COUNT, seed) for seed in SEEDS])
    return [
        "| ready date, from day 10 on | |",
        "|---|---|",
        f"| 80 % range holds the true day | {f['held']:.0%} |",
        f"| ready tanks that are known to be | {f['known']:.0%} |",
        f"| median width of the range | {f['width_days']:.0f} days |",
    ]


def write() -> None:
    """Run everything and write the tables into README.md, below the mark."""
    head = README.read_text("utf-8").split(MARK)[0]
    tables = []
    for lines in (forecast_lines, care_lines, ready_lines):
        tables.append("\n".join(lines()))
        print(tables[-1], flush=True)
    README.write_text(head + MARK + "\n" + "\n\n".join(tables) + "\n", "utf-8")
