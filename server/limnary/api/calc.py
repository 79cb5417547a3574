"""The calculations, open to everyone: no key, nothing stored."""

from flask import Blueprint, current_app, request

from limnary.api.reading import body_json, config, store
from limnary.contracts import contract, contracts, run

blueprint = Blueprint("calc", __name__, url_prefix="/api/v1/calc")
# These follow a whole history with a cloud of draws, and may take seconds.
SLOW = frozenset({"outlook", "change_plan", "stock_headroom"})


@blueprint.get("")
def listing():
    """Every calculation: name, title, purpose, address."""
    shown = ("name", "title", "purpose", "moment")
    return {
        "calculations": [
            {**{key: spec[key] for key in shown if key in spec}, "url": f"/api/v1/calc/{name}"}
            for name, spec in contracts().items()
        ]
    }


@blueprint.get("/<name>")
def one(name: str):
    """One whole contract."""
    return contract(name)


@blueprint.post("/<name>")
def calculate(name: str):
    """Check the input, calculate, answer."""
    contract(name)
    current_app.extensions["limnary_calls"].take(request.remote_addr or "", store().clock())
    if name not in SLOW:
        return run(name, body_json(config().calculation_limit_bytes))
    lane = current_app.extensions["limnary_slow_lane"].enter()
    try:
        return lane.answer(name, body_json(config().calculation_limit_bytes))
    finally:
        lane.leave()
