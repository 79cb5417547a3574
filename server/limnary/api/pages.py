"""Two pages without the app: /check says what a phone lacks for it, /trust leads it through trusting this server.

They need none of the app's code, so that they work where it does not: in an old browser, or before a phone trusts the
certificate. Their script is plain ES5; the service worker leaves their addresses alone.
"""

import json
from functools import cache
from pathlib import Path

from flask import Blueprint, Response, render_template, request

from limnary.api.reading import config

blueprint = Blueprint("pages", __name__)
FOLDER = Path(__file__).parents[1] / "pages"
LANGUAGES = {"en": "English", "de": "Deutsch", "fr": "Français"}
DEVICES = ["android", "iphone", "firefox", "computer"]
FILES = {"check.js": "text/javascript", "worker.js": "text/javascript", "check.css": "text/css"}


@blueprint.get("/check")
def check():
    """What this phone gives the app: connection, worker, storage, clock, engine."""
    return _page("check")


@blueprint.get("/trust")
def trust():
    """How to trust this server's own authority, step by step, and whether this phone does."""
    authority = config().authority
    if authority is None:
        return _page("trust")
    from limnary.lan import fingerprint  # only a server with an authority loads `cryptography`

    return _page("trust", fingerprint=fingerprint(authority), devices=DEVICES)


@blueprint.get("/check/check.js", defaults={"name": "check.js"})
@blueprint.get("/check/worker.js", defaults={"name": "worker.js"})
@blueprint.get("/check/check.css", defaults={"name": "check.css"})
def file(name: str):
    """The script, the empty worker and the style of both pages."""
    return _answer((FOLDER / name).read_text("utf-8"), FILES[name])


@cache
def words(language: str) -> dict[str, str]:
    """Every sentence of the pages in one language, by key."""
    return json.loads((FOLDER / f"words_{language}.json").read_text("utf-8"))


def _page(name: str, **more) -> Response:
    language = request.args.get("lang", "")
    if language not in LANGUAGES:
        language = request.accept_languages.best_match(LANGUAGES, "en")
    languages = [{"tag": tag, "name": its} for tag, its in LANGUAGES.items()]
    shown = {"name": name, "language": language, "languages": languages, "words": words(language)}
    text = render_template(f"{name}.html", with_authority=config().authority is not None, **shown, **more)
    answer = _answer(text, "text/html")
    answer.headers["Vary"] = "Accept-Language"
    return answer


def _answer(text: str, media_type: str) -> Response:
    return Response(text, content_type=f"{media_type}; charset=utf-8", headers={"Cache-Control": "no-cache"})
