"""Every physical piece, and what two ways of building come to."""

from collections import Counter
from fractions import Fraction

from cutlist import cut_list
from plan import plan
from quote import quote

ROOM = {"in": 1728, "mm": 1_000_000}


def counted(openings):
    """Part, drawer, length, width, thickness, material, grain, and how many pieces of it have a row and a label each."""
    many = Counter()
    for part, drawer, count, *rest in cut_list(openings):
        many[(part, drawer, *rest)] += count
    return [[*key, count] for key, count in many.items()]


# What differs between the base and the other way, on the same stock.
OTHER = {"space above": {"in": "1/2", "mm": 12}, "front gap": {"in": "1/4", "mm": 6}}


def alternates(job):
    """Name, drawers, total, its difference to the base, room inside, and its difference."""
    unit = dict(job["standards"]).get("unit", "in")
    other = [row for row in job["standards"] if row[0] not in OTHER] + [[name, value[unit]] for name, value in OTHER.items()]
    rows = []
    for name, standards in (("Base", job["standards"]), ("Other", other)):
        changed = {**job, "standards": standards}
        openings = plan(changed)
        drawers = [(opening, drawer) for opening in openings for drawer in opening["boxes"]]
        many = sum(opening["quantity"] for opening, _ in drawers)
        room = sum(
            opening["quantity"] * drawer["inside width"] * drawer["inside depth"] * drawer["inside height"]
            for opening, drawer in drawers
        )
        rows.append([name, many, quote(changed, openings)[-1][3], Fraction(room) / ROOM[unit]])
    base = rows[0]
    return [[name, many, total, total - base[2], room, room - base[3]] for name, many, total, room in rows]
