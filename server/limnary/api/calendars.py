"""The tasks of a room as a calendar to subscribe to.

Calendar programs cannot send a header, so the address carries its own key. That key reads the titles and times of
one room's tasks and nothing else; it ends with the membership and can be revoked. It is in the query, which the
access log does not write.
"""

import threading
from collections import OrderedDict

from flask import Blueprint, Response, current_app, request

from limnary.api.people import origin
from limnary.api.reading import device, store
from limnary.calendar_file import calendar_file
from limnary.store import Store

# Rooms whose file is held; a file is at most some 200 kB.
MOST_HELD = 64
DAY_MS = 86_400_000

blueprint = Blueprint("calendars", __name__, url_prefix="/api/v1")


@blueprint.get("/calendar.ics")
def calendar():
    """The calendar file that the key opens."""
    made = current_app.extensions["limnary_calendars"].file(request.args.get("key", ""))
    return Response(made, content_type="text/calendar; charset=utf-8")


class Calendars:
    """Each room's file, made again once the room has changed or a day has passed, one at a time.

    Calendar programs ask every few minutes, and whoever holds a link may ask as often as they like.
    """

    def __init__(self, store: Store):
        self.store = store
        self._lock, self._held = threading.Lock(), OrderedDict()

    def file(self, key: str) -> bytes:
        """The file of the room that a calendar key opens; NotFound."""
        room, name = self.store.room_by_calendar_key(key)
        with self._lock:
            now_ms = self.store.clock()
            version = (name, now_ms // DAY_MS, *self.store.version(room))
            if self._held.get(room, (None,))[0] != version:
                self._held[room] = (version, self._made(room, name, now_ms))
            self._held.move_to_end(room)
            while len(self._held) > MOST_HELD:
                self._held.popitem(last=False)
            return self._held[room][1]

    def _made(self, room: str, name: str, now_ms: int) -> bytes:
        tasks, tanks, dones = (self.store.records_of(room, kind) for kind in ("task", "tank", "task_done"))
        names = {tank["id"]: tank["name"] for tank in tanks if not tank.get("resting")}
        return calendar_file(name, tasks, names, dones, now_ms)


@blueprint.get("/rooms/<room>/calendar")
def held(room: str):
    """When this keeper's link was made; null if there is none."""
    return {"made_at": store().calendar_key(room, device())}


@blueprint.post("/rooms/<room>/calendar")
def make(room: str):
    """Make a new link for this keeper; the previous one stops working."""
    caller, starts = device(), origin()
    made = store().make_calendar_key(room, caller)
    return {**made, "link": f"{starts}/api/v1/calendar.ics?key={made['key']}"}, 201


@blueprint.delete("/rooms/<room>/calendar")
def revoke(room: str):
    """Revoke this keeper's link."""
    store().revoke_calendar_key(room, device())
    return "", 204
