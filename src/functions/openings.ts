import { isZero, type Rational, type Unit } from "../core/length";
import { cabinets, cabinetStandards, cellFunction } from "./calls";
import { exactResult, table, type CellResult } from "./cells";
import type { Divided, DividedCabinet } from "./tables";

/**
 * Gives the table of openings that the other functions take, from cabinets by their outside sizes.
 * @customfunction
 * @group Plan
 * @param {any[][]} cabinets A row a cabinet: Cabinet, Width, Height, Depth (outside), Columns, Drawers; also Toe kick, Back thickness, Back inset, Quantity
 * @param {any[][]} [standards] Two columns, name and value, as in PLAN
 * @returns {any[][]} A table, one row an opening, left to right: Opening, Cabinet, Width, Height, Depth (clear, in the unit), Drawers, Quantity, Case width, Toe kick, Back thickness, Back inset, and what else the cabinets' table holds for its openings
 * @throws #VALUE! where a table cannot be read, or ends, partitions, toe kick, rails or back leave no opening
 * @example =DRAWER.OPENINGS({"Cabinet","Width","Height","Depth","Columns","Drawers";"K",36,34.5,24,2,4}) // => {"Opening","Cabinet","Width","Height","Depth","Drawers","Quantity","Case width","Toe kick","Back thickness","Back inset";"K A","K",16.875,33,23.75,4,…;"K B","K",16.875,33,23.75,4,…}
 * @source common practice: ends as high and as deep as the cabinet, top and bottom between them
 */
export function OPENINGS(cabinets: any[][], standards?: any[][]): any[][] {
  return call([cabinets, standards]);
}

const call = cellFunction([cabinets, cabinetStandards], ([, { cabinets, columns }], unit) => {
  const drawers = columns.find(({ name }) => name === "drawers")!;
  const others = columns.filter(({ name }) => name !== "drawers" && name !== "quantity");
  return table(
    [...HEADINGS.slice(0, 5), drawers.heading, ...HEADINGS.slice(6), ...others.map(({ heading }) => heading)],
    cabinets.flatMap((cabinet) =>
      cabinet.labels.map((_, place) => [
        ...ownCells(cabinet, place, unit),
        ...others.map(({ name }) => (name && reaches(name, place, cabinet) ? asTyped(cabinet, name) : "")),
      ]),
    ),
  );
});

const HEADINGS = [
  "Opening",
  "Cabinet",
  "Width",
  "Height",
  "Depth",
  "Drawers",
  "Quantity",
  "Case width",
  "Toe kick",
  "Back thickness",
  "Back inset",
];

function ownCells(cabinet: DividedCabinet, place: number, unit: Unit): CellResult[] {
  const { name, labels, widths, height, depth, caseWidths, carcase } = cabinet;
  const size = (length: Rational): CellResult => exactResult(length, unit);
  // A number 0 is read as a blank: where a blank means a usual size, the word is meant.
  const sizeOr = (blank: string, length: Rational): CellResult => (isZero(length) ? blank : size(length));
  const inside = caseWidths[place];
  return [
    labels[place]!,
    name,
    size(widths[place]!),
    size(height),
    size(depth),
    asTyped(cabinet, "drawers"),
    asTyped(cabinet, "quantity"),
    inside ? size(inside) : "",
    sizeOr("", carcase.toeKick),
    sizeOr("none", carcase.back),
    sizeOr("", carcase.backInset),
  ];
}

const asTyped = ({ handedOn }: DividedCabinet, name: Divided["columns"][number]["name"] & string): CellResult =>
  (handedOn.get(name)?.value as CellResult | undefined) ?? "";

/** The reveal of a cabinet's end is that of the opening beside it. */
const reaches = (name: string, place: number, { labels }: DividedCabinet): boolean =>
  name === "left reveal" ? place === 0 : name === "right reveal" ? place === labels.length - 1 : true;
