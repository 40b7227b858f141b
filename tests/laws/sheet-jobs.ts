import fc from "fast-check";
import { CUTS, LAYOUT, SHEETS } from "../../src/functions";
import { sawn, type Board } from "./sheet-saw";

type Call = (...args: unknown[]) => unknown[][];
const [sheetsOf, layoutOf, cutsOf] = [SHEETS, LAYOUT, CUTS].map((f) => f as unknown as Call) as [Call, Call, Call];

interface Wanted {
  name: string;
  length: number;
  width: number;
  quantity: number;
  grain: "length" | "width" | "any";
  material: "Birch" | "Oak";
}
export interface Asked {
  parts: Wanted[];
  kerf: number;
  trim: number;
  unit: "in" | "mm";
}

/** Sizes of stock, in inches and millimeters: Birch in two sizes, Oak in one. */
export const STOCK = {
  in: [
    ["Birch", 96, 48, 60],
    ["Birch", 60, 60, 52.5],
    ["Oak", 97, 49, 110],
  ],
  mm: [
    ["Birch", 2440, 1220, 60],
    ["Birch", 1525, 1525, 52.5],
    ["Oak", 2500, 1250, 110],
  ],
} as const;

/** Parts of 4 to 40 in, in eighths or in halves of a millimeter. */
export const asked: fc.Arbitrary<Asked> = fc
  .record({
    unit: fc.constantFrom("in" as const, "mm" as const),
    kerf: fc.constantFrom(0, 1, 2),
    trim: fc.constantFrom(0, 0, 4),
    rows: fc.array(
      fc.record({
        length: fc.integer({ min: 32, max: 320 }),
        width: fc.integer({ min: 32, max: 320 }),
        quantity: fc.integer({ min: 1, max: 4 }),
        grain: fc.constantFrom<Wanted["grain"]>("length", "width", "any"),
        material: fc.constantFrom<Wanted["material"]>("Birch", "Oak"),
      }),
      { minLength: 1, maxLength: 8 },
    ),
  })
  .map(({ unit, kerf, trim, rows }) => {
    const step = unit === "in" ? 1 / 8 : 3.2;
    return {
      unit,
      kerf: kerf * step,
      trim: trim * step,
      parts: rows.map((row, i) => ({
        ...row,
        name: `Part ${i + 1}`,
        length: unit === "in" ? row.length / 8 : row.length * 3 + row.length / 2,
        width: unit === "in" ? row.width / 8 : row.width * 3 + row.width / 2,
      })),
    };
  });

/** @param laid a layout in place of the parts */
export function answer({ parts, kerf, trim, unit }: Asked, laid?: unknown[][]) {
  const args = [
    laid ?? [
      ["Part", "Length", "Width", "Qty", "Grain", "Material"],
      ...parts.map(({ name, length, width, quantity, grain, material }) => [
        name,
        length,
        width,
        quantity,
        grain,
        material,
      ]),
    ],
    [["Material", "Length", "Width", "Price"], ...STOCK[unit]],
    // A number 0 may be an empty cell; as a text it is meant.
    kerf === 0 ? "0" : kerf,
    trim,
    "quick",
    unit,
  ];
  const table = layoutOf(...args);
  return { sheets: objects(sheetsOf(...args)), table, layout: objects(table), cuts: cutsOf(...args).slice(1) };
}

/** Rows by their headings. */
const objects = ([header, ...rows]: unknown[][]): Record<string, unknown>[] =>
  rows.map((row) => Object.fromEntries(row.map((cell, i) => [String(header![i]), cell])));

export const sum = (numbers: readonly number[]): number => numbers.reduce((total, n) => total + n, 0);
const numbered = (numbers: readonly unknown[]): unknown[] =>
  [...new Set(numbers)].sort((a, b) => Number(a) - Number(b));

/** Each sheet with its parts, and the boards that its cuts end with. */
export function sawnSheets(job: Asked, { layout, cuts }: ReturnType<typeof answer>) {
  return numbered(layout.map((row) => row["Sheet"])).map((number) => {
    const placed = layout.filter((row) => row["Sheet"] === number);
    const rows = cuts.filter(([sheet]) => sheet === number).map((row) => row.slice(3));
    const whole = placed.map((row) => board(row))[0]!;
    const done =
      rows.length > 0 ? sawn(rows, job.kerf, job.trim) : { sheet: { ...whole, label: "sheet" }, boards: [whole] };
    return { material: placed[0]!["Material"], placed, ...done };
  });
}

export const board = (row: Record<string, unknown>): Board => ({
  label: String(row["Part"]),
  length: row["Length"] as number,
  width: row["Width"] as number,
});
