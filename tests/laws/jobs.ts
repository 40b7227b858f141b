import fc from "fast-check";

export type Cell = string | number;
export type Table = Cell[][];

const eighths = (min: number, max: number) => fc.integer({ min: min * 8, max: max * 8 }).map((n) => n / 8);

/** Openings of up to three cabinets, in inches. */
export const openings = fc
  .array(
    fc.record({
      width: eighths(12, 36),
      height: eighths(26, 40),
      depth: eighths(14, 28),
      drawers: fc.oneof(
        fc.integer({ min: 1, max: 5 }),
        fc.constantFrom("5; 1 part; 1 part", "1 part; 2 parts", "4 1/2; 6"),
      ),
      cabinet: fc.constantFrom("K1", "K2", "K3"),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((rows): Table => [
    ["Opening", "Width", "Height", "Depth", "Drawers", "Cabinet", "Quantity", "Case width"],
    ...rows.map(({ width, height, depth, drawers, cabinet }, i) => [
      `O${String.fromCharCode(65 + i)}`,
      width,
      height,
      depth,
      drawers,
      cabinet,
      cabinet === "K2" ? 3 : 1,
      width + 2,
    ]),
  ]);

/** Standards that go together, whatever is drawn. */
export const standards = fc
  .record({
    construction: fc.constantFrom("frameless", "face frame"),
    "front style": fc.constantFrom("overlay", "inset", "integral", "lipped"),
    "front joint": fc.constantFrom("half-blind dovetail", "rabbet"),
    "corner joint": fc.constantFrom("butt", "rabbet", "dado", "dovetail", "half-blind dovetail", "box joint"),
    "joint depth": fc.constantFrom("1/8", "1/4", "3/8"),
    "side thickness": fc.constantFrom("15/32", "1/2", "5/8", "3/4"),
    "bottom thickness": fc.constantFrom("7/32", "1/4", "1/2"),
    "bottom material": fc.constantFrom("Plywood", "Cherry"),
    "bottom fit": fc.constantFrom("grooved", "under back", "applied"),
    "bottom overhang": fc.constantFrom(0, "1/8"),
    dividers: fc.constantFrom("none", 2, "5 in"),
    "divider run": fc.constantFrom("front to back", "side to side"),
    "front match": fc.constantFrom("none", "opening", "cabinet", "panel"),
    "front grain": fc.constantFrom("vertical", "horizontal"),
    "pull kind": fc.constantFrom("bought", "shop-made"),
    "pulls per front": fc.constantFrom("auto", "none", 1, 2),
    kerf: fc.constantFrom("1/8", "3/32"),
    slide: fc.constantFrom("side-mount", "center-mount", "wood runner", "undermount"),
    // Of an invented data sheet, and of none where the slide is another.
    "undermount deduction": fc.constant("1 3/4"),
    "undermount depth difference": fc.constantFrom("none", "3/8"),
    "undermount notch width": fc.constantFrom("none", "1 3/8"),
    "undermount notch height": fc.constant("3/8"),
    "undermount hook hole": fc.constantFrom("none", "1/4"),
    "undermount hook inset": fc.constant("9/32"),
    "undermount hook height": fc.constant("11/16"),
    "undermount hook depth": fc.constantFrom("none", "3/8"),
  })
  .map((values): Table => Object.entries(values).map(([name, value]) => [name, value]));

/** What SETUPS calls the sizes of a strip or a panel that is set aside. */
export const SET_ASIDE = /^Length (along|across) the grain, cuts between fronts included$/;

/** A table's rows as records by heading. */
export const records = (table: unknown[][]): Record<string, Cell>[] =>
  table.slice(1).map((row) => Object.fromEntries(row.map((cell, i) => [String(table[0]![i]), cell as Cell])));

export const num = (value: unknown): number => value as number;
export const of = (values: Table, name: string): Cell => values.find(([n]) => n === name)![1]!;

/** A fraction such as 15/32. */
export const size = (cell: Cell): number =>
  typeof cell === "number" ? cell : Number(cell.split("/")[0]) / Number(cell.split("/")[1] ?? 1);
