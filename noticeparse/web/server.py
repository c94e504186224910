"""Runs the service on a socket until it is told to end."""

from __future__ import annotations

import ipaddress
import socket
from collections.abc import Callable

import uvicorn

from noticeparse.web.app import create_app
from noticeparse.web.connections import connections_of
from noticeparse.web.settings import ServiceSettings

_END_SECONDS = 5


class Unbound(Exception):
    """The address cannot be listened on; the words say why."""


def is_loopback(listener: socket.socket) -> bool:
    """Whether only this machine reaches it, whatever name it was given."""
    return ipaddress.ip_address(listener.getsockname()[0]).is_loopback


def listen(host: str, port: int) -> socket.socket:
    """A socket on the address; port 0 takes a free one.

    Raises Unbound.
    """
    try:
        found = socket.getaddrinfo(host, port, type=socket.SOCK_STREAM, flags=socket.AI_PASSIVE)
        family, kind, protocol, _, address = found[0]
        listener = socket.socket(family, kind, protocol)
    except OSError as error:
        raise Unbound(error.strerror or str(error)) from None
    except UnicodeError:
        raise Unbound("this cannot be the name of a machine") from None
    try:
        listener.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        listener.bind(address)
    except OSError as error:
        listener.close()
        raise Unbound(error.strerror or str(error)) from None
    return listener


def address_of(listener: socket.socket) -> str:
    """The address to be typed into a browser."""
    host, port, *_ = listener.getsockname()
    if ipaddress.ip_address(host).is_unspecified:
        host = "127.0.0.1" if listener.family == socket.AF_INET else "::1"
    return f"http://[{host}]:{port}/" if ":" in host else f"http://{host}:{port}/"


def make_server(
    settings: ServiceSettings, when_ready: Callable[[], None] | None = None
) -> uvicorn.Server:
    """A server of the service; `when_ready` is called once it answers."""
    config = uvicorn.Config(
        create_app(settings),
        http=connections_of(settings),
        ws="none",
        log_config=None,
        log_level="error",
        access_log=False,
        server_header=False,
        proxy_headers=False,
        timeout_graceful_shutdown=_END_SECONDS,
    )
    return _Server(config, when_ready)


class _Server(uvicorn.Server):
    def __init__(self, config: uvicorn.Config, when_ready: Callable[[], None] | None) -> None:
        super().__init__(config)
        self._when_ready = when_ready

    async def startup(self, sockets: list[socket.socket] | None = None) -> None:
        await super().startup(sockets)
        if self.started and self._when_ready is not None:
            self._when_ready()
