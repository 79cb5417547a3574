"""Whoever is out stays out: no link or key made before an ending, a demotion or a revocation opens a door later."""

import pytest
from limnary.store import people


@pytest.fixture
def second(fish_room):
    """A second owner, whom the first may put out."""
    return fish_room.phone("owner", "Bo")


def invite(phone, role="keeper", **more):
    answer = phone.call("POST", "/rooms/{room}/invites", {"role": role, "hours": 720, **more})
    assert answer.status_code == 201, answer.text
    return answer.json["link"].split("#")[1]


def joins(room, secret, key=None):
    """Try a link: as a fresh phone, or with a key that is held already."""
    stranger = room.app.test_client()
    headers = {"Authorization": f"Bearer {key}"} if key else {}
    body = {"secret": secret, "keeper_name": "Again", "device_name": "x"}
    return stranger.post("/api/v1/join", json=body, headers=headers)


def demote(room, phone):
    return room.owner.call("PATCH", f"/rooms/{{room}}/people/{phone.keeper}", {"role": "viewer"})


def end(room, phone):
    return room.owner.call("DELETE", f"/rooms/{{room}}/people/{phone.keeper}")


def revoke(room, phone):
    return room.owner.call("DELETE", f"/devices/{phone.device}")


PUT_OUT = [demote, end, revoke]


@pytest.mark.parametrize("put_out", PUT_OUT)
@pytest.mark.parametrize("own_phone", [True, False])
@pytest.mark.parametrize("held_key", [True, False])
def test_a_link_made_before_opens_nothing_after(fish_room, second, put_out, own_phone, held_key):
    secret = invite(second, "owner", **({"keeper": second.keeper} if own_phone else {}))
    assert put_out(fish_room, second).status_code in (200, 204)
    answer = joins(fish_room, secret, second.key if held_key else None)
    assert answer.status_code in (401, 410), answer.text
    with fish_room.store.files.reading(fish_room.store.files.people) as db:
        members = {one["name"]: one["role"] for one in people.people_in(db, fish_room.id)}
    assert members.get("Bo") == {demote: "viewer", end: None, revoke: "owner"}[put_out]
    assert "Again" not in members


@pytest.mark.parametrize("put_out", PUT_OUT)
def test_a_calendar_key_made_before_reads_nothing_after(fish_room, second, put_out):
    key = second.call("POST", "/rooms/{room}/calendar").json["key"]
    client = fish_room.app.test_client()
    assert client.get(f"/api/v1/calendar.ics?key={key}").status_code == 200
    put_out(fish_room, second)
    assert client.get(f"/api/v1/calendar.ics?key={key}").status_code == 404


def test_an_own_link_made_by_another_owner_is_closed_too(fish_room, second):
    secret = invite(fish_room.owner, keeper=second.keeper)
    end(fish_room, second)
    assert joins(fish_room, secret).status_code == 410


def test_an_own_link_gives_the_role_of_now(fish_room):
    kim = fish_room.phone("helper", "Kim")
    secret = fish_room.secret("helper", kim.keeper)
    with fish_room.store.files.writing(fish_room.store.files.people) as db:
        people.set_role(db, fish_room.id, kim.keeper, "viewer")
    assert joins(fish_room, secret).json["role"] == "viewer"


def test_a_link_does_not_raise_its_holder(fish_room):
    kim = fish_room.phone("viewer", "Kim")
    assert joins(fish_room, invite(fish_room.owner, "keeper"), kim.key).json["role"] == "viewer"


def test_the_terminal_link_raises_a_lost_owner(fish_room):
    kim = fish_room.phone("viewer", "Kim")
    assert joins(fish_room, fish_room.secret("owner"), kim.key).json["role"] == "owner"


def test_an_older_link_does_not_reopen_a_membership_but_a_new_one_does(fish_room):
    kim = fish_room.phone("keeper", "Kim")
    before = invite(fish_room.owner)
    fish_room.at += 1000
    end(fish_room, kim)
    assert joins(fish_room, before, kim.key).status_code == 410
    fish_room.at += 1000
    assert joins(fish_room, invite(fish_room.owner, "helper"), kim.key).json["role"] == "helper"


def test_links_of_another_phone_of_the_same_keeper_stay_open(fish_room, second):
    """Revoking one stolen phone closes what was made on it, not what its keeper made elsewhere."""
    other = fish_room.app.test_client()
    key = joins(fish_room, invite(second, keeper=second.keeper)).json["key"]
    made = other.post(
        f"/api/v1/rooms/{fish_room.id}/invites",
        json={"role": "keeper", "hours": 1},
        headers={"Authorization": f"Bearer {key}"},
    )
    revoke(fish_room, second)
    assert joins(fish_room, made.json["link"].split("#")[1]).status_code == 201


def test_an_owner_of_one_room_cannot_lock_a_keeper_out_of_another(fish_room):
    kim = fish_room.phone("owner", "Kim")
    stranger = fish_room.stranger()
    room = stranger.call("GET", "/me").json["rooms"][0]["id"]
    link = stranger.call("POST", f"/rooms/{room}/invites", {"role": "viewer", "hours": 1}).json["link"]
    assert joins(fish_room, link.split("#")[1], kim.key).status_code == 201
    assert stranger.call("DELETE", f"/devices/{kim.device}").status_code == 204
    me = kim.call("GET", "/me")
    assert [one["id"] for one in me.json["rooms"]] == [fish_room.id]
    assert kim.call("GET", f"/rooms/{room}/people").status_code == 410
    assert kim.call("GET", "/rooms/{room}/people").status_code == 200
    # Its own phone stays in sight of the other room's owner only.
    seen = stranger.call("GET", f"/rooms/{room}/people").json["people"]
    assert [one["devices"] for one in seen if one["id"] == kim.keeper] == [[]]


def test_a_phone_put_out_of_a_room_does_not_come_back_by_a_link(fish_room):
    kim = fish_room.phone("owner", "Kim")
    stranger = fish_room.stranger()
    room = stranger.call("GET", "/me").json["rooms"][0]["id"]

    def link():
        made = stranger.call("POST", f"/rooms/{room}/invites", {"role": "viewer", "hours": 1})
        return made.json["link"].split("#")[1]

    joins(fish_room, link(), kim.key)
    stranger.call("DELETE", f"/devices/{kim.device}")
    assert joins(fish_room, link(), kim.key).status_code == 410


@pytest.mark.parametrize(("revoked", "status"), [(False, 409), (True, 401)])
def test_a_key_that_a_phone_has_is_not_given_again(fish_room, revoked, status):
    body = {"keeper_name": "Kim", "device_name": "x", "device_key": "k" * 43}
    client = fish_room.app.test_client()
    first = client.post("/api/v1/join", json={"secret": fish_room.secret("keeper"), **body})
    assert first.status_code == 201, first.text
    if revoked:
        fish_room.owner.call("DELETE", f"/devices/{first.json['device']}")
    again = client.post("/api/v1/join", json={"secret": fish_room.secret("keeper"), **body})
    assert again.status_code == status, again.text
