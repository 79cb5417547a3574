"""A fish room for tests: the real app on a fresh folder, a clock that stands still, and phones."""

import json
from itertools import count
from pathlib import Path

from limnary.app import create_app
from limnary.config import Config
from limnary.ids import uuid7
from limnary.store import invites, people

START_MS = 1_780_000_000_000  # 2026-05-28; the date does not matter
# What each role may write: role, kind of record, the server's answer.
WRITES = [
    ("viewer", "reading", "forbidden"),
    ("viewer", "tank", "forbidden"),
    ("helper", "reading", "ok"),
    ("helper", "tank", "forbidden"),
    ("keeper", "tank", "ok"),
    ("owner", "tank", "ok"),
]


class FishRoom:
    """The server of one test. `at` is its clock in milliseconds."""

    def __init__(self, folder: Path, **settings):
        self.at = START_MS
        settings.setdefault("calls_per_minute", 1_000_000)  # the clock stands still
        self.app = create_app(Config(data_dir=folder, clock=lambda: self.at, **settings))
        self.store = self.app.extensions["limnary_store"]
        self.room = self.store.new_room("Test room")
        self.id, self.epoch = self.room["id"], self.room["epoch"]
        self.owner = self.phone("owner", "Ada")

    def secret(self, role: str, keeper: str | None = None, hours: float = 1) -> str:
        """The secret of an invitation, made as the server's terminal makes it."""
        with self.store.files.writing(self.store.files.people) as db:
            return invites.add_invite(db, self.id, role, hours, people.SERVER, self.at, keeper)["secret"]

    def phone(self, role: str, name: str = "Kim") -> "Phone":
        """A phone of a new keeper in the room."""
        phone = Phone(self)
        phone.join(self.secret(role), name)
        return phone

    def stranger(self) -> "Phone":
        """Someone with a valid key who was never in the room."""
        other = self.store.new_room("Another room")
        with self.store.files.writing(self.store.files.people) as db:
            secret = invites.add_invite(db, other["id"], "owner", 1, people.SERVER, self.at)["secret"]
        phone = Phone(self)
        phone.join(secret, "Sam")
        return phone

    def close(self):
        self.store.close()


class Phone:
    """One phone: its key, and calls to the API."""

    numbers = count(1)

    def __init__(self, room: FishRoom):
        self.room, self.client = room, room.app.test_client()
        self.key = self.keeper = self.device = None

    def join(self, secret: str, name: str):
        answer = self.call("POST", "/join", {"secret": secret, "keeper_name": name, "device_name": f"{name}'s phone"})
        assert answer.status_code == 201, answer.text
        self.key = answer.json.get("key", self.key)
        self.keeper, self.device = answer.json["keeper"]["id"], answer.json["device"]
        return answer.json

    def call(self, method: str, path: str, body: object = None, **more):
        """One call below /api/v1; `{room}` in the path stands for the room's id."""
        return self.send(method, path, None if body is None else json.dumps(body), **more)

    def send(self, method: str, path: str, body: str | None = None, **more):
        """The same with a body that is JSON already."""
        headers = {**({"Authorization": f"Bearer {self.key}"} if self.key else {}), **more.pop("headers", {})}
        if body is not None:
            more |= {"data": body, "content_type": "application/json"}
        path = path.replace("{room}", self.room.id)
        return self.client.open(f"/api/v1{path}", method=method, headers=headers, **more)

    def op(self, kind: str, fields: dict | None = None, type: str = "put", record: str | None = None, **more) -> dict:
        """An op with a stamp one millisecond later than the one before."""
        n = next(self.numbers)
        stamp = f"{self.room.at + n:013d}-00000-{self.device}"
        made = {"op": uuid7(self.room.at + n), "kind": kind, "id": record or uuid7(self.room.at + n), "type": type}
        return {**made, "fields": fields or {}, "stamp": stamp, "schema": 1, **more}

    def tank(self, **fields) -> dict:
        return self.op("tank", {"name": "Long low tank", "water_l": 87.5, **fields})

    def reading(self, tank: str, value: float = 0.25, **fields) -> dict:
        shown = {"tank": tank, "at": "2026-05-28T07:30:00.000Z", "parameter": "total_ammonia", "value": value}
        return self.op("reading", {**shown, **fields})

    def push(self, *ops: dict, epoch: str | None = None):
        return self.call("POST", "/rooms/{room}/push", {"epoch": epoch or self.room.epoch, "ops": list(ops)})

    def results(self, *ops: dict) -> list[dict]:
        answer = self.push(*ops)
        assert answer.status_code == 200, answer.text
        return answer.json["results"]

    def pull(self, since: int = 0, limit: int = 500, epoch: str | None = None):
        query = {"epoch": epoch or self.room.epoch, "since": since, "limit": limit}
        return self.call("GET", "/rooms/{room}/pull", query_string=query)

    def rows(self) -> dict[str, dict]:
        """Every row of the room, by id, pulled page by page."""
        rows, since, more = {}, 0, True
        while more:
            page = self.pull(since, 100).json
            rows |= {row["id"]: row for row in page["rows"]}
            since, more = page["next"], page["more"]
        return rows
