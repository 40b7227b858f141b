"""Names of the table of standards that these jobs use, with the defaults that the documentation gives in | mm."""

from lengths import length, lengths

DEFAULTS = """
construction | frameless
frame overlay | 1/2 | 12
front style | overlay
inset gap | 3/32 | 2
slide | side-mount
side clearance | - | -
undermount deduction | - | -
slide lengths | 10; 12; 14; 16; 18; 20; 22; 24; 26; 28 | 250; 300; 350; 400; 450; 500; 550; 600; 650; 700
rear clearance | 1/2 | 12
box depth | - | -
slide centerline | center
slide height | 1 3/4 | 45
runner | under
runner thickness | - | -
runner width | 1 | 25
runner material | -
runner groove depth | - | -
runner play | 1/32 | 0.8
corner joint | butt
joint depth | 0 | 0
dado inset | 1/4 | 6
side thickness | 1/2 | 12
end thickness | - | -
bottom thickness | 1/4 | 6
bottom fit | grooved
bottom overhang | 0 | 0
groove depth | 1/4 | 6
groove offset | 3/8 | 10
bottom play | 1/16 | 1.5
space below | 1/2 | 12
space above | 1/4 | 6
height step | 1/8 | 1
match heights | opening
front thickness | 3/4 | 19
front gap | 1/8 | 3
front step | 1/16 | 1
cabinet thickness | 3/4 | 18
partition thickness | - | -
stile width | 1 1/2 | 38
rail width | 1 1/2 | 38
rail above | none
rail below | none
top reveal | 1/8 | 3
bottom reveal | 0 | 0
end reveal | 1/16 | 1.5
left reveal | - | -
right reveal | - | -
front grain | vertical
front match | none
edge band | 0 | 0
pre-mill | 0 | 0
side material | Plywood
bottom material | Plywood
front material | Plywood
opening tolerance | 1/32 | 0.8
thickness tolerance | 1/64 | 0.4
cut tolerance | 1/64 | 0.4
slide tolerance low | 0 | 0
slide tolerance high | 1/32 | 0.8
pulls per front | auto
two pulls from | 24 | 600
four screws from | 24 | 600
pull spacing | 128 mm | 128 mm
pull height | center
pull kind | bought
pull length | 6 | 150
pull width | 1 | 25
pull standoff | 1/2 | 12
kerf | 1/8 | 3.2
undermount thickest side | 0 | 0
undermount space below | 0 | 0
undermount space above | 0 | 0
undermount bottom recess | 0 | 0
undermount depth difference | 0 | 0
undermount notch width | 0 | 0
undermount notch height | 0 | 0
undermount hook hole | 0 | 0
undermount hook inset | 0 | 0
undermount hook height | 0 | 0
undermount hook depth | 0 | 0
"""
CLEARANCE = {"side-mount": ("1/2", "12.7"), "center-mount": ("1/8", "3"), "wood runner": ("1/16", "1.5")}
LISTS = {"slide lengths"}
# A rail of `none` is no rail, and not one of no height.
NONES = {"rail above", "rail below"}


def read(own, unit):
    """All standards of one opening: its own, what they follow, and the defaults."""
    found = {}
    known = set()
    for line in DEFAULTS.strip().splitlines():
        name, *defaults = [part.strip() for part in line.split("|")]
        known.add(name)
        default = defaults[-1] if unit == "mm" else defaults[0]
        given = own.get(name, "")
        found[name] = cell(name, default if given == "" else given, unit, is_word=len(defaults) == 1)
    unknown = set(own) - known - {"unit"}
    assert not unknown, f"standards that the recalculation does not know: {unknown}"
    follow(found, unit)
    return found


def cell(name, given, unit, is_word):
    if given == "-" or (name in NONES and given == "none"):
        return None
    if name in LISTS:
        return lengths(given, unit)
    if name == "pulls per front":
        return 0 if given == "none" else given
    if is_word and name not in NONES and given in WORDS.get(name, {given}):
        return given
    return length(given, unit)


WORDS = {"slide centerline": {"center", "bottom"}, "pull height": {"center"}}


def follow(found, unit):
    """What is `as the …` takes that row's own value."""
    by_unit = 1 if unit == "mm" else 0
    if found["side clearance"] is None and found["slide"] in CLEARANCE:
        found["side clearance"] = length(CLEARANCE[found["slide"]][by_unit], unit)
    for name, other in [
        ("end thickness", "side thickness"),
        ("partition thickness", "cabinet thickness"),
        ("left reveal", "end reveal"),
        ("right reveal", "end reveal"),
        ("runner thickness", "side thickness"),
        ("runner material", "side material"),
    ]:
        if found[name] is None:
            found[name] = found[other]
    if found["runner groove depth"] is None:
        found["runner groove depth"] = found["side thickness"] / 2
