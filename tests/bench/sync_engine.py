"""A push beside a general sync engine: `python tests/bench/sync_engine.py [OPS] [ROUNDS]` asserts nothing.

OPS readings (default 10,000) go over loopback in batches of 500: from a phone to a running server of ours, and from a
PouchDB to an express-pouchdb, both on leveldb, which npm installs into tests/bench/sync_engine for this. Both servers
answer a batch when it is in their files. Rounds take turns; medians of ROUNDS (default 3) and their ratio.
"""

import statistics
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

ENGINE = Path(__file__).parent / "sync_engine"
sys.path[:0] = [str(Path(__file__).parent), str(Path(__file__).parents[2] / "server")]

import push_pull  # noqa: E402
from fish_rooms import FishRoom  # noqa: E402
from started_server import RealServer  # noqa: E402


def ours(folder: Path, count: int) -> float:
    """Seconds of one phone's push into a room of a real server."""
    room = FishRoom(folder / "data")
    room.at = int(time.time() * 1000)
    phone = room.phone("keeper", "Kim")
    ops = [phone.reading("tank-0001", n / 100) for n in range(count)]
    batches = [ops[at : at + push_pull.BATCH] for at in range(0, count, push_pull.BATCH)]
    room.close()
    server = RealServer(folder / "data").start()
    try:
        return push_pull.timed(lambda: push_pull.push_all(server.port, room, phone.key, batches))
    finally:
        server.stop()


def the_engines(folder: Path, count: int) -> float:
    """Seconds of the same by the engine."""
    for part in ("server", "phone"):
        (folder / part).mkdir()
    server = subprocess.Popen(["node", ENGINE / "serve.cjs", folder / "server"], stdout=subprocess.PIPE, text=True)
    try:
        port = server.stdout.readline().strip()
        asked = ["node", ENGINE / "push.cjs", folder / "phone", port, str(count), str(push_pull.BATCH)]
        return float(subprocess.run(asked, check=True, capture_output=True, text=True).stdout)
    finally:
        server.terminate()
        server.wait()
        server.stdout.close()


def medians(count: int, rounds: int) -> tuple[float, float]:
    """Seconds of a push: ours, and the engine's."""
    if not (ENGINE / "node_modules").is_dir():
        subprocess.run(["npm", "install", "--silent", "--no-package-lock", "--no-audit"], cwd=ENGINE, check=True)
    pushes: tuple[Callable, Callable] = (ours, the_engines)
    spent = [[push_pull.fresh(lambda folder, push=push: push(folder, count)) for push in pushes] for _ in range(rounds)]
    our, their = (statistics.median(one) for one in zip(*spent, strict=True))
    return our, their


def main(count: int = 10_000, rounds: int = 3) -> None:
    our, their = medians(count, rounds)
    print(f"a push of {count} takes {our:.2f} s, by the engine {their:.2f} s: {their / our:.1f} times as long")


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))
