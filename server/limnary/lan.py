"""HTTPS for phones on the home network: a local authority made here, and a short-lived certificate from it.

A phone lets the app work offline only over HTTPS. No public authority certifies a home address, so this
computer makes its own authority, which may sign only home addresses and .local names (RFC 5280, 4.2.1.10).
"""

import ipaddress
import logging
import os
import socket
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

log = logging.getLogger("limnary")
AUTHORITY, CERTIFICATE = "authority.crt", "server.pem"
# Each phone trusts the authority by hand, so it lasts long; what it may sign is narrow.
AUTHORITY_DAYS = 3650
# Owners hear of its end so early: then every phone must trust a new one.
AUTHORITY_NOTICE_DAYS = 60
CERTIFICATE_DAYS = 30
# A running server makes a new certificate when the old one has so much left.
RENEW_DAYS = 10
# RFC 1918, RFC 3927, RFC 4193 and loopback.
HOME_NETWORKS = [
    "10.0.0.0/8",
    "172.16.0.0/12",
    "192.168.0.0/16",
    "169.254.0.0/16",
    "127.0.0.0/8",
    "fc00::/7",
    "::1/128",
]
HOME_NAMES = ["local", "localhost"]


def home_address() -> str:
    """This computer's address on its default network; no packet is sent."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        try:
            probe.connect(("192.0.2.1", 9))  # TEST-NET-1, RFC 5737
            return probe.getsockname()[0]
        except OSError:
            return "127.0.0.1"


def is_home(address: str) -> bool:
    """Whether the authority may sign for this address."""
    return any(ipaddress.ip_address(address) in ipaddress.ip_network(net) for net in HOME_NETWORKS)


def certificates(folder: Path, address: str, now: datetime | None = None) -> tuple[Path, Path]:
    """The authority's certificate (kept between starts), and a new certificate for `address` with its key.

    Certificate and key share one file, which is replaced in one step: a server that reads it at each new connection
    never meets a certificate beside the key of another.
    """
    now = now or datetime.now(UTC)
    folder.mkdir(parents=True, exist_ok=True, mode=0o700)
    authority, authority_key = _authority(folder, now)
    key = ec.generate_private_key(ec.SECP256R1())
    certificate = _sign(_leaf(address, now), key.public_key(), authority.subject, authority_key)
    whole = _key_bytes(key) + certificate.public_bytes(_PEM) + authority.public_bytes(_PEM)
    for former in ("server.crt", "server.key"):
        (folder / former).unlink(missing_ok=True)
    return folder / AUTHORITY, _write(folder / CERTIFICATE, whole)


def authority_of(folder: Path) -> Path | None:
    """The authority's certificate in a data folder; None if the server never served the home network."""
    path = folder / "lan" / AUTHORITY
    return path if path.is_file() else None


@dataclass(frozen=True)
class Ends:
    """When the server's certificate and its authority end."""

    certificate: datetime
    authority: datetime


def ends(folder: Path) -> Ends | None:
    """When what lies in the data folder `folder` ends; None if there is nothing."""
    made = [folder / "lan" / name for name in (CERTIFICATE, AUTHORITY)]
    if not all(path.is_file() for path in made):
        return None
    return Ends(*(_load(path).not_valid_after_utc for path in made))


class HomeCertificate:
    """The certificate of a running server: `renew_if_due` replaces it before it ends, and when the address changes."""

    def __init__(self, folder: Path, clock: Callable[[], int], address: Callable[[], str] = home_address):
        self.folder, self.clock, self.address = folder, clock, address

    def renew_if_due(self) -> None:
        """Make a new certificate if the old one ends soon, or does not name this computer's address of now."""
        now, address = datetime.fromtimestamp(self.clock() / 1000, UTC), self.address()
        found = _load(self.folder / CERTIFICATE)
        named = found.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
        # Without a network the address is this computer's own, which every certificate names.
        known = not is_home(address) or ipaddress.ip_address(address) in named.get_values_for_type(x509.IPAddress)
        if known and found.not_valid_after_utc - now > timedelta(days=RENEW_DAYS):
            return
        certificates(self.folder, address, now)
        log.info("a new certificate for %s", address)


def fingerprint(certificate: Path) -> str:
    """SHA-256 of a certificate, as phones show it."""
    return _load(certificate).fingerprint(hashes.SHA256()).hex(":").upper()


def _load(path: Path) -> x509.Certificate:
    return x509.load_pem_x509_certificate(path.read_bytes())


_PEM = serialization.Encoding.PEM


def _authority(folder: Path, now: datetime) -> tuple[x509.Certificate, ec.EllipticCurvePrivateKey]:
    crt, key_file = folder / AUTHORITY, folder / "authority.key"
    if crt.is_file() and key_file.is_file():
        found, key = _load(crt), serialization.load_pem_private_key(key_file.read_bytes(), password=None)
        # A power cut between the two files leaves a key that is not the certificate's.
        if (
            found.not_valid_after_utc > now + timedelta(days=CERTIFICATE_DAYS)
            and found.public_key() == key.public_key()
        ):
            return found, key
    key = ec.generate_private_key(ec.SECP256R1())
    name = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, f"Limnary on {socket.gethostname()[:40]}")])
    builder = (
        x509.CertificateBuilder()
        .subject_name(name)
        .not_valid_before(now - timedelta(hours=1))
        .not_valid_after(now + timedelta(days=AUTHORITY_DAYS))
        .add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
        .add_extension(_usage(key_cert_sign=True, crl_sign=True), critical=True)
        .add_extension(_home_only(), critical=True)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
    )
    made = _sign(builder, key.public_key(), name, key)
    _write(key_file, _key_bytes(key))
    _write(crt, made.public_bytes(_PEM))
    return made, key


def _home_only() -> x509.NameConstraints:
    networks = [x509.IPAddress(ipaddress.ip_network(net)) for net in HOME_NETWORKS]
    names = [x509.DNSName(name) for name in HOME_NAMES]
    return x509.NameConstraints(permitted_subtrees=[*networks, *names], excluded_subtrees=None)


def _leaf(address: str, now: datetime) -> x509.CertificateBuilder:
    host = socket.gethostname().split(".")[0].lower()
    addresses = {ipaddress.ip_address(text) for text in (address, "127.0.0.1") if is_home(text)}
    names = ["localhost"] + ([f"{host}.local"] if host.replace("-", "").isalnum() else [])
    subject = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, address)])
    alternatives = [*map(x509.DNSName, names), *map(x509.IPAddress, sorted(addresses, key=str))]
    return (
        x509.CertificateBuilder()
        .subject_name(subject)
        .not_valid_before(now - timedelta(hours=1))
        .not_valid_after(now + timedelta(days=CERTIFICATE_DAYS))
        .add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
        .add_extension(_usage(digital_signature=True), critical=True)
        .add_extension(x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False)
        .add_extension(x509.SubjectAlternativeName(alternatives), critical=False)
    )


def _sign(builder: x509.CertificateBuilder, public, issuer: x509.Name, key) -> x509.Certificate:
    serial = x509.random_serial_number()
    issued_by = x509.AuthorityKeyIdentifier.from_issuer_public_key(key.public_key())
    named = builder.issuer_name(issuer).public_key(public).serial_number(serial)
    return named.add_extension(issued_by, critical=False).sign(key, hashes.SHA256())


def _usage(**granted: bool) -> x509.KeyUsage:
    names = (
        *("digital_signature", "content_commitment", "key_encipherment", "data_encipherment", "key_agreement"),
        *("key_cert_sign", "crl_sign", "encipher_only", "decipher_only"),
    )
    return x509.KeyUsage(**{name: granted.get(name, False) for name in names})


def _key_bytes(key: ec.EllipticCurvePrivateKey) -> bytes:
    plain = serialization.NoEncryption()
    return key.private_bytes(_PEM, serialization.PrivateFormat.PKCS8, plain)


def _write(path: Path, data: bytes) -> Path:
    """Replace a file in one step; no other user can read it, not even while it is being written."""
    part = path.with_name(path.name + ".part")
    part.unlink(missing_ok=True)
    handle = os.open(part, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    with os.fdopen(handle, "wb") as out:
        out.write(data)
        out.flush()
        os.fsync(out.fileno())
    os.replace(part, path)
    return path
