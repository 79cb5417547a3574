"""Links and QR codes for the terminal: how the first phone gets in."""

import io
import os
from dataclasses import dataclass
from pathlib import Path

import segno

from limnary.store import Store, invites, people

FIRST_ROOM = "Fish room"
OWNER_HOURS = 24 * 7


@dataclass(frozen=True)
class Link:
    """One invitation ready to show."""

    whose: str
    url: str


def owner_link(store: Store, origin: str) -> Link | None:
    """A link for the first owner while a room has no owner; makes the first room if there is none."""
    with store.files.reading(store.files.people) as db:
        rooms = people.all_rooms(db)
        ownerless = [room for room in rooms if not _has_owner(db, room["id"])]
    if rooms and not ownerless:
        return None
    room = ownerless[0] if rooms else store.new_room(FIRST_ROOM)
    return Link(f"the owner of {room['name']}", f"{origin}/join#{_server_invite(store, room['id'], 'owner')}")


def keeper_link(store: Store, origin: str, room: str, keeper: str, name: str) -> Link:
    """A link that adds one more phone of someone who is already in the room."""
    return Link(name, f"{origin}/join#{_server_invite(store, room, 'keeper', keeper)}")


def _server_invite(store: Store, room: str, role: str, keeper: str | None = None) -> str:
    with store.files.writing(store.files.people) as db:
        invites.withdraw_start_invites(db, room, keeper, store.clock())
        return invites.add_invite(db, room, role, OWNER_HOURS, people.SERVER, store.clock(), keeper)["secret"]


def _has_owner(db, room: str) -> bool:
    return any(member["role"] == "owner" for member in people.people_in(db, room))


def remember_origin(folder: Path, origin: str) -> None:
    """Store the origin at which the server was last reached, for links that other commands make."""
    (folder / "address").write_text(origin, encoding="utf-8")


def origin(folder: Path, given: str | None = None) -> str:
    """The origin of links: as given, else $LIMNARY_ORIGIN, else as last served, else this computer."""
    last = folder / "address"
    served = last.read_text("utf-8").strip() if last.is_file() else ""
    return (given or os.environ.get("LIMNARY_ORIGIN") or served or "http://localhost:8340").rstrip("/")


def qr_text(url: str) -> str:
    """The QR code of a link in the terminal's characters."""
    out = io.StringIO()
    segno.make(url, error="l").terminal(out=out, compact=True)
    return out.getvalue()
