"""One room as an open archive: a ZIP of `room.jsonl`, `readings.csv` and `photos/`. README.md here describes it."""

import csv
import io
import json
import re
import sqlite3
import zipfile
import zlib
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager
from typing import IO, BinaryIO

from limnary.errors import LimnaryError
from limnary.ids import utc
from limnary.protocol.corrections import is_gone, superseded
from limnary.protocol.records import Refused, check_row, is_id
from limnary.store import photos
from limnary.store.change_log import Author, Log, push
from limnary.store.folding import as_row
from limnary.store.merging import merge_row

FORMAT, VERSION = "limnary-room", 1
LINES, READINGS, PHOTOS = "room.jsonl", "readings.csv", "photos"
COLUMNS = ["at", "tank", "parameter", "value", "unit", "basis", "by", "note", "tank_id", "test", "id"]
MOST_WRONG = 20
# No line that a phone or a server writes is nearly as long.
MOST_LINE_BYTES = 4_000_000
# A ZIP is refused if it holds more files than this, or unpacks to more than its own size and this many bytes. Pictures
# are stored as they are, so what is beyond is text: about 300,000 records. pwa/data/zip.js has the same limits.
MOST_FILES, MOST_MORE_BYTES = 20_000, 128_000_000
PACKINGS = (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED)
# What zipfile raises for a ZIP that is damaged, encrypted, or packed in a way it does not know.
UNREADABLE = (zipfile.BadZipFile, zlib.error, EOFError, KeyError, NotImplementedError, RuntimeError, ValueError)


class ArchiveBroken(LimnaryError):
    """The archive cannot be imported; nothing of it was."""

    status, name, title = 422, "archive", "This is not a whole room archive: nothing of it was taken in"


def write(db: sqlite3.Connection, out: BinaryIO, room: dict, people: dict[str, str], now_ms: int) -> None:
    """Write the room's archive; `db` is one consistent view of its file."""
    rows = [as_row(row) for row in db.execute("SELECT * FROM records ORDER BY seq")]
    head = {"format": FORMAT, "version": VERSION, "room": room, "people": people, "exported_at": utc(now_ms)}
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as pack:
        lines = [json.dumps(line, ensure_ascii=False) for line in [{**head, "rows": len(rows)}, *rows]]
        pack.writestr(LINES, "\n".join(lines) + "\n")
        pack.writestr(READINGS, readings_csv(rows, people))
        for photo in db.execute("SELECT sha256, media_type, bytes FROM photos ORDER BY sha256"):
            name = f"{PHOTOS}/{photo['sha256']}.{photos.ENDINGS[photo['media_type']]}"
            pack.writestr(zipfile.ZipInfo(name), photo["bytes"])  # stored: pictures do not compress further


def readings_csv(rows: list[dict], people: dict[str, str]) -> str:
    """The readings that are neither deleted nor corrected, as CSV (RFC 4180), oldest first."""
    standing = [row for row in rows if row["fields"] and not is_gone(row)]
    tanks = {row["id"]: row["fields"].get("name", "") for row in standing if row["kind"] == "tank"}
    corrected = superseded([row for row in rows if row["kind"] == "reading"])
    out = io.StringIO()
    table = csv.DictWriter(out, COLUMNS)
    table.writeheader()
    readings = [row for row in standing if row["kind"] == "reading" and row["id"] not in corrected]
    for row in sorted(readings, key=lambda row: (row["fields"]["at"], row["id"])):
        fields = row["fields"]
        named = {
            "tank": tanks.get(fields["tank"], ""),
            "by": people.get(row["made_by"], ""),
            "note": fields.get("note"),
        }
        exact = {name: fields.get(name) for name in ("at", "parameter", "value", "basis", "test")}
        words = {name: as_cell(text) for name, text in {**named, "unit": fields.get("unit")}.items()}
        table.writerow({**exact, **words, "tank_id": fields["tank"], "id": row["id"]})
    return out.getvalue()


# Signs that begin a formula, also in their full-width forms, at the start of a cell or after what parts cells or lines.
FORMULA = re.compile(r"(?:^|[;,\t\r\n])[ \t\r\n]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r]")


def as_cell(text: str | None) -> str:
    """The text of a cell. Text that a spreadsheet would run as a formula is quoted; `room.jsonl` has it unchanged."""
    text = text or ""
    return f"'{text}" if FORMULA.search(text) else text


def unquoted(text: str) -> str:
    """The text that `as_cell` made harmless."""
    return text[1:] if text.startswith("'") and FORMULA.search(text[1:]) else text


def read(source: IO[bytes]) -> "Archive":
    """The archive in a ZIP or in a bare `room.jsonl`; ArchiveBroken."""
    if zipfile.is_zipfile(source):
        try:
            pack = zipfile.ZipFile(source)
            _check_files(pack, source.seek(0, io.SEEK_END))
            lines = pack.open(LINES)
        except UNREADABLE as bad:
            raise ArchiveBroken(f"The ZIP holds no whole {LINES} ({bad})") from None
        return Archive(lines, pack)
    source.seek(0)
    return Archive(source, None)


def _check_files(pack: zipfile.ZipFile, size: int) -> None:
    """Refuse a ZIP of `size` bytes that unpacks to too much: zipfile reads no more than each file's stated size."""
    files = pack.infolist()
    if strange := [file.filename for file in files if file.compress_type not in PACKINGS]:
        raise ArchiveBroken(f"{strange[0]} is packed in a way that is not known here")
    if len(files) > MOST_FILES:
        raise ArchiveBroken(f"The ZIP holds {len(files)} files, and no more than {MOST_FILES} are taken in")
    if sum(file.file_size for file in files) > size + MOST_MORE_BYTES:
        most = f"{MOST_MORE_BYTES // 1_000_000} MB beyond its own size"
        raise ArchiveBroken(f"The ZIP unpacks to more than {most}, and no more than that is taken in")


class Archive:
    """An archive that has been read and checked as a whole: `head`, `rows`, `ops`."""

    def __init__(self, lines: IO[bytes], pack: zipfile.ZipFile | None):
        self.pack, self.rows, self.ops = pack, [], []
        wrong: list[str] = []
        objects = _objects(lines, wrong)
        self.head = next(objects, {})
        if self.head.get("format") != FORMAT or self.head.get("version") != VERSION:
            raise ArchiveBroken(f'The first line must say "format": "{FORMAT}", "version": {VERSION}')
        for number, line in enumerate(objects, 2):
            self._take(line, number, wrong)
        for name, kind in (("people", dict), ("room", dict), ("rows", int)):
            if not isinstance(self.head.get(name, kind()), kind):
                raise ArchiveBroken(
                    f"The first line's {name} must be {'an object' if kind is dict else 'a whole number'}"
                )
        if not wrong and len(self.rows) != self.head.get("rows", len(self.rows)):
            wrong.append(f"{self.head['rows']} rows are announced, {len(self.rows)} are here")
        if wrong:
            raise ArchiveBroken("; ".join(wrong[:MOST_WRONG]))
        self.people = {str(k): str(v) for k, v in dict(self.head.get("people") or {}).items()}

    def _take(self, line: dict, number: int, wrong: list[str]) -> None:
        if isinstance(line.get("op"), dict) and is_id(line["op"].get("op")):
            self.ops.append(line)
            return
        try:
            check_row(line)
        except Refused as no:
            faults = "; ".join(f"{error['field']} {error['message']}" for error in no.errors)
            wrong.append(f"line {number}: {faults}")
        else:
            self.rows.append(line)

    def photos(self) -> Iterator[tuple[str, bytes]]:
        """Hash and bytes of each photo; ArchiveBroken."""
        names = self.pack.namelist() if self.pack else []
        for name in names:
            if name.startswith(f"{PHOTOS}/") and not name.endswith("/"):
                yield name.rsplit("/", 1)[-1].split(".")[0], self._read(name)

    def _read(self, name: str) -> bytes:
        try:
            return self.pack.read(name)
        except UNREADABLE as bad:
            raise ArchiveBroken(f"{name} is damaged in the ZIP ({bad})") from None


# One transaction takes so many rows or ops, some tenths of a second: between two of them others get their turn.
BATCH = 400
# Longer than the pause of SQLite's own waiting (100 ms), so that whoever waits for the file gets it.
PAUSE_S = 0.12


def take_in(
    writing: Callable[[], AbstractContextManager[sqlite3.Connection]],
    archive: Archive,
    clock: Callable[[], int],
    pause: Callable[[], None],
) -> dict[str, int]:
    """Merge an archive into a room's file, row by row and field by field, later stamps winning.

    It goes in batches, each a transaction of its own from `writing`, with a `pause` after each: a room in use is never
    held for long. Cut off in between, the same import goes on where it stopped, because nothing counts twice.
    """
    for sha256, data in archive.photos():
        try:
            photos.check(sha256, data)
        except LimnaryError as bad:
            raise ArchiveBroken(f"photo {sha256[:16]}: {bad}") from None
    count = {"rows": len(archive.rows), "changed": 0, "ops": len(archive.ops), "refused": 0, "photos": 0}
    with writing() as db:
        db.executemany(
            "INSERT INTO authors (id, name) VALUES (?, ?) ON CONFLICT (id) DO UPDATE SET name = excluded.name",
            archive.people.items(),
        )
    for rows in _batches(archive.rows):
        with writing() as db:
            log = Log(db, Author("archive", "archive", "owner"), clock(), trusting=True)
            count["changed"] += sum(merge_row(log, row) for row in rows)
            log.save()
        pause()
    for lines in _batches(archive.ops):
        with writing() as db:
            for line in lines:
                author = Author(str(line.get("by") or "unknown"), "archive", "owner")
                (result,) = push(db, [line["op"]], author, clock(), trusting=True)
                count["refused"] += result["status"] != "ok"
        pause()
    for sha256, data in archive.photos():
        with writing() as db:
            count["photos"] += photos.put(db, sha256, data, "archive", clock())
    return count


def _batches(entries: list) -> Iterator[list]:
    for start in range(0, len(entries), BATCH):
        yield entries[start : start + BATCH]


def _objects(lines: IO[bytes], wrong: list[str]) -> Iterator[dict]:
    for number, line in enumerate(_lines(lines), 1):
        if not line.strip():
            continue
        try:
            value = json.loads(line.decode("utf-8"))
            json.dumps(value, ensure_ascii=False).encode("utf-8")  # refuses a lone surrogate, which is not text
        except (ValueError, RecursionError):
            value = None
        if isinstance(value, dict):
            yield value
        else:
            wrong.append(f"line {number} is no JSON object")


def _lines(lines: IO[bytes]) -> Iterator[bytes]:
    """The lines of an archive; ArchiveBroken if one is too long or the ZIP's stream is damaged."""
    try:
        while line := lines.readline(MOST_LINE_BYTES + 1):
            if len(line) > MOST_LINE_BYTES:
                raise ArchiveBroken(f"A line is over {MOST_LINE_BYTES} bytes long")
            yield line
    except (*UNREADABLE, OSError) as bad:
        raise ArchiveBroken(f"The ZIP is damaged ({bad})") from None
