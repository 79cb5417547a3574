"""The API: thin blueprints that parse, call and answer; no SQL and no arithmetic."""
