"""The command line: reads the arguments; each command is one function that returns an exit code."""

import argparse
import os
import sys

from limnary.commands.calc import calc
from limnary.commands.licences import licences


def parser() -> argparse.ArgumentParser:
    """The whole command line."""
    top = argparse.ArgumentParser(prog="limnary", description="Figures and records for keepers of planted tanks.")
    commands = top.add_subparsers(dest="command", required=True)
    one = commands.add_parser("calc", help="one calculation, or many with --lines")
    one.add_argument("name", nargs="?", help="the calculation's name")
    one.add_argument("--lines", action="store_true", help='one {"name","input"} a line')
    one.set_defaults(does=calc)
    words = "what the app is made of besides its own code, with versions and licences"
    commands.add_parser("licences", help=words, description=words).set_defaults(does=licences)
    _serving(commands)
    _people(commands)
    _data(commands)
    return top


def _serving(commands) -> None:
    one = _command(commands, "serve", "serve the app", "limnary.commands.serve:serve")
    one.add_argument("--port", type=_port, help="default: $PORT, else 8340")
    one.add_argument("--host", help="default: this computer only, or with --lan the home network")
    one.add_argument("--lan", action="store_true", help="HTTPS for phones on the home network")
    log = one.add_mutually_exclusive_group()
    log.add_argument(
        "--access-log", dest="logged", action="store_const", const="plain", help="print one line a request"
    )
    words = "print one JSON line a request, and messages as JSON"
    log.add_argument("--log-json", dest="logged", action="store_const", const="json", help=words)
    one.add_argument("--metrics", type=_port, metavar="PORT", help="figures about the server, on this machine alone")
    one.add_argument("--backup-to", metavar="DIR", help="where the daily backups go; `off` makes none")
    one.add_argument("--demo", action="store_true", help="with an invented fish room")
    one.add_argument("--sources", action="store_true", help="the app's modules as they are, not its build")
    words = "how phones on the home network come to trust this server, with the fingerprint to compare"
    _origin(_command(commands, "trust", words, "limnary.commands.trust:trust"))
    _command(commands, "demo", "fill an invented fish room", "limnary.commands.serve:demo").set_defaults(demo=True)


def _people(commands) -> None:
    one = _command(commands, "invite", "print a single-use link into a room", "limnary.commands.people:invite")
    one.add_argument("--owner", action="store_true", help="as an owner: recovers a room whose owner lost every phone")
    one.add_argument("--role", default="keeper", choices=["owner", "keeper", "helper", "viewer"])
    one.add_argument("--keeper", help="one more phone of this member (an id from `limnary people`)")
    one.add_argument("--hours", type=_hours, default=48, help="how long it stays open (default 48)")
    _room(one)
    _origin(one)
    _command(commands, "people", "list rooms, people and phones", "limnary.commands.people:people_of")
    one = _command(commands, "revoke", "revoke a phone's key", "limnary.commands.people:revoke")
    one.add_argument("device", help="the phone's id, from `limnary people`")


def _data(commands) -> None:
    one = _command(
        commands, "backup", "all rooms into one file, while the server runs", "limnary.commands.data:back_up"
    )
    one.add_argument("file")
    one = _command(commands, "restore", "put a backup in place (server stopped)", "limnary.commands.data:restore")
    one.add_argument("file")
    words = "whether the data, the disk, the clock, the certificate and the last backup are well; exit code 1 if not"
    _command(commands, "check", words, "limnary.commands.check:check")
    one = _command(commands, "export", "one room as an open archive (ZIP)", "limnary.commands.data:export")
    one.add_argument("file")
    _room(one)
    words = "one room's records as CSV, one file a kind"
    one = _command(commands, "export-csv", words, "limnary.commands.data:export_csv")
    one.add_argument("folder", help="a folder that is new or empty")
    _room(one)
    one = _command(commands, "labels", "labels for the tanks with QR codes, to print", "limnary.commands.labels:labels")
    one.add_argument("file", help="a file that ends with .html")
    _room(one)
    _origin(one)
    one = _command(commands, "import", "an archive as a new room, or merged into one", "limnary.commands.data:take_in")
    one.add_argument("file")
    _room(one)
    _origin(one)
    words = "readings, changes and meals from a CSV or tab-separated file; shows them, writes with --write"
    one = _command(commands, "import-readings", words, "limnary.commands.notebook:import_readings")
    one.add_argument("file")
    one.add_argument("--dates", choices=["dmy", "mdy"], help="where the dates allow both")
    one.add_argument("--decimals", choices=["comma", "point"], help="where the figures allow both")
    one.add_argument("--basis", action="append", default=[], metavar="PARAMETER=ion|n", help="how a kit reads it")
    one.add_argument("--volume", choices=["L", "US gal", "UK gal"], help="of water that was changed")
    one.add_argument("--warmth", choices=["°C", "°F"], help="of temperatures")
    one.add_argument("--tank", help="where no column names the tank")
    one.add_argument("--make", action="append", default=[], metavar="NAME=LITRES", help="a tank that is new")
    one.add_argument("--leave-out", action="append", default=[], metavar="NAME", help="a tank whose rows stay out")
    one.add_argument("--zone", help="of the times in the file, as in Europe/Berlin; default: this computer's")
    one.add_argument("--write", action="store_true", help="write what was shown")
    one.add_argument("--take-back", action="store_true", help="take back what this file brought")
    _room(one)


def _room(one: argparse.ArgumentParser) -> None:
    one.add_argument("--room", help="id or name; needed when there are several")


def _origin(one: argparse.ArgumentParser) -> None:
    one.add_argument("--origin", help="what the link starts with; default: where the server was last reached")


def _command(commands, name: str, words: str, does: str) -> argparse.ArgumentParser:
    """A command on a data folder; its module is imported only when it runs."""
    one = commands.add_parser(name, help=words, description=words)
    one.add_argument("--data", help="data folder; default: $LIMNARY_DATA, else server/data")
    one.set_defaults(does=does)
    return one


def _port(text: str) -> int:
    if text.isdecimal() and 1 <= int(text) <= 65535:
        return int(text)
    raise argparse.ArgumentTypeError("a port is a whole number from 1 to 65535")


def _hours(text: str) -> float:
    try:
        hours = float(text)
    except ValueError:
        hours = 0.0
    if 0.01 <= hours <= 720:
        return hours
    raise argparse.ArgumentTypeError("hours are a number from 0.01 to 720")


def main(argv: list[str] | None = None) -> int:
    """Run one command; the exit code is the command's own."""
    arguments = parser().parse_args(argv)
    if arguments.command == "calc":
        if not arguments.lines and not arguments.name:
            parser().error("calc needs a name, or --lines")
        return calc(arguments)
    if arguments.command == "licences":
        return licences(arguments)
    return _run_on_data(arguments)


def _run_on_data(arguments: argparse.Namespace) -> int:
    from importlib import import_module

    from limnary.errors import LimnaryError
    from limnary.serve import CannotStart

    module, function = arguments.does.split(":")
    try:
        return getattr(import_module(module), function)(arguments)
    except LimnaryError as no:
        print(f"limnary: {no.title}. {no.detail}".rstrip(". "), file=sys.stderr)
        return 1
    except CannotStart as no:
        print(f"limnary: {no}", file=sys.stderr)
        return 1
    except KeyboardInterrupt:
        return 130
    except BrokenPipeError:
        # The reader of our output has closed the pipe, as `head` does: stop without an error message.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 141


if __name__ == "__main__":
    sys.exit(main())
