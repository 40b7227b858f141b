import {
  MEASURED,
  readDrawers,
  STANDARD_NAMES,
  type AnyOpening,
  type DrawerAsked,
  type Measured,
  type Opening,
  type StandardName,
  type Standards,
} from "../../core/drawer";
import { Fault, lesserOf, naming, orElse, ZERO, type Rational, type Unit } from "../../core/length";
import { readLength } from "../cells";
import { length, lengths, numberCell, textCell, type Kind } from "./kinds";
import { placeOf, type Row } from "./row";
import { readStandard } from "./standards";

/** A whole number is a count, which has no unit, whatever the heading says. */
const drawers: Kind<DrawerAsked[]> = (typed, unit) => {
  const { value, mark } = typed;
  if (typeof value === "string") return readDrawers([value], unit, mark);
  return readDrawers([readLength(Number.isInteger(value) ? { value } : typed, unit)], unit);
};

const notNegative = length("not negative");

/** The columns that only an opening has, and how their cells are read. */
export const OPENING_COLUMNS = {
  opening: textCell,
  width: lengths(),
  height: lengths(),
  depth: lengths(),
  drawers,
  cabinet: textCell,
  quantity: numberCell(1, 1000, true),
  "case width": lengths(),
  "box heights": lengths(),
  "toe kick": notNegative,
  "back thickness": notNegative,
  "back inset": notNegative,
};

type Columns = { [N in keyof typeof OPENING_COLUMNS]: ReturnType<(typeof OPENING_COLUMNS)[N]> };
export type OpeningHeading = keyof Columns | StandardName;

/** Columns that every table of openings has. */
export const REQUIRED_HEADINGS = ["width", "height", "depth", "drawers"] as const;
export const OPENING_HEADINGS = [...Object.keys(OPENING_COLUMNS), ...STANDARD_NAMES] as OpeningHeading[];

/** What stands in a row, as far as it can be read. */
type Cells = Partial<Columns & Standards>;

/**
 * Reads every cell of a row, from left to right, then asks for what is missing, so that no cell passes unread. A cell that
 * cannot be read is a fault of its opening alone.
 */
export function readOpening(row: Row<OpeningHeading>, label: string, unit: Unit, job: Readonly<Standards>): AnyOpening {
  const cells: Partial<Record<OpeningHeading, unknown>> = {};
  const faults = new Map<OpeningHeading, Fault>();
  const at = (heading: OpeningHeading, read: () => unknown): void =>
    orElse(
      () => void (cells[heading] = naming(placeOf("openings", row, heading), read)),
      (fault) => void faults.set(heading, fault),
    );
  for (const [heading, typed] of row.cells) {
    at(heading, () => (isColumn(heading) ? OPENING_COLUMNS[heading](typed, unit) : readStandard(heading, typed, unit)));
  }
  for (const heading of REQUIRED_HEADINGS) {
    if (row.cells.has(heading)) continue;
    at(heading, () => {
      throw new Fault("argument.blank", { wanted: WANTED[heading] });
    });
  }
  return opened({ label, place: row.number, unit }, cells as Cells, job, faults);
}

const isColumn = (heading: OpeningHeading): heading is keyof Columns => heading in OPENING_COLUMNS;

function opened(
  common: Pick<Opening, "label" | "place" | "unit">,
  cells: Cells,
  job: Readonly<Standards>,
  faults: ReadonlyMap<OpeningHeading, Fault>,
): AnyOpening {
  const own = (Object.keys(cells) as OpeningHeading[]).filter((name): name is StandardName => !isColumn(name));
  const standards = own.length === 0 ? job : { ...job, ...Object.fromEntries(own.map((name) => [name, cells[name]])) };
  const measured = <T>(of: (lengths: Rational[]) => T): Record<Measured, T> =>
    Object.fromEntries(MEASURED.flatMap((size) => (cells[size] ? [[size, of(cells[size])]] : []))) as Record<
      Measured,
      T
    >;
  // Where a size is missing, that is a fault.
  const read = { ...common, standards, measurements: measured((lengths) => lengths), least: measured(leastOf) };
  const quantity = faults.has("quantity") ? undefined : (cells.quantity ?? 1);
  if (faults.size > 0) return { ...read, faults, quantity };
  return {
    ...read,
    own: new Set(own),
    drawers: cells.drawers!,
    quantity: quantity!,
    ...(cells["case width"] && { caseWidth: leastOf(cells["case width"]) }),
    ...(cells["back thickness"] && {
      carcase: {
        toeKick: cells["toe kick"] ?? ZERO,
        back: cells["back thickness"],
        backInset: cells["back inset"] ?? ZERO,
      },
    }),
    ...(cells["box heights"] && { boxHeights: cells["box heights"] }),
  };
}

const leastOf = (lengths: readonly Rational[]): Rational => lengths.reduce(lesserOf);

const WANTED: Record<(typeof REQUIRED_HEADINGS)[number], string> = {
  width: "length",
  height: "length",
  depth: "length",
  drawers: "count of drawers, or a list such as 5 1/2; 1 part; 2 parts",
};
