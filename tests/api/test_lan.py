"""The authority for the home network: signs home addresses only, is renewed in time, stays private."""

from datetime import UTC, datetime, timedelta

import pytest
from cryptography import x509
from cryptography.hazmat.primitives.serialization import load_pem_private_key
from limnary import lan

NOW = datetime(2026, 5, 28, tzinfo=UTC)


def load(path):
    return x509.load_pem_x509_certificate(path.read_bytes())


def test_the_authority_is_kept_and_the_certificate_is_fresh(tmp_path):
    authority, certificate, _ = lan.certificates(tmp_path, "192.168.1.20", NOW)
    first = load(authority), load(certificate)
    again = [load(path) for path in lan.certificates(tmp_path, "192.168.1.20", NOW + timedelta(days=3))[:2]]
    assert again[0] == first[0]
    assert again[1].serial_number != first[1].serial_number
    assert again[1].not_valid_after_utc == NOW + timedelta(days=3 + lan.CERTIFICATE_DAYS)
    again[1].verify_directly_issued_by(first[0])


def test_the_authority_is_renewed_before_it_ends(tmp_path):
    old = load(lan.certificates(tmp_path, "10.0.0.5", NOW)[0])
    late = NOW + timedelta(days=lan.AUTHORITY_DAYS - 10)
    new = load(lan.certificates(tmp_path, "10.0.0.5", late)[0])
    assert new.serial_number != old.serial_number
    assert new.not_valid_after_utc > late + timedelta(days=600)


def test_it_may_sign_for_home_only(tmp_path):
    authority = load(lan.certificates(tmp_path, "192.168.1.20", NOW)[0])
    limits = authority.extensions.get_extension_for_class(x509.NameConstraints)
    assert limits.critical
    assert {str(one.value) for one in limits.value.permitted_subtrees} == {*lan.HOME_NETWORKS, *lan.HOME_NAMES}
    assert authority.extensions.get_extension_for_class(x509.BasicConstraints).value.path_length == 0


def test_the_certificate_names_this_address(tmp_path):
    _, certificate, key = lan.certificates(tmp_path, "192.168.1.20", NOW)
    names = load(certificate).extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    assert {str(ip) for ip in names.get_values_for_type(x509.IPAddress)} == {"127.0.0.1", "192.168.1.20"}
    assert "localhost" in names.get_values_for_type(x509.DNSName)
    assert load(certificate).public_key() == load_pem_private_key(key.read_bytes(), None).public_key()


@pytest.mark.parametrize(("address", "home"), [("192.168.7.7", True), ("172.31.0.1", True), ("8.8.8.8", False)])
def test_what_is_home(address, home):
    assert lan.is_home(address) is home


def test_fingerprint_as_phones_show_it(tmp_path):
    authority = lan.certificates(tmp_path, "10.0.0.5", NOW)[0]
    assert len(lan.fingerprint(authority).split(":")) == 32
