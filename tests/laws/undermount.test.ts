import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { HARDWARE, PARTS, PLAN, SETUPS, WORKING } from "../../src/functions";
import { num, of, openings, records, size, standards, type Cell, type Table } from "./jobs";

type Row = Record<string, Cell>;
const undermount = standards.map((values): Table => [
  ...values.filter(([name]) => name !== "slide"),
  ["slide", "undermount"],
]);
const rowsOf = (table: Table, values: Table, operation: string, setting: RegExp): Row[] =>
  records(SETUPS(table, values)).filter(
    (row) => row["Operation"] === operation && setting.test(String(row["Setting"])),
  );
/** Whether a set-up's parts list a drawer. */
const serves = (row: Row, drawer: Cell): boolean =>
  String(row["Parts"])
    .split(/[ ,;]+/)
    .includes(String(drawer));

describe("laws of undermount slides", () => {
  test("box depth and the data sheet's difference are the slide's length", () => {
    fc.assert(
      fc.property(openings, undermount, (table, values) => {
        const difference = of(values, "undermount depth difference");
        // A front that is its box's own stands before the slide.
        const own = ["integral", "lipped"].includes(String(of(values, "front style"))) ? 0.75 : 0;
        for (const row of records(PLAN(table, values)))
          expect(num(row["Box depth"]) - own + (difference === "none" ? 0 : size(difference))).toBe(
            row["Slide length"],
          );
      }),
    );
  });

  test("whatever the joint, both notches reach as far into the box as the data sheet says, and hooks likewise", () => {
    fc.assert(
      fc.property(openings, undermount, (table, values) => {
        const backs = records(PARTS(table, values, false)).filter((part) => part["Part"] === "Box back");
        const set: [operation: string, setting: RegExp, inward: number][] = [
          ["Back notches", /^From either end/, 1.375],
          ["Hook holes", /^Stop block/, 9 / 32],
        ];
        for (const [operation, setting, inward] of set) {
          for (const row of rowsOf(table, values, operation, setting)) {
            for (const drawer of records(PLAN(table, values)).filter((one) => serves(row, one["Drawer"]!))) {
              const back = backs.find((part) => part["Drawer"] === drawer["Drawer"])!;
              const left = num(back["Length"]) - 2 * num(row["Value"]);
              expect(left).toBeCloseTo(num(drawer["Inside width"]) - 2 * inward, 12);
            }
          }
        }
      }),
    );
  });

  test("a hook meets its hole as high above the box's lower edge, however the back is held", () => {
    fc.assert(
      fc.property(openings, undermount, (table, values) => {
        const fit = of(values, "bottom fit");
        const backs = records(PARTS(table, values, false)).filter((part) => part["Part"] === "Box back");
        for (const row of rowsOf(table, values, "Hook holes", /^Fence/)) {
          for (const drawer of records(PLAN(table, values)).filter((one) => serves(row, one["Drawer"]!))) {
            const back = backs.find((part) => part["Drawer"] === drawer["Drawer"])!;
            // A back's upper edge is level with the box's.
            const lowerEdge = num(drawer["Box height"]) - num(back["Width"]);
            const recess = fit === "applied" ? 0 : 3 / 8;
            expect(lowerEdge + num(row["Value"])).toBeCloseTo(recess + 11 / 16, 12);
          }
        }
      }),
    );
  });

  test("WORKING and SETUPS agree, and every drawer has its pair of locking devices", () => {
    fc.assert(
      fc.property(openings, undermount, (table, values) => {
        const label = String(PLAN(table, values)[1]![0]);
        const working = (name: string) =>
          records(WORKING(table, label, values)).find((row) => row["Size"] === name)?.["Value"];
        const set = (operation: string, setting: RegExp) =>
          rowsOf(table, values, operation, setting).find((row) => serves(row, label))?.["Value"];
        expect(set("Back notches", /^From either/)).toBe(working("Back notch from the end"));
        expect(set("Back notches", /^From the lower/)).toBe(working("Back notch height"));
        expect(set("Hook holes", /^Stop/)).toBe(working("Hook hole from the back's end"));
        expect(set("Hook holes", /^Fence/)).toBe(working("Hook hole from the back's lower edge"));
        const list = records(HARDWARE(table, values));
        const count = (item: string) =>
          list.filter((row) => row["Item"] === item).reduce((sum, row) => sum + num(row["Qty"]), 0);
        expect(count("Locking device")).toBe(count("Undermount slide"));
      }),
    );
  });
});
