"""Every drawer of a job: fronts, zones, boxes and slides."""

from fractions import Fraction

from lengths import down, length, lengths
from standards import read

OWN = {"opening", "cabinet", "width", "height", "depth", "drawers", "quantity", "case width", "box heights"}


def plan(job):
    """The drawers in the order of the tables, each a dictionary of exact sizes."""
    openings = read_openings(job)
    for left, opening, right in neighbors(openings):
        stack(opening, left, right)
    match(openings)
    for opening in openings:
        for drawer in opening["boxes"]:
            finish(opening, drawer)
    return openings


def read_openings(job):
    header, *rows = job["openings"]
    standards = dict(job["standards"])
    unit = standards.get("unit", "in")
    names = [heading.split(" (")[0].lower() for heading in header]
    found = []
    for row in rows:
        cells = dict(zip(names, row))
        own = {**standards, **{name: cell for name, cell in cells.items() if name not in OWN and cell != ""}}
        sizes = {name: lengths(cells[name], unit) for name in ("width", "height", "depth")}
        found.append(
            {
                "label": str(cells["opening"]),
                "cabinet": cells.get("cabinet", ""),
                "quantity": cells.get("quantity", "") or 1,
                "drawers": cells["drawers"],
                "given heights": lengths(cells["box heights"], unit) if cells.get("box heights", "") != "" else None,
                "widest": max(sizes["width"]),
                "unit": unit,
                **{name: min(values) for name, values in sizes.items()},
                "s": read(own, unit),
            }
        )
    return found


def neighbors(openings):
    """Each opening with those beside it in its cabinet."""
    for i, opening in enumerate(openings):
        left = openings[i - 1] if i > 0 and openings[i - 1]["cabinet"] == opening["cabinet"] else None
        right = openings[i + 1] if i + 1 < len(openings) else None
        yield left, opening, right if right and right["cabinet"] == opening["cabinet"] else None


def stack(opening, left, right):
    """Fronts from the top of the face down, and the zones behind them."""
    s = opening["s"]
    opening["shares"] = [share_beside(opening, left, left, "left reveal"), share_beside(opening, right, opening, "right reveal")]
    low = -share_across(s, "rail below", "bottom reveal")
    high = opening["height"] + share_across(s, "rail above", "top reveal")
    opening["face"] = high - low
    heights, wanted = fronts(opening, high - low)
    opening["boxes"] = []
    top = high
    for height, exact in zip(heights, wanted):
        number = len(opening["boxes"]) + 1
        hyphen = "-" if opening["label"][-1].isdigit() else ""
        drawer = {"drawer": f"{opening['label']}{hyphen}{number}", "front height": height, "wanted": exact}
        drawer["front width"] = opening["width"] + sum(opening["shares"])
        drawer["front bottom"] = top - height
        opening["boxes"].append(drawer)
        top -= height + s["front gap"]
    zones(opening, high)


def share_across(s, rail, reveal):
    if s["front style"] == "inset":
        return -s["inset gap"]
    if s["construction"] == "face frame":
        return s["frame overlay"]
    if s[rail] is not None:
        return (s[rail] - s["front gap"]) / 2
    return s["cabinet thickness"] - s[reveal]


def share_beside(opening, neighbor, keeper, reveal):
    """How far a front goes past its opening on one side; the keeper holds the partition between."""
    s = opening["s"]
    if s["front style"] == "inset":
        return -s["inset gap"]
    if s["construction"] == "face frame":
        return s["frame overlay"]
    if neighbor is None:
        return s["cabinet thickness"] - s[reveal]
    gap = max(s["front gap"], neighbor["s"]["front gap"])
    return (keeper["s"]["partition thickness"] - gap) / 2


def fronts(opening, face):
    """Heights as made, and as they would be without the front step."""
    s, unit = opening["s"], opening["unit"]
    entries = [entry.strip() for entry in str(opening["drawers"]).split(";")]
    if len(entries) == 1 and entries[0].isdigit():
        entries = ["1 part"] * int(entries[0])
    fixed = {i: length(entry, unit) for i, entry in enumerate(entries) if "part" not in entry}
    parts = {i: Fraction(entry.split()[0]) for i, entry in enumerate(entries) if i not in fixed}
    free = face - sum(fixed.values()) - s["front gap"] * (len(entries) - 1)
    wanted = {**fixed, **{i: free * part / sum(parts.values()) for i, part in parts.items()}}
    made = {**wanted, **{i: down(wanted[i], s["front step"]) for i in parts}}
    spare = free - sum(made[i] for i in parts)
    for i in sorted(parts, reverse=True):
        if s["front step"] > 0 and spare >= s["front step"]:
            made[i] += s["front step"]
            spare -= s["front step"]
    order = range(len(entries))
    return [made[i] for i in order], [wanted[i] for i in order]


def zones(opening, high):
    s, boxes = opening["s"], opening["boxes"]
    ceiling = min(opening["height"], high)
    for i, drawer in enumerate(boxes):
        below = boxes[i + 1] if i + 1 < len(boxes) else None
        if below:
            floor = (drawer["front bottom"] + below["front bottom"] + below["front height"]) / 2
        else:
            floor = max(Fraction(0), drawer["front bottom"])
        drawer["box bottom"] = floor + s["space below"]
        drawer["zone"] = ceiling - floor
        drawer["box height"] = down(drawer["zone"] - s["space below"] - s["space above"], s["height step"])
        drawer["unmatched"] = drawer["box height"]
        ceiling = floor
    given = opening["given heights"]
    if given:
        for drawer, height in zip(boxes, given * len(boxes) if len(given) == 1 else given):
            drawer["box height"], drawer["wanted"] = height, None


def match(openings):
    """Boxes behind fronts of equal height get the least of their heights."""
    circles = {"opening": lambda o: o["label"], "cabinet": lambda o: o["cabinet"], "job": lambda o: "", "none": None}
    least = {}
    taking = [
        (drawer, (circles[opening["s"]["match heights"]](opening), drawer["wanted"]))
        for opening in openings
        for drawer in opening["boxes"]
        if opening["s"]["match heights"] != "none" and drawer["wanted"] is not None
    ]
    for drawer, circle in taking:
        least[circle] = min(least.get(circle, drawer["box height"]), drawer["box height"])
    for drawer, circle in taking:
        drawer["box height"] = least[circle]


def finish(opening, drawer):
    s = opening["s"]
    side, end = s["side thickness"], s["end thickness"]
    if s["slide"] == "undermount":
        drawer["box width"] = opening["width"] - s["undermount deduction"] + 2 * side
    else:
        drawer["box width"] = opening["width"] - 2 * s["side clearance"]
    room = opening["depth"] - s["rear clearance"] - (s["front thickness"] if s["front style"] == "inset" else 0)
    depth = s["box depth"]
    drawer["slide length"] = max(
        (size for size in s["slide lengths"] if size <= room and (depth is None or size <= depth)), default=None
    )
    drawer["box depth"] = drawer["slide length"] if depth is None else depth
    inset = s["dado inset"] if s["corner joint"] == "dado" else 0
    drawer["inside width"] = drawer["box width"] - 2 * side
    drawer["inside depth"] = drawer["box depth"] - 2 * (end + inset)
    lift = 0 if s["bottom fit"] == "applied" else s["groove offset"]
    drawer["inside height"] = drawer["box height"] - lift - s["bottom thickness"]
    drawer["slide centerline"] = centerline(s, drawer)


def centerline(s, drawer):
    if s["slide"] in ("undermount", "center-mount") or (s["slide"] == "wood runner" and s["runner"] == "under"):
        return None
    up = s["slide centerline"]
    if up == "center":
        up = drawer["box height"] / 2
    if up == "bottom":
        up = s["slide height"] / 2
    return drawer["box bottom"] + up
