"""Every saw setting, as (operation, value, pieces): equal settings serve all pieces together."""

from fractions import Fraction
from itertools import groupby

from cutlist import SOLID, bottom, cut_list, pull_count
from hardware import bottom_screws
from lengths import down, length
from mounting import pull_down
from scalars import fences


def setups(openings):
    settings = {}
    rows = []

    def serve(operation, value, pieces):
        settings[operation, value] = settings.get((operation, value), 0) + pieces

    matched = {drawer["drawer"]: opening for opening in openings if opening["s"]["front match"] == "opening" for drawer in opening["boxes"]}
    for part, drawer, many, long, wide, *_ in cut_list(openings):
        if part == "Front" and drawer in matched:
            continue
        serve("Rip", wide, many)
        serve("Crosscut", long, many)
    for opening in openings:
        if opening["s"]["front match"] == "opening":
            rows += strip(opening, serve)
        for drawer in opening["boxes"]:
            for operation, value, pieces in settings_of(opening, drawer):
                serve(operation, value, pieces * opening["quantity"])
    rows += [(operation, value, pieces) for (operation, value), pieces in settings.items()]
    return sorted(rows)


def strip(opening, serve):
    """Fronts cut in order from one strip, as long as they and what lies between them."""
    s, many = opening["s"], opening["quantity"]
    band = 2 * (s["pre-mill"] - s["edge band"])
    across = opening["boxes"][0]["front width"] + band
    upright = s["front grain"] == "vertical"
    serve("Rip" if upright else "Crosscut", across, many)
    heights = [drawer["front height"] + band for drawer in opening["boxes"]]
    between = max(s["kerf"], s["front gap"] - band)
    yield "Set aside", sum(heights) + between * (len(heights) - 1), many
    yield "Set aside", between, many
    for height, run in groupby(heights):
        yield "Crosscut" if upright else "Rip", height, len(list(run)) * many


def settings_of(opening, drawer):
    s = opening["s"]
    yield from grooves(s)
    yield from corners(s)
    if s["slide"] == "undermount":
        yield from undermount(s)
    if s["bottom material"] in SOLID and s["bottom fit"] == "under back":
        yield from slots(s, drawer)
    if s["bottom overhang"] > 0:
        yield "Trim flush", s["bottom overhang"], 1
    if s["pre-mill"] > 0:
        yield "Pre-mill", s["pre-mill"], 1
    if pull_count(s, drawer):
        yield "Pull holes", pull_down(s, drawer), 1
        center = drawer["front width"] / (2 * pull_count(s, drawer))
        # Two pulls at the quarters have two holes each, at two distances from their own end.
        for hole in sorted({center - s["pull spacing"] / 2, *([center + s["pull spacing"] / 2] if pull_count(s, drawer) == 2 else [])}):
            yield "Pull holes", hole, 1
    if s["slide"] == "wood runner" and s["runner"] == "side groove":
        tall = s["runner thickness"] + s["runner play"]
        under = s["bottom thickness"] if s["bottom fit"] == "applied" else 0
        yield "Runner groove", s["runner groove depth"], 2
        for fence in fences(tall, s["kerf"], drawer["slide centerline"] - drawer["box bottom"] - under - tall / 2):
            yield "Runner groove", fence, 2


def slots(s, drawer):
    """One to each screw into the back, in the middle of its share of the bottom's width, down to a sixteenth."""
    many = bottom_screws(s, drawer, "in")
    width = bottom(s, drawer)[0]
    for i in range((many + 1) // 2):
        yield "Bottom slots", down(width * (2 * i + 1) / (2 * many), Fraction(1, 16)), 1


def undermount(s):
    """What the slide's data sheet states from side's inner face and bottom, measured on the back from its end and edge."""
    into = {"butt": 0, "rabbet": s["joint depth"], "dado": s["joint depth"]}.get(s["corner joint"], s["side thickness"])
    yield "Back notches", s["undermount notch width"] + into, 1
    yield "Back notches", s["undermount notch height"], 1
    yield "Hook holes", s["undermount hook hole"], 1
    yield "Hook holes", s["undermount hook depth"], 1
    yield "Hook holes", s["groove offset"] + s["undermount hook height"], 1
    yield "Hook holes", s["undermount hook inset"] + into, 1


def grooves(s):
    if s["bottom fit"] == "applied":
        return
    pieces = 3 if s["bottom fit"] == "under back" else 4
    yield "Groove blade", s["groove depth"], pieces
    for fence in fences(s["bottom thickness"], s["kerf"], s["groove offset"]):
        yield "Groove", fence, pieces


def corners(s):
    joint, side, end, cut_in = s["corner joint"], s["side thickness"], s["end thickness"], s["joint depth"]
    if joint == "butt":
        yield "Pocket holes", end, 2
    elif joint in ("rabbet", "dado"):
        name = joint.capitalize()
        yield f"{name} blade", cut_in, 2
        for fence in fences(end, s["kerf"], s["dado inset"] if joint == "dado" else length("none", "in")):
            yield name, fence, 2
    elif joint == "half-blind dovetail":
        yield "Half-blind dovetail sockets", cut_in, 2
        yield "Half-blind dovetail", cut_in, 2
        yield "Half-blind dovetail", side, 2
    else:
        yield joint.capitalize(), end, 2
        yield joint.capitalize(), side, 2
