"""Figures about the running server in the open text format of Prometheus, on a port that only this machine reaches.

Labels hold methods, routes as they are written in the code, and statuses: no address, id, key or query.
"""

import logging
import shutil
import time
from collections.abc import Iterable

from flask import Flask, Response, g, request
from prometheus_client import CollectorRegistry, Counter, Histogram, start_http_server
from prometheus_client.core import GaugeMetricFamily, Metric
from prometheus_client.process_collector import ProcessCollector

from limnary.store import daily

log = logging.getLogger("limnary")
HOST = "127.0.0.1"
# A push or a page takes milliseconds, a slow calculation seconds.
SECONDS = (0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 15)


def measure(app: Flask) -> CollectorRegistry:
    """Count every request of `app` from now on; the registry that tells the counts."""
    registry = CollectorRegistry()
    answered = Counter("limnary_requests", "Requests answered", ["method", "route", "status"], registry=registry)
    took = Histogram("limnary_request_seconds", "Time to an answer", ["route"], buckets=SECONDS, registry=registry)
    ProcessCollector(registry=registry)
    registry.register(_State(app))

    def begin() -> None:
        g.began = time.perf_counter()

    def end(answer: Response) -> Response:
        route = request.url_rule.rule if request.url_rule else "none"
        answered.labels(request.method, route, str(answer.status_code)).inc()
        took.labels(route).observe(time.perf_counter() - g.began)
        return answer

    app.before_request(begin)
    app.after_request(end)
    return registry


def serve(registry: CollectorRegistry, port: int) -> None:
    """Answer `GET /metrics` from a thread of its own. A port that is taken costs the figures, not the server."""
    try:
        start_http_server(port, addr=HOST, registry=registry)
    except OSError as bad:
        log.error("no metrics on port %s: %s", port, bad.strerror)


class _State:
    """What is looked up when somebody asks: rooms, space, backups, the certificate."""

    def __init__(self, app: Flask):
        self.config, self.store = app.extensions["limnary_config"], app.extensions["limnary_store"]
        self.backups: daily.DailyBackups | None = app.extensions["limnary_backups"]

    def collect(self) -> Iterable[Metric]:
        files = self.store.files
        sizes = [path.stat().st_size for path in files.rooms()]
        yield GaugeMetricFamily("limnary_rooms", "Rooms on this server", len(sizes))
        yield GaugeMetricFamily("limnary_rooms_bytes", "What the files of all rooms take", sum(sizes))
        free = shutil.disk_usage(files.folder).free
        yield GaugeMetricFamily("limnary_disk_free_bytes", "Free on the disk of the data", free)
        if self.backups:
            yield from self._backups(self.backups.notes)
        if self.config.authority:
            yield from self._certificate()

    def _backups(self, noted: daily.Notes) -> Iterable[Metric]:
        made_s = (noted.good_at or 0) / 1000
        yield GaugeMetricFamily("limnary_backup_last_good_timestamp_seconds", "The last good backup; 0: none", made_s)
        yield GaugeMetricFamily("limnary_backups_kept", "Daily backups that are kept and whole", len(noted.whole))
        faults = GaugeMetricFamily("limnary_backup_fault", "1 while this is wrong with the backups", labels=["fault"])
        wrong = daily.faults(noted, self.store.clock())
        for fault in daily.FAULTS:
            faults.add_metric([fault], float(fault in wrong))
        yield faults

    def _certificate(self) -> Iterable[Metric]:
        from limnary import lan

        found = lan.ends(self.config.data_dir)
        if found:
            ends = GaugeMetricFamily("limnary_certificate_end_timestamp_seconds", "When it ends", labels=["which"])
            ends.add_metric(["certificate"], found.certificate.timestamp())
            ends.add_metric(["authority"], found.authority.timestamp())
            yield ends
