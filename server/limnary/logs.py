"""The log as JSON, one object a line: every request and every message. No header, no query, no body is written."""

import json
import logging
import sys
from datetime import datetime

from gunicorn.glogging import Logger

from limnary.ids import utc


class JsonLines(logging.Formatter):
    """One message as one line of JSON: `time`, `level`, `message`, and `trace` with an exception."""

    def format(self, record: logging.LogRecord) -> str:
        line = {"time": utc(round(record.created * 1000)), "level": record.levelname.lower()}
        line |= {"message": record.getMessage()}
        if record.exc_info:
            line["trace"] = self.formatException(record.exc_info)
        return json.dumps(line, ensure_ascii=False)


class JsonLogger(Logger):
    """gunicorn's logger, with requests and messages as JSON; the messages of the app go the same way."""

    def setup(self, cfg) -> None:
        super().setup(cfg)
        for handler in self.error_log.handlers:
            handler.setFormatter(JsonLines())
        own = logging.getLogger("limnary")
        own.handlers, own.propagate = [logging.StreamHandler(sys.stderr)], False
        own.handlers[0].setFormatter(JsonLines())

    def access(self, resp, req, environ, request_time) -> None:
        """One request: `time`, `method`, `path` without its query, `status`, `bytes`, `ms`, `address`."""
        line = {"time": utc(round(datetime.now().timestamp() * 1000)), "method": environ["REQUEST_METHOD"]}
        line |= {"path": environ.get("PATH_INFO", ""), "status": int(str(resp.status).split()[0])}
        line |= {"bytes": resp.sent or 0, "ms": round(request_time.total_seconds() * 1000, 1)}
        self.access_log.info("%s", json.dumps({**line, "address": environ.get("REMOTE_ADDR", "")}))
