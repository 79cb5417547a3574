"""`limnary invite`, `people`, `revoke`: who may come in, from the server's own terminal."""

import argparse

from limnary import links
from limnary.commands.data import opened, room_of
from limnary.ids import utc
from limnary.store import invites, people, ways_in


def invite(arguments: argparse.Namespace) -> int:
    """Print a single-use link; with --owner it recovers a room whose owner lost every phone."""
    with opened(arguments) as store:
        room = room_of(store, arguments.room)
        role = "owner" if arguments.owner else arguments.role
        with store.files.writing(store.files.people) as db:
            made = invites.add_invite(db, room, role, arguments.hours, people.SERVER, store.clock(), arguments.keeper)
    url = f"{links.origin(store.files.folder, arguments.origin)}/join#{made['secret']}"
    print(f"{made['role']}, opens once, until {made['expires_at']}:\n  {url}")
    print(links.qr_text(url), end="")
    return 0


def people_of(arguments: argparse.Namespace) -> int:
    """List rooms, people and phones."""
    with opened(arguments) as store, store.files.reading(store.files.people) as db:
        for room in people.all_rooms(db):
            print(f"{room['name']}  (room {room['id']})")
            for one in people.people_in(db, room["id"]):
                print(f"  {one['name']}, {one['role']}  (keeper {one['id']})")
                for phone in one["devices"]:
                    print(f"    {phone['name']}, last seen {phone['last_seen']}  (device {phone['id']})")
    return 0


def revoke(arguments: argparse.Namespace) -> int:
    """Revoke one phone's key at once; its records stay."""
    with opened(arguments) as store, store.files.writing(store.files.people) as db:
        row = people.device(db, arguments.device)
        people.force_revoke(db, arguments.device, people.SERVER, store.clock())
        ways_in.close_for_phone(db, arguments.device, None, store.clock())
        print(f"{row['name']} is revoked since {row['revoked_at'] or utc(store.clock())}")
    return 0
