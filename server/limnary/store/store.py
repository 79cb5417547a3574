"""The store as the API sees it: each method is one whole step, committed when it returns."""

import contextlib
import sqlite3
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import IO, BinaryIO

from limnary.errors import BadRequest, Damaged, SchemaUnknown, is_damage
from limnary.ids import new_room_id, utc, uuid7
from limnary.protocol.records import unknown_schema, versions
from limnary.protocol.stamps import stamp_of
from limnary.store import archive, backup, calendar_keys, change_log, invites, merging, people, photos, ways_in
from limnary.store.files import Files
from limnary.store.folding import as_row
from limnary.store.tables import tables

DAY_MS = 24 * 3_600_000


class Store:
    """Rooms and people below one folder. `clock` answers milliseconds since 1970.

    `caller` is the device that makes the request, as `identify` answers it.
    """

    def __init__(self, folder: Path, clock: Callable[[], int]):
        self.files, self.clock = Files(folder), clock

    def prepare(self) -> list[str]:
        """Create and migrate; see Files.prepare. An interrupted restore is finished first.

        Returns a sentence for each room that cannot be served: its file is damaged or missing.
        """
        backup.finish(self.files)
        damaged = {path.stem: path for path in self.files.prepare()}
        with self.files.reading(self.files.people) as db:
            rooms = people.all_rooms(db)
        return [self._lost(room, damaged.get(room["id"])) for room in rooms if self._is_lost(room["id"], damaged)]

    def _is_lost(self, room: str, damaged: dict) -> bool:
        return room in damaged or not self.files.room(room).is_file()

    def _lost(self, room: dict, damaged: Path | None) -> str:
        what = f"its file is damaged ({damaged})" if damaged else f"its file is missing ({self.files.room(room['id'])})"
        return f"The room {room['name']!r} ({room['id']}) is not served: {what}. The phones keep what they hold."

    def close(self) -> None:
        self.files.close()

    def check(self) -> None:
        """Raise if the data cannot be read."""
        with self.files.reading(self.files.people) as db:
            people.all_rooms(db)

    # Access

    def identify(self, key: str) -> dict:
        """The device that holds this key; sets when it was last seen, at most once a minute."""
        with self.files.reading(self.files.people) as db:
            device = people.device_of_key(db, key)
        if utc(self.clock() - people.SEEN_EVERY_MS) > (device["last_seen"] or ""):
            # Nothing depends on this write: a full disk must not stop anyone from reading.
            with contextlib.suppress(sqlite3.OperationalError), self.files.writing(self.files.people) as db:
                people.saw(db, device["id"], self.clock())
        return device

    def role(self, room: str, caller: dict) -> str:
        """The caller's role in the room; NotFound or MembershipEnded."""
        with self.files.reading(self.files.people) as db:
            return people.role_of(db, room, caller)

    def owner_only(self, room: str, caller: dict) -> None:
        """NotAllowed unless the caller is an owner of the room; NotFound or MembershipEnded."""
        with self.files.reading(self.files.people) as db:
            people.owner_only(db, room, caller)

    def rooms_of(self, caller: dict) -> list[dict]:
        """The caller's rooms that can be opened, with role and epoch."""
        with self.files.reading(self.files.people) as db:
            rooms = people.rooms_of(db, caller)
        found = []
        for room in rooms:
            # A room whose file is lost or damaged must not lock its members out of the others.
            with contextlib.suppress(Damaged):
                found.append({**room, "epoch": self.epoch(room["id"])})
        return found

    def epoch(self, room: str) -> str:
        """The room's epoch."""
        with self._room(room) as db:
            return change_log.epoch_of(db)

    # Rooms and people

    def new_room(self, name: str, owner: str | None = None) -> dict:
        """A room, with its first owner if there is one yet."""
        with self.files.alone:
            room = self._new_file()
            self._list_room(room, name, owner)
        return {"id": room, "name": name, "role": "owner", "epoch": self.epoch(room)}

    def _new_file(self) -> str:
        """The id of a new room that is not listed yet; nobody knows it."""
        room = new_room_id()
        self.files.prepare_room(room)
        with self.files.writing(self.files.room(room)) as db:
            change_log.found(db)
        return room

    def _list_room(self, room: str, name: str, owner: str | None) -> None:
        with self.files.writing(self.files.people) as db:
            people.add_room(db, room, name, self.clock())
            if owner:
                people.add_member(db, room, owner, "owner", self.clock())

    def rename_room(self, room: str, caller: dict, name: str) -> None:
        with self.files.writing(self.files.people) as db:
            people.owner_only(db, room, caller)
            people.rename_room(db, room, name)

    def people_in(self, room: str, caller: dict) -> list[dict]:
        with self.files.reading(self.files.people) as db:
            people.role_of(db, room, caller)
            return people.people_in(db, room)

    def set_role(self, room: str, caller: dict, keeper: str, role: str) -> None:
        with self.files.writing(self.files.people) as db:
            people.owner_only(db, room, caller)
            people.set_role(db, room, people.member(db, room, keeper), role)
            ways_in.close_for_member(db, room, keeper, self.clock())

    def end_member(self, room: str, caller: dict, keeper: str) -> None:
        with self.files.writing(self.files.people) as db:
            people.role_of(db, room, caller)
            if keeper != caller["keeper"]:
                people.owner_only(db, room, caller)
                people.member(db, room, keeper)
            people.end_member(db, room, keeper, caller["keeper"], self.clock())
            ways_in.close_for_member(db, room, keeper, self.clock())

    def invite(self, room: str, caller: dict, role: str, hours: float, keeper: str | None = None) -> dict:
        with self.files.writing(self.files.people) as db:
            people.role_of(db, room, caller)
            # Every member may add a phone of their own; only an owner may do the rest.
            if keeper is None or keeper != caller["keeper"]:
                people.owner_only(db, room, caller)
            if keeper is not None and keeper != caller["keeper"]:
                people.member(db, room, keeper)
            return invites.add_invite(db, room, role, hours, caller["keeper"], self.clock(), keeper, caller["id"])

    def open_invite(self, secret: str) -> dict:
        """The open invitation with this secret: id, room, expires_at. NotFound or InviteSpent."""
        with self.files.reading(self.files.people) as db:
            return invites.open_invite(db, secret, self.clock())

    def open_invites(self, room: str, caller: dict) -> list[dict]:
        with self.files.reading(self.files.people) as db:
            people.owner_only(db, room, caller)
            return invites.open_invites(db, room, self.clock())

    def withdraw_invite(self, room: str, caller: dict, invite: str) -> None:
        with self.files.writing(self.files.people) as db:
            people.owner_only(db, room, caller)
            invites.withdraw_invite(db, room, invite, self.clock())

    def revoke_device(self, caller: dict, device: str) -> None:
        with self.files.writing(self.files.people) as db:
            rooms = people.revoke_device(db, device, caller, self.clock())
            ways_in.close_for_phone(db, device, rooms, self.clock())

    def join(self, secret: str, held: dict | None, keeper_name: str | None, device_name: str, key: str | None) -> dict:
        """Join a room by an invitation; `held` is the device if the phone already has a key.

        A phone that lost the answer may ask again: the same `key` (or the same held device) and the
        same secret give the same answer, and the invitation is used once.
        """
        with self.files.alone:
            with self.files.writing(self.files.people) as db:
                joined = invites.join(db, secret, held, keeper_name, device_name, key, self.clock())
            return {**joined, "epoch": self.epoch(joined["room"]["id"])}

    # The tasks as a calendar

    def make_calendar_key(self, room: str, caller: dict) -> dict:
        """Make a key that reads this room's tasks and nothing else; it replaces the caller's previous one."""
        with self.files.writing(self.files.people) as db:
            people.role_of(db, room, caller)
            return calendar_keys.make(db, room, caller, self.clock())

    def calendar_key(self, room: str, caller: dict) -> str | None:
        """When the caller's key was made; None if there is none."""
        with self.files.reading(self.files.people) as db:
            people.role_of(db, room, caller)
            return calendar_keys.held(db, room, caller["keeper"])

    def revoke_calendar_key(self, room: str, caller: dict) -> None:
        with self.files.writing(self.files.people) as db:
            people.role_of(db, room, caller)
            calendar_keys.revoke(db, room, caller["keeper"], self.clock())

    def room_by_calendar_key(self, key: str) -> tuple[str, str]:
        """Id and name of the room whose tasks a calendar key reads; NotFound."""
        with self.files.reading(self.files.people) as db:
            room = calendar_keys.room_of(db, key)
            return room, people.room_name(db, room)

    def version(self, room: str) -> tuple[str, int]:
        """The room's epoch and the seq of its last change: while both stay, so do its records."""
        with self._room(room) as db:
            return change_log.epoch_of(db), change_log.seq_of(db)

    def records_of(self, room: str, kind: str) -> list[dict]:
        """The fields of a kind's records that are not deleted, each with `id`. The caller checks access."""
        with self._room(room) as db:
            return change_log.standing(db, kind)

    # Records

    def push(self, room: str, caller: dict, epoch: str, ops: list[dict]) -> list[dict]:
        """One result per op. The role is checked under the write lock, so it cannot change before the commit."""
        with self.files.alone:
            role = self.role(room, caller)
            kind = unknown_schema(ops)
            if kind:
                oldest, newest = versions()[kind]
                raise SchemaUnknown(kind=kind, oldest=oldest, newest=newest)
            with self._writing_room(room) as db:
                change_log.check_epoch(db, epoch)
                author = change_log.Author(caller["keeper"], caller["id"], role)
                return change_log.push(db, ops, author, self.clock())

    def write(self, room: str, writes: list[tuple[str, str, str, dict]]) -> None:
        """Write records from the terminal, all or none: kind, id, `put` or `del`, fields. BadRequest names a refusal.

        What was deleted before is restored instead of put: the id of an entry is written once.
        """
        now_ms, server = self.clock(), people.SERVER
        with self._writing_room(room) as db:
            known = {one for (one,) in db.execute("SELECT id FROM records")}
            ops = []
            for place, (kind, id, type, fields) in enumerate(writes):
                again = type == "put" and id in known
                what = {"type": "restore", "fields": {}} if again else {"type": type, "fields": fields}
                stamp = stamp_of(now_ms + place // 90_000, place % 90_000, server)
                ops.append({"op": uuid7(now_ms), "kind": kind, "id": id, **what, "stamp": stamp, "schema": 1})
            author = change_log.Author(server, server, "owner")
            for result in change_log.push(db, ops, author, now_ms, trusting=True):
                if result["status"] != "ok":
                    raise BadRequest(f"A record was refused, so none is written: {result}")

    def bring_back(self, room: str, caller: dict, epoch: str, rows: list[dict], people: dict[str, str]) -> list[dict]:
        """One result per row; `people` has the names of authors who are no longer known here."""
        with self.files.alone:
            role = self.role(room, caller)
            with self._writing_room(room) as db:
                change_log.check_epoch(db, epoch)
                author = change_log.Author(caller["keeper"], caller["id"], role)
                results = merging.bring_back(db, rows, author, self.clock())
                back = [one["row"] for one, its in zip(rows, results, strict=True) if its["status"] == "ok"]
                wrote = {row[by] for row in back for by in ("made_by", "changed_by")}
                change_log.add_authors(db, {keeper: name for keeper, name in people.items() if keeper in wrote})
                return results

    def pull(self, room: str, caller: dict, epoch: str, since: int, limit: int, ahead_days: int | None = None) -> dict:
        """A page of rows, with the names of all authors; with `ahead_days`, what the Round needs of the last days."""
        self.role(room, caller)
        with self._room(room) as db:
            change_log.check_epoch(db, epoch)
            if ahead_days is None:
                page = change_log.pull(db, since, limit)
            else:
                page = change_log.pull_ahead(db, since, utc(self.clock() - ahead_days * DAY_MS))
            authors = change_log.authors(db)
        with self.files.reading(self.files.people) as db:
            return {**page, "people": {**authors, **people.names_in(db, room)}}

    # Photos

    def put_photo(self, room: str, caller: dict, sha256: str, data: bytes) -> bool:
        """Store a photo; False if it was stored before."""
        with self.files.alone:
            photos.may_write(self.role(room, caller))
            with self._writing_room(room) as db:
                return photos.put(db, sha256, data, caller["keeper"], self.clock())

    def photo(self, room: str, caller: dict, sha256: str) -> dict:
        """A photo's bytes and media type; NotFound."""
        self.role(room, caller)
        with self._room(room) as db:
            return photos.get(db, sha256)

    # The whole room

    def export(self, room: str, caller: dict, out: BinaryIO) -> str:
        """Write the room's archive; return the room's name. Every member may: every member sees all records."""
        self.role(room, caller)
        return self.export_room(room, out)

    def export_room(self, room: str, out: BinaryIO) -> str:
        """The same without an access check: for the command line."""
        with self.files.reading(self.files.people) as db:
            name, names = people.room_name(db, room), people.names_in(db, room)
        with self._room(room) as db:
            names = {**change_log.authors(db), **names}
            archive.write(db, out, {"id": room, "name": name}, names, self.clock())
        return name

    def tables(self, room: str) -> dict[str, str]:
        """The room's records as CSV by file name, one a kind; the caller checks access."""
        with self.files.reading(self.files.people) as db:
            names = people.names_in(db, room)
        with self._room(room) as db:
            rows = [as_row(row) for row in db.execute("SELECT * FROM records ORDER BY seq")]
            return tables(rows, {**change_log.authors(db), **names})

    def import_room(self, source: IO[bytes], into: str | None = None) -> tuple[str, dict[str, int]]:
        """Import an archive as a new room, or merge it into one; return the room's id and what was imported.

        A new room is listed only once all of it is there. A room in use is merged in batches, and others get their turn
        in between.
        """
        found = archive.read(source)
        if into is not None:
            return into, archive.take_in(
                lambda: self._writing_room(into), found, self.clock, lambda: time.sleep(archive.PAUSE_S)
            )
        named = found.head.get("room")
        name = named.get("name") if isinstance(named, dict) else None
        room = self._new_file()
        try:
            count = archive.take_in(lambda: self._writing_room(room), found, self.clock, lambda: None)
        except BaseException:
            self.files.remove_room(room)
            raise
        self._list_room(room, str(name or "Imported room")[:60], None)
        return room, count

    @contextlib.contextmanager
    def _room(self, room: str) -> Iterator[sqlite3.Connection]:
        with self._whole(room), self.files.reading(self.files.room(room)) as db:
            yield db

    @contextlib.contextmanager
    def _writing_room(self, room: str) -> Iterator[sqlite3.Connection]:
        with self._whole(room), self.files.writing(self.files.room(room)) as db:
            yield db

    @contextlib.contextmanager
    def _whole(self, room: str) -> Iterator[None]:
        """Damaged if the room's file is missing, empty, or found damaged."""
        path = self.files.room(room)
        if not path.is_file() or path.stat().st_size == 0:
            raise Damaged("This room's file is missing")
        try:
            yield
        except sqlite3.DatabaseError as bad:
            if not is_damage(bad):
                raise
            raise Damaged("This room's file is damaged") from bad
