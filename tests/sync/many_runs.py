"""Many seeds over several processes: python many_runs.py --seeds 10000 --jobs 2 [--from 1] [--seconds 60].

Every 500 seeds, and what breaks at once, are told on standard error; the report comes at the end.
"""

import argparse
import json
import sys
from collections import Counter
from concurrent.futures import ThreadPoolExecutor

from planting import ROOT, simulate


def run(first: int, seeds: int, jobs: int, seconds: float = 36_000, told=None) -> dict:
    """One report over all: seeds run, violations, counts of everything that happened."""
    share = -(-seeds // jobs)
    starts = range(first, first + seeds, share)
    with ThreadPoolExecutor(jobs) as pool:
        parts = list(
            pool.map(
                lambda start: simulate(
                    ROOT, first=start, seeds=min(share, first + seeds - start), seconds=seconds, told=told
                ),
                starts,
            )
        )
    counts = sum((Counter(part["counts"]) for part in parts), Counter())
    violations = [part["violation"] for part in parts if part["violation"]]
    return {"seeds": sum(part["seeds"] for part in parts), "violations": violations, "counts": dict(counts)}


def main() -> int:
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--seeds", type=int, default=1000)
    options.add_argument("--from", dest="first", type=int, default=1)
    options.add_argument("--jobs", type=int, default=2)
    options.add_argument("--seconds", type=float, default=36_000)
    given = options.parse_args()
    report = run(given.first, given.seeds, given.jobs, given.seconds, told=sys.stderr)
    print(json.dumps(report, indent=1))
    return 1 if report["violations"] else 0


if __name__ == "__main__":
    sys.exit(main())
