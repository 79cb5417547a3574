"""`limnary backup`, `restore`, `export`, `import`: the records as files."""

import argparse
import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from limnary import links
from limnary.config import Config
from limnary.errors import BadRequest, NotFound
from limnary.serve import holding
from limnary.store import Store, backup, people


def data_dir(arguments: argparse.Namespace) -> Path:
    """The folder asked for, else the usual one; the demo has its own, apart from a keeper's records."""
    if arguments.data:
        return Path(arguments.data)
    usual = Config().data_dir
    apart = getattr(arguments, "demo", False) and not os.environ.get("LIMNARY_DATA")
    return usual / "demo" if apart else usual


@contextmanager
def opened(arguments: argparse.Namespace, must_exist: bool = True) -> Iterator[Store]:
    """The store of a data folder; a server may be using it at the same time."""
    config = Config(data_dir=data_dir(arguments))
    if must_exist and not (config.data_dir / "people.sqlite").is_file():
        raise NotFound(f"There is no Limnary data in {config.data_dir.resolve()}: name the folder with --data")
    store = Store(config.data_dir, config.clock)
    for sentence in store.prepare():
        print(sentence, file=sys.stderr)
    try:
        yield store
    finally:
        store.close()


def room_of(store: Store, wanted: str | None) -> str:
    """The id of the room named by id or name; without a name, of the only room."""
    with store.files.reading(store.files.people) as db:
        rooms = people.all_rooms(db)
    found = [room["id"] for room in rooms if wanted in (None, room["id"], room["name"])]
    if len(found) == 1:
        return found[0]
    listed = "; ".join(f"{room['name']} ({room['id']})" for room in rooms) or "none yet"
    raise BadRequest(f"Name one room with --room. Rooms: {listed}")


def back_up(arguments: argparse.Namespace) -> int:
    """All rooms and people into one file, while the server runs."""
    with opened(arguments) as store:
        rooms = backup.back_up(store.files, Path(arguments.file), store.clock())
        backup.note_last(store.files.folder, Path(arguments.file))
    print(f"{rooms} room(s) in {arguments.file}. Keep it as private as the data: it holds everything the rooms hold.")
    return 0


def restore(arguments: argparse.Namespace) -> int:
    """Put a backup in place; the server must be stopped."""
    config = Config(data_dir=data_dir(arguments))
    with holding(config.data_dir):
        store = Store(config.data_dir, config.clock)
        backup.finish(store.files)
        rooms, before = backup.restore(store.files, Path(arguments.file), store.clock())
        store.prepare()
        store.close()
    print(f"{rooms} room(s) restored. Each phone pulls anew and sends again what the backup lacks.")
    if before:
        print(f"What was here before lies in {before}")
    return 0


def export(arguments: argparse.Namespace) -> int:
    """One room as an open archive."""
    target = Path(arguments.file)
    part = target.with_name(target.name + ".part")
    with opened(arguments) as store:
        room = room_of(store, arguments.room)
        try:
            with part.open("wb") as out:
                name = store.export_room(room, out)
            part.replace(target)
        finally:
            part.unlink(missing_ok=True)
    print(f"{name} is in {target}")
    return 0


def export_csv(arguments: argparse.Namespace) -> int:
    """One room's records as CSV, one file a kind, into a folder that is new or empty."""
    folder = Path(arguments.folder)
    if folder.is_file() or (folder.is_dir() and any(folder.iterdir())):
        raise BadRequest(f"{folder} must be a folder that is new or empty")
    with opened(arguments) as store:
        files = store.tables(room_of(store, arguments.room))
    folder.mkdir(parents=True, exist_ok=True)
    for name, text in files.items():
        (folder / name).write_text(text, "utf-8", newline="")
    print(f"{len(files)} files are in {folder}")
    return 0


def take_in(arguments: argparse.Namespace) -> int:
    """An archive as a new room, or merged into one."""
    with opened(arguments, must_exist=False) as store:
        into = room_of(store, arguments.room) if arguments.room else None
        try:
            with Path(arguments.file).open("rb") as source:
                room, count = store.import_room(source, into)
        except OSError as bad:
            raise NotFound(f"{arguments.file} cannot be read ({bad.strerror})") from None
        print(f"Room {room}: {count['rows']} records, {count['changed']} new or changed, {count['photos']} photos.")
        if count["ops"]:
            print(f"{count['ops']} writes that had not been shared, {count['refused']} of them refused.")
        link = links.owner_link(store, links.origin(store.files.folder, arguments.origin))
        if link:
            print(f"It has no owner yet. Open this link once, as {link.whose}:\n  {link.url}")
    return 0
