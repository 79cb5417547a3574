"""After a restore: rows that phones still hold come back, and a clamped write keeps its earlier place."""

import hashlib

import pytest
from fish_rooms import START_MS, WRITES
from limnary.store import backup

DAY = 86_400_000


class Restorable:
    """A room with three phones and a backup taken before anything was written."""

    def __init__(self, fish_room, tmp_path):
        self.house, self.file = fish_room, tmp_path / "before.zip"
        self.ben, self.cleo, self.dot = (fish_room.phone("keeper", name) for name in ("Ben", "Cleo", "Dot"))
        backup.back_up(fish_room.store.files, self.file, fish_room.at)

    def restore(self):
        self.house.store.close()
        self.house.at += 60_000
        backup.restore(self.house.store.files, self.file, self.house.at)
        self.house.epoch = self.house.store.epoch(self.house.id)

    def back(self, phone, *rows, people=None, epoch=None):
        body = {"epoch": epoch or self.house.epoch, "rows": [{"ref": row["id"], "row": row} for row in rows]}
        return phone.call("POST", "/rooms/{room}/bring-back", {**body, "people": people or {}})

    def results(self, phone, *rows, **more):
        answer = self.back(phone, *rows, **more)
        assert answer.status_code == 200, answer.text
        return answer.json["results"]

    def dump(self):
        with self.house.store.files.reading(self.house.store.files.room(self.house.id)) as db:
            tables = ("records", "ops", "authors")
            return [tuple(row) for name in tables for row in db.execute(f"SELECT * FROM {name}")]


@pytest.fixture
def room(fish_room, tmp_path):
    return Restorable(fish_room, tmp_path)


def future(room, op: dict, ms: int = 5 * DAY) -> dict:
    """The op as written by a phone whose clock is days ahead."""
    return {**op, "stamp": f"{room.house.at + ms:013d}-00000-{op['stamp'][20:]}"}


def test_a_row_comes_back_by_another_phone_with_its_author_stamps_and_tombstone(room):
    tank, gone = room.ben.tank(name="Reed bank"), room.ben.reading("tank-0001")
    room.ben.results(tank, gone, room.ben.op("reading", type="del", record=gone["id"]))
    rows = room.cleo.rows()
    room.restore()
    assert room.cleo.rows() == {}
    assert [one["status"] for one in room.results(room.cleo, *rows.values())] == ["ok", "ok"]
    back = room.dot.rows()
    for record, was in rows.items():
        brought = {"brought_by": room.cleo.keeper, "brought_at": back[record]["brought_at"], "seq": back[record]["seq"]}
        assert back[record] == {**was, **brought}
    assert back[tank["id"]]["made_by"] == room.ben.keeper
    assert back[gone["id"]]["deleted"]


def test_twice_is_once_also_beside_the_authors_own_sending(room):
    tank = room.ben.tank()
    room.ben.results(tank, room.ben.op("tank", {"name": "Renamed"}, record=tank["id"]))
    rows = room.cleo.rows()
    room.restore()
    room.results(room.cleo, *rows.values())
    before = room.dump()
    room.results(room.cleo, *rows.values())
    room.results(room.dot, *rows.values())
    assert room.dump() == before
    room.ben.results(tank)
    assert room.dot.rows()[tank["id"]]["fields"]["name"] == "Renamed"


def test_what_stands_there_as_newer_stays(room):
    tank = room.ben.tank(name="Old", place="shelf")
    room.ben.results(tank)
    rows = room.cleo.rows()
    room.restore()
    room.ben.results(tank, room.ben.op("tank", {"name": "New"}, record=tank["id"]))
    room.results(room.cleo, *rows.values())
    assert room.dot.rows()[tank["id"]]["fields"] == {**tank["fields"], "name": "New"}
    assert "brought_by" not in room.dot.rows()[tank["id"]]


def test_a_brought_tombstone_and_a_later_undo_are_settled_by_their_stamps(room):
    note = room.ben.reading("tank-0001")
    room.ben.results(note)
    standing = room.cleo.rows()
    room.ben.results(room.ben.op("reading", type="del", record=note["id"]))
    removed = room.dot.rows()
    room.restore()
    room.results(room.cleo, *standing.values())
    room.results(room.dot, *removed.values())
    assert room.ben.rows()[note["id"]]["deleted"] == removed[note["id"]]["deleted"]
    room.results(room.cleo, *standing.values())
    assert room.ben.rows()[note["id"]]["deleted"] == removed[note["id"]]["deleted"]


@pytest.mark.parametrize(("role", "kind", "status"), WRITES)
def test_each_role_brings_back_its_kinds_only(room, role, kind, status):
    op = room.ben.tank() if kind == "tank" else room.ben.reading("tank-0001")
    room.ben.results(op)
    (row,) = room.cleo.rows().values()
    room.restore()
    phone = room.house.phone(role, "Eve")
    (result,) = room.results(phone, row)
    assert result["status"] == status
    assert (op["id"] in room.dot.rows()) == (status == "ok")


def test_nobody_rewrites_a_reading_by_bringing_another_back(room):
    reading = room.ben.reading("tank-0001", 0.25)
    room.ben.results(reading)
    (row,) = room.cleo.rows().values()
    forged = {
        **row,
        "fields": {**row["fields"], "value": 4},
        "stamps": dict.fromkeys(row["stamps"], "9" * 13 + "-00000-x"),
    }
    (result,) = room.results(room.cleo, forged)
    assert (result["status"], result["reason"]) == ("invalid", "insert-only")
    assert room.dot.rows()[reading["id"]]["fields"]["value"] == 0.25


BAD = {
    "unknown kind": {"kind": "unicorn"},
    "bad id": {"id": "/etc"},
    "no stamp": {"stamps": {"name": "soon"}},
    "fields without stamps": {"stamps": {}},
    "a value out of range": {"fields": {"name": "x", "water_l": -1}},
    "an author that is no text": {"made_by": 7},
    "a stamp moved forward": {"moved": {"1767225600000-00000-a": "1767225600001-00000-a"}},
    "a stamp moved to another phone": {"moved": {"1767225600001-00000-a": "1767225600000-00000-b"}},
}


@pytest.mark.parametrize("change", BAD.values(), ids=BAD)
def test_a_row_that_is_none_is_refused_and_blocks_no_other(room, change):
    room.ben.results(room.ben.tank(name="x", water_l=5), room.ben.tank(name="Whole"))
    first, second = room.cleo.rows().values()
    first = {**first, "fields": {n: first["fields"][n] for n in ("name", "water_l")}}
    first["stamps"] = {n: first["stamps"][n] for n in ("name", "water_l")}
    room.restore()
    body = {"epoch": room.house.epoch, "rows": [{"ref": "a", "row": {**first, **change}}, {"ref": "b", "row": second}]}
    answer = room.cleo.call("POST", "/rooms/{room}/bring-back", body)
    bad, good = answer.json["results"]
    assert (bad["ref"], bad["status"], good["ref"], good["status"]) == ("a", "invalid", "b", "ok")
    assert bad["errors"]
    assert list(room.dot.rows()) == [second["id"]]


def test_another_kind_under_the_same_id_is_refused(room):
    tank = room.ben.tank()
    room.ben.results(tank)
    (row,) = room.cleo.rows().values()
    room.restore()
    room.ben.results({**room.ben.reading("tank-0001"), "id": tank["id"]})
    (result,) = room.results(room.cleo, row)
    assert (result["status"], result["reason"]) == ("invalid", "other-kind")


def test_an_older_epoch_and_too_many_rows(room):
    room.restore()
    assert room.back(room.cleo, epoch="of-before").status_code == 409
    body = {"epoch": room.house.epoch, "rows": [{"ref": "x", "row": {}}] * 501}
    assert room.cleo.call("POST", "/rooms/{room}/bring-back", body).status_code == 422


def test_names_of_those_who_are_not_known_here_any_more_come_back_and_none_is_renamed(room):
    late = room.house.phone("keeper", "Late")
    late.results(late.tank())
    page = room.cleo.pull().json
    room.restore()
    room.results(room.cleo, *page["rows"], people={**page["people"], room.ben.keeper: "Not Ben"})
    people = room.dot.pull().json["people"]
    assert (people[late.keeper], people[room.ben.keeper]) == ("Late", "Ben")


def test_two_rows_under_one_ref_and_a_name_that_is_none(room):
    room.ben.results(room.ben.tank())
    (row,) = room.cleo.rows().values()
    room.restore()
    body = {"epoch": room.house.epoch, "rows": [{"ref": "a", "row": row}, {"ref": "a", "row": {}}]}
    answer = room.cleo.call("POST", "/rooms/{room}/bring-back", {**body, "people": {"someone-1": {}, "x": "y"}})
    assert [one["status"] for one in answer.json["results"]] == ["ok", "invalid"]


def test_a_claimed_time_lies_never_after_now(room):
    room.ben.results(room.ben.tank())
    (row,) = room.cleo.rows().values()
    room.restore()
    room.results(room.cleo, {**row, "made_at": "2999-01-01T00:00:00.000Z", "changed_at": "2999-01-01T00:00:00.000Z"})
    (back,) = room.dot.rows().values()
    assert back["made_at"] == back["changed_at"] == back["brought_at"]


def test_stamps_of_a_server_whose_clock_ran_ahead_are_moved_back_once_and_in_their_order(room):
    reading = room.ben.reading("tank-0001")
    room.house.at += 3 * DAY
    room.ben.results(
        reading, *(future(room, room.ben.op("reading", type=type, record=reading["id"]), 30_000) for type in ("del",))
    )
    room.house.at += 1000
    room.ben.results(future(room, room.ben.op("reading", type="restore", record=reading["id"]), 30_000))
    (row,) = room.cleo.rows().values()
    room.house.at = START_MS
    room.restore()
    room.results(room.cleo, row)
    (back,) = room.dot.rows().values()
    ceiling = f"{room.house.at + 60_000:013d}"
    assert back["deleted"] < back["restored"]
    assert max(back["deleted"], back["restored"])[:13] <= ceiling
    before = room.dump()
    room.results(room.dot, row)
    assert room.dump() == before


def moved_and_edited(room):
    """Ben writes with a clock days ahead; Cleo sees the write at its clamped place and edits it."""
    tank = room.ben.tank(name="First")
    ahead = future(room, room.ben.op("tank", {"name": "Ahead"}, record=tank["id"]))
    (_, taken) = room.ben.results(tank, ahead)
    assert taken["stamp"] < ahead["stamp"]
    seen = room.cleo.rows()[tank["id"]]
    assert seen["moved"] == {ahead["stamp"]: taken["stamp"]}
    ms = int(taken["stamp"][:13])
    edit = room.cleo.op("tank", {"name": "Cleo's"}, record=tank["id"])
    edit |= {"stamp": f"{ms:013d}-00009-{room.cleo.device}", "moved": seen["moved"]}
    return tank, ahead, seen, edit, taken["stamp"]


@pytest.mark.parametrize("first", ["the write", "the edit", "the row"])
def test_an_edit_beats_what_its_author_had_seen_though_the_server_forgot_where_that_stood(room, first):
    tank, ahead, _, edit, taken = moved_and_edited(room)
    room.cleo.results(edit)
    row = room.dot.rows()[tank["id"]]
    room.restore()
    steps = {
        "the write": lambda: room.ben.results(tank, ahead),
        # Another phone's row carries Cleo's edit.
        "the edit": lambda: room.results(room.dot, row),
        "the row": lambda: room.cleo.results(tank, edit),
    }
    for step in [steps.pop(first), *steps.values()]:
        step()
        room.house.at += 1000
    back = room.dot.rows()[tank["id"]]
    assert back["fields"]["name"] == "Cleo's"
    assert back["moved"][ahead["stamp"]] == taken
    (again,) = room.ben.results(ahead)
    assert again["stamp"] == taken, "its author learns the earlier place too"


@pytest.mark.parametrize("alone", ["edit", "row"])
def test_the_edit_alone_and_the_row_alone_know_enough(room, alone):
    tank, ahead, _, edit, taken = moved_and_edited(room)
    room.cleo.results(edit)
    row = room.dot.rows()[tank["id"]]
    room.restore()
    room.ben.results(tank, ahead)
    assert room.dot.rows()[tank["id"]]["fields"]["name"] == "Ahead"
    if alone == "edit":
        room.cleo.results(edit)
    else:
        room.results(room.dot, row)
    back = room.dot.rows()[tank["id"]]
    assert (back["fields"]["name"], back["moved"][ahead["stamp"]]) == ("Cleo's", taken)


def test_what_lost_against_the_later_place_wins_against_the_earlier_one(room):
    tank, ahead, seen, _, taken = moved_and_edited(room)
    room.restore()
    between = room.dot.op("tank", {"name": "Between"}, record=tank["id"])
    between["stamp"] = f"{int(taken[:13]):013d}-00500-{room.dot.device}"
    room.dot.results(tank, between)
    room.ben.results(ahead)
    assert room.dot.rows()[tank["id"]]["fields"]["name"] == "Ahead"
    room.results(room.cleo, seen)
    assert room.dot.rows()[tank["id"]]["fields"]["name"] == "Between"


def test_a_write_that_is_no_more_in_the_future_when_it_comes_again(room):
    tank, ahead, _, edit, taken = moved_and_edited(room)
    room.cleo.results(edit)
    room.restore()
    room.house.at += 6 * DAY
    (_, again) = room.ben.results(tank, ahead)
    assert again["stamp"] == ahead["stamp"], "by now it is taken as it is"
    # A phone that saw the write only at this later place does not know the earlier one, so its edit can lose.
    late = room.dot.rows()[tank["id"]]
    room.restore()
    room.results(room.dot, late)
    room.cleo.results(tank, edit)
    back = room.dot.rows()[tank["id"]]
    assert (back["fields"]["name"], back["stamps"]["name"]) == ("Cleo's", edit["stamp"])
    assert back["moved"][ahead["stamp"]] == taken


def test_two_restores_give_one_write_two_places_and_the_earlier_one_counts(room):
    tank, ahead, seen, edit, taken = moved_and_edited(room)
    room.restore()
    room.ben.results(tank, ahead)
    later = room.dot.rows()[tank["id"]]
    assert later["moved"][ahead["stamp"]] > taken
    room.restore()
    room.results(room.dot, later)
    room.results(room.cleo, seen)
    room.results(room.dot, later)
    back = room.ben.rows()[tank["id"]]
    assert (back["stamps"]["name"], back["moved"][ahead["stamp"]]) == (taken, taken)
    room.cleo.results(edit)
    assert room.ben.rows()[tank["id"]]["fields"]["name"] == "Cleo's"


def test_who_brought_a_row_back_and_what_it_said_is_logged(room):
    room.ben.results(room.ben.tank(name="Logged"))
    (row,) = room.cleo.rows().values()
    room.restore()
    room.results(room.cleo, row)
    room.cleo.results(room.cleo.op("tank", {"name": "Later"}, record=row["id"]))
    with room.house.store.files.reading(room.house.store.files.room(room.house.id)) as db:
        first = db.execute("SELECT * FROM ops WHERE id = ? ORDER BY rowid", [row["id"]]).fetchone()
    assert (first["type"], first["keeper"], first["device"]) == ("row", room.cleo.keeper, room.cleo.device)
    assert "Logged" in first["fields"]


def test_a_photos_bytes_come_back_by_any_writer_who_holds_them(room):
    png = b"\x89PNG\r\n\x1a\n" + b"again"
    sha256 = hashlib.sha256(png).hexdigest()
    room.ben.call("PUT", f"/rooms/{{room}}/blobs/{sha256}", data=png)
    room.restore()
    assert room.cleo.call("GET", f"/rooms/{{room}}/blobs/{sha256}").status_code == 404
    assert room.cleo.call("PUT", f"/rooms/{{room}}/blobs/{sha256}", data=png).status_code == 201
