"""Tells whether the server runs and can read its data."""

from flask import Blueprint

from limnary.api.reading import store
from limnary.ids import utc

blueprint = Blueprint("health", __name__)


@blueprint.get("/healthz")
def healthz():
    """200 if people.sqlite can be read."""
    store().check()
    return {"status": "ok", "server_time": utc(store().clock())}
