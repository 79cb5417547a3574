"""Inside floor area of every straight-walled tank shape."""

import math

from limnary.calc.refusal import Refusal


def circular_segment_cm2(chord_cm: float, sagitta_cm: float) -> float:
    """Area between an arc and its chord.

    r = (c^2/4 + s^2) / (2 s);  angle = 4 atan(2 s / c);  A = r^2/2 (angle - sin angle)
    chord c [cm] > 0, sagitta s [cm] > 0, at most a half circle (s <= c/2) for tanks.

    >>> round(circular_segment_cm2(2, 1), 6)
    1.570796
    """
    radius = (chord_cm * chord_cm / 4 + sagitta_cm * sagitta_cm) / (2 * sagitta_cm)
    angle = 4 * math.atan(2 * sagitta_cm / chord_cm)
    return radius * radius / 2 * (angle - math.sin(angle))


def floor_cm2(shape: str, measures: dict, glass_cm: float) -> float:
    """Inside floor area of a straight-walled tank [cm²] from its measures [cm] and the glass to take off.

    `glass_cm` is 0 for inside measures. Curved panes are arcs of a circle; inner and outer face have the
    same centre. Raises Refusal("glass_too_thick") when nothing is left inside.
    """
    return _FLOORS[shape](measures, glass_cm)


def _cuboid(measures: dict, glass: float) -> float:
    return _left(measures["length_cm"] - 2 * glass) * _left(measures["width_cm"] - 2 * glass)


def _cylinder(measures: dict, glass: float) -> float:
    radius = _left(measures["diameter_cm"] / 2 - glass)
    return math.pi * radius * radius


def _bow_front(measures: dict, glass: float) -> float:
    length, width, bow = measures["length_cm"], measures["width_cm"], measures["bow_cm"]
    if bow > length / 2:
        raise Refusal("bow_too_deep")
    chord = _left(length - 2 * glass)
    radius = (length * length / 4 + bow * bow) / (2 * bow) - glass
    half = chord / 2
    sagitta = half * half / (radius + math.sqrt(max(0.0, radius * radius - half * half)))
    ends = _left(width + bow - 2 * glass - sagitta)
    return chord * ends + circular_segment_cm2(chord, sagitta)


def _half_round(measures: dict, glass: float) -> float:
    # The flat back takes a strip off the half circle that the curved pane encloses.
    radius = measures["diameter_cm"] / 2 - glass
    sagitta = _left(radius - glass)
    return circular_segment_cm2(2 * math.sqrt(radius * radius - glass * glass), sagitta)


def _quarter_round(measures: dict, glass: float) -> float:
    # Both straight panes take a strip. What is left is the sector between them less two triangles at the corner.
    radius = _left(measures["length_cm"] - glass)
    reach = math.sqrt(max(0.0, radius * radius - glass * glass))
    _left(reach - glass)
    angle = math.atan2(reach, glass) - math.atan2(glass, reach)
    return radius * radius / 2 * angle - glass * (reach - glass)


def _hexagon(measures: dict, glass: float) -> float:
    across = _left(measures["width_cm"] - 2 * glass)
    return math.sqrt(3) / 2 * across * across


_FLOORS = {
    "cuboid": _cuboid,
    "cylinder": _cylinder,
    "bow_front": _bow_front,
    "half_round": _half_round,
    "quarter_round": _quarter_round,
    "hexagon": _hexagon,
}


def _left(inside_cm: float) -> float:
    """The inside length; Refusal if the glass leaves nothing."""
    if inside_cm <= 0:
        raise Refusal("glass_too_thick")
    return inside_cm
