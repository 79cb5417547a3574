"""A browser that speaks the W3C WebDriver protocol, in a keeper's words; each engine brings its own way to be asked."""

import time

PATIENCE_S = 180
ELEMENT = "element-6066-11e4-a52e-4f735466cecf"

PAGE = """return [location.href, performance.timeOrigin, document.getElementById('app')?.innerText ?? '',
  document.querySelectorAll('[aria-busy=true]').length, performance.now()]"""

LISTEN = """const { dataset } = document.documentElement;
  dataset.heard = "";
  addEventListener("click", (event) => {
    const dropped = event.defaultPrevented && !event.target.closest("a");
    dataset.heard ||= dropped ? "dropped" : "heard";
  }, { once: true });
  return performance.timeOrigin;"""
HEARD = "return [performance.timeOrigin, document.documentElement.dataset.heard]"


class Refused(Exception):
    """The driver's own error, by its name in the protocol."""

    def __init__(self, error: str, message: str):
        super().__init__(f"{error}: {message}")
        self.error = error


class Driven:
    """Verbs that find their target by its words. `_ask` sends one command of the protocol."""

    # The browser's own buttons

    def open(self, url: str) -> None:
        self._ask("POST", "/url", {"url": url})

    def back(self) -> None:
        self._ask("POST", "/back", {})

    def forward(self) -> None:
        self._ask("POST", "/forward", {})

    def reload(self) -> None:
        self.run("location.reload()")

    def tab(self) -> str:
        """Open another tab and turn to it; its handle."""
        handle = self._ask("POST", "/window/new", {"type": "tab"})["handle"]
        self.turn_to(handle)
        return handle

    def here(self) -> str:
        """The handle of this tab."""
        return self._ask("GET", "/window")

    def turn_to(self, handle: str) -> None:
        self._ask("POST", "/window", {"handle": handle})

    # What a keeper does

    def sees(self, text: str) -> None:
        """Wait until the app shows this text."""
        if not self._wait(lambda: text in self.text()):
            raise AssertionError(f"{text!r} never came; the page shows: {self.text()!r}")

    def text(self) -> str:
        """What the app shows; "" for a blank page, and for one that is left before it answers."""
        return self.run("return document.getElementById('app')?.innerText ?? ''") or ""

    def press(self, words: str) -> None:
        """Press the button or link of these words."""
        self._click(f"//*[self::button or self::a][contains(normalize-space(.), '{words}')]")

    def press_exactly(self, words: str) -> None:
        """Press the button that says this and no more."""
        self._click(f"//button[normalize-space(.) = '{words}']")

    def pick(self, words: str) -> None:
        """Choose the tile of these words."""
        self._click(f"//label[contains(., '{words}')]")

    def type(self, label: str, text: str) -> None:
        """Into the field of this label."""
        self._ask("POST", f"/element/{self._element(_field(label))}/value", {"text": text})

    def value(self, label: str) -> str:
        """What the field of this label holds."""
        return self.run("return arguments[0].value", {ELEMENT: self._element(_field(label))})

    def run(self, script: str, *arguments: object) -> object:
        """What a script answers; a page that is just being left is asked again."""
        for _ in range(100):
            try:
                return self._ask("POST", "/execute/sync", {"script": script, "args": list(arguments)})
            except Refused as no:
                if no.error not in ("javascript error", "no such window", "unknown error"):
                    raise
                time.sleep(0.1)
        raise AssertionError(f"never answered: {script}")

    def waits_for(self, script: str) -> None:
        """Wait until the script answers something true."""
        if not self._wait(lambda: self.run(script)):
            raise AssertionError(f"never came: {script}; the page shows: {self.text()!r}")

    def _click(self, path: str) -> None:
        """Click until the app has heard it: it drops what follows a tap or a turned page at once, and what is drawn
        anew between press and release hears nothing."""
        while True:
            self._stands_still()
            target = self._element(path)
            page = self.run(LISTEN)
            self._ask("POST", f"/element/{target}/click", {})
            # A page that is left before it answers has heard it.
            here, heard = self.run(HEARD) or (None, "heard")
            if heard == "heard" or here != page:
                return

    def _stands_still(self) -> None:
        """Wait until the page has looked the same for longer than the app drops taps, by the page's own clock."""
        before, since = None, 0
        while True:
            *page, now = self.run(PAGE) or (None, 0)
            if page != before:
                before, since = page, now
            elif now - since > 400:
                return
            time.sleep(0.05)

    def _element(self, path: str) -> str:
        found = []

        def look() -> bool:
            found[:] = self._ask("POST", "/elements", {"using": "xpath", "value": path})
            return bool(found)

        if not self._wait(look):
            raise AssertionError(f"{path} never came; the page shows: {self.text()!r}")
        return found[0][ELEMENT]

    def _wait(self, holds) -> bool:
        end = time.monotonic() + PATIENCE_S
        while not holds():
            if time.monotonic() > end:
                return False
            time.sleep(0.1)
        return True

    def _ask(self, method: str, path: str, body: dict | None = None) -> object:
        raise NotImplementedError


def _field(label: str) -> str:
    return f"//label[contains(., '{label}')]//input | //input[@id = //label[contains(., '{label}')]/@for]"
