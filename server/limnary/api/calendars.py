"""The tasks of a room as a calendar to subscribe to.

Calendar programs cannot send a header, so their address carries a key of its own: it reads the titles and times of
one room's tasks and nothing else, ends with the membership, and can be revoked. It stands in the query, which the
access log leaves out.
"""

from flask import Blueprint, Response, request

from limnary.api.people import origin
from limnary.api.reading import device, store
from limnary.calendar_file import calendar_file

blueprint = Blueprint("calendars", __name__, url_prefix="/api/v1")


@blueprint.get("/calendar.ics")
def calendar():
    """The file, by its own key."""
    room, tasks, tanks, dones = store().tasks_by_calendar_key(request.args.get("key", ""))
    names = {tank["id"]: tank["name"] for tank in tanks if not tank.get("resting")}
    return Response(calendar_file(room, tasks, names, dones), content_type="text/calendar; charset=utf-8")


@blueprint.get("/rooms/<room>/calendar")
def held(room: str):
    """Whether this keeper has a link, and since when."""
    return {"made_at": store().calendar_key(room, device()["keeper"])}


@blueprint.post("/rooms/<room>/calendar")
def make(room: str):
    """A link of one's own; the former one opens nothing any more."""
    made = store().make_calendar_key(room, device()["keeper"])
    return {**made, "link": f"{origin()}/api/v1/calendar.ics?key={made['key']}"}, 201


@blueprint.delete("/rooms/<room>/calendar")
def revoke(room: str):
    """Close one's own link."""
    store().revoke_calendar_key(room, device()["keeper"])
    return "", 204
