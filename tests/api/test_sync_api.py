"""Push and pull by the protocol: each op once, last writer wins by field, tombstones, paging, epochs."""

import gzip
import json
import random

from fish_rooms import FishRoom
from limnary.protocol.stamps import AHEAD_MS, parts, stamp_of
from limnary.store.change_log import Author, push


def test_a_reading_reaches_the_other_phone_once(fish_room):
    one, two = fish_room.owner, fish_room.phone("keeper", "Kim")
    tank = one.tank()
    reading = one.reading(tank["id"], 0.5)
    first = one.results(tank, reading)
    assert [result["status"] for result in first] == ["ok", "ok"]
    assert one.results(tank, reading) == first, "a second send must give the first answer"
    rows = two.rows()
    assert rows[reading["id"]]["fields"]["value"] == 0.5
    assert rows[reading["id"]]["made_by"] == one.keeper
    assert two.pull().json["people"] == {one.keeper: "Ada", two.keeper: "Kim"}
    assert len(rows) == 2


def test_last_writer_wins_by_field_whatever_the_order(fish_room):
    phone = fish_room.owner
    tank = phone.tank(name="First", water_l=50)
    middle = phone.op("tank", {"name": "Middle", "water_l": 60}, record=tank["id"])
    last = phone.op("tank", {"name": "Last"}, record=tank["id"])
    phone.results(tank, last, middle)
    assert phone.rows()[tank["id"]]["fields"] == {"name": "Last", "water_l": 60}


def test_steps_that_two_phones_plan_of_one_tank_both_stand(fish_room):
    one, two = fish_room.owner, fish_room.phone("keeper", "Kim")
    tank = one.tank(setup_glass={"state": "done"})
    one.results(tank)
    bed = {"state": "done", "said": {"bed": "plain", "cap": "sand"}}
    stones = {"state": "done", "said": {"stone_kg": 2}}
    later = one.op("tank", {"setup_substrate": bed}, record=tank["id"])
    two.results(two.op("tank", {"setup_hardscape": stones}, record=tank["id"]))
    one.results(later)
    fields = two.rows()[tank["id"]]["fields"]
    assert (fields["setup_substrate"], fields["setup_hardscape"]) == (bed, stones)
    (refused,) = two.results(two.op("tank", {"setup_fill": {"state": "half"}}, record=tank["id"]))
    assert refused["reason"] == "fields"
    assert refused["errors"][0]["allowed"] == "done, skipped"
    (older,) = two.results(two.op("tank", {"setup": {"steps": {"place": "done"}}}, record=tank["id"]))
    assert older["status"] == "ok", "a phone with an older app still shares its plan"


def test_ops_of_one_push_do_what_they_do_one_by_one(fish_room, tmp_path):
    """A push reads and writes its records together; that must not show."""
    rooms = fish_room, FishRoom(tmp_path / "alone")
    for seed in range(4):
        ops = history(fish_room, random.Random(seed))
        together = rooms[0].owner.results(*ops)
        alone = [result for op in ops for result in rooms[1].owner.results(op)]
        assert together == alone
        assert {one["status"] for one in together} == {"ok", "invalid"}
        assert len({one.get("stamp") for one in together}) > 20
    rows = [
        {id: {**row, "made_by": row["made_by"] == room.owner.keeper} for id, row in room.owner.rows().items()}
        for room in rooms
    ]
    for found in rows:
        for row in found.values():
            assert row.pop("changed_by") in {room.owner.keeper for room in rooms}
    assert rows[0] == rows[1]
    rooms[1].close()


def test_a_record_that_begins_is_as_if_it_were_folded_into_a_blank_one(fish_room, tmp_path):
    """A new record's first put takes a short way. One that names moved stamps takes the way of all other ops."""
    phone = fish_room.owner
    puts = [phone.tank(), phone.tank(name='Tänk "2"', place=None), phone.reading("tank-0001")]
    ahead = phone.tank()
    ahead["stamp"] = stamp_of(fish_room.at + 9 * AHEAD_MS, 3, phone.device)
    elsewhere = {stamp_of(7, 1, "x"): stamp_of(6, 1, "x")}
    found = []
    for name, more in (("short", {}), ("long", {"moved": elsewhere})):
        room = FishRoom(tmp_path / name)
        with room.store.files.writing(room.store.files.room(room.id)) as db:
            ops = [{**op, **more} for op in [*puts, ahead]]
            results = push(db, ops, Author("keeper-1", "device-1", "owner"), room.at)
            kept = [[tuple(row) for row in db.execute(f"SELECT * FROM {table}")] for table in ("ops", "records")]
        found.append((results, kept, list(room.owner.rows().values())))
        room.close()
    assert found[0] == found[1]
    assert [one["status"] for one in found[0][0]] == ["ok"] * 4


def test_places_learnt_within_one_push_reach_what_it_has_not_written_yet(fish_room, tmp_path):
    """As after a restore, when a phone names an earlier place of a write that the same push holds."""
    dice, tables = random.Random(1), []
    ops = history(fish_room, dice)
    for at, op in enumerate(ops):
        ms, counter, device = parts(dice.choice(ops[: at + 1])["stamp"])
        op["moved"] = {stamp_of(ms, counter, device): stamp_of(ms - dice.randrange(1, 200_000), counter, device)}
    for name, size in (("together", len(ops)), ("alone", 1)):
        room = FishRoom(tmp_path / name)
        with room.store.files.writing(room.store.files.room(room.id)) as db:
            for at in range(0, len(ops), size):
                push(db, ops[at : at + size], Author("keeper-1", "device-1", "owner"), room.at, trusting=True)
            found = [db.execute(f"SELECT * FROM {table} ORDER BY 1").fetchall() for table in ("ops", "records")]
        tables.append([[tuple(row) for row in rows] for rows in found])
        room.close()
    assert tables[0] == tables[1]
    assert len(tables[0][0]) > 30


def test_who_first_fills_a_record_made_it_whoever_deleted_it_before(fish_room):
    one, two = fish_room.owner, fish_room.phone("keeper", "Kim")
    tank = one.tank()
    two.results(two.op("tank", type="del", record=tank["id"]))
    assert two.rows()[tank["id"]]["made_by"] == two.keeper
    one.results(tank)
    assert two.rows()[tank["id"]]["made_by"] == one.keeper


def history(room, dice):
    """Sixty ops on six records, some sent twice, some refused, some stamped far ahead."""
    phone, names = room.owner, [f"record-{dice.random()}".replace(".", "-") for _ in range(6)]
    ops = []
    for n in range(60):
        record, kind = dice.choice(names), "note" if dice.random() < 0.05 else "tank"
        fields = dice.choice(
            [{"name": f"n{n}", "water_l": 40 + n}, {"place": f"p{n}"}, {}, {"place": None}, {"width": 1}]
        )
        type = dice.choice(["put", "put", "put", "del", "restore"])
        op = phone.op(kind, fields if type == "put" else {}, type, record)
        ahead = dice.choice([0, 0, 0, 2 * AHEAD_MS, 3 * AHEAD_MS])
        op["stamp"] = stamp_of(room.at + ahead - dice.randrange(50), dice.randrange(9), f"p{dice.randrange(3)}")
        ops.append(dice.choice(ops) if ops and dice.random() < 0.1 else op)
    return ops


def test_a_random_history_equals_the_oracle(fish_room):
    phone, dice = fish_room.owner, random.Random(7)
    tank = phone.tank()
    oracle = {name: (tank["stamp"], value) for name, value in tank["fields"].items()}
    ops = []
    for n in range(60):
        fields = {name: dice.choice(["a", "b", "c"]) + str(n) for name in dice.sample(["name", "place", "note"], 2)}
        op = phone.op("tank", fields, record=tank["id"])
        op["stamp"] = stamp_of(fish_room.at - dice.randrange(500), dice.randrange(9), "p" + str(n))
        ops.append(op)
        for name, value in fields.items():
            oracle[name] = max(oracle.get(name, ("", None)), (op["stamp"], value))
    dice.shuffle(ops)
    phone.results(tank, *ops)
    assert phone.rows()[tank["id"]]["fields"] == {name: value for name, (_, value) in oracle.items()}


def test_a_future_stamp_is_taken_at_the_ceiling(fish_room):
    phone = fish_room.owner
    tank = {**phone.tank(), "stamp": stamp_of(fish_room.at + 86_400_000, 0, "fast")}
    edit = {
        **phone.op("tank", {"name": "Edited"}, record=tank["id"]),
        "stamp": stamp_of(fish_room.at + 86_400_000, 1, "fast"),
    }
    first, second = phone.results(tank, edit)
    assert parts(first["stamp"])[0] == fish_room.at + AHEAD_MS
    assert second["stamp"] > first["stamp"]
    assert phone.rows()[tank["id"]]["fields"]["name"] == "Edited"


def test_tombstone_restore_and_a_put_that_does_not_lift_it(fish_room):
    phone = fish_room.owner
    tank = phone.tank()
    gone = phone.op("tank", type="del", record=tank["id"])
    edit = phone.op("tank", {"name": "Edited while gone"}, record=tank["id"])
    phone.results(tank, gone, edit)
    row = phone.rows()[tank["id"]]
    assert row["deleted"] == gone["stamp"] and row["restored"] is None
    assert row["fields"]["name"] == "Edited while gone"
    back = phone.op("tank", type="restore", record=tank["id"])
    phone.results(back)
    row = phone.rows()[tank["id"]]
    assert row["restored"] == back["stamp"] > row["deleted"]


def test_a_tombstone_that_comes_first_holds(fish_room):
    phone = fish_room.owner
    tank = phone.tank()
    gone = phone.op("tank", type="del", record=tank["id"])
    assert [r["status"] for r in phone.results(gone, tank)] == ["ok", "ok"]
    row = phone.rows()[tank["id"]]
    assert row["deleted"] == gone["stamp"]
    assert row["fields"] == tank["fields"]


def test_events_are_insert_only(fish_room):
    phone = fish_room.owner
    reading = phone.reading("tank-one", 0.25)
    again = {**phone.op("reading", reading["fields"], record=reading["id"])}
    changed = phone.op("reading", {"value": 5}, record=reading["id"])
    results = phone.results(reading, again, changed)
    assert [r["status"] for r in results] == ["ok", "ok", "invalid"]
    assert results[2]["reason"] == "insert-only"
    assert phone.rows()[reading["id"]]["fields"] == reading["fields"]
    correction = phone.reading("tank-one", 0.5, supersedes=reading["id"])
    assert phone.results(correction)[0]["status"] == "ok"


def test_bad_ops_do_not_block_the_rest(fish_room):
    phone = fish_room.owner
    good = phone.tank()
    bad = [
        phone.op("tank", {"name": "No litres"}),
        phone.op("tank", {"name": "Text", "water_l": "much"}),
        phone.op("tank", {"name": "N", "water_l": 5, "colour": "blue"}),
        phone.op("unicorn", {"name": "x"}),
        {**phone.tank(), "stamp": "yesterday"},
        {**phone.tank(), "type": "burn"},
        {**phone.tank(), "schema": "1"},
        {**phone.tank(), "id": "?"},
        {**phone.tank(), "extra": 1},
        phone.op("tank", {"name": "x"}, type="del"),
        phone.op("tank", {"name": "Deep", "water_l": 5, "measures": {"a": [[[[[[[[1]]]]]]]]}}),
        phone.op("tank", {"name": "Long", "water_l": 5, "measures": {"a": "x" * 9000}}),
        phone.op("reading", {"tank": good["id"], "at": "yesterday", "parameter": "ph", "value": 7}),
    ]
    results = phone.results(*bad, good)
    assert [r["status"] for r in results] == ["invalid"] * len(bad) + ["ok"]
    for result in results[:-1]:
        assert result["reason"] in ("fields", "envelope")
        assert all(set(error) == {"field", "message", "allowed"} for error in result["errors"]) and result["errors"]
    assert list(phone.rows()) == [good["id"]]


def test_nan_in_an_open_object_never_reaches_the_other_phones(fish_room):
    phone = fish_room.owner
    op = phone.op("tank", {"name": "N", "water_l": 5, "measures": {"length_cm": float("nan")}})
    (result,) = phone.results(op)
    assert (result["status"], result["errors"][0]["field"]) == ("invalid", "measures.length_cm")


def test_another_kind_under_the_same_id_is_refused(fish_room):
    phone = fish_room.owner
    tank = phone.tank()
    note = phone.op("note", {"at": "2026-05-28T07:30:00Z", "text": "x"}, record=tank["id"])
    assert [r.get("reason") for r in phone.results(tank, note)] == [None, "other-kind"]


def test_null_empties_an_optional_field_only(fish_room):
    phone = fish_room.owner
    tank = phone.tank(place="Cellar")
    emptied = phone.op("tank", {"place": None}, record=tank["id"])
    refused = phone.op("tank", {"name": None}, record=tank["id"])
    assert [r["status"] for r in phone.results(tank, emptied, refused)] == ["ok", "ok", "invalid"]
    assert phone.rows()[tank["id"]]["fields"]["place"] is None
    assert phone.rows()[tank["id"]]["fields"]["name"] == "Long low tank"


def test_roles_by_kind(fish_room):
    helper, viewer = fish_room.phone("helper", "Hal"), fish_room.phone("viewer", "Vi")
    tank = fish_room.owner.tank()
    fish_room.owner.results(tank)
    results = helper.results(helper.reading(tank["id"]), helper.tank())
    assert [r["status"] for r in results] == ["ok", "forbidden"]
    assert viewer.results(viewer.reading(tank["id"]))[0]["status"] == "forbidden"
    assert len(viewer.rows()) == 2


def test_a_refused_op_goes_through_once_the_role_allows_it(fish_room):
    phone = fish_room.phone("viewer", "Vi")
    tank = phone.tank()
    assert phone.results(tank)[0]["status"] == "forbidden"
    fish_room.owner.call("PATCH", f"/rooms/{{room}}/people/{phone.keeper}", {"role": "keeper"})
    assert phone.results(tank)[0]["status"] == "ok"


def test_what_was_taken_is_answered_as_then_though_the_role_has_changed(fish_room):
    kim = fish_room.phone("keeper", "Kim")
    tank = kim.tank()
    first = kim.results(tank)
    fish_room.owner.call("PATCH", f"/rooms/{{room}}/people/{kim.keeper}", {"role": "viewer"})
    assert kim.results(tank) == first


def test_paging_never_passes_an_unseen_row(fish_room):
    phone = fish_room.owner
    tanks = [phone.tank() for _ in range(25)]
    phone.results(*tanks)
    first = phone.call("GET", "/rooms/{room}/pull", query_string={"epoch": fish_room.epoch}).json
    assert (first["since"], len(first["rows"])) == (0, 25), "from the first row, where nothing else is asked"
    seen, since = [], 0
    for turn in range(100):
        page = phone.pull(since, 4).json
        seen += page["rows"]
        assert page["since"] == since
        assert page["next"] == (page["rows"][-1]["seq"] if page["rows"] else since)
        since = page["next"]
        if turn < 3:  # a row that changes while we page comes again on a later page
            phone.results(phone.op("tank", {"note": f"turn {turn}"}, record=tanks[turn]["id"]))
        if not page["more"]:
            break
    assert {row["id"] for row in seen} == {tank["id"] for tank in tanks}
    assert [row["seq"] for row in seen] == sorted(row["seq"] for row in seen)
    assert {row["id"] for row in seen if "note" in row["fields"]} == {tank["id"] for tank in tanks[:3]}


PACKED = {"Content-Encoding": "gzip", "Content-Type": "application/json"}


def test_packed_push(fish_room):
    phone = fish_room.owner
    body = gzip.compress(json.dumps({"epoch": fish_room.epoch, "ops": [phone.tank() for _ in range(500)]}).encode())
    answer = phone.call("POST", "/rooms/{room}/push", data=body, headers=PACKED)
    assert answer.status_code == 200
    assert {r["status"] for r in answer.json["results"]} == {"ok"}
    too_many = {"epoch": fish_room.epoch, "ops": [phone.tank() for _ in range(501)]}
    assert phone.call("POST", "/rooms/{room}/push", too_many).json["errors"][0]["field"] == "ops"


def test_every_overwritten_value_is_kept(fish_room):
    phone = fish_room.owner
    tank = phone.tank(name="First")
    phone.results(tank, phone.op("tank", {"name": "Second"}, record=tank["id"]))
    with fish_room.store.files.reading(fish_room.store.files.room(fish_room.id)) as db:
        kept = db.execute("SELECT fields, keeper, device FROM ops WHERE id = ? ORDER BY stamp", [tank["id"]]).fetchall()
    assert [json.loads(row["fields"])["name"] for row in kept] == ["First", "Second"]
    assert {(row["keeper"], row["device"]) for row in kept} == {(phone.keeper, phone.device)}


def test_a_long_pull_says_how_many_there_are_and_may_ask_ahead_for_what_a_round_needs(fish_room):
    phone = fish_room.owner
    tank = phone.tank()
    old, new = (phone.reading(tank["id"], at=at) for at in ("2026-01-02T07:30:00.000Z", "2026-05-27T07:30:00.000Z"))
    animals = {"tank": tank["id"], "at": "2026-01-02T07:30:00.000Z", "change": "arrival", "species": "x", "count": 3}
    stock = phone.op("stock_change", animals)
    assert {one["status"] for one in phone.results(tank, old, stock, new)} == {"ok"}
    page = phone.pull(0, 1).json
    assert (page["total"], page["next"], page["more"]) == (4, 1, True)
    query = {"epoch": fish_room.epoch, "since": page["next"], "ahead_days": 30}
    ahead = phone.call("GET", "/rooms/{room}/pull", query_string=query).json
    assert [row["id"] for row in ahead["rows"]] == [new["id"], stock["id"]]
    assert (ahead["total"], ahead["next"], ahead["more"]) == (4, 1, False)
    assert "total" not in phone.pull(0, 4).json
    refused = phone.call("GET", "/rooms/{room}/pull", query_string={**query, "ahead_days": 61})
    assert refused.status_code == 422
    assert refused.json["errors"][0]["allowed"] == "a whole number from 1 to 60"
