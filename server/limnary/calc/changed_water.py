"""How new water moves the tank's pH and temperature, and how they settle back within about a day."""

import math

from limnary.calc.refusal import Refusal
from limnary.calc.water_after_change import water_after_change


class ChangedWater:
    """The water of one tank while changes mix in, as far as its free ammonia needs it.

    Right after a change pH and temperature are those of the closed mixture. They approach, by exp(-hours / settle_h),
    the pH that the mixture has at the tank's own carbon dioxide, and the tank's own temperature. That the approach
    is exponential and takes about a day is an assumption. Without pH and carbonate hardness of both waters, or with a
    pH and hardness that no tank has together, both stay as they are. Ammonia's own alkalinity is left out.
    """

    def __init__(self, c: dict, belief, source: dict):
        self.settle_h = c["settle_h"]
        self.begun = {"ph": belief.ph, "kh_dkh": belief.kh_dkh, "temperature_c": belief.temperature_c}
        self.source = {f"source_{name}": source.get(name) for name in ("ph", "kh_dkh")}
        self.known = None not in (belief.kh_dkh, *self.source.values())
        self.source["source_temperature_c"] = source.get("temperature_c", belief.temperature_c)
        self.replaced, self.at_h = 0.0, belief.at_h
        self.mixed, self.ph_settled = self.begun, belief.ph

    def change(self, fraction: float, at_h: float) -> None:
        """Mix `fraction` of new water in at `at_h` [h], not before the last change."""
        if not self.known or fraction == 0.0:
            return
        ph, temperature_c = self.at(at_h)
        before = {"ph": ph, "kh_dkh": self.mixed["kh_dkh"], "temperature_c": temperature_c}
        replaced = 1.0 - (1.0 - self.replaced) * (1.0 - fraction)
        try:
            mixed = water_after_change(**before, **self.source, tan_mg_n_l=0.0, fraction=fraction)
            # The tank's plants, animals and surface keep the carbon dioxide that it had before the first change.
            all_mixed = water_after_change(**self.begun, **self.source, tan_mg_n_l=0.0, fraction=replaced)
        except Refusal:
            return
        self.mixed, self.ph_settled = mixed, all_mixed["ph_settled"]
        self.replaced, self.at_h = replaced, at_h

    def at(self, at_h: float) -> tuple[float, float]:
        """(pH, temperature [°C]) at `at_h` [h]."""
        left = math.exp(-(at_h - self.at_h) / self.settle_h)
        ph = self.ph_settled + (self.mixed["ph"] - self.ph_settled) * left
        own_c = self.begun["temperature_c"]
        return ph, own_c + (self.mixed["temperature_c"] - own_c) * left
