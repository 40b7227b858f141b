"""The pieces of a job: one row a part and drawer, as (part, drawer, quantity, length, width, thickness, material, grain)."""

ORDER = ["Side", "Box front", "Box back", "Bottom", "Front", "Pull plate", "Pull strip", "Runner"]

# What these jobs build of boards: it moves with the seasons.
SOLID = {"Maple", "Poplar", "Cherry"}


def cut_list(openings):
    rows = [
        (part, drawer["drawer"], count * opening["quantity"], long, wide, thick, material, "any" if part == "Bottom" else "length")
        for opening in openings
        for drawer in opening["boxes"]
        for part, count, long, wide, thick, material in pieces(opening["s"], drawer)
    ]
    return sorted(rows, key=lambda row: ORDER.index(row[0]))


def pieces(s, drawer):
    side, ends = s["side thickness"], s["end thickness"]
    tall = drawer["box height"] - (s["bottom thickness"] if s["bottom fit"] == "applied" else 0)
    back = drawer["inside height"] if s["bottom fit"] == "under back" else tall
    end = end_length(s, drawer)
    wood = s["side material"]
    yield "Side", 2, side_length(s, drawer), tall, side, wood
    yield "Box front", 1, end, tall, ends, wood
    yield "Box back", 1, end, back, ends, wood
    yield ("Bottom", 1, *bottom(s, drawer), s["bottom thickness"], s["bottom material"])
    band = 2 * (s["pre-mill"] - s["edge band"])
    front = (drawer["front height"] + band, drawer["front width"] + band)
    front = front if s["front grain"] == "vertical" else front[::-1]
    yield ("Front", 1, *front, s["front thickness"], s["front material"])
    if s["pull kind"] == "shop-made":
        many = pull_count(s, drawer)
        yield "Pull plate", many, s["pull length"], s["pull width"], s["front thickness"], s["front material"]
        yield "Pull strip", many, s["pull length"], s["pull standoff"], s["front thickness"], s["front material"]
    if s["slide"] == "wood runner":
        wide = s["runner width"]
        if s["runner"] == "side groove":
            wide = s["side clearance"] + s["runner groove depth"] - s["runner play"]
        yield "Runner", 2, drawer["box depth"], wide, s["runner thickness"], s["runner material"]


def side_length(s, drawer):
    if s["corner joint"] == "half-blind dovetail":
        return drawer["box depth"] - 2 * (s["end thickness"] - s["joint depth"])
    return drawer["box depth"]


def end_length(s, drawer):
    if s["corner joint"] in ("dovetail", "half-blind dovetail", "box joint"):
        return drawer["box width"]
    cut_in = s["joint depth"] if s["corner joint"] in ("rabbet", "dado") else 0
    return drawer["box width"] - 2 * s["side thickness"] + 2 * cut_in


def bottom(s, drawer):
    """Width and depth; under the back it ends flush with the back's outer face, which a dado sets in."""
    if s["bottom fit"] == "applied":
        return drawer["box width"] + 2 * s["bottom overhang"], drawer["box depth"] + 2 * s["bottom overhang"]
    groove, play, end = s["groove depth"], s["bottom play"], s["end thickness"]
    inset = s["dado inset"] if s["corner joint"] == "dado" else 0
    between = drawer["box depth"] - 2 * inset
    depth = between - end + groove - play if s["bottom fit"] == "under back" else between - 2 * end + 2 * groove - play
    return drawer["box width"] - 2 * s["side thickness"] + 2 * groove - play, depth


def pull_count(s, drawer):
    if s["pulls per front"] != "auto":
        return int(s["pulls per front"])
    return 2 if drawer["front width"] >= s["two pulls from"] else 1
