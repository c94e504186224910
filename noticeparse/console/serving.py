"""Runs the HTTP service for a person: the address, the warnings, the log, a quiet end."""

from __future__ import annotations

import logging
import os
import signal
import sys
from contextlib import closing, suppress

from noticeparse.caution import CAUTION
from noticeparse.console.outlet import say
from noticeparse.console.statuses import NOT_READ, READ

_LOG_LINE = "%(asctime)s %(message)s"
_INSTALL = "noticeparse: `serve` needs more packages: pip install 'noticeparse[web]'"


def serve(
    host: str, port: int, *, is_to_open: bool, max_body_mib: int, seconds: int, workers: int | None
) -> int:
    """Serve until interrupted; the exit status says whether it could be begun."""
    try:
        from noticeparse.web import server, settings
    except ModuleNotFoundError as error:
        if (error.name or "").partition(".")[0] == "noticeparse":
            raise
        say(_INSTALL)
        return NOT_READ
    try:
        token = settings.token_of_environment()
        listener = server.listen(host, port)
    except settings.BadToken as error:
        say(f"noticeparse: {error}")
        return NOT_READ
    except server.Unbound as error:
        say(f"noticeparse: cannot listen on {host}, port {port}: {error}")
        return NOT_READ
    wanted = settings.ServiceSettings(
        token=token, max_body=max_body_mib * settings.MEBIBYTE, read_seconds=seconds
    )
    room = 2 * wanted.max_body * (1 + settings.ANSWER_TO_BODY)
    wanted = wanted._replace(
        workers=workers or wanted.workers, max_held=max(wanted.max_held, room)
    )
    if token is None and not server.is_loopback(listener):
        say(
            f"noticeparse: warning: {host} may be reached from other machines, and no token is "
            f"asked for; set {settings.TOKEN_VARIABLE}"
        )
    address = server.address_of(listener)

    def greet() -> None:
        say(f"noticeparse serves on {address} (Ctrl-C ends it)")
        say(CAUTION)
        if is_to_open:
            _open(address)

    _begin_log()
    # The server hands the signal on when it has ended; unhandled it would leave workers behind.
    signal.signal(signal.SIGTERM, signal.default_int_handler)
    running = server.make_server(wanted, greet)
    # The server mostly hands on the signal that ended it.
    with closing(listener), suppress(KeyboardInterrupt):
        running.run(sockets=[listener])
    if not running.started:
        return NOT_READ
    say("noticeparse: the service has ended")
    return READ


def _begin_log() -> None:
    """Requests and failures go to standard error; what they hold is never among it."""
    logging.basicConfig(stream=sys.stderr, format=_LOG_LINE, level=logging.WARNING)
    logging.getLogger("noticeparse.web").setLevel(logging.INFO)


def _open(address: str) -> None:
    """Show the start page to a person who sits in front of this machine."""
    if sys.stderr is None or not sys.stderr.isatty():
        return
    is_desktop = sys.platform in ("win32", "darwin")
    if not is_desktop and not any(map(os.environ.get, ("DISPLAY", "WAYLAND_DISPLAY"))):
        return  # else a browser in the terminal would take it away from the log
    import webbrowser

    webbrowser.open(address)
