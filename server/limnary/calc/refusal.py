"""How a calculation refuses: by a code whose words are in its contract under `refusals`."""


class Refusal(ValueError):
    """The input is well formed, but no honest answer exists.

    `code` is a key of the contract's `refusals`; `field` overrides the field named there
    (for one entry of a list, as in `sources.2.litres`).
    """

    def __init__(self, code: str, field: str | None = None):
        super().__init__(code)
        self.code = code
        self.field = field
