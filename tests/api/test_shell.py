"""The app's own files: served packed, with strict headers, deep links, and a worker that knows every file."""

import gzip
import hashlib
import json
import re
import shutil

import brotli
import pytest
from limnary.api import built
from limnary.app import create_app
from limnary.config import Config
from limnary.schema_files import shared_bundle, words

PAGES = {
    "index.html": "<!doctype html><title>Test</title>",
    "app.js": "export const started = true;\n" * 100,
    "sw.js": "const list = self.__WB_MANIFEST;",
    "styles/base.css": "body { margin: 0 }",
    "package.json": "{}",
    "eslint.config.js": "export default [];",
    "data/types.d.ts": "export {};",
    "vendor/README.md": "# Vendored",
    "vendor/refresh": "#!/bin/sh",
    "node_modules/left/index.js": "export {};",
    ".hidden.js": "export {};",
}
BUILT = {
    "cover.en.html": "<!doctype html><title>Built</title>",
    "cover.de.html": "<!doctype html><title>Gebaut</title>",
    "cover.fr.html": "<!doctype html><title>Construit</title>",
    "index.en.html": "<!doctype html><title>Stored</title>",
    "index.de.html": "<!doctype html><title>Gespeichert</title>",
    "index.fr.html": "<!doctype html><title>Gardé</title>",
    "sw.js": "const list = [];",
    "app-0123ABCD.js": "export const built = true;\n" * 100,
}
AS_A_PAGE = {"Accept": "text/html,application/xhtml+xml,*/*;q=0.8"}


@pytest.fixture
def pwa(tmp_path, monkeypatch):
    folder = tmp_path / "pwa"
    for name, text in PAGES.items():
        path = folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text)
    for module in ("shell", "built"):
        monkeypatch.setattr(f"limnary.api.{module}.pwa_dir", lambda: folder)
    return folder


@pytest.fixture
def shell(pwa):
    """A build of these files, with the stamp that they have now."""
    folder = pwa / "built"
    folder.mkdir()
    for name, text in BUILT.items():
        (folder / name).write_text(text)
    (folder / "built.json").write_text(json.dumps({"stamp": built._stamp(built._state())}))
    return folder


@pytest.fixture
def client(fish_room, pwa):
    return fish_room.app.test_client()


@pytest.mark.parametrize("path", ["/", "/tank/0190f3a2/test", "/join", "/bench/free_ammonia"])
def test_deep_links_open_the_app(client, path):
    answer = client.get(path, headers=AS_A_PAGE)
    assert (answer.status_code, answer.mimetype) == (200, "text/html")
    assert answer.text == PAGES["index.html"]


@pytest.mark.parametrize("path", ["/tank/x/missing.js", "/api/v1/nothing", "/api/nothing"])
def test_what_is_no_page_of_the_app_is_missing(client, path):
    answer = client.get(path, headers=AS_A_PAGE)
    assert (answer.status_code, answer.content_type) == (404, "application/problem+json")


def test_a_program_that_asks_for_no_page_gets_none(client):
    assert client.get("/tank/x", headers={"Accept": "application/json"}).status_code == 404


def test_the_worker_lists_exactly_the_shell(client):
    answer = client.get("/sw.js")
    assert answer.headers["Cache-Control"] == "no-cache"
    listed = json.loads(re.fullmatch(r"const list = (\[.*\]);", answer.text)[1])
    shared = [
        {"url": url, "revision": client.get(url).headers["ETag"].strip('W/"')}
        for url in ("/shared.json", "/words/de.json", "/words/fr.json")
    ]
    expected = [
        {"url": f"/{name}", "revision": hashlib.sha256(PAGES[name].encode()).hexdigest()[:32]}
        for name in ("app.js", "index.html", "styles/base.css")
    ]
    assert listed == [*expected, *shared]


def test_words_are_served_by_language_and_no_other(client):
    answer = client.get("/words/de.json")
    assert (answer.status_code, answer.mimetype, answer.json) == (200, "application/json", words("de"))
    assert client.get("/words/xx.json").status_code == 404


def test_a_changed_file_changes_the_worker(client, pwa):
    before = client.get("/sw.js").text
    (pwa / "app.js").write_text("export const started = false;")
    assert client.get("/sw.js").text != before
    assert client.get("/app.js").text == "export const started = false;"


@pytest.mark.parametrize(
    "name", ["package.json", "eslint.config.js", "data/types.d.ts", "vendor/README.md", ".hidden.js"]
)
def test_files_for_developers_are_not_served(client, name):
    assert client.get(f"/{name}").status_code == 404


@pytest.mark.parametrize(
    "path", ["/../secret.js", "/styles/../../secret.js", "/%2e%2e/secret.js", "/./app.js", "/app.js/"]
)
def test_no_file_beside_the_app_is_served(client, pwa, path):
    (pwa.parent / "secret.js").write_text("export {};")
    assert client.get(path).status_code == 404


def test_packed_and_unchanged(client):
    plain, packed = client.get("/app.js"), client.get("/app.js", headers={"Accept-Encoding": "gzip"})
    assert gzip.decompress(packed.data) == plain.data
    assert len(packed.data) < len(plain.data) / 5
    assert packed.headers["Vary"] == "Accept-Encoding"
    again = client.get("/app.js", headers={"If-None-Match": packed.headers["ETag"]})
    assert (again.status_code, again.data) == (304, b"")


def test_phones_get_the_build_while_it_is_that_of_the_sources(client, pwa, shell):
    assert "Built" in client.get("/tanks", headers=AS_A_PAGE).text
    assert client.get("/sw.js").text == BUILT["sw.js"]
    (pwa / "app.js").write_text("export const started = false;")
    assert client.get("/tanks", headers=AS_A_PAGE).text == PAGES["index.html"]
    assert "/app.js" in client.get("/sw.js").text


def test_a_changed_contract_makes_the_build_an_old_one(client, shell, tmp_path, monkeypatch):
    copied = tmp_path / "shared_schema"
    shutil.copytree(built.shared_schema_dir(), copied)
    monkeypatch.setattr("limnary.api.built.shared_schema_dir", lambda: copied)
    assert built.is_fresh()
    with (copied / "messages.json").open("a") as out:
        out.write(" ")
    assert not built.is_fresh()


def test_the_sources_are_served_where_they_are_wanted(fish_room, pwa, shell):
    app = create_app(Config(data_dir=fish_room.store.files.folder, sources=True))
    assert app.test_client().get("/").text == PAGES["index.html"]


@pytest.mark.parametrize("spoken, says", [("de-AT,de;q=0.9", "Gebaut"), ("fr", "Construit"), ("fi", "Built")])
def test_the_page_comes_in_the_language_of_the_phone(client, shell, spoken, says):
    answer = client.get("/", headers={**AS_A_PAGE, "Accept-Language": spoken})
    assert says in answer.text
    assert answer.headers["Vary"] == "Accept-Encoding"


def test_a_first_visit_gets_the_cover_and_the_worker_the_page_without_it(client, shell):
    assert client.get("/", headers=AS_A_PAGE).text == BUILT["cover.en.html"]
    assert client.get("/tank/1", headers=AS_A_PAGE).text == BUILT["cover.en.html"]
    assert client.get("/index.html").text == BUILT["index.en.html"]


def test_only_what_has_a_hash_in_its_name_is_kept_for_good(client, shell):
    kept = {url: client.get(url).headers["Cache-Control"] for url in ("/built/app-0123ABCD.js", "/", "/sw.js")}
    assert kept == {
        "/built/app-0123ABCD.js": "public, max-age=31536000, immutable",
        "/": "no-cache",
        "/sw.js": "no-cache",
    }


def test_a_phone_that_takes_brotli_gets_fewer_bytes(client, shell):
    url = "/built/app-0123ABCD.js"
    plain, small = client.get(url), client.get(url, headers={"Accept-Encoding": "gzip, br"})
    assert small.headers["Content-Encoding"] == "br"
    assert brotli.decompress(small.data) == plain.data


def test_what_the_build_has_packed_is_not_packed_again(client, shell, monkeypatch):
    (shell / "app-0123ABCD.js.br").write_bytes(brotli.compress(BUILT["app-0123ABCD.js"].encode()))
    monkeypatch.setattr("limnary.api.shell.brotli.compress", None)
    answer = client.get("/built/app-0123ABCD.js", headers={"Accept-Encoding": "br"})
    assert brotli.decompress(answer.data).decode() == BUILT["app-0123ABCD.js"]
    assert client.get("/built/app-0123ABCD.js.br").status_code == 404


def test_the_shared_bundle_is_what_the_contracts_are(client):
    answer = client.get("/shared.json")
    assert answer.headers["Cache-Control"] == "no-cache"
    assert answer.json == shared_bundle()
    assert set(answer.json) == {"calc", "tables", "records", "messages", "formats"}


@pytest.mark.parametrize("path", ["/", "/app.js", "/api/v1/calc", "/healthz", "/nothing.js"])
def test_strict_headers_on_every_answer(client, path):
    headers = client.get(path).headers
    policy = dict(part.split(" ", 1) for part in headers["Content-Security-Policy"].split("; "))
    assert policy["script-src"] == policy["style-src"] == policy["connect-src"] == "'self'"
    assert policy["default-src"] == policy["frame-ancestors"] == "'none'"
    assert "unsafe" not in headers["Content-Security-Policy"]
    assert headers["X-Content-Type-Options"] == "nosniff"
    assert headers["Referrer-Policy"] == "no-referrer"


def test_health(client):
    assert client.get("/healthz").json["status"] == "ok"
