"""Serves dist/ as a static host would, and while one works on it rebuilds and reloads."""

import logging
import mimetypes
import socket
import threading
import weakref
from http import HTTPStatus
from pathlib import Path

import segno
from flask import Flask, Response, request, send_from_directory
from werkzeug.exceptions import NotFound
from werkzeug.serving import BaseWSGIServer, make_server

import certificate
import dist
import environment
import headers
import offline
import reload

logging.getLogger("werkzeug").setLevel(logging.WARNING)
mimetypes.add_type(headers.MANIFEST_TYPE, ".webmanifest")
# What common hosts compress
COMPRESSED = {
    "application/json",
    "application/wasm",
    "application/zip",
    headers.MANIFEST_TYPE,
    *(f"text/{kind}" for kind in ("css", "html", "javascript", "plain")),
}


def application(*folders: Path) -> Flask:
    """The site in the first of ``folders``, and what only the others hold; with the headers of ``_headers``, compressed."""
    app = Flask("borrowline", static_folder=None)

    @app.get("/", defaults={"path": "index.html"})
    @app.get("/<path:path>")
    def file(path: str) -> Response:
        if path == "_headers":
            raise NotFound
        folder = next((each for each in folders if (each / path).is_file()), folders[0])
        response = send_from_directory(folder, path)
        # werkzeug forgets to close the file where a browser hangs up: it is sent from memory
        response.direct_passthrough = False
        content = response.get_data()
        response.close()
        if response.status_code == HTTPStatus.OK and request.accept_encodings.quality("br") and response.mimetype in COMPRESSED:
            response.set_data(offline.sent(content))
            response.content_encoding = "br"
        return response

    @app.after_request
    def add_headers(response: Response) -> Response:
        response.headers.update(headers.HEADERS)
        response.vary.add("Accept-Encoding")
        return response

    return app


class Site:
    """A folder served as a static host would; stopped, it is a phone without a signal."""

    def __init__(self, folder: Path, *more: Path) -> None:
        self.folder = folder
        self.more = more
        # while it is stopped its port is given to nobody else
        port = socket.socket()
        port.bind(("localhost", 0))
        port.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        weakref.finalize(self, port.close)
        self.port: int = port.getsockname()[1]
        self._serving: tuple[BaseWSGIServer, threading.Thread] | None = None
        self.start()

    @property
    def url(self) -> str:
        return f"http://localhost:{self.port}/"

    def application(self) -> Flask:
        """What is served."""
        return application(self.folder, *self.more)

    def start(self) -> None:
        """Serve, at the same address as before."""
        server = make_server("localhost", self.port, self.application(), threaded=True)
        thread = threading.Thread(target=server.serve_forever, daemon=True)
        thread.start()
        self._serving = server, thread

    def stop(self) -> None:
        if self._serving:
            server, thread = self._serving
            server.shutdown()
            thread.join()  # it lets go of the port at its end
            self._serving = None


def serve(port: int, lan: bool) -> int:
    """Build, serve until interrupted, rebuild on every change. ``lan`` serves phones on the local network too."""
    changed = threading.Condition()
    app = application(dist.build())
    reload.install(app, dist.DIST, changed)
    reload.watch(changed)
    host = _lan_address() if lan else "localhost"
    context = certificate.context(host) if lan else None
    try:
        server = make_server("0.0.0.0" if lan else "localhost", port, app, threaded=True, ssl_context=context)
    except (OSError, SystemExit):
        raise environment.SetupError(f"Port {port} is taken: choose another with --port") from None
    _introduce(f"{'https' if lan else 'http'}://{host}:{port}/", port, lan)
    server.serve_forever()
    return 0


def _introduce(address: str, port: int, lan: bool) -> None:
    segno.make(address, error="l").terminal(compact=True)
    if lan:
        needs = (
            f"A phone on this network has to trust {certificate.AUTHORITY}: send it there, then\n"
            "  Android: Settings, Security, Install a certificate, CA certificate\n"
            "  iPhone: install the profile, then Settings, General, About, Certificate Trust Settings\n"
            "and open the address. Without the trust neither the sensors nor the offline copy work.\n"
            f"It is good for {certificate.DAYS} days and for this address alone; take it off the phone when you are done."
        )
    else:
        needs = (
            "A phone has to see it as localhost or over trusted https, for its sensors and the offline copy:\n"
            f"  Android on a cable: adb reverse tcp:{port} tcp:{port}, then open the address on the phone\n"
            "  any phone on this network: python3 build serve --lan"
        )
    print(f"Borrowline is at {address}\n{needs}\nCtrl+C stops it.", flush=True)


def _lan_address() -> str:
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        try:
            probe.connect(("192.0.2.1", 9))  # a documentation address; UDP sends nothing on connecting
        except OSError:
            raise environment.SetupError("This machine is on no network that a phone could share") from None
        address: str = probe.getsockname()[0]
        return address
