"""Photos by their hash: idempotent, checked, limited in size, never run as a page."""

import hashlib

import pytest

JPEG = b"\xff\xd8\xff\xe0" + b"jpeg" * 100
WEBP = b"RIFF\x00\x00\x00\x00WEBPVP8 " + b"webp" * 100


def put(phone, data, sha256=None):
    sha256 = sha256 or hashlib.sha256(data).hexdigest()
    return phone.call("PUT", f"/rooms/{{room}}/blobs/{sha256}", data=data)


@pytest.mark.parametrize(("data", "kind"), [(JPEG, "image/jpeg"), (WEBP, "image/webp")])
def test_a_photo_comes_back_as_it_went(fish_room, data, kind):
    first, second = put(fish_room.owner, data), put(fish_room.owner, data)
    assert (first.status_code, second.status_code) == (201, 200)
    sha256 = hashlib.sha256(data).hexdigest()
    got = fish_room.phone("viewer", "Vi").call("GET", f"/rooms/{{room}}/blobs/{sha256}")
    assert (got.data, got.content_type) == (data, kind)
    assert "sandbox" in got.headers["Content-Security-Policy"]
    assert got.headers["X-Content-Type-Options"] == "nosniff"


def test_other_bytes_than_the_hash_says(fish_room):
    answer = put(fish_room.owner, JPEG, "0" * 64)
    assert (answer.status_code, answer.json["type"]) == (400, "/problems/bad-request")


@pytest.mark.parametrize("data", [b"", b"<script>alert(1)</script>", b"%PDF-1.7", b"RIFF\x00\x00\x00\x00WAVEfmt "])
def test_what_is_no_picture(fish_room, data):
    answer = put(fish_room.owner, data)
    assert (answer.status_code, answer.json["type"]) == (415, "/problems/media-type")


def test_a_picture_too_large(fish_room):
    answer = put(fish_room.owner, JPEG + b"x" * 10_000_000)
    assert (answer.status_code, answer.json["type"]) == (413, "/problems/too-large")
    assert "10000000" in answer.json["detail"]
