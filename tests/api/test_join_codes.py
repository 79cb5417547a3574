"""Short codes: typed instead of a link, open ten minutes, guarded against guessing, and no way round a link's rules."""

import pytest
from fish_rooms import FishRoom, Phone
from limnary.api.join_codes import LENGTH, LETTERS
from limnary.ids import utc

MINUTE = 60_000
WRONG = "AAAA-AAAA"


def link(phone, **how) -> dict:
    made = phone.call("POST", "/rooms/{room}/invites", how)
    assert made.status_code == 201, made.text
    return made.json


def ask_code(phone, made, **body):
    return phone.call("POST", f"/rooms/{{room}}/invites/{made['id']}/code", {"secret": made["secret"], **body})


def code_of(phone, made) -> str:
    asked = ask_code(phone, made)
    assert asked.status_code == 201, asked.text
    return asked.json["code"]


def secret(room, code, **more):
    """What a phone that is nobody yet gets for a code."""
    return Phone(room).call("POST", "/join/code", {"code": code}, **more)


def joins(room, given):
    body = {"secret": given, "keeper_name": "Kim", "device_name": "Kim's phone"}
    return Phone(room).call("POST", "/join", body)


def test_a_typed_code_joins_once(fish_room):
    made = link(fish_room.owner, role="helper")
    asked = ask_code(fish_room.owner, made)
    assert (asked.status_code, asked.json["expires_at"]) == (201, utc(fish_room.at + 10 * MINUTE))
    code = asked.json["code"]
    assert set(code.replace("-", "")) <= set(LETTERS) and len(code) == LENGTH + 1
    for typed in (code, f" {code.lower()} ", code.replace("-", ""), code.replace("-", " ")):
        assert secret(fish_room, typed).json == {"secret": made["secret"]}
    assert joins(fish_room, made["secret"]).json["role"] == "helper"
    again = secret(fish_room, code)
    assert (again.status_code, again.json["type"]) == (410, "/problems/invite-spent")
    assert secret(fish_room, code).status_code == 404, "the code itself has ended"


def test_letters_that_look_alike_are_in_no_code():
    assert len(LETTERS) == len(set(LETTERS))
    for alike in ("0O", "1IL", "2Z", "5S", "8B", "UV"):
        assert set(alike) & set(LETTERS) == set()


def test_a_code_ends_after_ten_minutes_and_with_its_link(fish_room):
    made = link(fish_room.owner)
    code = code_of(fish_room.owner, made)
    fish_room.at += 10 * MINUTE - 1
    assert secret(fish_room, code).status_code == 200
    fish_room.at += 1
    ended = secret(fish_room, code)
    assert (ended.status_code, ended.json["type"]) == (404, "/problems/not-found")
    short = link(fish_room.owner, hours=0.05)
    asked = ask_code(fish_room.owner, short)
    assert asked.json["expires_at"] == short["expires_at"]
    fish_room.at += 3 * MINUTE
    assert secret(fish_room, asked.json["code"]).status_code == 410


def test_another_code_of_the_same_link_ends_the_first(fish_room):
    made = link(fish_room.owner)
    first, second = code_of(fish_room.owner, made), code_of(fish_room.owner, made)
    assert secret(fish_room, first).status_code == 404
    assert secret(fish_room, second).status_code == 200


def test_a_code_is_gone_after_a_restart_and_never_on_the_disk(fish_room):
    made = link(fish_room.owner)
    code = code_of(fish_room.owner, made)
    fish_room.store.close()
    for path in fish_room.store.files.folder.rglob("*"):
        if path.is_file():
            assert code.encode() not in path.read_bytes() and code.replace("-", "").encode() not in path.read_bytes()
    other = FishRoom(fish_room.store.files.folder)
    assert secret(other, code).status_code == 404
    assert joins(other, made["secret"]).status_code == 201, "its link still opens"
    other.close()


@pytest.mark.parametrize("put_out", ["ended", "demoted", "revoked", "withdrawn"])
def test_a_code_of_someone_who_is_out_opens_nothing(fish_room, put_out):
    second = fish_room.phone("owner", "Bo")
    made = link(second, keeper=second.keeper) if put_out == "demoted" else link(second)
    code = code_of(second, made)
    owner = fish_room.owner
    paths = {
        "ended": ("DELETE", f"/rooms/{{room}}/people/{second.keeper}", None),
        "demoted": ("PATCH", f"/rooms/{{room}}/people/{second.keeper}", {"role": "viewer"}),
        "revoked": ("DELETE", f"/devices/{second.device}", None),
        "withdrawn": ("DELETE", f"/rooms/{{room}}/invites/{made['id']}", None),
    }
    assert owner.call(*paths[put_out]).status_code in (200, 204)
    assert secret(fish_room, code).status_code == 410


def test_only_who_is_in_the_room_and_holds_the_link_gets_a_code(fish_room):
    made, other = link(fish_room.owner), link(fish_room.owner)
    viewer = fish_room.phone("viewer", "Vic")
    assert ask_code(Phone(fish_room), made).status_code == 401
    assert ask_code(fish_room.stranger(), made).status_code == 404
    assert ask_code(viewer, made, secret=other["secret"]).status_code == 404
    assert ask_code(viewer, made, secret="not-a-secret").status_code == 404
    own = link(viewer, keeper=viewer.keeper)
    assert secret(fish_room, code_of(viewer, own)).json == {"secret": own["secret"]}
    joins(fish_room, other["secret"])
    assert ask_code(fish_room.owner, other).status_code == 410


def test_guesses_are_limited_by_address_and_links_still_work(fish_room):
    made = link(fish_room.owner)
    code = code_of(fish_room.owner, made)
    for _ in range(10):
        assert secret(fish_room, WRONG).status_code == 404
    limited = secret(fish_room, code)
    assert (limited.status_code, limited.headers["Retry-After"]) == (429, "600"), "a right guess does not pass either"
    assert joins(fish_room, made["secret"]).status_code == 201


def test_guesses_from_many_addresses_are_limited_in_all(tmp_path):
    room = FishRoom(tmp_path, proxies=1, code_attempts=25)
    made = link(room.owner)
    code = code_of(room.owner, made)

    def guess(n: int, typed: str = WRONG):
        return secret(room, typed, headers={"X-Forwarded-For": f"203.0.113.{n}"})

    assert {guess(n).status_code for n in range(25)} == {404}
    assert guess(99, code).status_code == 429
    assert joins(room, made["secret"]).status_code == 201
    room.at += 10 * MINUTE + 1
    fresh = code_of(room.owner, link(room.owner))
    assert guess(99, fresh).status_code == 200
    room.close()


def test_codes_do_not_pile_up(fish_room, monkeypatch):
    monkeypatch.setattr("limnary.api.join_codes.MOST_OPEN", 2)
    for _ in range(2):
        code_of(fish_room.owner, link(fish_room.owner))
    full = ask_code(fish_room.owner, link(fish_room.owner))
    assert (full.status_code, full.json["type"]) == (409, "/problems/conflict")
    fish_room.at += 10 * MINUTE
    code_of(fish_room.owner, link(fish_room.owner))
