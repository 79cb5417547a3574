"""A certificate that a thief of the home authority's key would make, for tests of what phones refuse."""

from datetime import UTC, datetime
from pathlib import Path

from cryptography import x509
from limnary import lan


def signed_for(folder: Path, name: x509.GeneralName) -> Path:
    """A server's certificate and key for any name at all, signed with the key of the authority in `folder`."""
    now = datetime.now(UTC)
    authority, key = lan._authority(folder, now)
    usual = lan._leaf("192.168.1.20", now)
    # OpenSSL reads a common name as a name of the server where there is no DNS name: one of home takes it out of play.
    leaf = x509.CertificateBuilder(
        subject_name=x509.Name([x509.NameAttribute(x509.NameOID.COMMON_NAME, "tanks.local")]),
        not_valid_before=usual._not_valid_before,
        not_valid_after=usual._not_valid_after,
        extensions=[one for one in usual._extensions if one.oid != x509.SubjectAlternativeName.oid],
    ).add_extension(x509.SubjectAlternativeName([name]), critical=False)
    its_key = lan.ec.generate_private_key(lan.ec.SECP256R1())
    made = lan._sign(leaf, its_key.public_key(), authority.subject, key)
    path = folder / "rogue.pem"
    path.write_bytes(lan._key_bytes(its_key) + made.public_bytes(lan._PEM) + authority.public_bytes(lan._PEM))
    return path
