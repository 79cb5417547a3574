"""Serves the app: the built shell of pwa/built/, or the modules of pwa/ as they are where it is not theirs."""

import gzip
import hashlib
import json
import re
from dataclasses import dataclass
from functools import cache, cached_property
from pathlib import Path, PurePosixPath

import brotli
from flask import Blueprint, Response, request
from werkzeug.routing import PathConverter

from limnary.api import built
from limnary.api.reading import config
from limnary.errors import NotFound
from limnary.schema_files import pwa_dir, read_folder, shared_bundle, words

blueprint = Blueprint("shell", __name__)
INDEX = "index.html"
WORKER = "sw.js"
TEXT = {".css", ".html", ".js", ".json", ".map", ".mjs", ".svg", ".webmanifest"}
QUICK_QUALITY = 5
PLACEHOLDER = "self.__WB_MANIFEST"
# A name with a hash: its content never changes.
HASHED = re.compile(rf"{built.FOLDER}/.+-[A-Z0-9]{{8}}\.\w+(\.map)?")
A_YEAR = "public, max-age=31536000, immutable"


@dataclass
class Page:
    """Bytes to serve; they are compressed once, at the first request, unless the build has done so."""

    data: bytes
    media_type: str
    text: bool = True
    packed_by_build: Path | None = None

    @cached_property
    def etag(self) -> str:
        return hashlib.sha256(self.data).hexdigest()[:32]

    @cached_property
    def gzip(self) -> bytes:
        return gzip.compress(self.data, 9, mtime=0)

    @cached_property
    def br(self) -> bytes:
        if self.packed_by_build:
            return self.packed_by_build.read_bytes()
        # The best quality takes forty times as long for a sixth less: seconds, before a small computer answers.
        return brotli.compress(self.data, quality=QUICK_QUALITY)

    def packed(self) -> tuple[bytes, str | None]:
        """The bytes in the best coding that the caller takes, and its name."""
        taken = [coding for coding in ("br", "gzip") if self.text and coding in request.accept_encodings]
        return (getattr(self, taken[0]), taken[0]) if taken else (self.data, None)


_pages: dict[Path, tuple[tuple[int, int], Page]] = {}


@blueprint.get("/shared.json")
def shared():
    """Contracts, tables, record kinds and wording, for the phone."""
    return _serve(_bundle())


@blueprint.get("/words/<language>.json")
def shared_words(language: str):
    """The texts of /shared.json in another language, keyed by the English text."""
    if words(language) is None:
        raise NotFound()
    return _serve(_words(language))


@blueprint.get("/sw.js")
def worker():
    """The service worker, with the list of files it stores."""
    if _is_built():
        return _serve(_file(f"{built.FOLDER}/{WORKER}"))
    source = _file(WORKER).data.decode("utf-8")
    filled = source.replace(PLACEHOLDER, json.dumps(manifest(), separators=(",", ":")), 1)
    return _serve(Page(filled.encode("utf-8"), "text/javascript"))


@blueprint.get("/authority.crt")
def authority():
    """The certificate of this server's own authority, when it serves the home network."""
    path = config().authority
    if path is None:
        raise NotFound("This server has no authority of its own: start it with --lan")
    return _serve(Page(path.read_bytes(), "application/x-x509-ca-cert", text=False))


class PageConverter(PathConverter):
    """Any path outside the API, so that an address of the API answers a wrong method as such (405, with `Allow`)."""

    regex = "(?!api/)[^/].*?"


@blueprint.get("/")
def first_page():
    """The app's page, for a browser that has not stored it."""
    return _index("cover")


@blueprint.get("/<page:path>")
def file(path: str):
    """One file. Any other address that a browser opens as a page belongs to the app, so it gets index.html."""
    if path == INDEX:
        # The worker of the app asks for the page by this name, to store it.
        return _index("index")
    if PurePosixPath(path).as_posix() == path and _is_served(PurePosixPath(path)):
        return _serve(_file(path), A_YEAR if HASHED.fullmatch(path) else "no-cache")
    named = "." in path.rsplit("/", 1)[-1]
    if not named and request.accept_mimetypes["text/html"] and "text/html" in request.headers.get("Accept", ""):
        return _index("cover")
    raise NotFound()


def manifest() -> list[dict]:
    """The files that the worker of the sources stores, each with its hash: pwa/, shared bundle, translations."""
    shell = [{"url": f"/{path}", "revision": _file(path).etag} for path in built.files() if path != WORKER]
    languages = [{"url": f"/words/{one}.json", "revision": _words(one).etag} for one in read_folder("words")]
    return [*shell, {"url": "/shared.json", "revision": _bundle().etag}, *languages]


def _index(which: str) -> Response:
    """The app's page; the built one asks ahead for the texts of the language that the phone speaks.

    `which` is "cover" on a first visit: that page shows what the app is while the app is fetched. Phones store "index".
    It has no `Vary: Accept-Language`: with that a service worker may not find the page that it stored. `no-cache` and
    the ETag are enough, because every cache asks first.
    """
    if not _is_built():
        return _serve(_file(INDEX))
    language = request.accept_languages.best_match(["en", *read_folder("words")], "en")
    return _serve(_file(f"{built.FOLDER}/{which}.{language}.html"))


def _is_built() -> bool:
    return not config().sources and built.is_fresh()


def _is_served(path: PurePosixPath) -> bool:
    """Whether a browser may ask for this path below pwa/. Asked at every request, so it looks at this file alone."""
    if {"/", "..", "node_modules"} & set(path.parts):
        return False
    return built.is_for_browsers(path) and (pwa_dir() / path).is_file()


def _file(path: str) -> Page:
    full = pwa_dir() / path
    try:
        state = full.stat()
    except OSError:
        raise NotFound() from None
    version = (state.st_mtime_ns, state.st_size)
    if _pages.get(full, (None,))[0] != version:
        packed = full.with_name(f"{full.name}.br")
        by_build = packed if full.parent.name == built.FOLDER and packed.is_file() else None
        page = Page(full.read_bytes(), built.ENDINGS[full.suffix], full.suffix in TEXT, by_build)
        _pages[full] = (version, page)
    return _pages[full][1]


@cache
def _bundle() -> Page:
    return _json(shared_bundle())


@cache
def _words(language: str) -> Page:
    return _json(words(language))


def _json(value: object) -> Page:
    text = json.dumps(value, ensure_ascii=False, separators=(",", ":"))
    return Page(text.encode("utf-8"), "application/json")


def _serve(page: Page, cache_control: str = "no-cache") -> Response:
    charset = "; charset=utf-8" if page.text and page.media_type.startswith("text/") else ""
    data, coding = page.packed()
    answer = Response(data, content_type=page.media_type + charset)
    answer.headers["Cache-Control"] = cache_control
    answer.set_etag(page.etag, weak=True)
    if page.text:
        answer.headers["Vary"] = "Accept-Encoding"
    if coding:
        answer.headers["Content-Encoding"] = coding
    return answer.make_conditional(request)
