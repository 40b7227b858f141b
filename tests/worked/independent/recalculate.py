"""
Works the invented jobs of jobs.json again with exact fractions, from the documented meanings alone and none of the
project's code, and prints every figure as JSON, a table a function. Fractions are written numerator/denominator, roots as decimals.
"""

import json
import pathlib
from decimal import Decimal
from fractions import Fraction

from cabinets import cabinets, graduated
from cutlist import cut_list
from hardware import hardware
from loads import loads
from mounting import fit, mounting
from pieces import alternates, counted
from plan import plan
from quote import quote, sheets
from scalars import scalars
from setups import setups

PLAN = ["Drawer", "Opening", "Front width", "Front height", "Front bottom", "Box width", "Box height", "Box depth"]
PLAN += ["Box bottom", "Slide length", "Slide centerline", "Inside width", "Inside depth", "Inside height"]
PARTS = ["Part", "Drawer", "Qty", "Length", "Width", "Thickness", "Material", "Grain"]


def main():
    jobs = json.loads(pathlib.Path(__file__).with_name("jobs.json").read_text(encoding="utf-8"))
    print("[")
    print(",\n".join(as_lines(shown(recalculated(job))) for job in jobs), end=",\n")
    print(as_lines(shown({"name": "cabinets and fronts", "CABINETS": cabinets(), "GRADUATED": graduated()})))
    print("]")


def recalculated(job):
    openings = plan(job)
    return {
        "name": job["name"],
        "PLAN": [PLAN] + [planned(opening, drawer) for opening in openings for drawer in opening["boxes"]],
        "PARTS": [PARTS] + cut_list(openings),
        "MOUNTING": table(mounting(openings)),
        "FIT": table(fit(openings)),
        "SETUPS": [["Operation", "Value", "Pieces"]] + setups(openings),
        "HARDWARE": [["Item", "Size", "Qty"]] + hardware(openings),
        "QUOTE": [["Section", "Qty", "Rate", "Amount"]] + quote(job, openings),
        "SHEETS": [["Material", "Thickness", "Parts", "Area"]] + sheets(job, openings),
        "SCALARS": scalars(openings),
        "PIECES": counted(openings),
        "LOADS": list(loads(openings)),
        "ALTERNATES": alternates(job),
    }


def planned(opening, drawer):
    return [drawer["drawer"], opening["label"]] + [drawer[name.lower()] for name in PLAN[2:]]


def table(rows):
    return [list(rows[0])] + [list(row.values()) for row in rows]


def as_lines(job):
    """A row of a table on a line of its own."""
    tables = [
        f"  {json.dumps(name)}: [\n" + ",\n".join(f"    {json.dumps(row)}" for row in rows) + "\n  ]"
        for name, rows in job.items()
        if name != "name"
    ]
    return f'{{\n  "name": {json.dumps(job["name"])},\n' + ",\n".join(tables) + "\n}"


def shown(value):
    """Fractions and decimals as texts, None as the empty text of a blank cell."""
    if isinstance(value, dict):
        return {name: shown(item) for name, item in value.items()}
    if isinstance(value, (list, tuple)):
        return [shown(item) for item in value]
    if isinstance(value, Fraction):
        return f"{value.numerator}/{value.denominator}"
    if isinstance(value, Decimal):
        return f"{value:.20f}"
    return "" if value is None else value


if __name__ == "__main__":
    main()
