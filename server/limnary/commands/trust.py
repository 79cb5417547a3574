"""`limnary trust`: how phones on the home network come to trust this server."""

import argparse
from pathlib import Path

from limnary import lan, links
from limnary.commands.data import data_dir
from limnary.errors import NotFound


def trust(arguments: argparse.Namespace) -> int:
    """Print what trusting asks, the fingerprint to compare, and the QR code of the page that leads a phone through."""
    folder = data_dir(arguments)
    authority = lan.authority_of(folder)
    if authority is None:
        raise NotFound(f"There is no authority in {folder.resolve()}: the server makes one when it starts with --lan")
    origin = links.origin(folder, arguments.origin)
    print(said(authority, origin).strip())
    print(f"\nThe page for phones:\n  {origin}/trust")
    print(links.qr_text(f"{origin}/trust"), end="")
    return 0


def said(authority: Path, origin: str) -> str:
    """What trusting asks, and its steps, for the terminal."""
    return f"""
HTTPS on the home network, and what it asks of you
  A phone works offline with this app only over HTTPS, and no public authority vouches for a home
  address. So this computer made its own certificate authority. Until a phone trusts it, the phone warns
  and does not work offline. Whoever holds the authority's key ({authority.with_suffix(".key")})
  could pose as any address in your home network to that phone, but not as any site on the internet: the
  authority may sign for home addresses and .local names only. Keep the key here; remove the authority
  from a phone that no longer uses this server.
  1. On the phone open {origin}/trust (accept the warning once). The page leads through the steps
     and says whether the phone trusts this server.
  2. Compare the SHA-256 fingerprint that it shows with this one before you trust it:
     {lan.fingerprint(authority)}
  3. Then open the link. {origin}/check says what else a phone lacks.
  The server's own certificate lasts {lan.CERTIFICATE_DAYS} days; a running server renews it, and no phone notices.
  The authority lasts {lan.AUTHORITY_DAYS // 365} years."""
