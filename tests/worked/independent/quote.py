"""The quote's lines, as (section, quantity, rate, amount), and what the cut list takes of each stock."""

from fractions import Fraction

from cutlist import cut_list
from hardware import hardware
from lengths import down, length

AREA = {"in": 144, "mm": 1_000_000}
# Rough stock loses this much to planing at most.
PLANED = Fraction(3, 8)
BOX = {"Side", "Box front", "Box back", "Bottom"}


def table_of(rows):
    header, *body = rows
    return [dict(zip(header, row)) for row in body]


def sheets(job, openings):
    """Material, thickness, parts and their area for each stock that is laid out."""
    rows = [(stock, parts) for stock, parts in matched(job, openings) if not stock.get("Sold by") and parts]
    return [
        [stock.get("Material", ""), stock["thick"], sum(part[2] for part in parts), area(parts)] for stock, parts in rows
    ]


def area(parts):
    return sum(part[2] * part[3] * part[4] for part in parts)


def matched(job, openings):
    unit = openings[0]["unit"]
    stocks = [{**stock, "thick": length(stock["Thickness"], unit)} for stock in table_of(job["stock"])]
    taken = [(stock, []) for stock in stocks]
    for part in cut_list(openings):
        fitting = [place for place, stock in enumerate(stocks) if serves(stock, part)]
        nearest = min(fitting, key=lambda place: stocks[place]["thick"] - part[5])
        taken[nearest][1].append(part)
    return taken


def serves(stock, part):
    if stock.get("Material", "") not in ("", part[6]):
        return False
    spare = stock["thick"] - part[5]
    return 0 <= spare <= PLANED if stock.get("Sold by") else spare == 0


def quote(job, openings):
    rates = {name: value for name, value in job["rates"]}
    places = rates.get("currency decimals", 2)
    to = Fraction(1, 10 ** (0 if places == "none" else places))
    lines = []

    def charge(section, many, rate, amount=None):
        amount = half_up(many * rate if amount is None else amount, to)
        if amount:
            lines.append([section, many, rate, amount])
        return amount

    def rate(name):
        value = rates.get(name, 0)
        return Fraction(0) if value == "none" else Fraction(str(value))

    materials = sum(charge(*line) for line in wood(job, openings))
    materials += sum(charge("Hardware", many, rate(name)) for many, name in fittings(openings))
    cut = cut_list(openings)
    per = AREA[openings[0]["unit"]]
    for name, of in (("box finish price", lambda part: part in BOX), ("front finish price", lambda part: part == "Front")):
        materials += charge("Finish", Fraction(area([row for row in cut if of(row[0])])) / per, rate(name))
    drawers = sum(opening["quantity"] * len(opening["boxes"]) for opening in openings)
    labor = sum(
        charge("Labor", rate(name) * drawers / 60, rate("labor rate"))
        for name in ("box minutes", "front minutes", "fitting minutes")
    )
    cost = materials + labor
    cost += charge("Overhead", rate("overhead"), cost, cost * rate("overhead") / 100)
    price = cost + charge("Markup", rate("markup"), cost, cost * rate("markup") / 100)
    if rate("margin"):
        price = half_up(cost / (1 - rate("margin") / 100), to)
        charge("Margin", rate("margin"), price, price - cost)
    price += sum(charge("Extras", Fraction(1), rate(name)) for name in rates if name.startswith("extra "))
    base = {"all": price, "materials": materials, "none": 0}[rates.get("tax on", "all")]
    tax = charge("Tax", rate("tax"), base, base * rate("tax") / 100)
    return sorted(lines, key=lambda line: (line[0], line[3])) + [["Total", "", "", price + tax]]


def wood(job, openings):
    """Sheets by the share that their parts use; solid wood by its rough volume and what is wasted."""
    for stock, parts in matched(job, openings):
        if not parts:
            continue
        price = Fraction(str(stock["Price"]))
        if stock.get("Sold by"):
            # Yards count what is thinner than an inch as an inch.
            feet = area(parts) * max(stock["thick"], 1) / 144 * (1 + Fraction(str(stock["Waste"])) / 100)
            yield "Solid stock", feet, price
        else:
            yield "Sheets", area(parts) / (Fraction(stock["Length"]) * stock["Width"]), price


def fittings(openings):
    screws = 0
    for item, _, many in hardware(openings):
        if item.endswith(" slide"):
            yield Fraction(many), "slide price"
        elif item == "Pull":
            yield Fraction(many), "pull price"
        elif item == "Edge band":
            yield many, "edge band price"
        elif item.endswith((" screw", " nail")):
            screws += many
    yield Fraction(screws), "screw price"


def half_up(value, to):
    return down(value + to / 2, to)
