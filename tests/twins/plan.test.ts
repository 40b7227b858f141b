import { describe, expect, test } from "vitest";
import { MOUNTING, PARTS, PLAN } from "../../src/functions";
import { computedByLibreOffice } from "../libreoffice";
import { MOUNTING_COLUMNS, mountingSheet } from "./mounting-sheet";
import { COLUMNS, planSheet, type SheetJob } from "./plan-sheet";

const INCH = {
  "side clearance": 0.5,
  "rear clearance": 0.5,
  "side thickness": 0.5,
  "end thickness": 0.5,
  "bottom thickness": 0.25,
  "groove depth": 0.25,
  "groove offset": 0.375,
  "bottom play": 0.0625,
  "space below": 0.5,
  "space above": 0.25,
  "height step": 0.125,
  "front thickness": 0.75,
  "front gap": 0.125,
  "front step": 0.0625,
  "cabinet thickness": 0.75,
  "partition thickness": 0.75,
  "top reveal": 0.125,
  "bottom reveal": 0,
  "end reveal": 0.0625,
  "inset gap": 0.09375,
  "frame overlay": 0.5,
  "longest slide": 28,
  "slide step": 2,
};
const MM = {
  "side clearance": 12.7,
  "rear clearance": 12,
  "side thickness": 12,
  "end thickness": 12,
  "bottom thickness": 6,
  "groove depth": 6,
  "groove offset": 10,
  "bottom play": 1.5,
  "space below": 12,
  "space above": 6,
  "height step": 1,
  "front thickness": 19,
  "front gap": 3,
  "front step": 1,
  "cabinet thickness": 18,
  "partition thickness": 18,
  "top reveal": 3,
  "bottom reveal": 0,
  "end reveal": 1.5,
  "inset gap": 2,
  "frame overlay": 12,
  "longest slide": 700,
  "slide step": 50,
};

/** Invented: a map maker's cabinet, a seed merchant's chest, a violin maker's bench. */
const JOBS: SheetJob[] = [
  {
    name: "a map maker's cabinet, frameless overlay, inches",
    unit: "in",
    style: "overlay",
    faceFrame: false,
    standards: {
      ...INCH,
      "side thickness": 0.46875,
      "end thickness": 0.5,
      "partition thickness": 1,
      "height step": 0.25,
    },
    openings: [
      { size: [31.3125, 27.4375, 25.75], drawers: [{ fixed: 3.5 }, { fixed: 4.25 }, { parts: 1 }, { parts: 2 }] },
      { size: [19.875, 27.4375, 22.5], drawers: [{ parts: 1 }, { parts: 1 }, { parts: 1 }] },
      { size: [24.0625, 27.4375, 18.8125], drawers: [{ parts: 2 }, { fixed: 6 }, { parts: 3 }] },
    ],
  },
  {
    name: "a seed merchant's chest, inset, millimeters",
    unit: "mm",
    style: "inset",
    faceFrame: false,
    standards: { ...MM, "front step": 0, "height step": 5 },
    openings: [
      { size: [417, 803, 541], drawers: [{ fixed: 111 }, { parts: 1 }, { parts: 1 }, { parts: 1.5 }] },
      { size: [533, 803, 472], drawers: [{ parts: 1 }, { parts: 1 }] },
    ],
  },
  {
    name: "a violin maker's bench, face frame, inches",
    unit: "in",
    style: "overlay",
    faceFrame: true,
    standards: { ...INCH, "frame overlay": 0.375, "front gap": 0.25 },
    openings: [
      { size: [15.6875, 24.3125, 21.125], drawers: [{ parts: 1 }, { parts: 1 }, { parts: 1 }, { parts: 1 }] },
      { size: [33.25, 24.3125, 21.125], drawers: [{ fixed: 5.5 }, { parts: 1 }, { parts: 1 }] },
    ],
  },
];

const FOR_THE_SHEET_ALONE = ["longest slide", "slide step"];

/** The same job as tables for ours. */
function tables({ unit, style, faceFrame, standards, openings }: SheetJob): [unknown[][], unknown[][]] {
  const drawers = (job: SheetJob["openings"][number]) =>
    job.drawers.map((d) => ("fixed" in d ? `${d.fixed} ${unit}` : `${d.parts} parts`)).join("; ");
  return [
    [["Width", "Height", "Depth", "Drawers"], ...openings.map((o) => [...o.size, drawers(o)])],
    [
      ["unit", unit],
      ["front style", style],
      ["construction", faceFrame ? "face frame" : "frameless"],
      ["bottom fit", "under back"],
      ...Object.entries(standards)
        .filter(([name]) => !FOR_THE_SHEET_ALONE.includes(name))
        // A number 0 may be an empty cell; the word is meant.
        .map(([name, value]) => [name, value === 0 ? "none" : value]),
    ],
  ];
}

describe("the same plan as native formulas, computed by LibreOffice, agrees cell for cell", () => {
  test.each(JOBS)("$name", async (job) => {
    const { rows, first, column } = planSheet(job);
    const computed = (await computedByLibreOffice(rows))
      .slice(first)
      .map((row) => row.slice(column, column + COLUMNS.length));
    const [openings, standards] = tables(job);
    const [heads, ...plan] = PLAN(openings, standards);
    const parts = PARTS(openings, standards, false).slice(1);
    const part = (name: string, drawer: unknown, size: number) =>
      parts.find((p) => p[0] === name && p[1] === drawer)![size];
    const ours = plan.map((row) =>
      COLUMNS.map((name) => {
        if (name === "Box back height") return part("Box back", row[0], 4);
        if (name === "Bottom width") return part("Bottom", row[0], 3);
        if (name === "Bottom depth") return part("Bottom", row[0], 4);
        return row[heads!.indexOf(name)];
      }),
    );
    expect(ours.length).toBe(job.openings.flatMap(({ drawers }) => drawers).length);
    ours.forEach((row, r) =>
      row.forEach((value, c) => {
        expect(
          Math.abs((value as number) - (computed[r]![c] as number)),
          `${String(plan[r]![0])} ${COLUMNS[c]}: ${String(value)} and ${String(computed[r]![c])}`,
        ).toBeLessThan(1e-9);
      }),
    );
  });
});

describe("how the same drawers are mounted, as native formulas computed by LibreOffice, agrees cell for cell", () => {
  test.each(JOBS)("$name", async (job) => {
    const { rows, first, column } = mountingSheet(job);
    const computed = (await computedByLibreOffice(rows)).slice(first).map((row) => row.slice(column));
    const [heads, ...mounted] = MOUNTING(...tables(job));
    expect(computed.length).toBe(mounted.length);
    mounted.forEach((row, r) =>
      MOUNTING_COLUMNS.forEach((name, c) => {
        const ours = row[heads!.indexOf(name)];
        const where = `${String(row[0])} ${name}: ${String(ours)} and ${String(computed[r]![c])}`;
        if (typeof ours === "string") expect(ours, where).toBe(computed[r]![c] ?? "");
        else expect(Math.abs((ours as number) - (computed[r]![c] as number)), where).toBeLessThan(1e-9);
      }),
    );
  });
});
