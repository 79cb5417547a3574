"""A gunicorn worker that gives no caller a thread for ever, and refuses in the app's one shape of errors.

Each wait for bytes has a limit, and a request as a whole must keep up a least rate: a phone that loses its signal
in the middle of an upload sends no end, and a hostile caller sends a byte now and then. Either loses its connection;
the server serves the others. Answers leave in pieces, so that a slow reader is measured by the piece.
"""

import contextlib
import ssl
import time
from collections.abc import Callable, Iterable, Iterator

from gunicorn.http import get_parser
from gunicorn.http.errors import (
    ExpectationFailed,
    LimitRequestHeaders,
    LimitRequestLine,
    NoMoreData,
    ParseException,
    UnsupportedTransferCoding,
)
from gunicorn.http.unreader import SocketUnreader
from gunicorn.sock import ssl_wrap_socket
from gunicorn.workers.gthread import TConn, ThreadWorker
from werkzeug.wsgi import ClosingIterator

from limnary.errors import LimnaryError, problem
from limnary.headers import HEADERS

# The longest silence within a request (assumption: a phone that says nothing for so long has lost its signal).
SILENCE_S = 10.0
# What a request may take on top of its bytes at the least rate (assumption: far below a poor mobile connection).
GRACE_S = 20.0
LEAST_BYTES_S = 2_000
# The longest that one piece of an answer may take to leave.
PIECE_S = 30.0
PIECE_BYTES = 64_000


class DeadlineUnreader(SocketUnreader):
    """Reads a request from the socket within its limits; NoMoreData, an OSError, once it is over them."""

    def __init__(self, sock, clock: Callable[[], float] = time.monotonic):
        super().__init__(sock)
        self.clock = clock
        self.begin()

    def begin(self) -> None:
        """Count time and bytes from here: a new request begins."""
        self.began, self.taken = self.clock(), 0

    def chunk(self, size_hint=None) -> bytes:
        left = self.began + GRACE_S + self.taken / LEAST_BYTES_S - self.clock()
        if left <= 0:
            raise NoMoreData()
        self.sock.settimeout(min(SILENCE_S, left))
        try:
            data = super().chunk(size_hint)
        except TimeoutError:
            raise NoMoreData() from None
        finally:
            self.sock.settimeout(PIECE_S)
        self.taken += len(data)
        return data


class DeadlineConnection(TConn):
    """A connection whose TLS handshake and requests have limits. HTTP/1 only: the server offers nothing else."""

    def init(self):
        if self.initialized:
            return
        self.initialized = True
        self.sock.settimeout(SILENCE_S)
        try:
            if self.cfg.is_ssl:
                self.sock = ssl_wrap_socket(self.sock, self.cfg)
                if not self.cfg.do_handshake_on_connect:
                    self.sock.do_handshake()
        except TimeoutError:
            raise NoMoreData() from None
        self.parser = get_parser(self.cfg, self.sock, self.client)
        self.parser.unreader = DeadlineUnreader(self.sock)


class DeadlineWorker(ThreadWorker):
    """gthread with limits on every wait."""

    def accept(self, listener):
        """As gthread's, with connections of our own."""
        try:
            sock, client = listener.accept()
        except (BlockingIOError, ConnectionAbortedError):
            return
        self.nr_conns += 1
        self.enqueue_req(DeadlineConnection(self.cfg, sock, client, listener.getsockname()))

    def handle(self, conn):
        if conn.initialized:
            conn.parser.unreader.begin()
        return super().handle(conn)

    def handle_error(self, req, client, addr, exc):
        """Answer what gunicorn cannot read as the app answers its errors: a problem, with the headers of every answer.

        An error of the app's own never comes here: `errors.install` answers it.
        """
        status, name, title = _refusal(exc)
        if status != 500:
            # Not `exc` itself: some quote the line that cannot be read, and a key may be in it.
            self.log.warning("Invalid request from ip=%s: %s", (addr or ("",))[0], type(exc).__name__)
        else:
            self.log.exception("Error handling request")
        answer = problem(status, name, title, headers={**HEADERS, "Cache-Control": "no-store", "Connection": "close"})
        head = [f"HTTP/1.1 {answer.status}", *(f"{header}: {value}" for header, value in answer.headers)]
        with contextlib.suppress(OSError):  # the caller may be gone
            client.sendall("\r\n".join([*head, "", ""]).encode("latin-1") + answer.get_data())


# Any other error that gunicorn has with a request is 400.
_REFUSALS = {
    LimitRequestLine: (414, "address-too-long", "The address is too long"),
    LimitRequestHeaders: (431, "headers-too-large", "The headers are too large"),
    ExpectationFailed: (417, "expectation-failed", "Only `Expect: 100-continue` is understood"),
    UnsupportedTransferCoding: (501, "transfer-coding", "Only `Transfer-Encoding: chunked` is understood"),
}
_UNREADABLE = (400, "bad-request", "The request cannot be read")


def _refusal(error: Exception) -> tuple[int, str, str]:
    """Status, name and title of the problem."""
    for kind, its in _REFUSALS.items():
        if isinstance(error, kind):
            return its
    if isinstance(error, ParseException | ssl.SSLError):
        return _UNREADABLE
    return 500, LimnaryError.name, LimnaryError.title


def in_pieces(app: Callable) -> Callable:
    """The same WSGI app, its answers cut into pieces of at most PIECE_BYTES."""

    def pieced(environ, start_response):
        answer = app(environ, start_response)
        return ClosingIterator(_cut(answer), getattr(answer, "close", None))

    return pieced


def _cut(answer: Iterable[bytes]) -> Iterator[bytes]:
    for data in answer:
        for start in range(0, len(data), PIECE_BYTES):
            yield data[start : start + PIECE_BYTES]
