"""Single sums of the same boxes, as (function, arguments …, result)."""

from cutlist import bottom, end_length, side_length
from lengths import ceiling


def scalars(openings):
    rows = []
    for opening in openings:
        s, unit = opening["s"], opening["unit"]
        setback = s["front thickness"] if s["front style"] == "inset" else 0
        rows.append(("FRONTHEIGHTS", opening["face"], opening["drawers"], s["front gap"], 0, 0, s["front step"], unit,
                     [[drawer["front height"]] for drawer in opening["boxes"]]))
        for drawer in opening["boxes"]:
            rows += sums(opening, drawer)
            if s["box depth"] is None:
                listed = "; ".join(f"{size} {unit}" for size in s["slide lengths"])
                rows.append(("SLIDELENGTH", opening["depth"], s["rear clearance"], setback, listed, unit, drawer["slide length"]))
        if s["bottom fit"] != "applied":
            groove = (s["bottom thickness"], s["kerf"], s["groove offset"], s["groove depth"])
            rows.append(("GROOVEPASSES", *groove, unit, passes(*groove)))
    return list(dict.fromkeys((*row[:-1], freeze(row[-1])) for row in rows))


def freeze(result):
    return tuple(map(tuple, result)) if isinstance(result, list) else result


def sums(opening, drawer):
    s, unit = opening["s"], opening["unit"]
    wide, deep = drawer["box width"], drawer["box depth"]
    side, end, joint, cut_in = s["side thickness"], s["end thickness"], s["corner joint"], s["joint depth"] or ""
    if s["side clearance"] is not None:
        yield "BOXWIDTH", opening["width"], s["side clearance"], unit, wide
    if not opening["given heights"]:
        spaces = (s["space below"], s["space above"], s["height step"])
        yield "BOXHEIGHT", drawer["zone"], *spaces, unit, drawer["unmatched"]
    yield "ENDLENGTH", wide, side, joint, cut_in, unit, end_length(s, drawer)
    yield "SIDELENGTH", deep, end, joint, cut_in, unit, side_length(s, drawer)
    if s["bottom fit"] != "applied":
        width, depth = bottom(s, drawer)
        yield "BOTTOMWIDTH", wide, side, s["groove depth"], s["bottom play"], unit, width
        if joint != "dado":
            yield "BOTTOMDEPTH", deep, end, s["groove depth"], s["bottom play"], s["bottom fit"], unit, depth


def passes(width, kerf, offset, depth):
    """Pass, fence and blade height; the first at the offset, the last ends where the groove does."""
    return [[i + 1, fence, depth] for i, fence in enumerate(fences(width, kerf, offset))]


def fences(width, kerf, offset):
    count = int(ceiling(width / kerf))
    return [offset + (i * (width - kerf) / (count - 1) if i else 0) for i in range(count)]
