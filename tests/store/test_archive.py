"""A room exported to its open archive and imported again: nothing lost, nothing doubled, all or nothing."""

import csv
import hashlib
import io
import json
import zipfile
from contextlib import suppress

import pytest
from fish_rooms import FishRoom
from hypothesis import given, settings
from hypothesis import strategies as st
from limnary.store import Store, archive, people
from limnary.store.archive import ArchiveBroken
from limnary.store.merging import merge_row

PNG = b"\x89PNG\r\n\x1a\n" + b"a picture" * 50


@pytest.fixture
def lived_in(fish_room):
    """A room with a correction, a tombstone, an edit, a photo and a name like a formula."""
    phone = fish_room.owner
    tank = phone.tank(name="=Long tank", place="Cellar")
    wrong, right = phone.reading(tank["id"], 5), None
    right = phone.reading(tank["id"], 0.5, supersedes=wrong["id"], note="misread")
    gone = phone.reading(tank["id"], 1)
    phone.results(tank, wrong, right, gone)
    phone.results(
        phone.op("reading", type="del", record=gone["id"]), phone.op("tank", {"place": None}, record=tank["id"])
    )
    sha256 = hashlib.sha256(PNG).hexdigest()
    assert phone.call("PUT", f"/rooms/{{room}}/blobs/{sha256}", data=PNG).status_code == 201
    fish_room.kept = right["id"]
    fish_room.photo = sha256
    return fish_room


def export(fish_room) -> bytes:
    answer = fish_room.owner.call("GET", "/rooms/{room}/export")
    assert (answer.status_code, answer.mimetype) == (200, "application/zip")
    assert "attachment" in answer.headers["Content-Disposition"]
    return answer.data


def test_what_the_archive_holds(lived_in):
    with zipfile.ZipFile(io.BytesIO(export(lived_in))) as pack:
        assert sorted(pack.namelist()) == [f"photos/{lived_in.photo}.png", "readings.csv", "room.jsonl"]
        assert pack.read(f"photos/{lived_in.photo}.png") == PNG
        head, *rows = [json.loads(line) for line in pack.read("room.jsonl").decode().splitlines()]
        readings = list(csv.DictReader(io.StringIO(pack.read("readings.csv").decode())))
    assert (head["format"], head["version"], head["rows"]) == ("limnary-room", 1, 4)
    assert head["people"] == {lived_in.owner.keeper: "Ada"}
    assert {row["id"]: row for row in rows} == lived_in.owner.rows()
    assert [row["id"] for row in readings] == [lived_in.kept], "neither the corrected nor the removed one"
    (shown,) = readings
    assert (shown["value"], shown["by"], shown["note"], shown["tank"]) == ("0.5", "Ada", "misread", "'=Long tank")


def test_there_and_back_is_the_same_room(lived_in, tmp_path):
    other = FishRoom(tmp_path / "other")
    room, count = other.store.import_room(io.BytesIO(export(lived_in)))
    assert count == {"rows": 4, "changed": 4, "ops": 0, "refused": 0, "photos": 1}
    with other.store.files.writing(other.store.files.people) as db:
        from limnary.store import people

        people.add_member(db, room, other.owner.keeper, "viewer", other.at)
    other.id, other.epoch = room, other.store.epoch(room)
    before, after = lived_in.owner.rows(), other.owner.rows()
    for row in [*before.values(), *after.values()]:
        row.pop("seq")
    assert after == before
    assert other.owner.pull().json["people"] == {lived_in.owner.keeper: "Ada", other.owner.keeper: "Ada"}
    photo = other.owner.call("GET", f"/rooms/{{room}}/blobs/{lived_in.photo}")
    assert (photo.data, photo.mimetype) == (PNG, "image/png")
    other.close()


def test_taking_the_same_archive_in_twice_changes_nothing(lived_in):
    packed, before = export(lived_in), lived_in.owner.rows()
    _, count = lived_in.store.import_room(io.BytesIO(packed), lived_in.id)
    assert (count["changed"], count["photos"]) == (0, 0)
    assert lived_in.owner.rows() == before


def test_merging_lets_the_later_stamp_win(lived_in):
    packed, phone = export(lived_in), lived_in.owner
    (tank,) = [row for row in phone.rows().values() if row["kind"] == "tank"]
    phone.results(phone.op("tank", {"name": "Renamed since"}, record=tank["id"]))
    lived_in.store.import_room(io.BytesIO(packed), lived_in.id)
    assert phone.rows()[tank["id"]]["fields"]["name"] == "Renamed since"


def test_a_phones_unshared_writes_come_in(lived_in):
    phone = lived_in.owner
    lines = zipfile.ZipFile(io.BytesIO(export(lived_in))).read("room.jsonl").decode()
    waiting = phone.tank(name="Only on the phone")
    line = json.dumps({"op": waiting, "by": phone.keeper})
    _, count = lived_in.store.import_room(io.BytesIO((lines + line).encode()), lived_in.id)
    assert (count["ops"], count["refused"]) == (1, 0)
    assert phone.rows()[waiting["id"]]["made_by"] == phone.keeper


HEAD = {"format": "limnary-room", "version": 1, "room": {"name": "x"}, "people": {}}
STAMP = "1767225600000-00000-phone"
ROW = {
    "id": "tank-0001",
    "kind": "tank",
    "fields": {"name": "x", "water_l": 5},
    "stamps": {"name": STAMP, "water_l": STAMP},
    "deleted": None,
    "restored": None,
    **dict.fromkeys(("made_by", "changed_by"), "someone"),
    **dict.fromkeys(("made_at", "changed_at"), "2026-05-04T07:30:00.000Z"),
}
BROKEN = {
    "empty": ([], "first line"),
    "another format": ([{**HEAD, "format": "other"}], "first line"),
    "a later version": ([{**HEAD, "version": 2}], "first line"),
    "unknown kind": ([HEAD, {**ROW, "kind": "unicorn"}], "line 2: kind must be one of"),
    "bad id": ([HEAD, {**ROW, "id": "/etc"}], "line 2: id"),
    "bad stamp": ([HEAD, {**ROW, "deleted": "yesterday"}], "line 2: stamps must look like"),
    "stamps of other fields": ([HEAD, {**ROW, "stamps": {}}], "line 2: fields and stamps"),
    "a value out of range": ([HEAD, {**ROW, "fields": {"name": "x", "water_l": -5}}], "line 2: water_l"),
    "rows missing": ([{**HEAD, "rows": 2}, ROW], "2 rows are announced, 1"),
    "an op without an id": ([HEAD, {"op": {"kind": "tank", "id": "tank-0001", "type": "del"}}], "line 2: "),
    "no author": ([HEAD, {**ROW, "made_by": None}], "line 2: made_by"),
}


@pytest.mark.parametrize(("lines", "says"), BROKEN.values(), ids=BROKEN)
def test_a_broken_archive_is_refused_whole(fish_room, lines, says):
    text = "\n".join(json.dumps(line) for line in lines)
    with pytest.raises(ArchiveBroken) as no:
        fish_room.store.import_room(io.BytesIO(text.encode()), fish_room.id)
    assert says in str(no.value)
    assert fish_room.owner.rows() == {}


def test_cut_text_and_damaged_photos_are_refused(fish_room):
    for text in (json.dumps(HEAD)[:-5], json.dumps(HEAD) + '\n{"kind": '):
        with pytest.raises(ArchiveBroken):
            fish_room.store.import_room(io.BytesIO(text.encode()))
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w") as pack:
        pack.writestr("room.jsonl", "\n".join(map(json.dumps, [HEAD, ROW])))
        pack.writestr(f"photos/{'0' * 64}.png", PNG)
    with pytest.raises(ArchiveBroken, match="photo"):
        fish_room.store.import_room(packed, fish_room.id)
    assert fish_room.owner.rows() == {}, "rows before the bad photo must not stay"
    no_room = io.BytesIO()
    zipfile.ZipFile(no_room, "w").close()
    with pytest.raises(ArchiveBroken, match=r"room\.jsonl"):
        fish_room.store.import_room(no_room)


def test_a_line_too_long_for_any_record_is_refused(fish_room):
    long = json.dumps(HEAD) + "\n" + " " * archive.MOST_LINE_BYTES + json.dumps(ROW)
    with pytest.raises(ArchiveBroken, match="A line is over 4000000 bytes long"):
        fish_room.store.import_room(io.BytesIO(long.encode()), fish_room.id)


def test_brackets_deeper_than_any_reader_goes_are_refused(fish_room):
    with pytest.raises(ArchiveBroken, match="line 2 is no JSON object"):
        fish_room.store.import_room(io.BytesIO((json.dumps(HEAD) + "\n" + "[" * 100_000).encode()), fish_room.id)


def test_a_zip_that_only_this_server_could_unpack_is_refused():
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_LZMA) as pack:
        pack.writestr("room.jsonl", json.dumps(HEAD))
    with pytest.raises(ArchiveBroken, match="packed in a way that is not known here"):
        archive.read(out)


def packed(lines: list[dict], photo: bytes = PNG) -> bytes:
    """The lines and one photo as a ZIP."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as pack:
        pack.writestr("room.jsonl", "\n".join(map(json.dumps, lines)))
        pack.writestr(f"photos/{hashlib.sha256(photo).hexdigest()}.png", photo)
    return out.getvalue()


def test_a_zip_that_unpacks_to_300_mb_is_refused_before_it_is_unpacked(monkeypatch):
    bomb = io.BytesIO()
    with zipfile.ZipFile(bomb, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as pack, pack.open("room.jsonl", "w") as out:
        for _ in range(300):
            out.write(bytes(1_000_000))
    assert len(bomb.getvalue()) < 300_000
    monkeypatch.setattr(zipfile.ZipFile, "open", lambda *_: pytest.fail("it was unpacked"))
    with pytest.raises(ArchiveBroken, match="128 MB beyond its own size"):
        archive.read(bomb)


def test_a_zip_of_too_many_files_is_refused():
    many = io.BytesIO()
    with zipfile.ZipFile(many, "w") as pack:
        for number in range(archive.MOST_FILES + 1):
            pack.writestr(f"{number}", b"")
    with pytest.raises(ArchiveBroken, match="20001 files, and no more than 20000"):
        archive.read(many)


def test_a_zip_that_says_it_unpacks_to_little_gives_no_more():
    bomb = bytearray(packed([HEAD, {**ROW, "fields": {"name": " " * 1_000_000}}]))
    listed = bomb.index(b"PK\x01\x02")
    bomb[listed + 24 : listed + 28] = (1000).to_bytes(4, "little")
    with pytest.raises(ArchiveBroken, match="The ZIP is damaged"):
        archive.read(io.BytesIO(bytes(bomb)))


WHERE = st.floats(0, 1, exclude_max=True)
CHANGE = st.tuples(st.sampled_from(["set", "flip", "cut", "insert"]), WHERE, st.integers(0, 255))


@given(st.lists(CHANGE, min_size=1, max_size=4))
@settings(max_examples=500, deadline=None, derandomize=True)
def test_a_damaged_zip_is_read_or_refused_and_nothing_else(changes):
    bad = bytearray(packed([HEAD, ROW]))
    for change, share, byte in changes:
        at = int(share * len(bad))
        if change == "set":
            bad[at : at + 1] = [byte]
        elif change == "flip":
            bad[at : at + 1] = [b ^ (1 << byte % 8) for b in bad[at : at + 1]]
        elif change == "cut":
            del bad[at:]
        else:
            bad.insert(at, byte)
    with suppress(ArchiveBroken):
        list(archive.read(io.BytesIO(bytes(bad))).photos())


def many(count: int) -> io.BytesIO:
    rows = [{**ROW, "id": f"tank-{number:04d}"} for number in range(count)]
    return io.BytesIO("\n".join(json.dumps(line) for line in [{**HEAD, "rows": count}, *rows]).encode())


def test_an_import_lets_others_write_in_between(fish_room, monkeypatch):
    """The command runs beside the server, in another process; SQLite lets one of them write at a time."""
    server = Store(fish_room.store.files.folder, lambda: fish_room.at)
    caller = {"keeper": fish_room.owner.keeper, "id": fish_room.owner.device}
    monkeypatch.setattr(archive, "BATCH", 3)
    monkeypatch.setattr("limnary.store.files.WAIT_S", 0.01)
    pushed = []

    def pause(_):
        op = fish_room.owner.tank(name=f"Meanwhile {len(pushed)}")
        pushed.append(server.push(fish_room.id, caller, fish_room.epoch, [op])[0]["status"])

    monkeypatch.setattr("limnary.store.store.time.sleep", pause)
    _, count = fish_room.store.import_room(many(10), fish_room.id)
    assert count["changed"] == 10
    assert pushed == ["ok"] * 4
    server.close()


def test_an_import_that_is_cut_off_goes_on_when_it_is_repeated(fish_room, monkeypatch):
    monkeypatch.setattr(archive, "BATCH", 3)
    monkeypatch.setattr("limnary.store.store.time.sleep", lambda _: 1 / 0)
    with pytest.raises(ZeroDivisionError):
        fish_room.store.import_room(many(10), fish_room.id)
    assert len(fish_room.owner.rows()) == 3
    monkeypatch.undo()
    _, count = fish_room.store.import_room(many(10), fish_room.id)
    assert (count["changed"], len(fish_room.owner.rows())) == (7, 10)


def test_a_new_room_is_listed_only_once_all_of_it_is_there(fish_room, monkeypatch):
    before = fish_room.store.files.rooms()
    merged = []

    def merge_two(log, row):
        merged.append(row)
        if len(merged) == 5:
            raise OSError("the disk is full")
        return merge_row(log, row)

    monkeypatch.setattr(archive, "BATCH", 3)
    monkeypatch.setattr(archive, "merge_row", merge_two)
    with pytest.raises(OSError, match="disk is full"):
        fish_room.store.import_room(many(10))
    assert fish_room.store.files.rooms() == before
    with fish_room.store.files.reading(fish_room.store.files.people) as db:
        assert [room["id"] for room in people.all_rooms(db)] == [fish_room.id]
