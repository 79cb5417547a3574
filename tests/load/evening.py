"""An evening's round of many keepers against a real server: `python tests/load/evening.py [--minutes 10] [...]`.

Two hours of an evening pass within `--minutes`: keepers open the app at moments of their own, walk past their tanks,
and record at each; their phones pull at the start, push after each tank, and pull at rest, as pwa/data/sync.js does,
all in compressed time. A tenth of the phones have a bad network: bytes dribble, connections break in the middle of a
request or of its answer, and the phone sends again. At the end every acknowledged write must be in its room. It prints
figures and fails only if something was lost.
"""

import argparse
import asyncio
import json
import random
import statistics
import sys
import tempfile
import time
from dataclasses import dataclass, field
from pathlib import Path

sys.path[:0] = [str(Path(__file__).parents[1]), str(Path(__file__).parents[2] / "server")]

from fish_rooms import FishRoom  # noqa: E402
from limnary.ids import utc, uuid7  # noqa: E402
from started_server import RealServer  # noqa: E402

EVENING_S = 2 * 3600
# What one keeper does, in seconds of the evening (assumptions: a minute or two at each tank, then the phone at rest).
AT_A_TANK_S = (40, 150)
IDLE_S = 45
AT_REST_S = 15 * 60
READINGS = ("total_ammonia", "nitrite", "nitrate", "temperature")
BAD_SHARE = 10
# A bad network: the share of requests that break, and what it carries in a second of real time.
BREAKS, BYTES_S = 0.15, 20_000
PATIENCE_S = 20
KEEPERS_A_ROOM = 4


@dataclass
class Tally:
    """What all phones measured: seconds of each push and pull, and how they ended."""

    seconds: dict[str, list[float]] = field(default_factory=lambda: {"push": [], "pull": []})
    statuses: dict[int, int] = field(default_factory=dict)
    broken: int = 0
    memory: list[int] = field(default_factory=list)


class Wire:
    """HTTP of one phone over a connection that it keeps, good or bad."""

    def __init__(self, port: int, key: str, bad: bool, dice: random.Random):
        self.port, self.key, self.bad, self.dice = port, key, bad, dice
        self.reader = self.writer = None

    async def call(self, method: str, path: str, body: bytes = b"") -> tuple[int, dict]:
        """Status and JSON of one call; OSError if the connection broke."""
        breaks = self.bad and self.dice.random() < BREAKS
        try:
            return await asyncio.wait_for(self._call(method, path, body, breaks), PATIENCE_S)
        except (OSError, asyncio.IncompleteReadError, TimeoutError, ValueError) as lost:
            self.close()
            raise OSError(str(lost)) from None

    async def _call(self, method: str, path: str, body: bytes, breaks: bool) -> tuple[int, dict]:
        if self.writer is None:
            self.reader, self.writer = await asyncio.open_connection("127.0.0.1", self.port, limit=8_000_000)
        head = f"{method} {path} HTTP/1.1\r\nHost: x\r\nAuthorization: Bearer {self.key}\r\n"
        head += f"Content-Type: application/json\r\nContent-Length: {len(body)}\r\n\r\n"
        sent = head.encode() + body
        if breaks and self.dice.random() < 0.5:
            await self._send(sent[: self.dice.randrange(1, len(sent))])
            raise OSError("broke in the middle of the request")
        await self._send(sent)
        if breaks:
            await self.reader.read(1)
            raise OSError("broke in the middle of the answer")
        return await self._answer()

    async def _send(self, sent: bytes) -> None:
        step = 1000 if self.bad else len(sent)
        for at in range(0, len(sent), step):
            self.writer.write(sent[at : at + step])
            await self.writer.drain()
            if self.bad:
                await asyncio.sleep(step / BYTES_S)

    async def _answer(self) -> tuple[int, dict]:
        lines = (await self.reader.readuntil(b"\r\n\r\n")).decode("latin-1").split("\r\n")
        headers = {name.lower(): value.strip() for name, _, value in (line.partition(":") for line in lines[1:])}
        body = await self.reader.readexactly(int(headers["content-length"]))
        if headers.get("connection") == "close":
            self.close()
        return int(lines[0].split()[1]), json.loads(body)

    def close(self) -> None:
        if self.writer:
            self.writer.close()
        self.reader = self.writer = None


class Keeper:
    """One keeper's phone: its outbox, what was acknowledged, and how far it has pulled."""

    def __init__(self, room: str, epoch: str, phone, tanks: list[str], wire: Wire, tally: Tally):
        self.room, self.epoch, self.device, self.tanks = room, epoch, phone.device, tanks
        self.wire, self.tally = wire, tally
        self.outbox, self.acknowledged, self.since, self.counter = [], set(), 0, 0

    async def evening(self, starts_s: float, speed: float) -> None:
        """Walk past the tanks, recording at each; share as the app does."""
        dice = self.wire.dice
        await asyncio.sleep(starts_s / speed)
        await self.share(speed)
        for tank in self.tanks:
            stays = dice.uniform(*AT_A_TANK_S)
            await asyncio.sleep(stays / speed)
            self.record(tank)
            await self.share(speed)
        rested = 0.0
        while rested < AT_REST_S or self.outbox:
            await asyncio.sleep(IDLE_S / speed)
            rested += IDLE_S
            await self.share(speed)
        self.wire.close()

    def record(self, tank: str) -> None:
        """What is written at one tank: readings and a feeding, sometimes a change."""
        dice, now = self.wire.dice, int(time.time() * 1000)
        about = {"tank": tank, "at": utc(now)}
        chosen = dice.sample(READINGS, dice.randint(1, len(READINGS)))
        for parameter in chosen:
            value = 24.0 if parameter == "temperature" else dice.choice((0.0, 0.25, 0.5, 5.0))
            self._write("reading", {**about, "parameter": parameter, "value": value})
        self._write("feeding", {**about, "feed_g": 0.2})
        if dice.random() < 0.3:
            self._write("water_change", {**about, "litres": 20, "fraction": 0.25})

    def _write(self, kind: str, fields: dict) -> None:
        self.counter += 1
        now = int(time.time() * 1000)
        stamp = f"{now:013d}-{self.counter % 100_000:05d}-{self.device}"
        op = {"op": uuid7(now), "kind": kind, "id": uuid7(now), "type": "put", "fields": fields, "stamp": stamp}
        self.outbox.append({**op, "schema": 1})

    async def share(self, speed: float) -> None:
        """Push what waits, then pull; after a failure come back with growing waits, as a phone does."""
        for failures in range(12):
            try:
                while self.outbox:
                    await self._push(self.outbox[:100])
                return await self._pull()
            except OSError:
                self.tally.broken += 1
                await asyncio.sleep(min(300, 2 * 2**failures) * self.wire.dice.uniform(0.5, 1) / speed)
        return None

    async def _push(self, ops: list[dict]) -> None:
        body = json.dumps({"epoch": self.epoch, "ops": ops}).encode()
        answer = await self._timed("push", "POST", f"/api/v1/rooms/{self.room}/push", body)
        taken = {one["op"] for one in answer["results"] if one["status"] == "ok"}
        if len(taken) != len(ops):
            raise AssertionError(answer["results"])
        self.acknowledged |= {op["id"] for op in ops}
        self.outbox = [op for op in self.outbox if op["op"] not in taken]

    async def _pull(self) -> None:
        more = True
        while more:
            path = f"/api/v1/rooms/{self.room}/pull?epoch={self.epoch}&since={self.since}"
            page = await self._timed("pull", "GET", path)
            self.since, more = page["next"], page["more"]

    async def _timed(self, what: str, method: str, path: str, body: bytes = b"") -> dict:
        began = time.perf_counter()
        status, answer = await self.wire.call(method, path, body)
        # On a bad network the time is the network's.
        if not self.wire.bad:
            self.tally.seconds[what].append(time.perf_counter() - began)
        self.tally.statuses[status] = self.tally.statuses.get(status, 0) + 1
        if status in (503, 507, 500, 408):
            raise OSError(f"{status}: {answer}")
        if status != 200:
            raise AssertionError((status, answer))
        return answer


def make_rooms(folder: Path, keepers: int, tanks: int, records: int, tally: Tally, port: int) -> list[Keeper]:
    """Rooms of four keepers, each with tanks of their own and that many records of the past in a room."""
    made, each = [], max(1, tanks // keepers)
    first = FishRoom(folder)
    first.at = int(time.time() * 1000) - 60_000
    for start in range(0, keepers, KEEPERS_A_ROOM):
        number = start // KEEPERS_A_ROOM
        room = first.room if number == 0 else first.store.new_room(f"Room {number}")
        first.id, first.epoch = room["id"], room["epoch"]
        phones = [first.phone("owner", f"K{n}") for n in range(start, min(start + KEEPERS_A_ROOM, keepers))]
        for at, phone in enumerate(phones, start):
            ops = [phone.tank(name=f"Tank {n}") for n in range(each)]
            phone.results(*ops)
            past = [phone.reading(ops[n % each]["id"], n % 40 / 8) for n in range(records // len(phones))]
            for batch in range(0, len(past), 500):
                phone.results(*past[batch : batch + 500])
            wire = Wire(port, phone.key, at % BAD_SHARE == BAD_SHARE - 1, random.Random(at))
            made.append(Keeper(room["id"], room["epoch"], phone, [op["id"] for op in ops], wire, tally))
    first.close()
    return made


async def pass_evening(keepers: list[Keeper], minutes: float, server: RealServer, tally: Tally) -> None:
    """All keepers' evenings at once, and the server's memory beside them."""
    speed = EVENING_S / (60 * minutes)
    dice = random.Random(1)
    # Most come home at about the same hour: a bell over the evening, so that its middle is the peak.
    latest = EVENING_S * 0.8
    starts = [min(latest, max(0.0, dice.gauss(EVENING_S * 0.35, EVENING_S * 0.15))) for _ in keepers]
    watching = asyncio.create_task(watch(server, tally))
    await asyncio.gather(*(one.evening(at, speed) for one, at in zip(keepers, starts, strict=True)))
    watching.cancel()


async def watch(server: RealServer, tally: Tally) -> None:
    while True:
        tally.memory.append(memory_kb(server.process.pid))
        await asyncio.sleep(1)


def memory_kb(pid: int) -> int:
    """Resident memory of a process and all below it; shared pages count once (PSS)."""
    total, waiting = 0, [pid]
    while waiting:
        one = waiting.pop()
        try:
            text = Path(f"/proc/{one}/smaps_rollup").read_text()
            below = Path(f"/proc/{one}/task/{one}/children").read_text()
        except OSError:
            continue
        total += int(text.split("Pss:")[1].split()[0])
        waiting += map(int, below.split())
    return total


def processor_s(pid: int) -> float:
    """Seconds of processor time of a process and all below it."""
    fields = Path(f"/proc/{pid}/stat").read_text().rsplit(")", 1)[1].split()
    below = Path(f"/proc/{pid}/task/{pid}/children").read_text().split()
    return (int(fields[11]) + int(fields[12])) / 100 + sum(processor_s(int(one)) for one in below)


def lost(folder: Path, keepers: list[Keeper]) -> int:
    """How many acknowledged records are not in their room, read past the server."""
    import sqlite3

    held: dict[str, set[str]] = {}
    for one in keepers:
        if one.room not in held:
            db = sqlite3.connect(folder / "rooms" / one.room[:2] / f"{one.room}.sqlite")
            held[one.room] = {row[0] for row in db.execute("SELECT id FROM records")}
            db.close()
    return sum(len(one.acknowledged - held[one.room]) for one in keepers)


def percentile(seconds: list[float], share: float) -> float:
    return (
        statistics.quantiles(seconds, n=1000, method="inclusive")[round(share * 1000) - 1]
        if len(seconds) > 1
        else seconds[0]
    )


def main(arguments: list[str] | None = None) -> int:
    """Run one evening and print its figures; 1 if anything was lost."""
    reads = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    reads.add_argument("--minutes", type=float, default=10, help="how long the evening of two hours takes")
    reads.add_argument("--keepers", type=int, default=500)
    reads.add_argument("--tanks", type=int, default=2000)
    reads.add_argument("--records", type=int, default=2000, help="records of the past in each room")
    asked = reads.parse_args(arguments)
    tally = Tally()
    with tempfile.TemporaryDirectory() as where:
        folder = Path(where) / "data"
        server = RealServer(folder)
        keepers = make_rooms(folder, asked.keepers, asked.tanks, asked.records, tally, server.port)
        server.start()
        idle_kb, began_s, began = memory_kb(server.process.pid), processor_s(server.process.pid), time.perf_counter()
        try:
            asyncio.run(pass_evening(keepers, asked.minutes, server, tally))
            took, spent = time.perf_counter() - began, processor_s(server.process.pid) - began_s
        finally:
            server.stop()
        gone = lost(folder, keepers)
    waiting = sum(len(one.outbox) for one in keepers)
    acknowledged = sum(len(one.acknowledged) for one in keepers)
    print(f"{asked.keepers} keepers, {asked.tanks} tanks; two hours in {took / 60:.1f} minutes")
    for what, seconds in tally.seconds.items():
        figures = ", ".join(f"p{100 * at:g} {1000 * percentile(seconds, at):.0f} ms" for at in (0.5, 0.95, 0.99))
        print(f"{what}: {len(seconds)} on good networks, {figures}, longest {1000 * max(seconds):.0f} ms")
    print(f"answers by status: {tally.statuses}; connections that broke: {tally.broken}")
    print(f"memory: {idle_kb / 1000:.0f} MB idle, {max(tally.memory) / 1000:.0f} MB at most")
    print(f"processor: {spent:.1f} s of the server's own, {100 * spent / took:.0f} % of one core")
    print(f"acknowledged: {acknowledged}; lost: {gone}; never shared: {waiting}")
    return 1 if gone or waiting else 0


if __name__ == "__main__":
    sys.exit(main())
