"""
What drawers carry, weigh and ask for, how their bottoms sag, how solid wood moves and whether cabinets stand, as
(drawer, name, value): for stock of 40 lb/ft³ | 640 kg/m³ and 1,000,000 psi | 7,000 MPa, and cabinets of 90 lb | 45 kg.
"""

import math
from collections import defaultdict

from cutlist import SOLID, bottom, pieces

GRAVITY = 9.80665
# Of each unit: density a cubic unit of length, even load a square one, stiffness, what slides are sold for, a cabinet.
OF = {
    "in": {"density": 40 / 1728, "load": 15 / 144, "stiff": 1_000_000, "ratings": (75, 100, 150, 200), "cabinet": 90},
    "mm": {"density": 640 / 1e9, "load": 73 / 1e6, "stiff": 7_000, "ratings": (35, 45, 70, 90), "cabinet": 45},
}
# Wood Handbook, FPL-GTR-190, Table 13-5: black cherry, flat sawn, a percent of moisture.
CHERRY = 0.00248


def loads(openings):
    cabinets = defaultdict(list)
    for opening in openings:
        cabinets[opening["cabinet"]].append(opening)
    for opening in openings:
        beside = [(one, drawer) for one in cabinets[opening["cabinet"]] for drawer in one["boxes"]]
        for drawer in opening["boxes"]:
            for name, value in figures(opening, drawer):
                yield drawer["drawer"], name, digits(value)
            yield drawer["drawer"], "Balance, this drawer out", digits(balance(beside, [drawer]))
            yield drawer["drawer"], "Balance, all drawers out", digits(balance(beside, [out for _, out in beside]))


def digits(value):
    """Machines differ in the last digits of their floats."""
    return float(f"{value:.11g}")


def figures(opening, drawer):
    s, unit = opening["s"], opening["unit"]
    mark = "lb" if unit == "in" else "kg"
    load, own = carried(opening, drawer), weight(opening, drawer)
    yield f"Load, {mark}", load
    yield f"Drawer's own weight, {mark}", own
    if s["slide"] != "wood runner":
        yield f"Slide rating needed, {mark}", next(rating for rating in OF[unit]["ratings"] if rating >= load + own)
    yield "Bottom sags", sag(drawer, s["bottom thickness"], load, unit)
    if s["bottom material"] in SOLID:
        yield "Bottom moves", moves(bottom(s, drawer)[1])
    if s["front material"] in SOLID:
        yield "Front moves", moves(drawer["front width" if s["front grain"] == "vertical" else "front height"])


def carried(opening, drawer):
    return float(drawer["inside width"] * drawer["inside depth"]) * OF[opening["unit"]]["load"]


def weight(opening, drawer):
    """Of its pieces as they are cut; runners stay in the case."""
    volume = sum(n * a * b * thick for part, n, a, b, thick, _ in pieces(opening["s"], drawer) if part != "Runner")
    return float(volume) * OF[opening["unit"]]["density"]


def sag(drawer, thickness, load, unit):
    """Navier's double series for a plate whose four edges rest, at its middle; Poisson's ratio 0.3."""
    a, b, t = float(drawer["inside width"]), float(drawer["inside depth"]), float(thickness)
    pressure = load * (1 if unit == "in" else GRAVITY) / (a * b)
    rigidity = OF[unit]["stiff"] * t**3 / (12 * (1 - 0.3**2))
    series = 0.0
    for m in range(1, 400, 2):
        for n in range(1, 400, 2):
            sign = 1 if ((m + n) // 2 - 1) % 2 == 0 else -1
            series += sign / (m * n * ((m / a) ** 2 + (n / b) ** 2) ** 2)
    return 16 * pressure / (math.pi**6 * rigidity) * series


def moves(across):
    """Between air of 30 and 60 % humidity at 70 °F: Wood Handbook, Eq. 4-5 and 13-2."""
    return float(across) * CHERRY * (moisture(60) - moisture(30))


def moisture(humidity):
    t = (70 - 32) / 1.8
    w = 349 + 1.29 * t + 0.0135 * t**2
    k = 0.805 + 0.000736 * t - 0.00000273 * t**2
    k1 = 6.27 - 0.00938 * t - 0.000303 * t**2
    k2 = 1.91 + 0.0407 * t - 0.000293 * t**2
    kh = k * humidity / 100
    return 1800 / w * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh**2) / (1 + k1 * kh + k1 * k2 * kh**2))


def balance(beside, out):
    """
    Moments about the cabinet's front edge: drawers that are out are full, and run out by their slides' length; the
    others are shut and empty. The cabinet's own weight lies in the middle of its first opening's depth.
    """
    first = beside[0][0]
    levers = [(OF[first["unit"]]["cabinet"], -float(first["depth"]) / 2)]
    for opening, drawer in beside:
        s = opening["s"]
        setback = s["front thickness"] if s["front style"] == "inset" else 0
        back = float(setback + drawer["box depth"] / 2)
        own = weight(opening, drawer)
        if any(one is drawer for one in out):
            levers.append((own + carried(opening, drawer), float(drawer["slide length"]) - back))
        else:
            levers.append((own, -back))
    holds = -sum(force * reach for force, reach in levers if reach < 0)
    tips = sum(force * reach for force, reach in levers if reach > 0)
    return holds / tips
