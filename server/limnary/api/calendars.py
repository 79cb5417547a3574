"""The tasks of a room as a calendar to subscribe to.

Calendar programs cannot send a header, so the address carries its own key. That key reads the titles and times of
one room's tasks and nothing else; it ends with the membership and can be revoked. It is in the query, which the
access log does not write.
"""

from flask import Blueprint, Response, request

from limnary.api.people import origin
from limnary.api.reading import device, store
from limnary.calendar_file import calendar_file

blueprint = Blueprint("calendars", __name__, url_prefix="/api/v1")


@blueprint.get("/calendar.ics")
def calendar():
    """The calendar file that the key opens."""
    room, tasks, tanks, dones = store().tasks_by_calendar_key(request.args.get("key", ""))
    names = {tank["id"]: tank["name"] for tank in tanks if not tank.get("resting")}
    return Response(calendar_file(room, tasks, names, dones), content_type="text/calendar; charset=utf-8")


@blueprint.get("/rooms/<room>/calendar")
def held(room: str):
    """When this keeper's link was made; null if there is none."""
    return {"made_at": store().calendar_key(room, device())}


@blueprint.post("/rooms/<room>/calendar")
def make(room: str):
    """Make a new link for this keeper; the previous one stops working."""
    made = store().make_calendar_key(room, device())
    return {**made, "link": f"{origin()}/api/v1/calendar.ics?key={made['key']}"}, 201


@blueprint.delete("/rooms/<room>/calendar")
def revoke(room: str):
    """Revoke this keeper's link."""
    store().revoke_calendar_key(room, device())
    return "", 204
