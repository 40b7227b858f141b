import { Fault, less, naming, readLength, type Rational, type Typed, type Unit } from "../../length";
import { readDrawers } from "../drawers-text";
import type { DrawerAsked } from "../fronts";
import { lengths, numberCell, textCell, type Kind } from "./kinds";
import { STANDARD_NAMES, readStandard, type StandardName, type Standards } from "./standards";
import { placeOf, type Row } from "./table";

/** A whole number is a count, which has no unit, whatever the heading says. */
const drawers: Kind<DrawerAsked[]> = (typed, unit) => {
  const { value, mark } = typed;
  if (typeof value === "string") return readDrawers([value], unit, mark);
  return readDrawers([readLength(Number.isInteger(value) ? { value } : typed, unit)], unit);
};

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
};

type Columns = { [N in keyof typeof OPENING_COLUMNS]: ReturnType<(typeof OPENING_COLUMNS)[N]> };
export type OpeningHeading = keyof Columns | StandardName;

/** Columns that every table of openings has. */
export const REQUIRED_HEADINGS = ["width", "height", "depth", "drawers"] as const;
export const OPENING_HEADINGS = [...Object.keys(OPENING_COLUMNS), ...STANDARD_NAMES] as OpeningHeading[];

/** Sizes of an opening that may hold several measurements, of which the least counts. */
export const MEASURED = ["width", "height", "depth"] as const;
export type Measured = (typeof MEASURED)[number];

/** One opening as measured. Each cell is read when it is first asked for, and throws its own fault. */
export class Opening {
  /** What holds for this opening: its own columns, and the job's standards beneath. */
  readonly standards: Standards;
  private readonly read = new Map<string, unknown>();

  constructor(
    readonly row: Row<OpeningHeading>,
    readonly label: string,
    readonly unit: Unit,
    job: Standards,
  ) {
    this.standards = withOverrides(row, unit, job, this);
  }

  /** The least of the measurements of a size. */
  least(size: Measured): Rational {
    return this.measurements(size).reduce((a, b) => (less(b, a) ? b : a));
  }

  measurements(size: Measured): Rational[] {
    return this.column(size);
  }

  get drawers(): DrawerAsked[] {
    return this.column("drawers");
  }

  get quantity(): number {
    return this.optional("quantity") ?? 1;
  }

  get caseWidth(): Rational | undefined {
    return this.optional("case width")?.reduce((a, b) => (less(b, a) ? b : a));
  }

  /** Heights for its boxes, top to bottom; one for all, or one a drawer. */
  get boxHeights(): Rational[] | undefined {
    return this.optional("box heights");
  }

  /** Reads every cell, from left to right, then asks for what is missing, so that no cell passes unread. */
  readAll(): void {
    for (const heading of this.row.cells.keys()) {
      if (heading in OPENING_COLUMNS) this.column(heading as keyof Columns);
      else void this.standards[heading as StandardName];
    }
    for (const heading of REQUIRED_HEADINGS) this.column(heading);
  }

  /** Reads a column once; `naming` puts the cell's place on its fault. */
  memo<T>(heading: OpeningHeading, read: (typed: Typed) => T): T {
    if (!this.read.has(heading)) {
      const typed = this.row.cells.get(heading) ?? { value: null };
      this.read.set(
        heading,
        naming(placeOf("openings", this.row, heading), () => read(typed)),
      );
    }
    return this.read.get(heading) as T;
  }

  private column<N extends keyof Columns>(heading: N): Columns[N] {
    return this.memo(heading, (typed) => {
      if (!this.row.cells.has(heading)) throw new Fault("argument.blank", { wanted: WANTED[heading] ?? "value" });
      return OPENING_COLUMNS[heading](typed, this.unit) as Columns[N];
    });
  }

  private optional<N extends keyof Columns>(heading: N): Columns[N] | undefined {
    return this.row.cells.has(heading) ? this.column(heading) : undefined;
  }
}

const WANTED: Partial<Record<OpeningHeading, string>> = {
  width: "length",
  height: "length",
  depth: "length",
  drawers: "count of drawers, or a list such as 5 1/2; 1 part; 2 parts",
};

/** Standards that fall through to the job's, but for the columns that this row fills in. */
function withOverrides(row: Row<OpeningHeading>, unit: Unit, job: Standards, opening: Opening): Standards {
  const own = STANDARD_NAMES.filter((name) => row.cells.has(name));
  if (own.length === 0) return job;
  const standards = Object.create(job) as Standards;
  for (const name of own) {
    Object.defineProperty(standards, name, {
      get: () => opening.memo(name, (typed) => readStandard(name, typed, unit)),
    });
  }
  return standards;
}
