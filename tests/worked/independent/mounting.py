"""How a drawer is hung, and whether it will fit."""

from decimal import Decimal, getcontext
from fractions import Fraction

from cutlist import pull_count

getcontext().prec = 40


def mounting(openings):
    return [hung(opening, i, drawer) for opening in openings for i, drawer in enumerate(opening["boxes"])]


def hung(opening, i, drawer):
    s, boxes = opening["s"], opening["boxes"]
    below = boxes[i + 1] if i + 1 < len(boxes) else None
    top_below = below["box bottom"] + below["box height"] if below else Fraction(0)
    left, right = opening["shares"]
    side = (opening["width"] - drawer["box width"]) / 2
    width, pulls = drawer["front width"], pull_count(s, drawer)
    return {
        "Drawer": drawer["drawer"],
        "Box spacer": drawer["box bottom"] - top_below,
        "Slide spacer": slide_spacer(s, drawer),
        "Slide centerline": drawer["slide centerline"],
        "Front bottom": drawer["front bottom"],
        "Front past box left": left + side,
        "Front past box right": right + side,
        "Front below box": drawer["box bottom"] - drawer["front bottom"],
        "Pull height": pull_height(s, drawer) if pulls else None,
        "Pull from left": [None, width / 2, width / 4][pulls],
        "Second pull": width * 3 / 4 if pulls == 2 else None,
        "Front screws": Fraction(4 if width >= s["four screws from"] else 2),
    }


def pull_down(s, drawer):
    """From the front's upper edge to the pull's center."""
    return drawer["front height"] / 2 if s["pull height"] == "center" else s["pull height"]


def pull_height(s, drawer):
    return drawer["front bottom"] + drawer["front height"] - pull_down(s, drawer)


def slide_spacer(s, drawer):
    """From the floor to the lower edge of slide or strip; what lies under the bottom's middle has none."""
    if s["slide"] == "wood runner":
        if s["runner"] == "under":
            return drawer["box bottom"] - s["runner thickness"]
        # The groove is centered there, and its upper edge lies on the strip.
        return drawer["slide centerline"] + (s["runner thickness"] + s["runner play"]) / 2 - s["runner thickness"]
    return None if drawer["slide centerline"] is None else drawer["slide centerline"] - s["slide height"] / 2


def fit(openings):
    return [fits(opening, drawer) for opening in openings for drawer in opening["boxes"]]


def fits(opening, drawer):
    s = opening["s"]
    o, c, t = s["opening tolerance"], s["cut tolerance"], s["thickness tolerance"]
    cuts, thick = {"butt": (1, 1), "rabbet": (3, 1), "dado": (3, 1)}.get(s["corner joint"], (1, 0))
    worst = (o + cuts * c + thick * 2 * t) / 2
    likely = root(o * o + cuts * c * c + thick * (2 * t) ** 2) / 2
    nominal = (opening["width"] - drawer["box width"]) / 2
    widest = (opening["widest"] - drawer["box width"]) / 2
    row = {
        "Drawer": drawer["drawer"],
        "Nominal": nominal,
        "Least": nominal - worst,
        "Most": widest + worst,
        "Likely least": decimal(nominal) - likely,
        "Likely most": decimal(widest) + likely,
    }
    if s["slide"] in ("side-mount", "undermount"):
        row["Allowed least"] = nominal - s["slide tolerance low"]
        row["Allowed most"] = nominal + s["slide tolerance high"]
    return row


def decimal(fraction):
    return Decimal(fraction.numerator) / Decimal(fraction.denominator)


def root(fraction):
    return decimal(fraction).sqrt()
