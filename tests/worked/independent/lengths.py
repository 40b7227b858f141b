"""Lengths as exact fractions, read from cells, and the unit's marks."""

from fractions import Fraction

MARKS = {"in": Fraction(254, 10), "mm": Fraction(1)}


def length(cell, unit):
    """A cell's length in the unit; `none` is zero."""
    if isinstance(cell, (int, float)):
        return Fraction(str(cell))
    if cell == "none":
        return Fraction(0)
    words = cell.split()
    mark = unit
    if words[-1] in MARKS:
        mark = words.pop()
    sign = -1 if words[0].startswith("-") else 1
    words[0] = words[0].lstrip("-")
    return sign * sum(Fraction(word) for word in words) * MARKS[mark] / MARKS[unit]


def lengths(cell, unit):
    """A cell of several lengths."""
    parts = str(cell).split(";") if isinstance(cell, str) else [cell]
    return [length(part.strip() if isinstance(part, str) else part, unit) for part in parts]


def down(value, step):
    """The largest multiple of the step that is not above the value; a step of zero rounds nothing."""
    return value if step == 0 else value // step * step


def ceiling(value):
    return -(-value // 1)
