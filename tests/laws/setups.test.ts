import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { PARTS, SETUPS } from "../../src/functions";
import { num, of, openings, records, size, standards, type Cell } from "./jobs";

type Row = Record<string, Cell>;
/** Pieces by part, of rows that list drawers with their part: `Side A1, A2; Bottom A1`. */
const labels = (rows: Row[]): string[] =>
  rows
    .flatMap((row) =>
      String(row["Parts"])
        .split("; ")
        .flatMap((part) => {
          const [, name, drawers] = /^(.*?) (O\w.*)$/.exec(part)!;
          return drawers!.split(", ").map((drawer) => `${name} ${drawer}`);
        }),
    )
    .sort();
const pieces = (rows: Row[], column: string): number => rows.reduce((total, row) => total + num(row[column]), 0);

/** Undermount slides run under backs that hang below their bottom, and hook into all that their data sheet says. */
type Need = (part: string, standard: (name: string) => Cell) => boolean;
const ofUndermount: Need = (part, s) => part === "Box back" && s("slide") === "undermount";
const notched: Need = (part, s) =>
  ofUndermount(part, s) && s("bottom fit") === "grooved" && s("undermount notch width") !== "none";
const hooked: Need = (part, s) => ofUndermount(part, s) && s("undermount hook hole") !== "none";

/** Fronts that are their boxes' own. */
const isOwn = (s: (name: string) => Cell): boolean => ["integral", "lipped"].includes(String(s("front style")));
const isHalfBlind = (s: (name: string) => Cell): boolean => isOwn(s) && s("front joint") === "half-blind dovetail";
const CORNER = /^Baseline, from (the end|the side's rear end)/;

/** Which parts need an operation, and by which setting its pieces are counted. */
const NEEDS: [operation: string, setting: RegExp, need: Need][] = [
  ["Rip", /^Fence/, () => true],
  ["Crosscut", /^Stop/, () => true],
  [
    "Groove",
    /^Blade height/,
    (part, s) =>
      s("bottom fit") !== "applied" &&
      (["Side", "Box front"].includes(part) ||
        (part === "Front" && isOwn(s)) ||
        (part === "Box back" && s("bottom fit") === "grooved")),
  ],
  ["Rabbet", /^Blade height/, (part, s) => s("corner joint") === "rabbet" && part === "Side"],
  ["Dado", /^Blade height/, (part, s) => s("corner joint") === "dado" && part === "Side"],
  ["Dovetail", CORNER, (part, s) => s("corner joint") === "dovetail" && /Side|Box/.test(part)],
  ["Box joint", CORNER, (part, s) => s("corner joint") === "box joint" && /Side|Box/.test(part)],
  ["Half-blind dovetail", CORNER, (part, s) => s("corner joint") === "half-blind dovetail" && /Side|Box/.test(part)],
  [
    "Half-blind dovetail",
    /^Socket/,
    (part, s) =>
      (s("corner joint") === "half-blind dovetail" && /Box/.test(part)) || (isHalfBlind(s) && part === "Front"),
  ],
  ["Half-blind dovetail", /^Baseline, from the front's end/, (part, s) => isHalfBlind(s) && part === "Front"],
  ["Half-blind dovetail", /^Baseline, from the side's front end/, (part, s) => isHalfBlind(s) && part === "Side"],
  // On wood runners an integral front is as wide as its box.
  [
    "Front rabbet",
    /^Blade height/,
    (part, s) =>
      isOwn(s) &&
      part === "Front" &&
      (s("front style") === "lipped" || s("slide") !== "wood runner" || s("front joint") === "rabbet"),
  ],
  ["Pocket holes", /./, (part, s) => s("corner joint") === "butt" && /Box/.test(part)],
  ["Back notches", /^From either end/, notched],
  ["Back notches", /^From the lower edge/, notched],
  ["Hook holes", /^Bit/, hooked],
  ["Hook holes", /^Stop block/, hooked],
  ["Trim flush", /./, (part, s) => part === "Bottom" && s("bottom fit") === "applied" && s("bottom overhang") !== 0],
  ["Pull holes", /^Fence/, (part, s) => part === "Front" && s("pulls per front") !== "none"],
];

/** A strip is one piece until it is divided: across it the first front of each line of a grain group stands for all. */
function wholeStrips(operation: string, parts: Row[]): Row[] {
  const line = (part: Row): string => `${part["Grain group"]!} ${part["Grain line"] ?? ""}`;
  const first = (part: Row): Row => parts.find((other) => line(other) === line(part))!;
  return parts.filter((part) => {
    const across = part["Grain row"] === "stacked" ? "Crosscut" : "Rip";
    return operation !== across || !part["Grain group"] || first(part) === part;
  });
}

describe("laws of set-ups", () => {
  test("every operation takes every piece of PARTS that needs it exactly once", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const rows = records(SETUPS(table, values)).filter((row) => row["Operation"] !== "Caution");
        const parts = records(PARTS(table, values, false));
        for (const [operation, setting, need] of NEEDS) {
          const own = rows.filter((row) => row["Operation"] === operation && setting.test(String(row["Setting"])));
          const needed = parts.filter((part) => need(String(part["Part"]), (name) => of(values, name)));
          expect(labels(own), operation).toEqual(
            needed.map((part) => `${String(part["Part"])} ${String(part["Drawer"])}`).sort(),
          );
          expect(pieces(own, "Pieces"), operation).toBe(pieces(wholeStrips(operation, needed), "Qty"));
        }
      }),
    );
  });

  test("no setting stands twice, but in the order of a strip", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const settings = records(SETUPS(table, values))
          .filter((row) => !["Caution", "Set aside"].includes(String(row["Operation"])))
          .filter((row) => !/^(Stop|Fence), in order from the (top|left|bottom)$/.test(String(row["Setting"])))
          .map((row) => `${String(row["Operation"])} ${String(row["Setting"])} ${String(row["Value"])}`);
        expect(new Set(settings).size).toBe(settings.length);
      }),
    );
  });

  test("rips and crosscuts are set to the sizes of PARTS", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const rows = records(SETUPS(table, values));
        const parts = records(PARTS(table, values, false));
        const settings = (operation: string) =>
          new Set(rows.filter((row) => row["Operation"] === operation).map((row) => row["Value"]));
        expect(settings("Rip")).toEqual(new Set(expected("Width")));
        expect(settings("Crosscut")).toEqual(new Set(expected("Length")));
        function expected(column: string): Cell[] {
          return parts.map((part) => part[column]!).sort((a, b) => num(a) - num(b));
        }
      }),
    );
  });

  test("the passes of a groove leave no ridge, and reach from its offset to its far cheek", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        fc.pre(of(values, "bottom fit") !== "applied");
        const fences = records(SETUPS(table, values))
          .filter((row) => !/^Front/.test(String(row["Parts"])))
          .filter((row) => row["Operation"] === "Groove" && /^Fence/.test(String(row["Setting"])))
          .map((row) => num(row["Value"]));
        const kerf = size(of(values, "kerf"));
        expect(fences[0]).toBe(0.375);
        expect(fences[fences.length - 1]! + kerf).toBeCloseTo(0.375 + size(of(values, "bottom thickness")), 12);
        fences.slice(1).forEach((fence, i) => expect(fence - fences[i]!).toBeLessThanOrEqual(kerf + 1e-12));
      }),
    );
  });
});
