"""Serves the app: the files of pwa/, /shared.json, its translations, and a worker that lists every file's hash."""

import gzip
import hashlib
import json
from dataclasses import dataclass
from functools import cache, cached_property
from pathlib import Path, PurePosixPath

from flask import Blueprint, Response, request

from limnary.api.lean_scripts import without_comments
from limnary.api.reading import config
from limnary.errors import NotFound
from limnary.schema_files import pwa_dir, read_folder, shared_bundle, words

blueprint = Blueprint("shell", __name__)
INDEX = "index.html"
WORKER = "sw.js"
# Files that a browser runs; all others in pwa/ are for developers.
ENDINGS = {
    ".css": "text/css",
    ".html": "text/html",
    ".ico": "image/x-icon",
    ".js": "text/javascript",
    ".json": "application/json",
    ".mjs": "text/javascript",
    ".png": "image/png",
    ".svg": "image/svg+xml",
    ".webmanifest": "application/manifest+json",
    ".webp": "image/webp",
    ".woff2": "font/woff2",
}
FOR_DEVELOPERS = {"package.json", "tsconfig.json", "eslint.config.js", "eslint.config.mjs"}
TEXT = {".css", ".html", ".js", ".json", ".mjs", ".svg", ".webmanifest"}
PLACEHOLDER = "self.__WB_MANIFEST"


@dataclass
class Page:
    """Bytes to serve; they are compressed once, at the first request."""

    data: bytes
    media_type: str
    text: bool = True

    @cached_property
    def etag(self) -> str:
        return hashlib.sha256(self.data).hexdigest()[:32]

    @cached_property
    def packed(self) -> bytes:
        return gzip.compress(self.data, 9, mtime=0)


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


@blueprint.get("/", defaults={"path": INDEX})
@blueprint.get("/<path:path>")
def file(path: str):
    """One file. Any other address that a browser opens as a page belongs to the app, so it gets index.html."""
    if path.startswith("api/"):
        raise NotFound()
    if PurePosixPath(path).as_posix() == path and _is_served(PurePosixPath(path)):
        return _serve(_file(path))
    named = "." in path.rsplit("/", 1)[-1]
    if not named and request.accept_mimetypes["text/html"] and "text/html" in request.headers.get("Accept", ""):
        return _serve(_file(INDEX))
    raise NotFound()


def manifest() -> list[dict]:
    """The files that the worker stores, each with its hash: the shell, the shared bundle and its translations."""
    shell = [{"url": f"/{path}", "revision": _file(path).etag} for path in _served() if path != WORKER]
    languages = [{"url": f"/words/{one}.json", "revision": _words(one).etag} for one in read_folder("words")]
    return [*shell, {"url": "/shared.json", "revision": _bundle().etag}, *languages]


def _served() -> list[str]:
    """The paths below pwa/ that a browser may ask for."""
    root = pwa_dir()
    found = (PurePosixPath(path.relative_to(root).as_posix()) for path in root.rglob("*"))
    return sorted(path.as_posix() for path in found if _is_served(path))


def _is_served(path: PurePosixPath) -> bool:
    """Whether a browser may ask for this path below pwa/. Asked at every request, so it looks at this file alone."""
    if path.suffix not in ENDINGS or {"/", "..", "node_modules"} & set(path.parts):
        return False
    for_developers = path.name in FOR_DEVELOPERS or path.name.startswith(".") or path.name.endswith(".d.ts")
    return not for_developers and (pwa_dir() / path).is_file()


def _file(path: str) -> Page:
    full = pwa_dir() / path
    try:
        state = full.stat()
    except OSError:
        raise NotFound() from None
    version = (state.st_mtime_ns, state.st_size)
    if _pages.get(full, (None,))[0] != version:
        page = Page(_lean(full), ENDINGS[full.suffix], full.suffix in TEXT)
        _pages[full] = (version, page)
    return _pages[full][1]


def _lean(path: Path) -> bytes:
    data = path.read_bytes()
    ours = path.suffix == ".js" and "vendor" not in path.relative_to(pwa_dir()).parts
    return without_comments(data.decode("utf-8")).encode("utf-8") if ours else data


@cache
def _bundle() -> Page:
    return _json(shared_bundle())


@cache
def _words(language: str) -> Page:
    return _json(words(language))


def _json(value: object) -> Page:
    text = json.dumps(value, ensure_ascii=False, separators=(",", ":"))
    return Page(text.encode("utf-8"), "application/json")


def _serve(page: Page) -> Response:
    charset = "; charset=utf-8" if page.text and page.media_type.startswith("text/") else ""
    packed = page.text and "gzip" in request.accept_encodings
    answer = Response(page.packed if packed else page.data, content_type=page.media_type + charset)
    answer.headers["Cache-Control"] = "no-cache"
    answer.set_etag(page.etag, weak=True)
    if page.text:
        answer.headers["Vary"] = "Accept-Encoding"
    if packed:
        answer.headers["Content-Encoding"] = "gzip"
    return answer.make_conditional(request)
