"""Rooms, people, phones and invitations."""

from flask import Blueprint, current_app, request

from limnary.api.forms import INVITE, JOIN, ROLE, ROOM
from limnary.api.reading import body_fields, config, device, device_if_any, store
from limnary.errors import InviteSpent, NotFound
from limnary.ids import utc

blueprint = Blueprint("people", __name__, url_prefix="/api/v1")


@blueprint.post("/join")
def join():
    """Enter a room by an invitation."""
    attempts, address = current_app.extensions["limnary_attempts"], request.remote_addr or ""
    attempts.check(address, store().clock())
    held = device_if_any()
    given = body_fields("join", JOIN)
    try:
        joined = store().join(
            given["secret"], held, given.get("keeper_name"), given["device_name"], given.get("device_key")
        )
    except (NotFound, InviteSpent):
        attempts.wrong(address, store().clock())
        raise
    return {**joined, "server_time": utc(store().clock())}, 201


@blueprint.get("/me")
def me():
    """Who this phone is, and in which rooms."""
    who = device()
    return {
        "keeper": {"id": who["keeper"], "name": who["keeper_name"]},
        "device": {"id": who["id"], "name": who["name"]},
        "rooms": store().rooms_of(who["keeper"]),
        "server_time": utc(store().clock()),
    }


@blueprint.post("/rooms")
def new_room():
    """A room of one's own."""
    who = device()
    return store().new_room(body_fields("room", ROOM)["name"], who["keeper"]), 201


@blueprint.patch("/rooms/<room>")
def rename(room: str):
    """A new name."""
    who = device()
    store().role(room, who["keeper"])
    name = body_fields("room", ROOM)["name"]
    store().rename_room(room, who["keeper"], name)
    return {"id": room, "name": name}


@blueprint.get("/rooms/<room>/people")
def people(room: str):
    """Who is in the room, with their phones."""
    return {"people": store().people_in(room, device()["keeper"])}


@blueprint.patch("/rooms/<room>/people/<keeper>")
def set_role(room: str, keeper: str):
    """Another role for a member."""
    who = device()
    store().role(room, who["keeper"])
    role = body_fields("role", ROLE)["role"]
    store().set_role(room, who["keeper"], keeper, role)
    return {"id": keeper, "role": role}


@blueprint.delete("/rooms/<room>/people/<keeper>")
def end(room: str, keeper: str):
    """End a membership, or leave."""
    store().end_member(room, device()["keeper"], keeper)
    return "", 204


@blueprint.post("/rooms/<room>/invites")
def invite(room: str):
    """A single-use link. Its secret is a fragment, which browsers never send, so it reaches no log."""
    who = device()
    store().role(room, who["keeper"])
    given = body_fields("invite", INVITE)
    made = store().invite(room, who["keeper"], given["role"], given["hours"], given.get("keeper"))
    return {**made, "link": f"{origin()}/join#{made['secret']}"}, 201


@blueprint.get("/rooms/<room>/invites")
def invites(room: str):
    """Open invitations, without secrets."""
    return {"invites": store().open_invites(room, device()["keeper"])}


@blueprint.delete("/rooms/<room>/invites/<invitation>")
def withdraw(room: str, invitation: str):
    """Close an invitation."""
    store().withdraw_invite(room, device()["keeper"], invitation)
    return "", 204


@blueprint.delete("/devices/<phone>")
def revoke(phone: str):
    """Revoke a phone's key."""
    store().revoke_device(device()["keeper"], phone)
    return "", 204


def origin() -> str:
    """What links start with."""
    return (config().origin or request.host_url).rstrip("/")
