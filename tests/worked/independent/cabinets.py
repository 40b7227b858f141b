"""Openings of invented cabinets by their outside sizes, and fronts that grow downward."""

from fractions import Fraction

from lengths import length

# Cabinet, width, height, depth, columns, drawers, toe kick, back thickness, back inset, and the standards.
CABINETS = [
    ("in", {}, ["Bench", "60 3/8", "34 1/2", 24, 3, "4", 4, "", ""]),
    ("in", {"cabinet thickness": "23/32"}, ["Press", 71, "28 1/16", "21 3/4", "17 1/2; 1 part; 2 parts", "3", "", "15/32", "1/2"]),
    ("in", {"construction": "face frame", "stile width": "1 3/4"}, ["Counter", 48, "35 1/4", "23 5/8", 2, "1 part; 2 parts", "4 1/2", "", ""]),
    ("mm", {"unit": "mm", "partition thickness": 16}, ["Lens", 1204, 870, 580, "1 part; 1.5 parts", "5", 110, 5, 12]),
]
GRADUATED = [
    ("27 5/8", 4, "arithmetic", "3/4", "1/8", "in"),
    ("30 1/16", 5, "geometric", "1 1/4", "3/32", "in"),
    ("702", 3, "equal", "", "2.5", "mm"),
    ("695.5", 4, "arithmetic", "12.5", "3", "mm"),
]


def cabinets():
    return [
        {"standards": [[name, value] for name, value in s.items()], "cabinet": row, "openings": opened(row, s, unit)}
        for unit, s, row in CABINETS
    ]


def opened(row, s, unit):
    """Width, height, depth and case width of each opening, left to right."""
    inch = unit == "in"
    _, wide, high, deep, columns, _, kick, back, inset = row

    def of(value, usual):
        return length(usual if value == "" else value, unit)

    end = of(s.get("cabinet thickness", ""), "3/4" if inch else 18)
    back = of(back, "1/4" if inch else 6)
    depth = of(deep, 0) - back - of(inset, 0)
    height = of(high, 0) - of(kick, 0)
    if s.get("construction") == "face frame":
        stile = of(s.get("stile width", ""), "1 1/2")
        rail = of(s.get("rail width", ""), "1 1/2")
        widths = divided(of(wide, 0) - 2 * stile, columns, stile, unit)
        return [[width, height - 2 * rail, depth] for width in widths]
    partition = of(s["partition thickness"], 0) if "partition thickness" in s else end
    return [[width, height - 2 * end, depth] for width in divided(of(wide, 0) - 2 * end, columns, partition, unit)]


def divided(inside, columns, between, unit):
    entries = ["1 part"] * columns if isinstance(columns, int) else [one.strip() for one in columns.split(";")]
    fixed = [None if "part" in one else length(one, unit) for one in entries]
    parts = [Fraction(one.split()[0]) if "part" in one else 0 for one in entries]
    free = inside - between * (len(entries) - 1) - sum(size for size in fixed if size is not None)
    return [size if size is not None else free * part / sum(parts) for size, part in zip(fixed, parts)]


def graduated():
    return [[*row, [[size] for size in grown(*row)]] for row in GRADUATED]


def grown(face, count, rule, amount, gap, unit):
    room = length(face, unit) - (count - 1) * length(gap, unit)
    if rule == "equal":
        return [room / count] * count
    step = length(amount, unit)
    if rule == "arithmetic":
        first = (room - step * count * (count - 1) / 2) / count
        return [first + i * step for i in range(count)]
    first = room / sum(step**i for i in range(count))
    return [first * step**i for i in range(count)]
