"""An invented fish room: three tanks, two keepers, six weeks up to today. Nothing in it was measured.

Names, animals, dates and figures are invented. The water is simulated, then read through kits with coarse
steps, so that the figures are as consistent as a keeper's would be.
"""

from dataclasses import dataclass

from limnary.demo.diary import diary
from limnary.demo.scenario import KEEPERS, ROOM
from limnary.ids import new_key, uuid7
from limnary.store import Store, change_log, people, photos


@dataclass(frozen=True)
class Filled:
    """The demo room and its keepers, id to name."""

    room: str
    keepers: dict[str, str]


def fill(store: Store) -> Filled:
    """The demo room of this data folder, made now if there is none."""
    return _existing(store) or _make(store)


def _existing(store: Store) -> Filled | None:
    with store.files.reading(store.files.people) as db:
        for room in people.all_rooms(db):
            if room["name"] != ROOM:
                continue
            names = {one["id"]: one["name"] for one in people.people_in(db, room["id"])}
            if set(names.values()) >= set(KEEPERS):
                return Filled(room["id"], {keeper: name for keeper, name in names.items() if name in KEEPERS})
    return None


def _make(store: Store) -> Filled:
    room, now_ms = store.new_room(ROOM)["id"], store.clock()
    entries = diary(now_ms)
    first_ms = entries[0].at_ms
    authors = {}
    with store.files.writing(store.files.people) as db:
        for name, role in KEEPERS.items():
            keeper = people.add_keeper(db, name, first_ms)
            people.add_member(db, room, keeper, role, first_ms)
            # The phone that wrote the records of the six weeks; nobody holds its key.
            device = people.add_device(db, keeper, f"{name.split()[0]}'s old phone", new_key(), first_ms)
            people.force_revoke(db, device, people.SERVER, now_ms)
            authors[name] = change_log.Author(keeper, device, role)
    with store.files.writing(store.files.room(room)) as db:
        for entry in entries:
            author = authors[entry.by]
            (result,) = change_log.push(db, [entry.op(uuid7(entry.at_ms), author.device)], author, entry.at_ms)
            if result["status"] != "ok":
                raise AssertionError(f"the demo breaks its own contract: {entry} {result}")
            if entry.picture:
                photos.put(db, entry.fields["sha256"], entry.picture, author.keeper, entry.at_ms)
    return Filled(room, {author.keeper: name for name, author in authors.items()})
