"""create_app: the only place that connects the parts. Importing this module has no effect."""

import gzip

from flask import Flask, Response, request
from werkzeug.middleware.proxy_fix import ProxyFix

from limnary import errors
from limnary.api import archive, calc, calendars, health, openapi, pages, people, shell, sync, upkeep
from limnary.api.attempts import Attempts
from limnary.api.calendars import Calendars
from limnary.api.join_codes import JoinCodes
from limnary.config import Config
from limnary.headers import HEADERS
from limnary.slow_lane import SlowLane
from limnary.store import Store
from limnary.store.daily import DailyBackups
from limnary.upkeep import Upkeep

WORTH_PACKING = 1000


def create_app(config: Config | None = None) -> Flask:
    """The WSGI app for the data that `config` names; it creates and migrates what is missing."""
    config = config or Config()
    app = Flask("limnary", static_folder=None, template_folder="pages")
    app.json.sort_keys = False
    app.url_map.strict_slashes = False
    app.url_map.converters["page"] = shell.PageConverter
    store = Store(config.data_dir, config.clock)
    store.prepare()
    attempts = Attempts(config.join_attempts, config.join_window_s)
    in_all = Attempts(config.code_attempts, config.join_window_s)
    app.extensions |= {
        "limnary_config": config,
        "limnary_store": store,
        "limnary_attempts": attempts,
        "limnary_join_codes": JoinCodes(attempts, in_all, config.code_minutes),
        "limnary_calls": Attempts(config.calls_per_minute, 60),
        "limnary_slow_lane": SlowLane(),
        "limnary_calendars": Calendars(store),
        "limnary_backups": _daily_backups(config, store),
    }
    for part in (calc, openapi, sync, people, calendars, archive, upkeep, health, pages, shell):
        app.register_blueprint(part.blueprint)
    errors.install(app)
    app.after_request(_finish)
    if config.metrics_port:
        from limnary.metrics import measure  # a server that tells no figures needs none of it

        app.extensions["limnary_metrics"] = measure(app)
    if config.proxies:
        app.wsgi_app = ProxyFix(app.wsgi_app, x_for=config.proxies, x_proto=config.proxies)
    return app


def upkeep_of(app: Flask) -> Upkeep:
    """What this app's server does by itself; the caller starts it, in the process that serves."""
    config, backups = app.extensions["limnary_config"], app.extensions["limnary_backups"]
    jobs = [backups.run_if_due] if backups else []
    if config.authority:
        from limnary.lan import HomeCertificate  # only a server with a certificate of its own loads `cryptography`

        jobs.append(HomeCertificate(config.authority.parent, config.clock).renew_if_due)
    return Upkeep(jobs)


def _daily_backups(config: Config, store: Store) -> DailyBackups | None:
    if config.backup_folder is None:
        return None
    return DailyBackups(store.files, config.backup_folder, config.backup_limit_bytes, store.clock)


def _finish(answer: Response) -> Response:
    """Set the headers of every answer, and compress the larger ones."""
    for name, value in HEADERS.items():
        answer.headers.setdefault(name, value)
    if request.path.startswith("/api/") or request.path == "/healthz" or answer.status_code >= 400:
        answer.headers["Cache-Control"] = "no-store"
    return _pack(answer)


def _pack(answer: Response) -> Response:
    if answer.mimetype not in ("application/json", "application/problem+json") or answer.is_streamed:
        return answer
    answer.vary.add("Accept-Encoding")
    if "Content-Encoding" in answer.headers or "gzip" not in request.accept_encodings:
        return answer
    if answer.status_code == 304 or len(answer.get_data()) < WORTH_PACKING:
        return answer
    answer.set_data(gzip.compress(answer.get_data(), 6, mtime=0))
    answer.headers["Content-Encoding"] = "gzip"
    return answer
