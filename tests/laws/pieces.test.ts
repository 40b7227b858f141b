import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { PARTS, PIECES, SETUPS } from "../../src/functions";
import { num, of, openings, records, standards, type Cell } from "./jobs";

type Row = Record<string, Cell>;
/** What tells kinds of pieces apart in both tables. */
const kind = (row: Row): string =>
  ["Part", "Drawer", "Length", "Width", "Thickness", "Material", "Grain"].map((name) => row[name]).join("|");

describe("laws of PIECES", () => {
  test("together they are PARTS, each piece once and under a label of its own", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const pieces = records(PIECES(table, values));
        const counted = new Map<string, number>();
        for (const piece of pieces) counted.set(kind(piece), (counted.get(kind(piece)) ?? 0) + 1);
        const parts = records(PARTS(table, values, false));
        expect(counted).toEqual(new Map(parts.map((part) => [kind(part), num(part["Qty"])])));
        expect(new Set(pieces.map((piece) => piece["Piece"])).size).toBe(pieces.length);
      }),
      { seed: 17, numRuns: 300 },
    );
  });

  test("every step of SETUPS counts the pieces that name it, or the strips that they are cut from", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const named = new Map<string, Row[]>();
        for (const piece of records(PIECES(table, values)))
          for (const step of String(piece["Set-ups"]).split(", ")) named.set(step, [...(named.get(step) ?? []), piece]);
        const steps = records(SETUPS(table, values)).filter((row) => row["Step"] !== "");
        expect([...named.keys()].map(Number).sort((a, b) => a - b)).toEqual(steps.map((row) => row["Step"]));
        const matched = of(values, "front match") !== "none";
        for (const step of steps) {
          const through = named.get(String(step["Step"]))!;
          const fronts = through.filter((piece) => piece["Part"] === "Front");
          const strips = [groupOf, lineOf].map((of) => through.length - fronts.length + new Set(fronts.map(of)).size);
          const allowed = matched ? [through.length, ...strips] : [through.length];
          expect(allowed, JSON.stringify(step)).toContain(step["Pieces"]);
        }
      }),
      { seed: 19, numRuns: 300 },
    );
  });
});

/** Fronts of one copy of one grain group are one strip, or one panel, whose lines are strips. */
const groupOf = (piece: Row): Cell => piece["Grain group"] || piece["Piece"]!;
const lineOf = (piece: Row): string => `${groupOf(piece)} ${piece["Grain line"] ?? ""}`;
