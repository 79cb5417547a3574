"""What the stories of other engines share: a room with a tank, and joining it."""

import time

from driven import Driven
from limnary.ids import uuid7

TANK = "tank-reed-pool"
CONTROLLED = "return Boolean(navigator.serviceWorker.controller)"


def fill(served_room, rows: int) -> str:
    """A room with one tank and that many readings; a link for a keeper."""
    link = served_room.invite("keeper")
    room, epoch = served_room.room()
    now = int(time.time() * 1000)

    def op(kind: str, fields: dict, record: str | None = None) -> dict:
        nth = next(numbers)
        about = {"op": uuid7(now), "kind": kind, "id": record or uuid7(now), "type": "put", "fields": fields}
        return {**about, "stamp": f"{now:013d}-{nth:05d}-desk", "schema": 1}

    numbers = iter(range(100_000))
    shown = {"tank": TANK, "at": "2026-05-28T07:30:00.000Z", "parameter": "nitrate", "value": 5}
    tank = op("tank", {"name": "Reed pool", "water_l": 90}, TANK)
    ops = [tank, *(op("reading", shown) for _ in range(rows))]
    for at in range(0, len(ops), 500):
        served_room.call("POST", f"/rooms/{room}/push", {"epoch": epoch, "ops": ops[at : at + 500]})
    return link


def join(browser: Driven, link: str, keeper: str) -> None:
    browser.open(link)
    browser.type("Your name", keeper)
    browser.type("A name for this phone", f"{keeper}'s phone")
    browser.press("Join")
