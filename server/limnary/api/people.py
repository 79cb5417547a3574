"""Rooms, people, phones and invitations."""

from flask import Blueprint, current_app, request

from limnary.api.forms import CODE, INVITE, JOIN, JOIN_CODE, ROLE, ROOM
from limnary.api.reading import body_fields, config, device, device_if_any, store
from limnary.errors import BadRequest, InviteSpent, NotFound
from limnary.ids import utc

blueprint = Blueprint("people", __name__, url_prefix="/api/v1")


@blueprint.post("/join")
def join():
    """Join a room by an invitation."""
    attempts, address = current_app.extensions["limnary_attempts"], request.remote_addr or ""
    held = device_if_any()
    given = body_fields("join", JOIN)
    try:
        joined = store().join(
            given["secret"], held, given.get("keeper_name"), given["device_name"], given.get("device_key")
        )
    except NotFound:
        # Only a secret that never was one may be a guess; behind a home router good links of others still work.
        attempts.take(address, store().clock())
        raise
    return {**joined, "server_time": utc(store().clock())}, 201


@blueprint.post("/join/code")
def secret_of_code():
    """The secret of the link that a short code stands for; the link is not used up by this."""
    codes, now = current_app.extensions["limnary_join_codes"], store().clock()
    code = body_fields("join_code", JOIN_CODE)["code"]
    secret = codes.secret(code, request.remote_addr or "", now)
    try:
        store().open_invite(secret)
    except InviteSpent:
        codes.end(code)
        raise
    return {"secret": secret}


@blueprint.get("/me")
def me():
    """Who this phone is, and in which rooms."""
    caller = device()
    return {
        "keeper": {"id": caller["keeper"], "name": caller["keeper_name"]},
        "device": {"id": caller["id"], "name": caller["name"]},
        "rooms": store().rooms_of(caller),
        "server_time": utc(store().clock()),
    }


@blueprint.post("/rooms")
def new_room():
    """Make a room that this keeper owns."""
    caller = device()
    return store().new_room(body_fields("room", ROOM)["name"], caller["keeper"]), 201


@blueprint.patch("/rooms/<room>")
def rename(room: str):
    """Rename the room."""
    caller = device()
    store().role(room, caller)
    name = body_fields("room", ROOM)["name"]
    store().rename_room(room, caller, name)
    return {"id": room, "name": name}


@blueprint.get("/rooms/<room>/people")
def people(room: str):
    """Who is in the room, with their phones."""
    return {"people": store().people_in(room, device())}


@blueprint.patch("/rooms/<room>/people/<keeper>")
def set_role(room: str, keeper: str):
    """Change a member's role."""
    caller = device()
    store().role(room, caller)
    role = body_fields("role", ROLE)["role"]
    store().set_role(room, caller, keeper, role)
    return {"id": keeper, "role": role}


@blueprint.delete("/rooms/<room>/people/<keeper>")
def end(room: str, keeper: str):
    """End a membership, or leave."""
    store().end_member(room, device(), keeper)
    return "", 204


@blueprint.post("/rooms/<room>/invites")
def invite(room: str):
    """Make a single-use link. Its secret is in the fragment, which browsers never send, so no log holds it."""
    caller = device()
    store().role(room, caller)
    given, starts = body_fields("invite", INVITE), origin()
    made = store().invite(room, caller, given["role"], given["hours"], given.get("keeper"))
    return {**made, "link": f"{starts}/join#{made['secret']}"}, 201


@blueprint.post("/rooms/<room>/invites/<invitation>/code")
def short_code(room: str, invitation: str):
    """Make a short code to type for a link that this phone holds; an earlier code of the link ends."""
    caller = device()
    store().role(room, caller)
    secret = body_fields("code", CODE)["secret"]
    held = store().open_invite(secret)
    if (held["id"], held["room"]) != (invitation, room):
        raise NotFound("There is no such invitation")
    code, ends_ms = current_app.extensions["limnary_join_codes"].make(invitation, secret, store().clock())
    return {"code": code, "expires_at": min(utc(ends_ms), held["expires_at"])}, 201


@blueprint.get("/rooms/<room>/invites")
def invites(room: str):
    """Open invitations, without secrets."""
    return {"invites": store().open_invites(room, device())}


@blueprint.delete("/rooms/<room>/invites/<invitation>")
def withdraw(room: str, invitation: str):
    """Withdraw an invitation."""
    store().withdraw_invite(room, device(), invitation)
    return "", 204


@blueprint.delete("/devices/<phone>")
def revoke(phone: str):
    """Revoke a phone's key."""
    store().revoke_device(device(), phone)
    return "", 204


def origin() -> str:
    """The origin that links start with; BadRequest if it would be the request's `Host` and that is none."""
    if not (config().origin or request.host):
        raise BadRequest("A link starts with the request's Host: send a name or an address, with or without a port")
    return (config().origin or request.host_url).rstrip("/")
