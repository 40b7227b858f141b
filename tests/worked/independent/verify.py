"""
Checks what SHEETS, LAYOUT and CUTS answered, which no one can predict, against the cut list that was worked out
independently: reads cases as JSON from standard input, prints how many figures were held against another and every
difference. Sizes in texts are to the nearest 64th, or to a thousandth.
"""

import json
import re
import sys
from collections import Counter, defaultdict
from fractions import Fraction

from cutlist import cut_list
from lengths import length
from plan import plan
from quote import matched

SIZE = r"((?:≈ ?)?[\d ./]+?) × ((?:≈ ?)?[\d ./]+?)"


def main():
    checked, differences = 0, []
    for case in json.load(sys.stdin):
        proof = Proof(case)
        proof.run()
        checked += proof.checked
        differences += [f"{case['name']}: {one}" for one in proof.differences]
    print(json.dumps({"checked": checked, "differences": differences}, ensure_ascii=False))


def exact(number):
    """A cell's number as the simplest fraction near it."""
    return Fraction(number).limit_denominator(100_000)


def read(text):
    text = text.strip().lstrip("≈ ")
    return sum(Fraction(word) for word in text.split())


def near(a, b, by=Fraction(1, 100)):
    return abs(a - b) <= by


class Proof:
    def __init__(self, case):
        self.case = case
        self.job = case["job"]
        self.checked = 0
        self.differences = []
        self.openings = plan(self.job)
        unit = self.openings[0]["unit"]
        standards = dict(self.job["standards"])
        self.kerf = length(standards.get("kerf", "1/8" if unit == "in" else 3.2), unit)
        self.trim = length(case["trim"], unit)

    def same(self, what, found, wanted):
        self.checked += 1
        if found != wanted:
            self.differences.append(f"{what}: {found} where {wanted} was expected")

    def holds(self, what, truth):
        self.same(what, bool(truth), True)

    def run(self):
        case = self.case
        layout, cuts, sheets = (records(case[name]) for name in ("LAYOUT", "CUTS", "SHEETS"))
        on_sheet, sawn = defaultdict(list), defaultdict(list)
        for row in layout:
            on_sheet[row["Sheet"]].append(row)
        for row in cuts:
            sawn[row["Sheet"]].append(row)
        numbers = iter(sorted(on_sheet))
        laid = [stock for stock in matched(self.job, self.openings) if not stock[0].get("Sold by") and stock[1]]
        self.same("rows of SHEETS that are laid out", sum(1 for row in sheets if "×" in str(row["Sheet"])), len(laid))
        for (stock, parts), row in zip(laid, sheets):
            mine = [next(numbers) for _ in range(row["Sheets"])]
            left = []
            for number in mine:
                self.placed(stock, on_sheet[number])
                left += self.replayed(stock, on_sheet[number], sawn[number])
            self.every_part(stock, parts, [piece for number in mine for piece in on_sheet[number]])
            self.summed(stock, parts, row, left)
        for opening in self.openings:
            self.in_one_strip(opening, layout)
        self.same("sheets beyond those that SHEETS counts", list(numbers), [])
        self.same("cuts of sheets that LAYOUT has not", sorted(set(sawn) - set(on_sheet)), [])

    def every_part(self, stock, parts, pieces):
        """Each piece of the cut list lies there once, by its name, in its size, turned only where it may."""
        wanted = Counter()
        for part, _, many, long, wide, *_ in parts:
            wanted[part, long, wide] += many
        found = Counter()
        for row in pieces:
            along, across = exact(row["Length"]), exact(row["Width"])
            long, wide = (across, along) if row["Turned"] else (along, across)
            found[row["Part"], long, wide] += 1
            if row["Turned"]:
                self.holds(f"a turned {row['Part']} has no grain", row["Part"] == "Bottom" or long == wide)
        for key in {**wanted, **found}:
            self.same(f"pieces {key} of {stock['thick']}", found[key], wanted[key])

    def in_one_strip(self, opening, layout):
        """Fronts of one grain lie in order in one line, as far apart as they hang, or a kerf."""
        s = opening["s"]
        if s["front match"] != "opening":
            return
        names = [drawer["drawer"] for drawer in opening["boxes"]]
        rows = [next(row for row in layout if row["Part"] == "Front" and row["Drawer"] == name) for name in names]
        upright = s["front grain"] == "vertical"
        start, size, level = ("From left", "Length", "From bottom") if upright else ("From bottom", "Width", "From left")
        between = max(self.kerf, s["front gap"] + 2 * (s["edge band"] - s["pre-mill"]))
        for above, below in zip(rows, rows[1:]):
            gap = exact(below[start]) - exact(above[start]) - exact(above[size])
            self.same("gap between fronts of one grain", gap, between)
            self.same("their line", (below["Sheet"], below[level]), (above["Sheet"], above[level]))

    def placed(self, stock, rows):
        """Inside the trimmed sheet, and cut apart by cuts from edge to edge, a kerf wide at least."""
        long, wide = Fraction(stock["Length"]), Fraction(stock["Width"])
        boxes = []
        for row in rows:
            x, y = exact(row["From left"]), exact(row["From bottom"])
            boxes.append((x, y, x + exact(row["Length"]), y + exact(row["Width"])))
            right, top = boxes[-1][2:]
            inside = min(x, y) >= self.trim and right <= long - self.trim and top <= wide - self.trim
            self.holds(f"{row['Part']} at {x}, {y} within its trimmed sheet", inside)
            self.same("material and thickness of a placed piece", row["Thickness"], float(stock["thick"]))
        self.holds("cuts from edge to edge part the pieces", self.parted(boxes))

    def parted(self, boxes):
        if len(boxes) <= 1:
            return True
        for axis in (0, 1):
            order = sorted(boxes, key=lambda box: box[axis])
            reach = order[0][axis + 2]
            for i in range(1, len(order)):
                if order[i][axis] - reach >= self.kerf:
                    return self.parted(order[:i]) and self.parted(order[i:])
                reach = max(reach, order[i][axis + 2])
        return False

    def replayed(self, stock, rows, cuts):
        """The cuts made one after another on the sheet give the pieces that LAYOUT shows; what else is left comes back."""
        boards = [("sheet", Fraction(stock["Length"]), Fraction(stock["Width"]))]
        self.same("steps", [cut["Step"] for cut in cuts], list(range(1, len(cuts) + 1)))
        for cut in cuts:
            label, long, wide = named(cut["From"])
            board = next((b for b in boards if b[0] == label and near(b[1], long) and near(b[2], wide)), None)
            self.holds(f"step {cut['Step']} has {cut['From']} in hand", board)
            if board is None:
                return []
            boards.remove(board)
            boards += self.sawn(cut, board)
        parts = Counter((label.split(" (")[0], long, wide) for label, long, wide in boards if is_part(label))
        wanted = Counter((row["Part"], exact(row["Length"]), exact(row["Width"])) for row in rows)
        if not cuts:
            parts = Counter({key: many for key, many in wanted.items() if key[1:] == boards[0][1:]})
        self.same(f"pieces sawn from sheet {rows[0]['Sheet']}", parts, wanted)
        others = [board for board in boards if not is_part(board[0])] if cuts else []
        for label, long, wide in others:
            self.same(f"what {long} × {wide} is called", label, "waste" if min(long, wide) <= self.kerf else "offcut")
        return [board for board in others if board[0] == "offcut"]

    def sawn(self, cut, board):
        label, long, wide = board
        along = cut["Cut"] == "crosscut"
        size, kept = (long if along else wide), exact(cut["Setting"])
        gives = [named(text) for text in re.split(r"\. Caution", cut["Gives"])[0].split("; ")]
        self.holds(f"step {cut['Step']} keeps no more than it has", kept <= size)
        rest = size - kept - self.kerf
        if label == "sheet" and cut["Step"] <= 4 and self.trim > 0:
            rest = 0
        sizes = [kept] + ([rest] if rest > 0 else [])
        self.same(f"step {cut['Step']}, pieces", len(gives), len(sizes))
        out = []
        for (name, a, b), own in zip(gives, sizes):
            new = (own, wide) if along else (long, own)
            self.holds(f"step {cut['Step']}, size of {name}", near(a, new[0]) and near(b, new[1]))
            out.append((name, *new))
        return out

    def summed(self, stock, parts, row, left):
        area = sum(many * long * wide for _, _, many, long, wide, *_ in parts)
        whole = Fraction(stock["Length"]) * stock["Width"] * row["Sheets"]
        self.same("Parts", row["Parts"], sum(part[2] for part in parts))
        self.holds("Yield", abs(row["Yield"] - float(area / whole)) < 1e-9)
        self.holds("Cost", abs(row["Cost"] - round(stock["Price"] * row["Sheets"], 2)) < 1e-9)
        self.holds("Least possible", row["Least possible"] <= row["Sheets"])
        self.holds("no fewer sheets by area", area <= whole)
        if not left:
            self.same("Largest offcut", row["Largest offcut"], "")
            return
        largest = max(long * wide for _, long, wide in left)
        long, wide = (read(side) for side in row["Largest offcut"].split(" × "))
        self.holds(f"Largest offcut {row['Largest offcut']}", near(long * wide, largest, largest / 1000))


def named(text):
    label, long, wide = re.fullmatch(rf"(.+?) {SIZE}", text.strip()).groups()
    return "sheet" if label == "rest of the sheet" else label, read(long), read(wide)


def is_part(label):
    return not re.fullmatch(r"sheet|offcut|waste|piece [A-Z]+", label)


def records(table):
    header, *rows = table
    return [dict(zip(header, row)) for row in rows]


if __name__ == "__main__":
    main()
