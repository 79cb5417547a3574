"""The pages /check and /trust: in three languages, without the app's code, with the fingerprint to compare."""

import json
import re
from dataclasses import replace

import pytest
from limnary import lan
from limnary.api.pages import DEVICES, FOLDER, LANGUAGES, words
from limnary.app import create_app
from limnary.cli import main
from limnary.config import Config


@pytest.fixture
def at_home(tmp_path):
    """A server with an authority of its own."""
    authority = lan.certificates(tmp_path / "lan", "192.168.1.20")[0]
    made = create_app(replace(Config(data_dir=tmp_path), authority=authority))
    yield made.test_client(), authority
    made.extensions["limnary_store"].close()


@pytest.mark.parametrize("page", ["check", "trust"])
@pytest.mark.parametrize(
    ("query", "header", "language"),
    [("", "", "en"), ("", "de-AT,de;q=0.9", "de"), ("", "fr", "fr"), ("", "sv", "en"), ("?lang=fr", "de", "fr")],
)
def test_in_the_readers_language(at_home, page, query, header, language):
    client, _ = at_home
    answer = client.get(f"/{page}{query}", headers={"Accept-Language": header})
    assert answer.status_code == 200
    assert f'<html lang="{language}">' in answer.text
    assert words(language)[f"title.{page}"] in answer.text
    for other in LANGUAGES:
        assert f'href="/{page}?lang={other}"' in answer.text


def test_every_language_has_every_sentence_and_none_too_many():
    keys = {language: list(words(language)) for language in LANGUAGES}
    assert keys["de"] == keys["fr"] == keys["en"]
    used = set()
    for name in ("base", "check", "trust", "parts"):
        text = (FOLDER / f"{name}.html").read_text("utf-8")
        used |= set(re.findall(r'words\["([\w.]+)"\]', text))
        for test, outcomes in re.findall(r'test\("(\w+)", (\[.*?\])\)', text):
            used |= {f"test.{test}", *(f"test.{test}.{outcome}" for outcome in json.loads(outcomes))}
    used |= {f"{part}.{device}" for device in DEVICES for part in ("device", "trust")}
    used |= {f"title.{page}" for page in ("check", "trust")}
    assert used == set(keys["en"])


@pytest.mark.parametrize("page", ["/check", "/trust"])
def test_a_page_needs_no_code_of_the_app_and_none_in_line(at_home, page):
    client, _ = at_home
    text = client.get(page).text
    assert set(re.findall(r'(?:src|href)="(/check/[^"]+)"', text)) == {"/check/check.js", "/check/check.css"}
    # The policy of every answer allows neither.
    assert not re.search(r"<script>|\sstyle=|\son\w+=", text)
    assert client.get("/check/check.js").content_type == "text/javascript; charset=utf-8"
    assert client.get("/check/worker.js").content_type == "text/javascript; charset=utf-8"


def test_the_page_shows_the_fingerprint_that_the_terminal_shows(at_home, tmp_path, capsys):
    client, authority = at_home
    shown = lan.fingerprint(authority)
    assert shown in client.get("/trust").text
    (tmp_path / "address").write_text("https://192.168.1.20:8340")
    assert main(["trust", "--data", str(tmp_path)]) == 0
    printed = capsys.readouterr().out
    assert shown in printed
    assert "https://192.168.1.20:8340/trust\n" in printed
    assert "█" in printed, "the QR code"


def test_a_server_without_an_authority_has_nothing_to_trust(fish_room, capsys):
    client = fish_room.app.test_client()
    assert words("en")["trust.none"] in client.get("/trust").text
    assert 'href="/trust' not in client.get("/check").text
    assert main(["trust", "--data", str(fish_room.store.files.folder)]) == 1
    assert "when it starts with --lan" in capsys.readouterr().err


def test_a_language_that_is_none_is_no_way_to_other_files(at_home):
    client, _ = at_home
    assert client.get("/check?lang=../../x").status_code == 200
