"""The rules of sync: checks of ops, stamps and their clamp, moved stamps, corrections. Pure; see store/README.md."""
