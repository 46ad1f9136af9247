"""Lets phones on the local network trust this machine for a month: an authority that can sign for this machine alone."""

import datetime as dt
import ipaddress
import os
import socket
import ssl
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.hashes import SHA256
from cryptography.hazmat.primitives.serialization import Encoding, NoEncryption, PrivateFormat, load_pem_private_key
from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

import environment

AUTHORITY = environment.VENV / "authority.pem"
DAYS = 30
DAY = dt.timedelta(days=1)


def context(host: str) -> ssl.SSLContext:
    """For a server at the address ``host``. The authority stays as long as it is good: a phone is made to trust it once."""
    names = _names(host)
    try:
        authority, key = _kept()
    except (OSError, ValueError):
        authority, key = _authority(names)
    if authority.not_valid_after_utc < _now() + DAY or _permitted(authority) != _constrained(names):
        authority, key = _authority(names)
    own = ec.generate_private_key(ec.SECP256R1())
    usage = x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH])
    signed = (
        _blank(host, own.public_key(), authority.subject, authority.not_valid_after_utc)
        .add_extension(x509.SubjectAlternativeName(names), critical=False)
        .add_extension(usage, critical=False)
        .add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
        .add_extension(x509.AuthorityKeyIdentifier.from_issuer_public_key(key.public_key()), critical=False)
        .sign(key, SHA256())
    )
    chain = AUTHORITY.with_name("server.pem")
    _write(chain, own, signed)
    made = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    made.load_cert_chain(chain)
    return made


def _now() -> dt.datetime:
    return dt.datetime.now(dt.UTC)


def _names(host: str) -> list[x509.GeneralName]:
    """The address, and the machine's own name where it has one that can be looked up."""
    name = socket.gethostname()
    plain = name if name.replace("-", "").replace(".", "").isalnum() and name.isascii() else "localhost"
    return [x509.IPAddress(ipaddress.ip_address(host)), x509.DNSName(plain)]


def _constrained(names: list[x509.GeneralName]) -> list[x509.GeneralName]:
    def alone(name: x509.GeneralName) -> x509.GeneralName:
        return x509.IPAddress(ipaddress.ip_network(name.value)) if isinstance(name, x509.IPAddress) else name

    return [alone(name) for name in names]


def _permitted(authority: x509.Certificate) -> list[x509.GeneralName] | None:
    try:
        return authority.extensions.get_extension_for_class(x509.NameConstraints).value.permitted_subtrees
    except x509.ExtensionNotFound:
        return None


def _kept() -> tuple[x509.Certificate, ec.EllipticCurvePrivateKey]:
    key = load_pem_private_key(AUTHORITY.with_suffix(".key").read_bytes(), password=None)
    if not isinstance(key, ec.EllipticCurvePrivateKey):
        raise ValueError("not a key of ours")
    return x509.load_pem_x509_certificate(AUTHORITY.read_bytes()), key


def _authority(names: list[x509.GeneralName]) -> tuple[x509.Certificate, ec.EllipticCurvePrivateKey]:
    key = ec.generate_private_key(ec.SECP256R1())
    subject = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, "Borrowline on this machine")])
    usage = x509.KeyUsage(
        digital_signature=False,
        content_commitment=False,
        key_encipherment=False,
        data_encipherment=False,
        key_agreement=False,
        key_cert_sign=True,
        crl_sign=False,
        encipher_only=False,
        decipher_only=False,
    )
    authority = (
        _blank(subject, key.public_key(), subject, _now() + DAYS * DAY)
        .add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
        .add_extension(x509.NameConstraints(_constrained(names), excluded_subtrees=None), critical=True)
        .add_extension(usage, critical=True)
        .sign(key, SHA256())
    )
    _write(AUTHORITY.with_suffix(".key"), key)
    AUTHORITY.write_bytes(authority.public_bytes(Encoding.PEM))
    return authority, key


def _blank(
    subject: x509.Name | str, key: ec.EllipticCurvePublicKey, issuer: x509.Name, until: dt.datetime
) -> x509.CertificateBuilder:
    if isinstance(subject, str):
        subject = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, subject)])
    return (
        x509.CertificateBuilder()
        .subject_name(subject)
        .issuer_name(issuer)
        .public_key(key)
        .serial_number(x509.random_serial_number())
        .not_valid_before(_now() - DAY)  # a phone's clock may be behind
        .not_valid_after(until)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key), critical=False)
    )


def _write(path: Path, key: ec.EllipticCurvePrivateKey, *signed: x509.Certificate) -> None:
    """A key and what was signed for it, readable by their owner alone from the first byte."""
    path.unlink(missing_ok=True)
    text = key.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, NoEncryption())
    with os.fdopen(os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "wb") as file:
        file.write(text + b"".join(each.public_bytes(Encoding.PEM) for each in signed))
