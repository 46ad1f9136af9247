"""Our own server says what a static host is asked to say."""

import threading

import brotli
import pytest

import headers
import offline
import reload
import server


@pytest.mark.parametrize("path", ["/", "/sw.js", "/engine/worker.js", "/app.webmanifest", "/no-such-file"])
def test_every_response_has_the_headers(dist, path):
    response = server.application(dist).test_client().get(path)
    assert {name: response.headers.get(name) for name in headers.HEADERS} == headers.HEADERS
    response.close()


@pytest.mark.parametrize(
    ("path", "kind"), [("/app.webmanifest", "application/manifest+json"), ("/engine/worker.js", "text/javascript")]
)
def test_kinds(dist, path, kind):
    response = server.application(dist).test_client().get(path)
    assert response.mimetype == kind
    response.close()


def test_it_compresses_as_a_host_does(dist):
    client = server.application(dist).test_client()
    for path in ("/", "/main.js", "/main.css"):
        sent = client.get(path, headers={"Accept-Encoding": "gzip, br"})
        assert sent.content_encoding == "br"
        assert "Accept-Encoding" in sent.vary
        assert brotli.decompress(sent.data) == client.get(path).data
    assert client.get("/icons/icon-192.png", headers={"Accept-Encoding": "br"}).content_encoding is None


@pytest.mark.parametrize("path", ["/_headers", "/../pyproject.toml", "/no-such-file"])
def test_nothing_else_is_served(dist, path):
    assert server.application(dist).test_client().get(path).status_code == 404


def test_reloading_is_the_servers_alone_and_fits_the_service_worker(dist):
    app = server.application(dist)
    reload.install(app, dist, threading.Condition())
    client = app.test_client()
    page = client.get("/").data
    assert b"/dev/reload.js" in page
    assert offline.integrity(page) in client.get("/precache.js").text
    assert b"/dev/" not in (dist / "index.html").read_bytes()
