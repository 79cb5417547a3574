"""Kills a real server with SIGKILL at random moments during pushes, and checks what is left.

`python tests/store/killing.py 200` runs 200 kills; the suite runs a few. After each kill: every file passes
SQLite's integrity check, every acknowledged op is there, and every unanswered one can be sent again with one effect.
"""

import http.client
import json
import random
import sqlite3
import sys
import tempfile
import threading
import time
from pathlib import Path

sys.path[:0] = [str(Path(__file__).parents[1]), str(Path(__file__).parents[2] / "server")]

from fish_rooms import FishRoom  # noqa: E402
from started_server import RealServer  # noqa: E402

PUSHERS = 2
BATCH = 20


class Pusher(threading.Thread):
    """One phone that pushes batch after batch until its server is gone."""

    def __init__(self, port: int, room: FishRoom, key: str, waiting: list[dict]):
        super().__init__()
        self.port, self.room, self.key, self.waiting = port, room, key, waiting
        self.acknowledged: dict[str, dict] = {}
        self.answered = threading.Event()

    def run(self) -> None:
        connection = http.client.HTTPConnection("127.0.0.1", self.port, timeout=30)
        headers = {"Authorization": f"Bearer {self.key}", "Content-Type": "application/json"}
        try:
            while True:
                self.waiting = self.waiting or [self.room.owner.tank() for _ in range(BATCH)]
                body = json.dumps({"epoch": self.room.epoch, "ops": self.waiting})
                connection.request("POST", f"/api/v1/rooms/{self.room.id}/push", body, headers)
                answer = json.loads(connection.getresponse().read())
                if {result["status"] for result in answer["results"]} != {"ok"}:
                    raise AssertionError(answer)
                self.acknowledged |= {op["op"]: op for op in self.waiting}
                self.waiting = []
                self.answered.set()
        except (OSError, http.client.HTTPException, json.JSONDecodeError):
            pass  # the kill; the batch on its way waits to be sent again
        finally:
            connection.close()


def kill_often(folder: Path, kills: int, seed: int) -> dict[str, int]:
    """Kill the server `kills` times; return counts of ops acknowledged and on their way. AssertionError on any loss."""
    dice = random.Random(seed)
    room = FishRoom(folder)
    room.at = int(time.time() * 1000)
    keys = [room.owner.key, *(room.phone("keeper", f"K{n}").key for n in range(1, PUSHERS))]
    room.close()
    server, acknowledged, waiting, cut = RealServer(folder), {}, [[] for _ in keys], 0
    for turn in range(kills):
        server.start()
        pushers = [Pusher(server.port, room, key, batch) for key, batch in zip(keys, waiting, strict=True)]
        for pusher in pushers:
            pusher.start()
        # On a busy machine a kill may always come before the first answer, so every other turn waits for one.
        if turn % 2:
            pushers[0].answered.wait(60)
        time.sleep(dice.uniform(0.0, 0.15))
        server.kill()
        for pusher in pushers:
            pusher.join(60)
            acknowledged |= pusher.acknowledged
        waiting = [pusher.waiting for pusher in pushers]
        cut += sum(map(len, waiting))
        look(room, acknowledged, turn)
    return {"kills": kills, "acknowledged": len(acknowledged), "cut": cut}


def look(room: FishRoom, acknowledged: dict[str, dict], turn: int) -> None:
    """Check what a kill left behind."""
    for path in [room.store.files.people, *room.store.files.rooms()]:
        db = sqlite3.connect(path)
        assert db.execute("PRAGMA integrity_check").fetchone()[0] == "ok", f"{path} after kill {turn}"
        db.close()
    db = sqlite3.connect(room.store.files.room(room.id))
    ops = {row[0] for row in db.execute("SELECT op FROM ops")}
    records = dict(db.execute("SELECT id, seq FROM records"))
    top = int(db.execute("SELECT value FROM meta WHERE key = 'seq'").fetchone()[0])
    db.close()
    lost = set(acknowledged) - ops
    assert not lost, f"{len(lost)} acknowledged ops are lost after kill {turn}"
    assert {op["id"] for op in acknowledged.values()} <= set(records), f"a record is lost after kill {turn}"
    assert len(ops) == len(records) == len(set(records.values())), f"an op had half or double effect, kill {turn}"
    assert top == max(records.values(), default=0), f"the counter does not fit the rows after kill {turn}"


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as where:
        print(kill_often(Path(where) / "data", int(sys.argv[1]) if len(sys.argv) > 1 else 200, seed=1))
