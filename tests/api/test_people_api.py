"""Rooms, people, phones and invitations, which are single-use, expiring, limited, revocable and safe to repeat."""

import sqlite3

import pytest
from fish_rooms import FishRoom, Phone
from limnary.config import BadSetting, Config
from limnary.ids import new_key, utc


def join(phone, **body):
    return phone.call("POST", "/join", {"device_name": "A phone", **body})


def test_an_invitation_opens_once(fish_room):
    made = fish_room.owner.call("POST", "/rooms/{room}/invites", {"role": "helper"}).json
    assert made["link"] == f"http://localhost/join#{made['secret']}"
    assert made["expires_at"] == utc(fish_room.at + 48 * 3_600_000)
    first = join(Phone(fish_room), secret=made["secret"], keeper_name="Kim")
    assert (first.status_code, first.json["role"]) == (201, "helper")
    assert len(first.json["key"]) >= 43
    second = join(Phone(fish_room), secret=made["secret"], keeper_name="Kim")
    assert (second.status_code, second.json["type"]) == (410, "/problems/invite-spent")


def test_an_invitation_ends_in_time_and_when_withdrawn(fish_room):
    owner = fish_room.owner
    made = owner.call("POST", "/rooms/{room}/invites", {"hours": 2}).json
    other = owner.call("POST", "/rooms/{room}/invites", {}).json
    listed = owner.call("GET", "/rooms/{room}/invites").json["invites"]
    assert {one["id"] for one in listed} == {made["id"], other["id"]}
    assert "secret" not in str(listed)
    assert owner.call("DELETE", f"/rooms/{{room}}/invites/{other['id']}").status_code == 204
    assert join(Phone(fish_room), secret=other["secret"], keeper_name="Kim").status_code == 410
    fish_room.at += 2 * 3_600_000
    assert join(Phone(fish_room), secret=made["secret"], keeper_name="Kim").status_code == 410
    assert owner.call("GET", "/rooms/{room}/invites").json["invites"] == []


def test_a_lost_answer_to_join_may_be_asked_for_again(fish_room):
    secret, key = fish_room.secret("keeper"), new_key()
    first = join(Phone(fish_room), secret=secret, keeper_name="Kim", device_key=key)
    again = join(Phone(fish_room), secret=secret, keeper_name="Kim", device_key=key)
    assert (first.status_code, again.status_code) == (201, 201)
    assert again.json == first.json
    assert first.json["key"] == key
    assert join(Phone(fish_room), secret=secret, keeper_name="Eve", device_key=new_key()).status_code == 410
    assert len(fish_room.owner.call("GET", "/rooms/{room}/people").json["people"]) == 2


def test_a_key_already_held_joins_one_more_room_as_the_same_keeper(fish_room):
    stranger = fish_room.stranger()
    secret = fish_room.secret("keeper")
    joined = stranger.join(secret, "ignored")
    assert "key" not in joined
    assert stranger.join(secret, "ignored") == joined, "asked again after a lost answer"
    me = stranger.call("GET", "/me").json
    assert me["keeper"] == {"id": stranger.keeper, "name": "Sam"}
    assert {room["role"] for room in me["rooms"]} == {"owner", "keeper"}
    assert {room["epoch"] for room in me["rooms"]} >= {fish_room.epoch}


def test_one_more_phone_of_the_same_keeper(fish_room):
    kim = fish_room.phone("helper", "Kim")
    made = kim.call("POST", "/rooms/{room}/invites", {"keeper": kim.keeper}).json
    second = join(Phone(fish_room), secret=made["secret"]).json
    assert (second["keeper"], second["role"]) == ({"id": kim.keeper, "name": "Kim"}, "helper")
    assert second["key"] != kim.key
    refused = kim.call("POST", "/rooms/{room}/invites", {"keeper": fish_room.owner.keeper})
    assert refused.status_code == 403


def test_a_new_person_needs_a_name(fish_room):
    secret = fish_room.secret("keeper")
    refused = join(Phone(fish_room), secret=secret)
    assert [error["field"] for error in refused.json["errors"]] == ["keeper_name"]
    assert join(Phone(fish_room), secret=secret, keeper_name="Kim").status_code == 201, "a refusal uses nothing up"


def test_wrong_secrets_are_limited(fish_room):
    good = fish_room.secret("keeper")
    for _ in range(10):
        assert join(Phone(fish_room), secret="wrong-secret", keeper_name="Eve").status_code == 404
    limited = join(Phone(fish_room), secret="wrong-secret", keeper_name="Eve")
    assert (limited.status_code, limited.headers["Retry-After"]) == (429, "600")
    assert join(Phone(fish_room), secret=good, keeper_name="Kim").status_code == 201
    fish_room.at += 600_001
    assert join(Phone(fish_room), secret="wrong-secret", keeper_name="Eve").status_code == 404


def wrong_secret(room, forwarded: str) -> int:
    """The status for a wrong secret that reaches the server with this `X-Forwarded-For`."""
    body = {"secret": "wrong-secret", "keeper_name": "Eve", "device_name": "x"}
    return Phone(room).call("POST", "/join", body, headers={"X-Forwarded-For": forwarded}).status_code


def test_behind_a_proxy_attempts_are_counted_by_caller(tmp_path):
    room = FishRoom(tmp_path, proxies=1)
    # Addresses that the caller writes come before the one that the proxy adds.
    assert [wrong_secret(room, f"198.51.100.{n}, 203.0.113.5") for n in range(11)] == [404] * 10 + [429]
    assert wrong_secret(room, "203.0.113.6") == 404
    room.close()


def test_without_a_proxy_nobody_passes_for_another(fish_room):
    assert [wrong_secret(fish_room, f"203.0.113.{n}") for n in range(11)] == [404] * 10 + [429]


@pytest.mark.parametrize("text", ["one", "-1", "10", "1.5", "²"])
def test_a_number_of_proxies_that_is_none_is_refused_in_words(monkeypatch, text):
    monkeypatch.setenv("LIMNARY_PROXIES", text)
    with pytest.raises(BadSetting, match="whole number from 0 to 9"):
        Config()


def test_a_revoked_phone_is_told_so(fish_room):
    kim, other = fish_room.phone("keeper", "Kim"), fish_room.phone("keeper", "Lou")
    assert other.call("DELETE", f"/devices/{kim.device}").status_code == 403
    assert fish_room.stranger().call("DELETE", f"/devices/{kim.device}").status_code == 404
    assert fish_room.owner.call("DELETE", f"/devices/{kim.device}").status_code == 204
    refused = kim.pull()
    assert (refused.status_code, refused.json["type"]) == (401, "/problems/key-revoked")
    assert kim.push(kim.tank()).status_code == 401
    assert other.call("DELETE", f"/devices/{other.device}").status_code == 204
    assert other.call("GET", "/me").status_code == 401


def test_ended_membership_and_a_second_beginning(fish_room):
    kim = fish_room.phone("keeper", "Kim")
    assert fish_room.owner.call("DELETE", f"/rooms/{{room}}/people/{kim.keeper}").status_code == 204
    for answer in (kim.pull(), kim.push(kim.tank()), kim.call("GET", "/rooms/{room}/people")):
        assert (answer.status_code, answer.json["type"]) == (410, "/problems/membership-ended")
    assert kim.call("GET", "/me").json["rooms"] == []
    kim.join(fish_room.secret("helper"), "ignored")
    assert kim.pull().status_code == 200


def test_leave_and_hand_over(fish_room):
    kim = fish_room.phone("keeper", "Kim")
    owner = fish_room.owner
    assert owner.call("PATCH", f"/rooms/{{room}}/people/{kim.keeper}", {"role": "owner"}).status_code == 200
    assert owner.call("DELETE", f"/rooms/{{room}}/people/{owner.keeper}").status_code == 204
    assert owner.pull().status_code == 410
    assert kim.call("PATCH", "/rooms/{room}", {"name": "Kim's room"}).json["name"] == "Kim's room"
    assert kim.call("GET", "/me").json["rooms"][0]["name"] == "Kim's room"


def test_people_show_their_phones_and_when_they_were_here(fish_room):
    kim = fish_room.phone("keeper", "Kim")
    fish_room.at += 3_600_000
    kim.pull()
    (shown,) = [
        one for one in fish_room.owner.call("GET", "/rooms/{room}/people").json["people"] if one["name"] == "Kim"
    ]
    assert shown["devices"] == [{"id": kim.device, "name": "Kim's phone", "last_seen": utc(fish_room.at)}]


def test_a_member_who_joins_again_keeps_the_higher_role(fish_room):
    fish_room.owner.join(fish_room.secret("viewer"), "ignored")
    assert fish_room.owner.call("GET", "/me").json["rooms"][0]["role"] == "owner"


def test_a_room_of_ones_own(fish_room):
    made = fish_room.owner.call("POST", "/rooms", {"name": "Cellar"})
    assert made.status_code == 201
    assert made.json["role"] == "owner"
    assert made.json["epoch"] != fish_room.epoch


@pytest.mark.parametrize("what", ["key", "secret"])
def test_keys_and_secrets_are_stored_hashed_only(fish_room, what):
    made = fish_room.owner.call("POST", "/rooms/{room}/invites", {}).json
    hidden = {"key": fish_room.owner.key, "secret": made["secret"]}[what]
    fish_room.store.close()
    for path in fish_room.store.files.folder.rglob("*"):
        if path.is_file():
            assert hidden.encode() not in path.read_bytes(), path
    with sqlite3.connect(fish_room.store.files.people) as db:
        assert db.execute("SELECT count(*) FROM devices WHERE length(key_hash) = 64").fetchone()[0] == 1
    db.close()


@pytest.mark.parametrize("path", ["/rooms/{room}/invites", "/rooms/{room}/calendar"])
def test_no_link_starts_with_a_host_that_is_none(fish_room, path):
    owner = fish_room.owner
    refused = owner.call("POST", path, {}, headers={"Host": "a b/@c"})
    assert (refused.status_code, refused.json["type"]) == (400, "/problems/bad-request")
    assert "a name or an address" in refused.json["detail"]
    assert owner.call("GET", "/rooms/{room}/invites").json == {"invites": []}
    assert owner.call("GET", "/rooms/{room}/calendar").json == {"made_at": None}
    assert owner.call("POST", path, {}, headers={"Host": "[::1]:8340"}).json["link"].startswith("http://[::1]:8340/")
