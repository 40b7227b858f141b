import { describe, expect, test } from "vitest";
import { OPENINGS } from "../../src/functions";
import { computedByLibreOffice, type Value } from "../libreoffice";

/** Invented: a bindery's wall of presses; a brewer's grain store. Columns are parts alone, which formulas can share out. */
interface Cabinet {
  size: [width: number, height: number, depth: number];
  parts: number[];
  kick: number;
  back: number;
  inset: number;
}
interface Job {
  name: string;
  unit: "in" | "mm";
  frame: boolean;
  /** Ends, what stands between, top and bottom; stiles and rails of a frame. */
  end: number;
  between: number;
  level: number;
  cabinets: Cabinet[];
}
const JOBS: Job[] = [
  {
    name: "a bindery's wall, frameless, inches",
    unit: "in",
    frame: false,
    end: 0.71875,
    between: 0.59375,
    level: 0.71875,
    cabinets: [
      { size: [61.375, 34.5, 23.75], parts: [1, 1, 1], kick: 4.25, back: 0.21875, inset: 0.5 },
      { size: [38, 29.125, 18], parts: [2, 3.5], kick: 0, back: 0.25, inset: 0 },
    ],
  },
  {
    name: "a brewer's grain store, face frame, millimeters",
    unit: "mm",
    frame: true,
    end: 44,
    between: 44,
    level: 57,
    cabinets: [
      { size: [1183, 866, 577], parts: [1, 2, 1.5], kick: 102, back: 9, inset: 16 },
      { size: [604, 720, 451], parts: [1], kick: 0, back: 6, inset: 0 },
    ],
  },
];

/** A row a cabinet, then for each opening its width, height and depth as formulas of the cells before. */
function sheet({ end, between, level, cabinets }: Job): Value[][] {
  return [
    [end, between, level],
    ...cabinets.map(({ size, parts, kick, back, inset }, i): Value[] => {
      const row = i + 2;
      const room = `A${row}-2*$A$1-${parts.length - 1}*$B$1`;
      const sum = parts.reduce((a, b) => a + b);
      return [
        ...size,
        kick,
        back,
        inset,
        ...parts.flatMap((part) => [
          `=(${room})*${part}/${sum}`,
          `=B${row}-D${row}-2*$C$1`,
          `=C${row}-E${row}-F${row}`,
        ]),
      ];
    }),
  ];
}

describe("the same openings as native formulas, computed by LibreOffice, agree cell for cell", () => {
  test.each(JOBS)("$name", async (job) => {
    const computed = (await computedByLibreOffice(sheet(job))).slice(1).flatMap((row) => row.slice(6));
    const ours = OPENINGS(
      [
        ["Width", "Height", "Depth", "Columns", "Drawers", "Toe kick", "Back thickness", "Back inset"],
        ...job.cabinets.map(({ size, parts, kick, back, inset }) => [
          ...size,
          parts.map((part) => `${part} parts`).join("; "),
          3,
          kick,
          back,
          inset,
        ]),
      ],
      [
        ["unit", job.unit],
        ...(job.frame
          ? [
              ["construction", "face frame"],
              ["stile width", job.end],
              ["rail width", job.level],
            ]
          : [
              ["cabinet thickness", job.end],
              ["partition thickness", job.between],
            ]),
      ],
    )
      .slice(1)
      .flatMap((row) => row.slice(2, 5));
    expect(ours.length).toBe(computed.length);
    ours.forEach((value, i) => expect(Math.abs((value as number) - (computed[i] as number))).toBeLessThan(1e-9));
  });
});
