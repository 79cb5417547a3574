"""`limnary import-readings`: readings, changes and meals from a CSV or tab-separated file, shown before written."""

import argparse
from pathlib import Path
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from limnary import notebook
from limnary.commands.data import opened, room_of
from limnary.errors import BadRequest, NotFound
from limnary.protocol.records import kinds
from limnary.store import Store

SHOWN = 50


def import_readings(arguments: argparse.Namespace) -> int:
    """Print what would be written and what is wrong by row; write with --write, take it back with --take-back."""
    try:
        header, rows = notebook.cells(notebook.text_of(Path(arguments.file).read_bytes()))
    except OSError as bad:
        raise NotFound(f"{arguments.file} cannot be read ({bad.strerror})") from None
    with opened(arguments) as store:
        room = room_of(store, arguments.room)
        tanks = store.records_of(room, "tank")
        if own := notebook.own_kind(header):
            return _bring_own(arguments, store, room, own, tanks, header, rows)
        choices, new, still_open = _choices(arguments, header, rows, tanks)
        for name, column in zip(header, choices.columns, strict=True):
            print(f"column {name or '-'}: {column}")
        if still_open:
            raise BadRequest("Still to choose. " + " ".join(still_open))
        litres = {one["id"]: one["water_l"] for one in [*tanks, *new]}
        made, wrong = notebook.read_rows(rows, choices, litres, store.clock(), _zone(arguments.zone))
        below = sum("steps" in one.fields for one in made)
        if below:
            print(f"{below} readings such as “<0.25” are taken as 0 on a kit whose lowest step is 0.25")
        _print_wrong(wrong)
        return _take_back(store, room, new, made) if arguments.take_back else _bring(arguments, store, room, new, made)


def _print_wrong(wrong: list[notebook.Wrong]) -> None:
    for one in wrong[:SHOWN]:
        allowed = f" (allowed: {one.allowed})" if one.allowed else ""
        print(f"row {one.row}: {one.column} “{one.text}”: {notebook.WRONG[one.code]}{allowed}; left out")
    if len(wrong) > SHOWN:
        print(f"... and {len(wrong) - SHOWN} more")


def _bring_own(
    arguments, store: Store, room: str, kind: str, tanks: list[dict], header: list[str], rows: list[list[str]]
) -> int:
    """A table that this app wrote: each keeps its id, so what is here already is not written again."""
    if arguments.take_back:
        raise BadRequest("A table of this app's own may hold records that were here before: nothing is taken back")
    print("This table was written by Limnary: its records keep their ids.")
    here = {one["id"] for one in tanks}
    names = notebook.own_tanks_named(header, rows, here)
    ids, new = _tanks_by_name(arguments, tanks, names)
    if unknown := _unknown_tanks(ids):
        raise BadRequest("Still to choose. " + " ".join(unknown))
    others = {one["id"] for kind in ("test_kit", "source_water") for one in store.records_of(room, kind)}
    wanted = here | {one["id"] for one in new}
    made, wrong = notebook.read_own(kind, header, rows, ids, wanted, store.clock(), here | others)
    _print_wrong(wrong)
    return _bring(arguments, store, room, new, made)


def _tanks_by_name(arguments, tanks: list[dict], names: list[str]) -> tuple[dict[str, str | None], list[dict]]:
    """The id of each tank named, "" for one left out, None for one that nobody knows; and the tanks to be made."""
    make = {name: float(litres) for name, litres in _pairs(arguments.make).items()}
    new = [{"name": name, "water_l": notebook.clean(litres)} for name, litres in make.items()]
    new = [{"id": notebook.id_by_content("tank", one), **one} for one in new]
    by_name = {notebook.plain(one["name"]): one["id"] for one in [*tanks, *new]}
    return {name: by_name.get(notebook.plain(name)) for name in names} | dict.fromkeys(arguments.leave_out, ""), new


def _unknown_tanks(ids: dict[str, str | None]) -> list[str]:
    return [
        f'There is no tank "{name}": --make "{name}=LITRES" or --leave-out "{name}".'
        for name, id in ids.items()
        if id is None
    ]


def _choices(arguments, header, rows, tanks) -> tuple[notebook.Choices, list[dict], list[str]]:
    columns = notebook.recognised(header)
    said = notebook.units_said(header, columns)
    dates = notebook.date_order(notebook.cells_of(rows, columns, "date".__eq__)) or arguments.dates
    decimals = notebook.decimal_sign(notebook.cells_of(rows, columns, notebook.is_figure)) or arguments.decimals
    basis = said["basis"] | _pairs(arguments.basis)
    names = list(dict.fromkeys(notebook.cells_of(rows, columns, "tank".__eq__)))
    ids, new = _tanks_by_name(arguments, tanks, names)
    by_name = {notebook.plain(one["name"]): one["id"] for one in [*tanks, *new]}
    one_tank = by_name.get(notebook.plain(arguments.tank or ""), tanks[0]["id"] if len(tanks) == 1 else "")
    still_open = [
        *([] if "date" in columns else ["No column is recognised as the date."]),
        *([] if any(map(notebook.is_figure, columns)) else ["No column is recognised as a figure."]),
        *([] if dates else ["The dates allow day and month first: --dates dmy or --dates mdy."]),
        *([] if decimals else ["The figures allow comma and point: --decimals comma or --decimals point."]),
        *(
            f"Is {one} read as the ion or as nitrogen: --basis {one}=ion or --basis {one}=n."
            for one in notebook.WITH_BASIS
            if one in columns and one not in basis
        ),
        *_unknown_tanks(ids),
        *([] if names or one_tank else ["Which tank is this: --tank NAME."]),
    ]
    volume, warmth = arguments.volume or said["volume"], arguments.warmth or said["warmth"]
    return notebook.Choices(columns, dates, decimals, basis, volume, warmth, ids, one_tank), new, still_open


def _bring(arguments, store: Store, room: str, new: list[dict], made: list[notebook.Made]) -> int:
    here = _ids_here(store, room)
    wanted = {one["id"]: ("tank", {"name": one["name"], "water_l": one["water_l"]}) for one in new}
    wanted |= {one.id: (one.kind, one.fields) for one in made}
    fresh = {id: one for id, one in wanted.items() if id not in here}
    print(f"{len(wanted)} records: {len(fresh)} new, {len(wanted) - len(fresh)} here already")
    if not arguments.write:
        print("Nothing is written. Write them with --write; take them back later with --take-back.")
        return 0
    store.write(room, [(kind, id, "put", fields) for id, (kind, fields) in fresh.items()])
    print(f"{len(fresh)} records written")
    return 0


def _take_back(store: Store, room: str, new: list[dict], made: list[notebook.Made]) -> int:
    here = _ids_here(store, room)
    gone = {one.id: one.kind for one in made if one.id in here}
    store.write(room, [(kind, id, "del", {}) for id, kind in gone.items()])
    empty = _empty_tanks(store, room, new)
    store.write(room, [("tank", id, "del", {}) for id in empty])
    print(f"{len(gone) + len(empty)} records taken back")
    return 0


def _empty_tanks(store: Store, room: str, new: list[dict]) -> list[str]:
    """Of the tanks that the import made, those that nobody has described since and no record is about."""
    as_made = {one["id"]: one for one in new}
    alike = [one["id"] for one in store.records_of(room, "tank") if _same(as_made.get(one["id"]), one)]
    others = [one for kind in kinds() if kind != "tank" for one in store.records_of(room, kind)]
    values = [value for one in others for value in one.values()]
    used = {one for value in values for one in (value if isinstance(value, list) else [value]) if isinstance(one, str)}
    return [id for id in alike if id not in used]


def _same(made: dict | None, record: dict) -> bool:
    return made is not None and {name: value for name, value in record.items() if name != "changed_at"} == made


def _ids_here(store: Store, room: str) -> set[str]:
    return {
        one["id"] for kind in ("tank", "reading", "water_change", "feeding") for one in store.records_of(room, kind)
    }


def _pairs(given: list[str]) -> dict[str, str]:
    for one in given:
        if "=" not in one:
            raise BadRequest(f'"{one}" must be NAME=VALUE')
    return dict(one.rsplit("=", 1) for one in given)


def _zone(name: str | None) -> ZoneInfo | None:
    try:
        return ZoneInfo(name) if name else None
    except (ZoneInfoNotFoundError, ValueError):
        raise BadRequest(f'There is no time zone "{name}": name one as in Europe/Berlin') from None
