"""Keepers, their devices, their rooms and the invitations: everything about who may come in."""

import sqlite3

from limnary.errors import InviteSpent, KeyRefused, LastOwner, MembershipEnded, NotAllowed, NotFound
from limnary.ids import digest, new_secret, utc, uuid7

ROLES = ("owner", "keeper", "helper", "viewer")
SEEN_EVERY_MS = 60_000
# Who made the links that the terminal printed.
SERVER = "server"


def device_of_key(people: sqlite3.Connection, key: str) -> dict:
    """The device that holds `key`, with its keeper's name; KeyRefused if unknown or revoked."""
    row = people.execute(
        "SELECT devices.*, keepers.name AS keeper_name FROM devices JOIN keepers ON keepers.id = devices.keeper"
        " WHERE key_hash = ?",
        [digest(key)],
    ).fetchone()
    if not row:
        raise KeyRefused()
    if row["revoked_at"]:
        raise KeyRefused(revoked=True)
    return dict(row)


def saw(people: sqlite3.Connection, device: str, now_ms: int) -> None:
    """Note that a device was here."""
    people.execute("UPDATE devices SET last_seen = ? WHERE id = ?", [utc(now_ms), device])


def role_in(people: sqlite3.Connection, room: str, keeper: str) -> str:
    """The keeper's role; MembershipEnded if it has ended, NotFound for a room one was never in."""
    row = people.execute("SELECT * FROM memberships WHERE room = ? AND keeper = ?", [room, keeper]).fetchone()
    if not row:
        raise NotFound("There is no such room, or you were never in it")
    if row["ended_at"]:
        raise MembershipEnded()
    return row["role"]


def owner_only(people: sqlite3.Connection, room: str, keeper: str) -> None:
    """NotAllowed unless the keeper is an owner of the room."""
    if role_in(people, room, keeper) != "owner":
        raise NotAllowed("Only an owner of the room may do that")


def rooms_of(people: sqlite3.Connection, keeper: str) -> list[dict]:
    """The rooms a keeper is in: id, name, role."""
    rows = people.execute(
        "SELECT rooms.id, rooms.name, memberships.role FROM memberships JOIN rooms ON rooms.id = memberships.room"
        " WHERE keeper = ? AND ended_at IS NULL ORDER BY rooms.name, rooms.id",
        [keeper],
    )
    return [dict(row) for row in rows]


def room_name(people: sqlite3.Connection, room: str) -> str:
    """The name of a room; NotFound if there is none."""
    row = people.execute("SELECT name FROM rooms WHERE id = ?", [room]).fetchone()
    if not row:
        raise NotFound("There is no such room")
    return row["name"]


def add_room(people: sqlite3.Connection, room: str, name: str, now_ms: int) -> None:
    """Enter a room; nobody is in it yet."""
    people.execute("INSERT INTO rooms (id, name, made_at) VALUES (?, ?, ?)", [room, name, utc(now_ms)])


def add_keeper(people: sqlite3.Connection, name: str, now_ms: int) -> str:
    """A new keeper's id."""
    keeper = uuid7(now_ms)
    people.execute("INSERT INTO keepers (id, name, made_at) VALUES (?, ?, ?)", [keeper, name, utc(now_ms)])
    return keeper


def add_device(people: sqlite3.Connection, keeper: str, name: str, key: str, now_ms: int) -> str:
    """A new device's id; only the hash of its key is kept."""
    device, now = uuid7(now_ms), utc(now_ms)
    people.execute(
        "INSERT INTO devices (id, keeper, name, key_hash, made_at, last_seen) VALUES (?, ?, ?, ?, ?, ?)",
        [device, keeper, name, digest(key), now, now],
    )
    return device


def add_member(people: sqlite3.Connection, room: str, keeper: str, role: str, now_ms: int) -> str:
    """Let a keeper in, or in again; a member keeps the higher of the two roles. Answers the role."""
    row = people.execute("SELECT * FROM memberships WHERE room = ? AND keeper = ?", [room, keeper]).fetchone()
    if row and not row["ended_at"]:
        role = min(role, row["role"], key=ROLES.index)
    people.execute(
        "INSERT INTO memberships (room, keeper, role, since) VALUES (?, ?, ?, ?)"
        " ON CONFLICT (room, keeper) DO UPDATE SET role = excluded.role, ended_at = NULL, ended_by = NULL",
        [room, keeper, role, utc(now_ms)],
    )
    return role


def set_role(people: sqlite3.Connection, room: str, keeper: str, role: str) -> None:
    """Change a member's role; LastOwner if the room would have no owner left."""
    if role_in(people, room, keeper) == "owner" and role != "owner":
        _another_owner(people, room, keeper)
    people.execute("UPDATE memberships SET role = ? WHERE room = ? AND keeper = ?", [role, room, keeper])


def end_member(people: sqlite3.Connection, room: str, keeper: str, by: str, now_ms: int) -> None:
    """End a membership; its records stay. LastOwner if the room would have no owner left."""
    if role_in(people, room, keeper) == "owner":
        _another_owner(people, room, keeper)
    people.execute(
        "UPDATE memberships SET ended_at = ?, ended_by = ? WHERE room = ? AND keeper = ?",
        [utc(now_ms), by, room, keeper],
    )


def _another_owner(people: sqlite3.Connection, room: str, keeper: str) -> None:
    others = people.execute(
        "SELECT 1 FROM memberships WHERE room = ? AND keeper != ? AND role = 'owner' AND ended_at IS NULL",
        [room, keeper],
    ).fetchone()
    if not others:
        raise LastOwner()


def people_in(people: sqlite3.Connection, room: str) -> list[dict]:
    """The members of a room, each with the phones that are not revoked."""
    members = people.execute(
        "SELECT keepers.id, keepers.name, memberships.role FROM memberships"
        " JOIN keepers ON keepers.id = memberships.keeper"
        " WHERE room = ? AND ended_at IS NULL ORDER BY keepers.name, keepers.id",
        [room],
    ).fetchall()
    return [{**dict(member), "devices": _devices(people, member["id"])} for member in members]


def _devices(people: sqlite3.Connection, keeper: str) -> list[dict]:
    rows = people.execute(
        "SELECT id, name, last_seen FROM devices WHERE keeper = ? AND revoked_at IS NULL ORDER BY made_at, id", [keeper]
    )
    return [dict(row) for row in rows]


def names_in(people: sqlite3.Connection, room: str) -> dict[str, str]:
    """The names of all who are or were in the room, by id."""
    rows = people.execute(
        "SELECT keepers.id, keepers.name FROM memberships JOIN keepers ON keepers.id = memberships.keeper"
        " WHERE room = ?",
        [room],
    )
    return {row["id"]: row["name"] for row in rows}


def revoke_device(people: sqlite3.Connection, device: str, by: str, now_ms: int) -> None:
    """Revoke a device: one's own, or one of a keeper in a room that `by` owns."""
    row = people.execute("SELECT keeper FROM devices WHERE id = ?", [device]).fetchone()
    shared = (
        row
        and people.execute(
            "SELECT mine.role FROM memberships AS theirs JOIN memberships AS mine ON mine.room = theirs.room"
            " WHERE theirs.keeper = ? AND theirs.ended_at IS NULL AND mine.keeper = ? AND mine.ended_at IS NULL",
            [row["keeper"], by],
        ).fetchall()
    )
    if not row or not (shared or row["keeper"] == by):
        raise NotFound("There is no such phone in your rooms")
    if row["keeper"] != by and all(both["role"] != "owner" for both in shared):
        raise NotAllowed("Only an owner of the room may revoke another keeper's phone")
    force_revoke(people, device, by, now_ms)


def force_revoke(people: sqlite3.Connection, device: str, by: str, now_ms: int) -> None:
    """Revoke without asking who; a second time changes nothing."""
    people.execute(
        "UPDATE devices SET revoked_at = ?, revoked_by = ? WHERE id = ? AND revoked_at IS NULL",
        [utc(now_ms), by, device],
    )


def add_invite(
    people: sqlite3.Connection, room: str, role: str, hours: float, by: str, now_ms: int, keeper: str | None = None
) -> dict:
    """A single-use invitation; the secret is answered once and stored hashed.

    With `keeper`, it adds one more phone of that member instead of a new person.
    """
    if keeper:
        role = role_in(people, room, keeper)
    secret, invite = new_secret(), uuid7(now_ms)
    expires_at = utc(now_ms + round(hours * 3_600_000))
    people.execute(
        "INSERT INTO invites (id, room, role, keeper, secret_hash, made_by, made_at, expires_at)"
        " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        [invite, room, role, keeper, digest(secret), by, utc(now_ms), expires_at],
    )
    return {"id": invite, "secret": secret, "role": role, "keeper": keeper, "expires_at": expires_at}


def open_invites(people: sqlite3.Connection, room: str, now_ms: int) -> list[dict]:
    """Invitations that still open a door, without their secrets."""
    rows = people.execute(
        "SELECT id, role, keeper, made_by, made_at, expires_at FROM invites"
        " WHERE room = ? AND used_at IS NULL AND withdrawn_at IS NULL AND expires_at > ? ORDER BY made_at, id",
        [room, utc(now_ms)],
    )
    return [dict(row) for row in rows]


def withdraw_invite(people: sqlite3.Connection, room: str, invite: str, now_ms: int) -> None:
    """Close an invitation; NotFound if the room has none of that id."""
    done = people.execute(
        "UPDATE invites SET withdrawn_at = coalesce(withdrawn_at, ?) WHERE id = ? AND room = ?",
        [utc(now_ms), invite, room],
    )
    if not done.rowcount:
        raise NotFound("There is no such invitation")


def withdraw_start_invites(people: sqlite3.Connection, room: str, keeper: str | None, now_ms: int) -> None:
    """Close the links of the same use that earlier starts of the server printed."""
    people.execute(
        "UPDATE invites SET withdrawn_at = ? WHERE room = ? AND keeper IS ? AND made_by = ?"
        " AND used_at IS NULL AND withdrawn_at IS NULL",
        [utc(now_ms), room, keeper, SERVER],
    )


def invite_of(people: sqlite3.Connection, secret: str) -> dict:
    """The invitation with this secret, whatever became of it; NotFound if there never was one."""
    row = people.execute("SELECT * FROM invites WHERE secret_hash = ?", [digest(secret)]).fetchone()
    if not row:
        raise NotFound("There is no such invitation: check that the whole link was opened")
    return dict(row)


def use_invite(people: sqlite3.Connection, invite: dict, device: str, now_ms: int) -> None:
    """Use it up; InviteSpent if it is no longer open."""
    if invite["used_at"] or invite["withdrawn_at"] or invite["expires_at"] <= utc(now_ms):
        raise InviteSpent()
    people.execute("UPDATE invites SET used_at = ?, used_by = ? WHERE id = ?", [utc(now_ms), device, invite["id"]])
