"""Records and archives that a hostile or broken client writes: refused, or borne by every reader."""

import io
import json
import zipfile

import pytest
from limnary.protocol.moved import MOST_MOVED
from limnary.store import archive, change_log


def put(phone, kind, fields, **more):
    return phone.op(kind, fields) | more


def push(phone, *ops):
    return [one["status"] for one in phone.push(*ops).json["results"]]


def calendar(phone):
    key = phone.call("POST", "/rooms/{room}/calendar").json["key"]
    return phone.client.get(f"/api/v1/calendar.ics?key={key}")


@pytest.mark.parametrize("kind", ["tank", "task", "task_done"])
def test_a_restore_of_nothing_leaves_the_calendar_and_the_labels_whole(fish_room, kind):
    phone = fish_room.owner
    op = phone.op("tank", {}) | {"type": "restore", "kind": kind, "fields": {}}
    assert push(phone, op) == ["ok"]
    assert calendar(phone).status_code == 200
    assert fish_room.store.records_of(fish_room.id, kind) == []


@pytest.mark.parametrize("time", ["0", "yesterday", "2026-13-45T00:00:00.000Z", "2026-05-04", "2026-05-04T07:30:00"])
@pytest.mark.parametrize("name", ["made_at", "changed_at"])
def test_a_row_with_a_time_that_is_none_is_refused(fish_room, name, time):
    row = {**a_row(fish_room), name: time}
    answer = fish_room.owner.call(
        "POST", "/rooms/{room}/bring-back", {"epoch": fish_room.epoch, "rows": [{"ref": "a", "row": row}], "people": {}}
    )
    (result,) = answer.json["results"]
    assert result["status"] == "invalid"
    assert [error["field"] for error in result["errors"]] == [name]


def a_row(room):
    stamp = "1767225600000-00000-phone"
    fields = {"title": "Feed", "starts_at": "2026-05-04T07:30:00.000Z", "zone": "Europe/Berlin"}
    who = {"made_by": "ada", "made_at": "2026-05-04T07:30:00.000Z", "changed_by": "ada"}
    stamps = {"stamps": dict.fromkeys(fields, stamp), "deleted": None, "restored": None}
    return {"id": "task-0001", "kind": "task", "fields": fields, **stamps, **who, "changed_at": who["made_at"]}


ODD = {"length_cm": "x", "shape": {}, "panes": [1]}
ODD_PLAN = {"state": "done", "said": {"list": None}}


def test_what_was_stored_before_its_fields_were_typed_is_still_served(fish_room):
    """And the tank can be corrected: an edit names only the fields that change."""
    phone = fish_room.owner
    tank = phone.tank(measures={"length_cm": 45}, setup_plants={"state": "done"})
    assert push(phone, tank) == ["ok"]
    with fish_room.store.files.writing(fish_room.store.files.room(fish_room.id)) as db:
        odd = json.dumps({**tank["fields"], "measures": ODD, "setup_plants": ODD_PLAN})
        db.execute("UPDATE records SET fields = ?", [odd])
    fields = phone.rows()[tank["id"]]["fields"]
    assert (fields["measures"], fields["setup_plants"]) == (ODD, ODD_PLAN)
    assert phone.call("GET", "/rooms/{room}/export").status_code == 200
    assert calendar(phone).status_code == 200
    assert push(phone, phone.op("tank", {"name": "Renamed"}, record=tank["id"])) == ["ok"]
    assert phone.rows()[tank["id"]]["fields"]["measures"] == ODD
    mended = {"measures": {"shape": "cuboid", "length_cm": 45}, "setup_plants": None}
    assert push(phone, phone.op("tank", mended, record=tank["id"])) == ["ok"]
    assert phone.rows()[tank["id"]]["fields"]["measures"] == mended["measures"]


def test_an_edit_names_only_so_many_moved_stamps(fish_room):
    phone = fish_room.owner
    moved = {f"{1767225600000 + n}-00000-p": f"{1767225500000 + n}-00000-p" for n in range(MOST_MOVED + 1)}
    op = phone.tank() | {"moved": moved}
    assert push(phone, op) == ["invalid"]
    moved.popitem()
    assert push(phone, phone.tank() | {"moved": moved}) == ["ok"]


def forgotten_since(room, top_ms):
    """As after a restore from a backup whose latest stamp is `top_ms`."""
    with room.store.files.writing(room.store.files.room(room.id)) as db:
        db.execute("UPDATE meta SET value = ? WHERE key = 'top_ms'", [str(top_ms)])
        room.epoch = change_log.renew_epoch(db, room.at, 0)


def test_the_place_of_others_writes_is_not_moved(fish_room):
    """Moved to an earlier place, the owner's name would lose against one of yesterday."""
    owner, kim = fish_room.owner, fish_room.phone("keeper", "Kim")
    tank = owner.tank(name="Mine")
    push(owner, tank)
    for forgotten in (False, True):
        if forgotten:
            forgotten_since(fish_room, fish_room.at - 3_600_000)
        yesterday = f"{fish_room.at - 86_400_000 + forgotten:013d}-00000-{kim.device}"
        moved = {tank["stamp"]: f"0000000000001-00000-{owner.device}"}
        edit = kim.op("tank", {"name": "Stolen"}, record=tank["id"]) | {"stamp": yesterday, "moved": moved}
        assert push(kim, edit) == ["ok"]
        (row,) = owner.rows().values()
        assert (row["fields"]["name"], row["stamps"]["name"]) == ("Mine", tank["stamp"])
        assert "moved" not in row


def test_a_clamp_that_a_restored_server_forgot_is_believed(fish_room):
    owner, kim = fish_room.owner, fish_room.phone("keeper", "Kim")
    tank = owner.tank(name="First")
    ahead = f"{fish_room.at + 86_400_000:013d}-00000-{owner.device}"
    (made,) = owner.results({**tank, "stamp": ahead})
    (row,) = owner.rows().values()
    assert row["moved"] == {ahead: made["stamp"]}
    with fish_room.store.files.writing(fish_room.store.files.room(fish_room.id)) as db:
        for table in ("records", "ops"):
            db.execute(f"DELETE FROM {table}")
    forgotten_since(fish_room, fish_room.at - 3_600_000)
    fish_room.at += 600_000
    edit = kim.op("tank", {"name": "Second"}, record=tank["id"], moved=row["moved"])
    seen = {
        **edit,
        "stamp": f"{int(made['stamp'][:13]) + 1:013d}-00000-{kim.device}",
        "fields": {**tank["fields"], "name": "Second"},
    }
    assert push(kim, seen) == ["ok"]
    # The first write comes once more, as it was written: it keeps the place that its reader saw.
    (again,) = owner.results({**tank, "stamp": ahead})
    assert again["stamp"] == made["stamp"]
    (row,) = owner.rows().values()
    assert row["fields"]["name"] == "Second"


def test_a_known_clamp_does_not_move_further_back(fish_room):
    owner, kim = fish_room.owner, fish_room.phone("keeper", "Kim")
    tank = owner.tank(name="Mine")
    ahead = f"{fish_room.at + 86_400_000:013d}-00000-{owner.device}"
    (made,) = owner.results({**tank, "stamp": ahead})
    edit = kim.op("tank", {"place": "Cellar"}, record=tank["id"], moved={ahead: f"0000000000001-00000-{owner.device}"})
    assert push(kim, edit) == ["ok"]
    (row,) = owner.rows().values()
    assert row["stamps"]["name"] == made["stamp"] == row["moved"][ahead]


def test_a_row_keeps_only_so_many_moved_stamps(fish_room):
    """Many edits together do not grow a row without end: what it holds stays, more is not learnt."""
    phone = fish_room.owner
    first = phone.tank()
    push(phone, first)
    forgotten_since(fish_room, 0)
    for part in range(4):
        base = 1767225600000 + part * MOST_MOVED
        moved = {f"{base + n}-00000-p": f"{base + n - 1}-00000-p" for n in range(MOST_MOVED)}
        edit = phone.op("tank", {"name": f"Part {part}"}) | {"id": first["id"], "moved": moved}
        assert push(phone, edit) == ["ok"]
    (row,) = [one for one in phone.pull().json["rows"] if one["id"] == first["id"]]
    assert len(row["moved"]) <= 2 * MOST_MOVED


ZIPPED = {
    "people as a list": {"people": ["Ada"]},
    "people as text": {"people": "Ada"},
    "a room that is no object": {"room": "Cellar"},
    "a count that is none": {"rows": "many"},
}


def packed(*lines: str | bytes) -> io.BytesIO:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as pack:
        pack.writestr("room.jsonl", b"\n".join(line.encode() if isinstance(line, str) else line for line in lines))
    return out


def head(**more) -> str:
    return json.dumps({"format": "limnary-room", "version": 1, "room": {"id": "x", "name": "Y"}, "people": {}, **more})


@pytest.mark.parametrize("odd", ZIPPED.values(), ids=ZIPPED)
def test_an_odd_head_is_refused_in_words(fish_room, odd):
    with pytest.raises(archive.ArchiveBroken):
        fish_room.store.import_room(packed(head(**odd)))


def test_a_damaged_stream_is_refused_in_words(fish_room):
    noise = "".join(f"{n * 7919 % 104729:x}" for n in range(4000))
    whole = packed(head(), json.dumps({"note": noise})).getvalue()
    for at in range(60, len(whole) - 200, 97):
        broken = bytearray(whole)
        broken[at] ^= 0xFF
        with pytest.raises(archive.ArchiveBroken):
            fish_room.store.import_room(io.BytesIO(bytes(broken)))


def test_a_lone_surrogate_is_refused(fish_room):
    row = a_row(fish_room)
    row["fields"]["title"] = "\ud800"
    with pytest.raises(archive.ArchiveBroken, match="line 2"):
        fish_room.store.import_room(packed(head(rows=1), json.dumps(row)))


def test_a_zip_bomb_is_refused_early(fish_room, monkeypatch):
    monkeypatch.setattr(archive, "MOST_LINE_BYTES", 1_000_000)
    bomb = packed(head(), b'{"a": "' + b"x" * 5_000_000 + b'"}')
    with pytest.raises(archive.ArchiveBroken, match="1000000 bytes"):
        fish_room.store.import_room(bomb)


@pytest.mark.parametrize("text", ["x;=1+1", "\n=1+1", "＝1+1", "+1", "@x", "\t=1"])
def test_no_cell_of_the_readings_runs_as_a_formula(text):
    cell = archive.as_cell(text)
    assert cell.startswith("'")
    assert text in cell


def test_one_lost_room_leaves_the_others(fish_room):
    phone = fish_room.owner
    made = phone.call("POST", "/rooms", {"name": "Second"}).json
    fish_room.store.files.room(made["id"]).unlink()
    answer = phone.call("GET", "/me")
    assert answer.status_code == 200
    assert [room["id"] for room in answer.json["rooms"]] == [fish_room.id]


def test_a_chunked_body_over_the_limit_is_too_large(tmp_path):
    import socket

    from started_server import RealServer

    server = RealServer(tmp_path / "data").start()
    try:
        with socket.create_connection(("127.0.0.1", server.port), timeout=20) as caller:
            caller.sendall(
                b"POST /api/v1/calc/free_ammonia HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n"
                b"Transfer-Encoding: chunked\r\nConnection: close\r\n\r\n"
            )
            piece = b"10000\r\n" + b" " * 0x10000 + b"\r\n"
            try:
                for _ in range(20):
                    caller.sendall(piece)
                caller.sendall(b"0\r\n\r\n")
            except (BrokenPipeError, ConnectionResetError):
                pass
            assert caller.recv(64).startswith(b"HTTP/1.1 413")
    finally:
        server.stop()
