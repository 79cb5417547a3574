"""What each command of the command line does; limnary/cli.py only reads the arguments."""
