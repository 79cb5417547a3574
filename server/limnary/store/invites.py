"""Invitations: single use, expiring, with secrets stored as hashes; and joining a room by one."""

import sqlite3

from limnary.errors import Invalid, InviteSpent, NotFound
from limnary.ids import digest, new_key, new_secret, utc, uuid7
from limnary.schema_files import messages
from limnary.store import people


def add_invite(
    db: sqlite3.Connection,
    room: str,
    role: str,
    hours: float,
    by: str,
    now_ms: int,
    keeper: str | None = None,
    on: str | None = None,
) -> dict:
    """Make a single-use invitation; the secret is answered once and stored as a hash.

    With `keeper`, it adds one more phone of that member instead of a new person. `by` is who makes it (a keeper, or
    the server's terminal), `on` the phone it is made on.
    """
    if keeper:
        role = people.role_in(db, room, keeper)
    secret, invite = new_secret(), uuid7(now_ms)
    expires_at = utc(now_ms + round(hours * 3_600_000))
    db.execute(
        "INSERT INTO invites (id, room, role, keeper, secret_hash, made_by, made_at, expires_at, made_on)"
        " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        [invite, room, role, keeper, digest(secret), by, utc(now_ms), expires_at, on],
    )
    return {"id": invite, "secret": secret, "role": role, "keeper": keeper, "expires_at": expires_at}


def open_invites(db: sqlite3.Connection, room: str, now_ms: int) -> list[dict]:
    """Invitations that can still be used, without their secrets."""
    rows = db.execute(
        "SELECT id, role, keeper, made_by, made_at, expires_at FROM invites"
        " WHERE room = ? AND used_at IS NULL AND withdrawn_at IS NULL AND expires_at > ? ORDER BY made_at, id",
        [room, utc(now_ms)],
    )
    return [dict(row) for row in rows]


def withdraw_invite(db: sqlite3.Connection, room: str, invite: str, now_ms: int) -> None:
    """Withdraw an invitation; NotFound if the room has none of that id."""
    done = db.execute(
        "UPDATE invites SET withdrawn_at = coalesce(withdrawn_at, ?) WHERE id = ? AND room = ?",
        [utc(now_ms), invite, room],
    )
    if not done.rowcount:
        raise NotFound("There is no such invitation")


def withdraw_start_invites(db: sqlite3.Connection, room: str, keeper: str | None, now_ms: int) -> None:
    """Withdraw the links for the same purpose that earlier starts of the server printed."""
    db.execute(
        "UPDATE invites SET withdrawn_at = ? WHERE room = ? AND keeper IS ? AND made_by = ?"
        " AND used_at IS NULL AND withdrawn_at IS NULL",
        [utc(now_ms), room, keeper, people.SERVER],
    )


def invite_of(db: sqlite3.Connection, secret: str) -> dict:
    """The invitation with this secret, open or not; NotFound if there never was one."""
    row = db.execute("SELECT * FROM invites WHERE secret_hash = ?", [digest(secret)]).fetchone()
    if not row:
        raise NotFound("There is no such invitation: check that the whole link was opened")
    return dict(row)


def open_invite(db: sqlite3.Connection, secret: str, now_ms: int) -> dict:
    """The invitation with this secret; NotFound if there never was one, InviteSpent if it is no longer open."""
    invite = invite_of(db, secret)
    if not _is_open(invite, now_ms):
        raise InviteSpent()
    return invite


def _is_open(invite: dict, now_ms: int) -> bool:
    return not (invite["used_at"] or invite["withdrawn_at"] or invite["expires_at"] <= utc(now_ms))


def use_invite(db: sqlite3.Connection, invite: dict, device: str, now_ms: int) -> None:
    """Mark the invitation as used; InviteSpent if it is no longer open."""
    if not _is_open(invite, now_ms):
        raise InviteSpent()
    db.execute("UPDATE invites SET used_at = ?, used_by = ? WHERE id = ?", [utc(now_ms), device, invite["id"]])


def join(
    db: sqlite3.Connection,
    secret: str,
    held: dict | None,
    keeper_name: str | None,
    device_name: str,
    key: str | None,
    now_ms: int,
) -> dict:
    """Join a room; the protocol's answer without `epoch`. The same phone gets the same answer if it asks again."""
    invite = invite_of(db, secret)
    again = _same_join(db, invite, held, key)
    if again:
        return again
    if held is None and invite["keeper"] is None and not keeper_name:
        raise Invalid([{"field": "keeper_name", "message": messages()["missing"], "allowed": "your name"}])
    role = _role_given(db, invite, held)
    made = None
    if held is None:
        made = key or new_key()
        people.free_key(db, made)
        keeper = invite["keeper"] or people.add_keeper(db, keeper_name, now_ms)
        device = people.add_device(db, keeper, device_name, made, now_ms)
    else:
        keeper, device = held["keeper"], held["id"]
    use_invite(db, invite, device, now_ms)
    people.add_member(db, invite["room"], keeper, role, now_ms)
    return _joined(db, invite["room"], keeper, device, made)


def _role_given(db: sqlite3.Connection, invite: dict, held: dict | None) -> str:
    """The role that the link gives at this moment; InviteSpent if it gives none any more.

    - A link for a member's own phone gives the member's role of now, and never reopens an ended membership.
    - Any other link gives its role while its maker still may: an owner of the room, or the server's terminal.
    - It leaves a member's role as it is (only the terminal's may raise it: that is how a lost owner comes back),
      and does not reopen a membership that ended after the link was made.
    """
    room, terminal = invite["room"], invite["made_by"] == people.SERVER
    keeper = invite["keeper"] or (held["keeper"] if held else None)
    standing = people.membership(db, room, keeper) if keeper else None
    if held and people.is_out(db, room, held["id"]):
        raise InviteSpent("An owner of the room revoked this phone for it: use another phone")
    if invite["keeper"]:
        if not standing or standing["ended_at"] or (held and held["keeper"] != invite["keeper"]):
            raise InviteSpent()
        return standing["role"]
    maker = people.membership(db, room, invite["made_by"])
    if not terminal and (not maker or maker["ended_at"] or maker["role"] != "owner"):
        raise InviteSpent()
    if not standing:
        return invite["role"]
    if standing["ended_at"]:
        if standing["ended_at"] > invite["made_at"]:
            raise InviteSpent()
        return invite["role"]
    return min(invite["role"], standing["role"], key=people.ROLES.index) if terminal else standing["role"]


def _same_join(db: sqlite3.Connection, invite: dict, held: dict | None, key: str | None) -> dict | None:
    """The answer to a join that has already happened, if the same phone asks again."""
    used = db.execute("SELECT * FROM devices WHERE id = ?", [invite["used_by"]]).fetchone()
    if not used or used["revoked_at"]:
        return None
    if held and held["id"] == used["id"]:
        return _joined(db, invite["room"], used["keeper"], used["id"], None)
    if key and digest(key) == used["key_hash"]:
        return _joined(db, invite["room"], used["keeper"], used["id"], key)
    return None


def _joined(db: sqlite3.Connection, room: str, keeper: str, device: str, key: str | None) -> dict:
    name = db.execute("SELECT name FROM keepers WHERE id = ?", [keeper]).fetchone()["name"]
    return {
        **({"key": key} if key else {}),
        "device": device,
        "keeper": {"id": keeper, "name": name},
        "room": {"id": room, "name": people.room_name(db, room)},
        "role": people.role_in(db, room, keeper),
    }
