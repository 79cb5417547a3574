"""How many calculations a second each language answers, as a ratio: `python tests/bench/calc_lines.py [ROUNDS]`.

The same lines (every example and vector of every quick contract, repeated) go through `limnary calc --lines` and
through Node's tests/js/calc_lines.js, both already started and warm. Rounds alternate, so that a busy machine slows
both; the ratio is the median of the rounds' own ratios. It asserts nothing: the figure is for people to read.
"""

import json
import os
import statistics
import subprocess
import sys
import threading
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
LINES = 3000
PYTHON = [sys.executable, "-m", "limnary.cli", "calc", "--lines"]
NODE = ["node", str(ROOT / "tests/js/calc_lines.js")]


def lines() -> list[str]:
    """Requests in the shape both programs read, LINES of them."""
    requests = []
    for path in sorted((ROOT / "shared_schema/calc").glob("*.json")):
        spec = json.loads(path.read_text("utf-8"))
        if "twin_draws" in spec:  # a simulation that takes seconds has its own benchmark
            continue
        vectors = json.loads((ROOT / "shared_schema/vectors" / path.name).read_text("utf-8"))
        cases = [*spec["examples"], *vectors["cases"]]
        requests += [json.dumps({"name": spec["name"], "input": case["input"]}) for case in cases]
    return [requests[place % len(requests)] for place in range(LINES)]


class Answerer:
    """One language's program, kept running."""

    def __init__(self, command: list[str]):
        self.process = subprocess.Popen(
            command,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
            encoding="utf-8",
            env={**os.environ, "PYTHONPATH": str(ROOT / "server"), "PYTHONUTF8": "1"},
        )

    def seconds(self, requests: list[str]) -> float:
        """Time from the first line in to the last answer out; a thread writes so that no pipe fills up."""
        start = time.perf_counter()
        writer = threading.Thread(target=self._write, args=(requests,))
        writer.start()
        for request in requests:
            if not self.process.stdout.readline():
                raise SystemExit(f"the program ended at {request}")
        writer.join()
        return time.perf_counter() - start

    def _write(self, requests: list[str]):
        self.process.stdin.write("\n".join(requests) + "\n")
        self.process.stdin.flush()

    def close(self):
        self.process.stdin.close()
        self.process.wait(timeout=30)
        self.process.stdout.close()


def main(rounds: int) -> None:
    """Measure, and print one line a language and the ratio."""
    requests = lines()
    programs = {"Python": Answerer(PYTHON), "Node": Answerer(NODE)}
    times = {name: [] for name in programs}
    for program in programs.values():
        program.seconds(requests[:500])
    for _ in range(rounds):
        for name, program in programs.items():
            times[name].append(program.seconds(requests))
    for program in programs.values():
        program.close()
    for name, taken in times.items():
        print(f"{name:7} {LINES / statistics.median(taken):8.0f} calculations a second (median of {rounds})")
    ratios = [python / node for python, node in zip(times["Python"], times["Node"], strict=True)]
    print(f"Node answers {statistics.median(ratios):.1f} times as many ({min(ratios):.1f} to {max(ratios):.1f})")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 5)
