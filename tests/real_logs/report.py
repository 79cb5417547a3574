"""Writes the scores of the forecast on the real start-ups into README.md, below the mark."""

from pathlib import Path

from tests.real_logs.logs import load
from tests.real_logs.scores import ROWS, replay, summary

README = Path(__file__).with_name("README.md")
MARK = "<!-- written by python -m tests.real_logs -->\n"


def lines() -> list[str]:
    """The table: ammonia and nitrite, with the input known and unknown."""
    rows = [row for log in load() for row in replay(log)]
    out = [
        "| forecast of the next reading | readings | error | same as last time | ratio | 80 % band meets the reading "
        "| misses, read above the band |",
        "|---|---|---|---|---|---|---|",
    ]
    for parameter in ROWS:
        for known in (True, False):
            f = summary([one for one in rows if (one["parameter"], one["input_known"]) == (parameter, known)])
            out.append(
                f"| {parameter.replace('_', ' ')}, input {'known' if known else 'unknown'} | {f['n']} "
                f"| {f['error']:.2f} mg N/L | {f['same']:.2f} mg N/L | {f['error'] / f['same']:.2f} "
                f"| {f['meets']:.0%} | {f['above']} of {f['missed']} |"
            )
    return out


def write() -> None:
    """Replay all logs and write the table."""
    table = "\n".join(lines())
    print(table)
    README.write_text(README.read_text("utf-8").split(MARK)[0] + MARK + "\n" + table + "\n", "utf-8")
