"""The calculations, open to everyone: no key, nothing stored."""

from flask import Blueprint

from limnary.api.reading import body_json
from limnary.contracts import contract, contracts, run

blueprint = Blueprint("calc", __name__, url_prefix="/api/v1/calc")


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
    return run(name, body_json())
