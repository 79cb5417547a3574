"""The authority for the home network: signs home addresses only, is renewed in time and unnoticed, stays private."""

import http.client
import json
import ssl
import time
from datetime import UTC, datetime, timedelta

import pytest
from cryptography import x509
from cryptography.hazmat.primitives.serialization import load_pem_private_key
from limnary import lan
from limnary.serve import whole_certificate
from rogue import signed_for
from started_server import RealServer

NOW = datetime(2026, 5, 28, tzinfo=UTC)


def load(path):
    return x509.load_pem_x509_certificate(path.read_bytes())


def test_the_authority_is_kept_and_the_certificate_is_fresh(tmp_path):
    authority, certificate = lan.certificates(tmp_path, "192.168.1.20", NOW)
    first = load(authority), load(certificate)
    again = [load(path) for path in lan.certificates(tmp_path, "192.168.1.20", NOW + timedelta(days=3))]
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
    _, certificate = lan.certificates(tmp_path, "192.168.1.20", NOW)
    names = load(certificate).extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    assert {str(ip) for ip in names.get_values_for_type(x509.IPAddress)} == {"127.0.0.1", "192.168.1.20"}
    assert "localhost" in names.get_values_for_type(x509.DNSName)
    assert load(certificate).public_key() == load_pem_private_key(certificate.read_bytes(), None).public_key()


@pytest.mark.parametrize(("address", "home"), [("192.168.7.7", True), ("172.31.0.1", True), ("8.8.8.8", False)])
def test_what_is_home(address, home):
    assert lan.is_home(address) is home


def test_fingerprint_as_phones_show_it(tmp_path):
    authority = lan.certificates(tmp_path, "10.0.0.5", NOW)[0]
    assert len(lan.fingerprint(authority).split(":")) == 32


def handshake(certificate, authority, name: str) -> None:
    """A phone that trusts the authority opens `name` at a server that shows the certificate; ssl.SSLError."""
    server_side = ssl.create_default_context(ssl.Purpose.CLIENT_AUTH)
    server_side.load_cert_chain(certificate)
    to_server, to_phone = ssl.MemoryBIO(), ssl.MemoryBIO()
    server = server_side.wrap_bio(to_server, to_phone, server_side=True)
    phone = ssl.create_default_context(cafile=str(authority)).wrap_bio(to_phone, to_server, server_hostname=name)
    for _ in range(3):
        for side in (phone, server):
            try:
                side.do_handshake()
            except ssl.SSLWantReadError:
                continue


IP = x509.IPAddress


@pytest.mark.parametrize(
    ("signed", "asked", "refused"),
    [
        (x509.DNSName("bank.example"), "bank.example", True),
        (x509.DNSName("*.bank.example"), "www.bank.example", True),
        (IP(lan.ipaddress.ip_address("203.0.113.7")), "203.0.113.7", True),
        (x509.DNSName("tanks.local"), "tanks.local", False),
        (IP(lan.ipaddress.ip_address("10.1.2.3")), "10.1.2.3", False),
    ],
)
def test_a_phone_that_trusts_it_refuses_any_name_outside_the_home(tmp_path, signed, asked, refused):
    rogue = signed_for(tmp_path, signed)
    if refused:
        with pytest.raises(ssl.SSLCertVerificationError, match="permitted subtree violation"):
            handshake(rogue, tmp_path / lan.AUTHORITY, asked)
    else:
        handshake(rogue, tmp_path / lan.AUTHORITY, asked)


class Network:
    """A computer on a home network: its clock, and the address that it has now."""

    def __init__(self, folder):
        self.at, self.address = NOW, "192.168.1.20"
        lan.certificates(folder, self.address, NOW)
        self.certificate = folder / lan.CERTIFICATE
        self.job = lan.HomeCertificate(folder, lambda: round(self.at.timestamp() * 1000), lambda: self.address)

    def renewed(self) -> bool:
        before = load(self.certificate).serial_number
        self.job.renew_if_due()
        return load(self.certificate).serial_number != before


def test_it_is_renewed_in_time_and_not_before(tmp_path):
    home = Network(tmp_path)
    days = [home.renewed() for home.at in (NOW + timedelta(days=day) for day in range(1, 80))]
    assert [day for day, new in enumerate(days, 1) if new] == [20, 40, 60]


def test_it_is_renewed_when_the_address_changes(tmp_path):
    home = Network(tmp_path)
    assert not home.renewed()
    for address, renewed in (("192.168.1.21", True), ("192.168.1.21", False), ("127.0.0.1", False), ("8.8.8.8", False)):
        home.address = address
        assert home.renewed() is renewed, address


def test_a_key_that_is_not_the_authoritys_makes_a_new_authority(tmp_path):
    old = load(lan.certificates(tmp_path, "10.0.0.5", NOW)[0])
    (tmp_path / "authority.key").write_bytes(lan._key_bytes(lan.ec.generate_private_key(lan.ec.SECP256R1())))
    new, certificate = (load(path) for path in lan.certificates(tmp_path, "10.0.0.5", NOW))
    assert new.serial_number != old.serial_number
    certificate.verify_directly_issued_by(new)


def test_a_certificate_renewed_while_it_is_read_is_read_again(tmp_path):
    for name in ("old", "new", "other"):
        (tmp_path / name).mkdir()
    old, new, other = (lan.certificates(tmp_path / name, "10.0.0.5", NOW)[1] for name in ("old", "new", "other"))
    reads = iter([(old, new), (new, new), (old, new), (new, other)])

    def read():
        context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
        context.load_cert_chain(*next(reads))
        return context

    assert isinstance(whole_certificate(None, read), ssl.SSLContext)
    with pytest.raises(ssl.SSLError):  # a file that stays wrong is not read for ever
        whole_certificate(None, read)


# Each tick finds the certificate due.
ALWAYS_DUE = "from limnary import lan, upkeep; lan.RENEW_DAYS = 99; upkeep.EVERY_S = 0.2"


def test_it_is_renewed_while_phones_are_connected_and_none_notices(tmp_path):
    server = RealServer(tmp_path / "data", "--lan", scheme="https", first=ALWAYS_DUE).start()
    try:
        trusting = ssl.create_default_context(cafile=str(tmp_path / "data" / "lan" / lan.AUTHORITY))

        def connected():
            phone = http.client.HTTPSConnection("127.0.0.1", server.port, context=trusting, timeout=30)
            phone.connect()
            return phone, phone.sock.getpeercert(binary_form=True)

        def well(phone):
            phone.request("GET", "/healthz")
            answer = phone.getresponse()
            return json.loads(answer.read())["status"] == "ok" and answer.status == 200

        before, first = connected()
        sending, _ = connected()
        body = json.dumps({"tan_mg_n_l": 0.5, "ph": 7.8, "temperature_c": 25}).encode()
        sending.putrequest("POST", "/api/v1/calc/free_ammonia")
        sending.putheader("Content-Type", "application/json")
        sending.putheader("Content-Length", str(len(body)))
        sending.endheaders(body[:10])
        until = time.monotonic() + 60
        seen = {first}
        while len(seen) < 3 and time.monotonic() < until:
            assert well(before), "a phone that was connected goes on"
            after, its = connected()
            assert well(after)
            after.close()
            seen.add(its)
        assert len(seen) >= 3, "renewed twice while the server ran"
        sending.send(body[10:])
        assert sending.getresponse().status == 200, "what was on its way arrives"
        for phone in (before, sending):
            phone.close()
        assert "Traceback" not in server.out
    finally:
        assert server.stop() == 0
