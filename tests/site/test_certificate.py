"""What a phone is made to trust is good for this machine, a month, and nothing else."""

import datetime as dt
import ssl

import pytest
from cryptography import x509
from cryptography.hazmat.primitives.serialization import load_pem_private_key

import certificate

HOST = "192.0.2.7"  # a documentation address, RFC 5737


@pytest.fixture
def authority(monkeypatch, tmp_path):
    monkeypatch.setattr(certificate, "AUTHORITY", tmp_path / "authority.pem")
    return certificate.AUTHORITY


def trusted(authority, server, host):
    """Whether OpenSSL, made to trust the authority alone, takes the server for the host."""
    client = ssl.create_default_context(cafile=authority)
    away, back = ssl.MemoryBIO(), ssl.MemoryBIO()
    ours = client.wrap_bio(away, back, server_hostname=host)
    theirs = server.wrap_bio(back, away, server_side=True)
    for _ in range(4):
        for side in (ours, theirs):
            try:
                side.do_handshake()
            except ssl.SSLWantReadError:
                pass
            except ssl.SSLCertVerificationError:
                return False
    return ours.getpeercert()["notAfter"] != ""


def test_it_is_trusted_at_its_address_alone_and_stays(authority):
    assert trusted(authority, certificate.context(HOST), HOST)
    first = authority.read_bytes()
    assert trusted(authority, certificate.context(HOST), HOST)
    assert authority.read_bytes() == first
    certificate.context("192.0.2.8")  # the machine moved to another network
    assert authority.read_bytes() != first


def test_nobody_else_can_be_signed_for(authority, monkeypatch):
    certificate.context(HOST)
    kept = authority.read_bytes()
    monkeypatch.setattr(certificate, "_permitted", lambda _: None)
    monkeypatch.setattr(certificate, "_constrained", lambda _: None)  # so that the authority is kept for another host
    elsewhere = certificate.context("192.0.2.9")
    assert authority.read_bytes() == kept
    assert not trusted(authority, elsewhere, "192.0.2.9")


def test_its_keys_are_the_owners_alone_and_it_ends_within_a_month(authority):
    certificate.context(HOST)
    for name in ("authority.key", "server.pem"):
        path = authority.with_name(name)
        assert path.stat().st_mode & 0o777 == 0o600
        load_pem_private_key(path.read_bytes(), password=None)
    found = x509.load_pem_x509_certificate(authority.read_bytes())
    assert found.not_valid_after_utc - dt.datetime.now(dt.UTC) <= dt.timedelta(days=30)
    server = x509.load_pem_x509_certificate(authority.with_name("server.pem").read_bytes())
    assert server.not_valid_after_utc <= found.not_valid_after_utc


def test_one_that_is_about_to_end_is_made_anew(authority, monkeypatch):
    certificate.context(HOST)
    first = authority.read_bytes()
    late = certificate._now() + 29.5 * certificate.DAY
    monkeypatch.setattr(certificate, "_now", lambda: late)
    certificate.context(HOST)
    assert authority.read_bytes() != first
