"""`limnary labels`: a page of labels for all tanks of a room, to print."""

import argparse
from pathlib import Path

from limnary import links
from limnary.commands.data import opened, room_of
from limnary.errors import BadRequest
from limnary.labels import label_page
from limnary.store import people


def labels(arguments: argparse.Namespace) -> int:
    """Write the page; its links start with the origin at which the server was last reached."""
    target = Path(arguments.file)
    if target.suffix.lower() not in (".html", ".htm"):
        raise BadRequest("Name the file with .html: the labels are a page that a browser prints")
    with opened(arguments) as store:
        room = room_of(store, arguments.room)
        with store.files.reading(store.files.people) as db:
            name = people.room_name(db, room)
        tanks = [tank for tank in store.records_of(room, "tank") if not tank.get("resting")]
        tanks.sort(key=lambda tank: (tank.get("walk_order", 1e9), tank["name"]))
        origin = links.origin(store.files.folder, arguments.origin)
    target.write_text(label_page(name, tanks, origin), encoding="utf-8")
    print(f"{len(tanks)} label(s) in {target}, leading to {origin}. Open it in a browser and print.")
    return 0
