"""What is bought besides the wood, as (item, size, quantity); sizes stand only where the documentation tells them."""

from fractions import Fraction

from cutlist import SOLID, pull_count
from lengths import ceiling, lengths

SCREWS = {
    "in": lengths("3/8;1/2;5/8;3/4;1;1 1/4;1 1/2;1 3/4;2;2 1/4;2 1/2;3", "in"),
    "mm": lengths("10;12;16;20;25;30;35;40;45;50;60;70;80", "mm"),
}
# A screw to every 4 in of corner, 8 in of back; ends kept inside a front; into a pull; the longest into slides; a foot.
SPACED = {
    "in": {"corner": 4, "back": 8, "inside": Fraction(1, 8), "into": Fraction(1, 4), "slide": Fraction(5, 8), "run": 12},
    "mm": {"corner": 100, "back": 200, "inside": 3, "into": 6, "slide": 16, "run": 1000},
}


def hardware(openings):
    found = {}
    runs = {}
    for opening in openings:
        for drawer in opening["boxes"]:
            for item, size, count in bought(opening, drawer):
                many = found if item not in ("Edge band", "Glue") else runs
                many[item, size] = many.get((item, size), 0) + count * opening["quantity"]
    run = SPACED[openings[0]["unit"]]["run"]
    for key, long in runs.items():
        found[key] = Fraction(ceiling(long / run * 10), 10)
    return sorted(([item, size, many] for (item, size), many in found.items() if many), key=lambda row: (row[0], row[1] or 0))


def bought(opening, drawer):
    s, unit = opening["s"], opening["unit"]
    spaced = SPACED[unit]
    tall = drawer["box height"] - (s["bottom thickness"] if s["bottom fit"] == "applied" else 0)
    back = drawer["inside height"] if s["bottom fit"] == "under back" else tall
    yield from slides(s, drawer, unit)
    every_corner = 4 * max(2, ceiling(tall / spaced["corner"]))
    if s["corner joint"] in ("butt", "rabbet", "dado"):
        yield "Pocket screw" if s["corner joint"] == "butt" else "Corner nail", None, every_corner
    if s["bottom fit"] == "under back":
        yield "Bottom screw", None, bottom_screws(s, drawer, unit)
        if s["bottom material"] in SOLID:
            yield "Washer", None, bottom_screws(s, drawer, unit)
    if s["bottom fit"] == "applied":
        round_it = ceiling(drawer["box width"] / spaced["corner"]) + ceiling(drawer["box depth"] / spaced["corner"])
        yield "Bottom nail", None, 2 * round_it
    inset = s["dado inset"] if s["corner joint"] == "dado" else 0
    through = s["end thickness"] + inset + s["front thickness"]
    yield "Front screw", longest(unit, through - spaced["inside"]), 4 if drawer["front width"] >= s["four screws from"] else 2
    yield from pulls(s, drawer, unit, through)
    if s["edge band"] > 0:
        yield "Edge band", s["edge band"], 2 * (drawer["front width"] + drawer["front height"])
    yield "Glue", None, 2 * tall + 2 * back + glued_round(s, drawer)


def bottom_screws(s, drawer, unit):
    return max(2, ceiling(drawer["box width"] / SPACED[unit]["back"]))


def glued_round(s, drawer):
    """The edges of an applied bottom, and both faces of a shop-made pull's strip."""
    around = 2 * (drawer["box width"] + drawer["box depth"]) if s["bottom fit"] == "applied" else 0
    return around + (2 * s["pull length"] * pull_count(s, drawer) if s["pull kind"] == "shop-made" else 0)


def slides(s, drawer, unit):
    """Three screws to each half of a slide: into the case, and into the box, but for undermount slides."""
    hidden = s["construction"] == "face frame"
    if hidden and s["slide"] != "center-mount":
        yield "Blocking", None, 2
        yield "Blocking screw", None, 6
    if s["slide"] == "wood runner":
        yield "Runner screw", None, 6
        return
    yield f"{s['slide'].capitalize()} slide", drawer["slide length"], 1
    if s["slide"] == "undermount":
        yield "Locking device", None, 1
    if s["slide"] == "center-mount":
        # One slide in the middle, not a pair.
        yield "Slide screw", longest(unit, min(s["cabinet thickness"], SPACED[unit]["slide"])), 2 * 3
        return
    if s["slide"] == "side-mount":
        yield "Slide screw", longest(unit, min(s["side thickness"], SPACED[unit]["slide"])), 6
    yield "Slide screw", longest(unit, min(s["cabinet thickness"], SPACED[unit]["slide"])), 6


def pulls(s, drawer, unit, through):
    count = pull_count(s, drawer)
    if s["pull kind"] == "shop-made":
        yield "Shop-made pull", s["pull length"], count
        size = longest(unit, through + s["pull standoff"] + s["front thickness"] - SPACED[unit]["inside"])
    else:
        yield "Pull", s["pull spacing"] or None, count
        size = min(screw for screw in SCREWS[unit] if screw >= through + SPACED[unit]["into"])
    yield "Pull screw", size, count * (2 if s["pull spacing"] else 1)


def longest(unit, room):
    return max(screw for screw in SCREWS[unit] if screw <= room)
