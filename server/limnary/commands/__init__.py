"""The work of each command; limnary/cli.py only reads the arguments."""
