import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CHECKS, PARTS, PLAN, WORKING } from "../../src/functions";
import { fromDouble, showNumber } from "../../src/core/length";

type Cell = string | number;
type Table = Cell[][];
const HEADER = [
  "Opening",
  "Width",
  "Height",
  "Depth",
  "Drawers",
  "Cabinet",
  "Quantity",
  "Front gap",
  "Partition thickness",
  "Match heights",
];

const eighths = (min: number, max: number) => fc.integer({ min: min * 8, max: max * 8 }).map((n) => n / 8);
const drawers = fc.oneof(
  fc.integer({ min: 1, max: 5 }),
  fc.constantFrom("5; 1 part; 1 part", "1 part; 2 parts", "4 1/2; 6", "1.5 parts; 5; 1 part; 1 part"),
);

/** Openings of up to three cabinets, the columns of each alike where they must be. */
const openings = fc
  .array(
    fc.record({
      width: eighths(10, 36),
      height: eighths(26, 40),
      depth: eighths(14, 28),
      drawers,
      cabinet: fc.constantFrom("K1", "K2", "K3"),
      gap: fc.constantFrom("", "1/16", "1/4"),
      partition: fc.constantFrom("", "1/2", 1),
      match: fc.constantFrom("", "none", "cabinet", "job"),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((rows): Table => [
    HEADER,
    ...rows.map((o, i) => [
      `O${String.fromCharCode(65 + i)}`,
      o.width,
      o.height,
      o.depth,
      o.drawers,
      o.cabinet,
      o.cabinet === "K2" ? 3 : 1,
      o.gap,
      o.partition,
      o.match,
    ]),
  ]);

const standards = fc
  .record({
    construction: fc.constantFrom("frameless", "face frame"),
    "front style": fc.constantFrom("overlay", "inset"),
    "front step": fc.constantFrom("0", "1/16", "1/8"),
    "height step": fc.constantFrom("0", "1/8", "1/2"),
    "corner joint": fc.constantFrom("butt", "dovetail"),
    "bottom fit": fc.constantFrom("grooved", "under back", "applied"),
    "end reveal": fc.constantFrom("0", "1/16", "-1/4"),
    "top reveal": fc.constantFrom("1/8", "-1/2"),
    slide: fc.constantFrom("side-mount", "center-mount", "wood runner"),
  })
  .map((values): Table => Object.entries(values).map(([name, value]) => [name, value]));

interface Planned {
  row: Record<string, number | string>;
  opening: Record<string, Cell>;
}

function plan(table: Table, values: Table): Planned[] {
  const [heads, ...rows] = PLAN(table, values) as Table;
  const byLabel = new Map(
    table.slice(1).map((cells) => [cells[0], Object.fromEntries(cells.map((cell, i) => [HEADER[i]!, cell]))]),
  );
  return rows.map((cells) => ({
    row: Object.fromEntries(cells.map((cell, i) => [heads![i]!, cell])),
    opening: byLabel.get(cells[1]!)!,
  }));
}

const num = (value: unknown): number => value as number;
const close = (a: number, b: number) => Math.abs(a - b) < 1e-9;
const of = (values: Table, name: string): Cell => values.find(([n]) => n === name)![1]!;
const inches = (cell: Cell): number =>
  typeof cell === "number"
    ? cell
    : cell.startsWith("-")
      ? -inches(cell.slice(1))
      : Number(cell.split("/")[0]) / Number(cell.split("/")[1] ?? 1);

const byOpening = (planned: Planned[]) => {
  const groups = new Map<Cell, Planned[]>();
  for (const one of planned) groups.set(one.opening["Opening"]!, [...(groups.get(one.opening["Opening"]!) ?? []), one]);
  return [...groups.values()];
};

describe("laws of plans", () => {
  test("across a frameless cabinet, fronts and gaps are the carcase less its end reveals", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        fc.pre(of(values, "construction") === "frameless" && of(values, "front style") === "overlay");
        const planned = byOpening(plan(table, values)).map((drawers) => drawers[0]!);
        for (const cabinet of new Set(planned.map(({ opening }) => opening["Cabinet"]))) {
          const row = planned.filter(({ opening }) => opening["Cabinet"] === cabinet);
          const gapOf = (o: Planned) => inches(o.opening["Front gap"] || "1/8");
          const fronts = row.reduce((sum, { row: r }) => sum + num(r["Front width"]), 0);
          const gaps = row.slice(1).reduce((sum, o, i) => sum + Math.max(gapOf(o), gapOf(row[i]!)), 0);
          const partitions = row
            .slice(0, -1)
            .reduce((sum, o) => sum + inches(o.opening["Partition thickness"] || "3/4"), 0);
          const carcase = 1.5 + partitions + row.reduce((sum, o) => sum + num(o.opening["Width"]), 0);
          expect(close(fronts + gaps, carcase - 2 * inches(of(values, "end reveal")))).toBe(true);
        }
      }),
    );
  });

  test("down a column, fronts and gaps fill the face, less what steps and fixed fronts leave", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        for (const column of byOpening(plan(table, values))) {
          const gap = inches(column[0]!.opening["Front gap"] || "1/8");
          column.slice(1).forEach(({ row }, i) => {
            const above = column[i]!.row;
            expect(close(num(above["Front bottom"]) - gap, num(row["Front bottom"]) + num(row["Front height"]))).toBe(
              true,
            );
          });
          const last = column[column.length - 1]!.row;
          const label = String(column[0]!.row["Drawer"]);
          const sizes = new Map((WORKING(table, label, values) as Table).map(([size, value]) => [size, value]));
          const left = num(last["Front bottom"]) - num(sizes.get("Face lower edge"));
          expect(left).toBeGreaterThan(-1e-9);
          const shares = !String(column[0]!.opening["Drawers"]).match(/^4 1\/2; 6$/);
          const step = inches(of(values, "front step"));
          if (shares) expect(left).toBeLessThan(step === 0 ? 1e-9 : step);
        }
      }),
    );
  });

  test("no box meets another or the carcase, or stands above or below its front", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        for (const column of byOpening(plan(table, values))) {
          let ceiling = num(column[0]!.opening["Height"]);
          for (const { row } of column) {
            const [bottom, height] = [num(row["Box bottom"]), num(row["Box height"])];
            expect(bottom).toBeGreaterThan(0);
            expect(bottom + height).toBeLessThan(ceiling);
            expect(bottom).toBeGreaterThanOrEqual(num(row["Front bottom"]));
            expect(bottom + height).toBeLessThanOrEqual(num(row["Front bottom"]) + num(row["Front height"]));
            ceiling = bottom;
          }
        }
      }),
    );
  });

  test("box and both slides are the opening; the box and its rear clearance fit its depth", () => {
    const clearance: Record<string, number> = { "side-mount": 0.5, "center-mount": 0.125, "wood runner": 0.0625 };
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        for (const { row, opening } of plan(table, values)) {
          expect(num(row["Box width"]) + 2 * clearance[String(of(values, "slide"))]!).toBe(opening["Width"]);
          const setback = of(values, "front style") === "inset" ? 0.75 : 0;
          expect(num(row["Box depth"]) + setback + 0.5).toBeLessThanOrEqual(num(opening["Depth"]));
        }
      }),
    );
  });

  test("boxes behind equal fronts are equally high, in the circle that the row names", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const planned = plan(table, values);
        for (const a of planned) {
          for (const b of planned) {
            const [match, other] = [a.opening["Match heights"] || "opening", b.opening["Match heights"] || "opening"];
            // Before the step, which makes equal fronts differ, all fronts of a count are equal.
            const counted = a.opening === b.opening && typeof a.opening["Drawers"] === "number";
            const alike = of(values, "front step") === "0" && a.row["Front height"] === b.row["Front height"];
            if (match === "none" || match !== other || !(counted || alike)) continue;
            const near =
              match === "job" ||
              (match === "cabinet" ? a.opening["Cabinet"] === b.opening["Cabinet"] : a.opening === b.opening);
            if (near) expect(a.row["Box height"]).toBe(b.row["Box height"]);
          }
        }
      }),
    );
  });

  test("grouped and ungrouped parts hold the same pieces", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const pieces = (grouped: boolean) => {
          const counts = new Map<string, number>();
          for (const [part, , qty, ...rest] of (PARTS(table, values, grouped) as Table).slice(1)) {
            const key = JSON.stringify([part, ...rest]);
            counts.set(key, (counts.get(key) ?? 0) + num(qty));
          }
          return counts;
        };
        expect([...pieces(true)].sort()).toEqual([...pieces(false)].sort());
        const labels = (PARTS(table, values) as Table)
          .slice(1)
          .filter(([part]) => part === "Front")
          .flatMap((row) => String(row[1]).split(", "));
        expect(labels.sort()).toEqual(
          (PLAN(table, values) as Table)
            .slice(1)
            .map((row) => row[0])
            .sort(),
        );
      }),
    );
  });

  test("WORKING agrees with PLAN in every size", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const [heads, ...rows] = PLAN(table, values) as Table;
        const row = rows[rows.length - 1]!;
        const sizes = new Map((WORKING(table, row[0], values) as Table).map(([size, value]) => [size, value]));
        expect(heads!.slice(2).map((head) => sizes.get(head) ?? "")).toEqual(row.slice(2));
      }),
    );
  });

  test("a wider opening never gives a narrower box, a deeper one never a shorter slide", () => {
    fc.assert(
      fc.property(openings, standards, eighths(1, 6), (table, values, more) => {
        const larger = table.map((row, i) =>
          i === 0 ? row : row.map((cell, c) => (c === 1 || c === 3 ? num(cell) + more : cell)),
        );
        const [before, after] = [plan(table, values), plan(larger, values)];
        before.forEach(({ row }, i) => {
          for (const size of ["Box width", "Slide length"])
            expect(num(after[i]!.row[size])).toBeGreaterThanOrEqual(num(row[size]));
        });
      }),
    );
  });

  test("CHECKS has a finding or All clear for every job, with a remedy to each", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const rows = (CHECKS(table, values) as Table).slice(1);
        for (const [where, level, finding, remedy] of rows) {
          if (finding === "All clear") expect([rows.length, where, level, remedy]).toEqual([1, "", "", ""]);
          else
            expect([
              ["wrong", "doubtful"].includes(String(level)),
              String(where) !== "",
              String(finding).length > 9,
              String(remedy).length > 9,
            ]).toEqual([true, true, true, true]);
        }
      }),
    );
  });
});

describe("inches and millimeters", () => {
  const STANDARDS: [string, number][] = [
    ["side clearance", 12.7],
    ["slide lengths", 450],
    ["rear clearance", 12],
    ["slide height", 45],
    ["side thickness", 12],
    ["bottom thickness", 6],
    ["groove depth", 6],
    ["groove offset", 10],
    ["bottom play", 1.5],
    ["space below", 12],
    ["space above", 6],
    ["height step", 1],
    ["front thickness", 19],
    ["front gap", 3],
    ["front step", 1],
    ["cabinet thickness", 18],
    ["top reveal", 3],
    ["end reveal", 1.5],
    ["two pulls from", 600],
  ];

  test("an opening in whole millimeters with every standard explicit gives the same drawers as its inch twin", () => {
    const size = fc.integer({ min: 480, max: 900 });
    fc.assert(
      fc.property(size, size, size, fc.integer({ min: 1, max: 4 }), (width, height, depth, count) => {
        const header = ["Width", "Height", "Depth", "Drawers"];
        const mm = PLAN([header, [width, height, depth, count]], [["unit", "mm"], ...STANDARDS]) as Table;
        const inch = PLAN(
          [header, [`${width} mm`, `${height} mm`, `${depth} mm`, count]],
          [["unit", "in"], ...STANDARDS.map(([name, value]) => [name, `${value} mm`])],
        ) as Table;
        const exact = (value: Cell) => (typeof value === "number" ? value : Number.NaN);
        inch.slice(1).forEach((row, r) => {
          row
            .slice(2)
            .forEach((cell, c) => expect(Math.abs(exact(cell) * 25.4 - exact(mm[r + 1]![c + 2]!))).toBeLessThan(1e-9));
        });
        expect(showNumber(fromDouble(num(mm[1]![5])), "mm")).toBe(String(Math.round((width - 25.4) * 10) / 10));
      }),
    );
  });
});
