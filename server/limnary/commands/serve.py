"""`limnary serve` and `limnary demo`: prepare the data, print the links, serve."""

import argparse
import dataclasses
import os
import sys
from pathlib import Path

from limnary import links
from limnary.commands.data import data_dir
from limnary.config import Config
from limnary.serve import Address, check_port, holding, run
from limnary.store import Store

PORT = 8340


def serve(arguments: argparse.Namespace) -> int:
    """Serve until stopped."""
    config = _config(arguments)
    host = arguments.host or os.environ.get("LIMNARY_HOST") or ("0.0.0.0" if arguments.lan else "127.0.0.1")
    port = arguments.port or int(os.environ.get("PORT") or PORT)
    check_port(host, port)
    if config.metrics_port:
        check_port("127.0.0.1", config.metrics_port, "--metrics")
    with holding(config.data_dir):
        config, address, certificate = _address(config, host, port, arguments.lan)
        store = Store(config.data_dir, config.clock)
        lost = store.prepare()
        links.remember_origin(config.data_dir, config.origin or address.url)
        _welcome(store, config.origin or address.url, arguments.demo, arguments.lan, config)
        store.close()
        for sentence in lost:
            print(sentence, file=sys.stderr, flush=True)
        run(config, address, certificate)
    return 0


def _config(arguments: argparse.Namespace) -> Config:
    given = {"backup_to": arguments.backup_to, "metrics_port": arguments.metrics, "logged": arguments.logged}
    config = Config(data_dir=data_dir(arguments), sources=arguments.sources)
    return dataclasses.replace(config, **{name: value for name, value in given.items() if value})


def demo(arguments: argparse.Namespace) -> int:
    """Fill the invented fish room without serving it."""
    from limnary.demo import fill

    config = Config(data_dir=data_dir(arguments))
    with holding(config.data_dir):
        store = Store(config.data_dir, config.clock)
        store.prepare()
        room = fill(store)
        store.close()
    print(f"The invented fish room is in {config.data_dir} (room {room.room}); serve it with: limnary serve --demo")
    return 0


def _address(config: Config, host: str, port: int, on_lan: bool) -> tuple[Config, Address, Path | None]:
    if not on_lan:
        shown = "localhost" if host in ("0.0.0.0", "::", "127.0.0.1") else host
        return config, Address(host, port, f"http://{shown}:{port}"), None
    from limnary import lan

    here = lan.home_address()
    authority, certificate = lan.certificates(config.data_dir / "lan", here)
    return (
        dataclasses.replace(config, authority=authority),
        Address(host, port, f"https://{here}:{port}"),
        certificate,
    )


def _welcome(store: Store, origin: str, with_demo: bool, on_lan: bool, config: Config) -> None:
    print(f"Limnary is at {origin}", flush=True)
    print(f"Data folder: {config.data_dir.resolve()}")
    print(f"Daily backups: {config.backup_folder.resolve() if config.backup_folder else 'none'}")
    shown = []
    if with_demo:
        from limnary.demo import fill  # imported here, so that a start without the demo is faster

        filled = fill(store)
        shown = [links.keeper_link(store, origin, filled.room, keeper, name) for keeper, name in filled.keepers.items()]
        print("The fish room shown is invented; nothing in it was measured.")
    else:
        first = links.owner_link(store, origin)
        shown = [first] if first else []
        if not first:
            print("A new phone: open Room on a phone that is in, or run `limnary invite --owner`.")
    for link in shown:
        print(f"\nOpen this link once, as {link.whose}:\n  {link.url}")
        print(links.qr_text(link.url), end="")
    if on_lan:
        from limnary.commands.trust import said  # `cryptography` takes its time

        print(said(config.authority, origin))
    elif shown:
        print("\nThis address works on this computer. For phones on the home network start with --lan.")
    print("\nStop with Ctrl-C.", flush=True)
