"""What sharing costs: `python tests/bench/push_pull.py [OPS] [ROUNDS]` prints ratios and asserts nothing.

OPS readings (default 10,000) are pushed through the real app in batches of 500, pushed again as if the answers had
been lost, pulled, and brought back as rows after a restore. Each step is compared with writing and reading the same
rows by sqlite3 alone in one transaction. What sqlite3 writes is ready as text before it begins, and so are the bodies
of the requests; what a phone takes to encode them and to read the answers is given apart. Then small batches are pushed
in turns into a room of OPS records and into one of a tenth. At last it measures how many ops per second several phones
push at once into one room of a running server, compared with one phone alone. Medians of ROUNDS (default 3).
"""

import http.client
import json
import sqlite3
import statistics
import sys
import tempfile
import threading
import time
from collections.abc import Callable
from pathlib import Path

sys.path[:0] = [str(Path(__file__).parents[1]), str(Path(__file__).parents[2] / "server")]

from fish_rooms import FishRoom  # noqa: E402
from limnary.store import backup  # noqa: E402
from started_server import RealServer  # noqa: E402

BATCH = 500
# So many batches of so many ops go into a large and a small room, in turns.
TURNS, OF_TURN = 10, 50
PHONES = (1, 2, 4, 8)
# What sqlite3 does beside each step.
BESIDE = {"push": "write", "push again": "write", "bring back": "write", "pull": "read"}
PUSHES = 6


def timed(work: Callable) -> float:
    """Seconds that `work` takes."""
    began = time.perf_counter()
    work()
    return time.perf_counter() - began


def sqlite_alone(folder: Path, ops: list[dict]) -> dict[str, float]:
    """Seconds to write and to read the same rows by sqlite3 alone."""
    db = sqlite3.connect(folder / "alone.sqlite")
    db.execute("PRAGMA journal_mode=WAL")
    db.execute("PRAGMA synchronous=FULL")
    db.execute("CREATE TABLE records (id TEXT PRIMARY KEY, fields TEXT, stamp TEXT)")
    rows = [(op["id"], json.dumps(op["fields"]), op["stamp"]) for op in ops]

    def write() -> None:
        with db:
            db.executemany("INSERT INTO records VALUES (?, ?, ?)", rows)

    def read() -> None:
        for _, fields, _ in db.execute("SELECT * FROM records"):
            json.loads(fields)

    seconds = {"write": timed(write), "read": timed(read)}
    db.close()
    return seconds


def one_room(folder: Path, count: int) -> dict[str, float]:
    """Seconds of each step in one fresh room."""
    room = FishRoom(folder / "data")
    phone = room.phone("keeper", "Kim")
    ops = [phone.reading("tank-0001", n / 100) for n in range(count)]
    batches = [ops[at : at + BATCH] for at in range(0, count, BATCH)]
    empty, rows, bodies, answers = folder / "empty.zip", [], [], []
    backup.back_up(room.store.files, empty, room.at)

    def encode() -> None:
        bodies[:] = [json.dumps({"epoch": room.epoch, "ops": batch}) for batch in batches]

    def push() -> None:
        answers[:] = [phone.send("POST", "/rooms/{room}/push", body) for body in bodies]

    def read_answers() -> None:
        for answer in answers:
            assert {one["status"] for one in answer.json["results"]} == {"ok"}, answer.text

    def pull() -> None:
        rows[:] = phone.rows().values()

    def bring_back() -> None:
        for at in range(0, count, BATCH):
            given = [{"ref": row["id"], "row": row} for row in rows[at : at + BATCH]]
            answer = phone.call("POST", "/rooms/{room}/bring-back", {"epoch": room.epoch, "rows": given})
            assert {one["status"] for one in answer.json["results"]} == {"ok"}, answer.text

    seconds = {"encode": timed(encode), "push": timed(push), "read answers": timed(read_answers)}
    seconds |= {"push again": timed(push), "pull": timed(pull)}
    read_answers()
    room.store.close()
    backup.restore(room.store.files, empty, room.at)
    room.epoch = room.store.epoch(room.id)
    seconds["bring back"] = timed(bring_back)
    room.close()
    return {**seconds, **{f"sqlite3 {what}": its for what, its in sqlite_alone(folder, ops).items()}}


def by_fullness(folder: Path, count: int) -> float:
    """What an op costs in a room of `count` records, as a multiple of one in a room of a tenth."""
    rooms = [FishRoom(folder / name) for name in ("large", "small")]
    phones = [room.phone("keeper", "Kim") for room in rooms]
    for phone, held in zip(phones, (count, count // 10), strict=True):
        ops = [phone.reading("tank-0001", n / 100) for n in range(held)]
        for at in range(0, held, BATCH):
            phone.results(*ops[at : at + BATCH])
    spent: list[list[float]] = [[], []]
    for _ in range(TURNS):
        for phone, its in zip(phones, spent, strict=True):
            ops = [phone.reading("tank-0001", n / 100) for n in range(OF_TURN)]
            body = json.dumps({"epoch": phone.room.epoch, "ops": ops})
            its.append(timed(lambda phone=phone, body=body: phone.send("POST", "/rooms/{room}/push", body)))
    for room in rooms:
        room.close()
    large, small = map(statistics.median, spent)
    return large / small


def several_phones(folder: Path, phones: int) -> float:
    """Ops per second that `phones` phones push at once into one room of a real server."""
    room = FishRoom(folder)
    room.at = int(time.time() * 1000)
    pushers = [room.phone("keeper", f"K{n}") for n in range(phones)]
    work = [[[one.reading("tank-0001", n / 100) for n in range(BATCH)] for _ in range(PUSHES)] for one in pushers]
    room.close()
    server = RealServer(folder).start()
    threads = [
        threading.Thread(target=push_all, args=(server.port, room, one.key, its))
        for one, its in zip(pushers, work, strict=True)
    ]

    def all_at_once() -> None:
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()

    try:
        return phones * PUSHES * BATCH / timed(all_at_once)
    finally:
        server.stop()


def push_all(port: int, room: FishRoom, key: str, batches: list[list[dict]]) -> None:
    """One phone's pushes, one after the other."""
    wire = http.client.HTTPConnection("127.0.0.1", port, timeout=120)
    headers = {"Authorization": f"Bearer {key}", "Content-Type": "application/json"}
    for ops in batches:
        body = json.dumps({"epoch": room.epoch, "ops": ops})
        wire.request("POST", f"/api/v1/rooms/{room.id}/push", body, headers)
        results = json.loads(wire.getresponse().read())["results"]
        if {one["status"] for one in results} != {"ok"}:
            raise AssertionError(results)
    wire.close()


def median(rounds: list[dict[str, float]]) -> dict[str, float]:
    return {name: statistics.median(one[name] for one in rounds) for name in rounds[0]}


def fresh(work: Callable) -> object:
    with tempfile.TemporaryDirectory() as folder:
        return work(Path(folder))


def main(count: int = 10_000, rounds: int = 3) -> None:
    found = median([fresh(lambda folder: one_room(folder, count)) for _ in range(rounds)])
    for what, beside in BESIDE.items():
        print(f"{what:11} {found[what] / found[f'sqlite3 {beside}']:6.1f} times sqlite3 alone")
    of_phone = (found["encode"] + found["read answers"]) / found["sqlite3 write"]
    print(f"A phone's own JSON is {of_phone:.1f} times sqlite3 alone more, if it shares the server's processor")
    fuller = statistics.median(fresh(lambda folder: by_fullness(folder, count)) for _ in range(rounds))
    print(f"An op costs {fuller:.2f} times as much in a room ten times as full")
    rates = {
        phones: statistics.median(fresh(lambda f, n=phones: several_phones(f, n)) for _ in range(rounds))
        for phones in PHONES
    }
    for phones, rate in rates.items():
        print(f"{phones} phones at once push {rate / rates[1]:4.2f} times what one does alone")


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))
