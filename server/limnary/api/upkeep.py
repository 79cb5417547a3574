"""What the server does by itself, and what of it failed: for the owners of a room, who may have to tell someone."""

from flask import Blueprint, current_app

from limnary.api.reading import device, store
from limnary.ids import utc
from limnary.store import daily

blueprint = Blueprint("upkeep", __name__)


@blueprint.get("/api/v1/rooms/<room>/upkeep")
def upkeep(room: str):
    """The daily backups: whether the server makes them, when the last good one was made, what is wrong."""
    store().owner_only(room, device())
    return {"backups": _backups(store().clock()), "server_time": utc(store().clock())}


def _backups(now_ms: int) -> dict:
    backups: daily.DailyBackups | None = current_app.extensions["limnary_backups"]
    if backups is None:
        return {"automatic": False, "last_good_at": None, "kept": 0, "faults": []}
    noted = backups.notes
    made_at = None if noted.good_at is None else utc(noted.good_at)
    faults = daily.faults(noted, now_ms)
    return {"automatic": True, "last_good_at": made_at, "kept": len(noted.whole), "faults": faults}
