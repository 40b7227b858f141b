import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { HARDWARE, MOUNTING, PARTS, PLAN } from "../../src/functions";
import { num, of, openings, records, size, standards, type Cell, type Table } from "./jobs";

type Row = Record<string, Cell>;
const list = (table: Table, values: Table, item: RegExp): Row[] =>
  records(HARDWARE(table, values)).filter((row) => item.test(String(row["Item"])));
const total = (rows: Row[], column: string): number => rows.reduce((sum, row) => sum + num(row[column]), 0);

/** How often each drawer is built: it has one bottom. */
const copies = (table: Table, values: Table) =>
  new Map(
    records(PARTS(table, values, false))
      .filter((part) => part["Part"] === "Bottom")
      .map((part) => [part["Drawer"], num(part["Qty"])]),
  );

/** The stock that a screw or nail ends in, with what it goes through, for the standards of these laws. */
function stockOf(item: string, note: string, values: Table): number {
  const [side, bottom] = [size(of(values, "side thickness")), size(of(values, "bottom thickness"))];
  // Cabinets are of 3/4 in; behind a face frame stands 1 in of blocking before them.
  const carcase = /blocking/.test(note) ? 1.75 : 0.75;
  // Under a center-mount slide's box they go into edges, which are as deep as the ends are high.
  if (item === "Slide screw") return /edges of box/.test(note) ? 1 : /box/.test(note) ? side : carcase;
  // Runners are 1 in wide.
  // The table of common practice, for sides and ends of one thickness.
  if (item === "Pocket screw") return side < 0.7 ? 1 : 1.25;
  if (item === "Runner screw") return 1 + carcase;
  if (item === "Blocking screw") return 1.75;
  // Between sides that reach past a dado the front stands off the box.
  const behind = side + (of(values, "corner joint") === "dado" ? 0.25 : 0);
  if (item === "Front screw") return behind + 0.75;
  if (item === "Pull screw") return /plate/.test(note) ? behind + 0.75 + 0.5 + 0.75 : Infinity;
  // Into an end's length, or the height of a side or back: no less than an inch in these jobs.
  if (item === "Corner nail") return side + 9;
  if (/^Bottom/.test(item)) return bottom + 1;
  return Infinity;
}

describe("laws of hardware", () => {
  test("there is a slide to every drawer, of the length that the plan gives it, but where it runs on wood", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const each = copies(table, values);
        const planned = new Map<Cell, number>();
        for (const row of records(PLAN(table, values))) {
          const [length, count] = [row["Slide length"]!, each.get(row["Drawer"]!)!];
          planned.set(length, (planned.get(length) ?? 0) + count);
        }
        const bought = new Map<Cell, number>();
        for (const row of list(table, values, /slide$|runner$/))
          bought.set(row["Size"]!, (bought.get(row["Size"]!) ?? 0) + num(row["Qty"]));
        const isWood = of(values, "slide") === "wood runner";
        expect(bought).toEqual(isWood ? new Map() : planned);
      }),
    );
  });

  test("there are as many front screws and pulls as MOUNTING places", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const each = copies(table, values);
        let [screws, pulls] = [0, 0];
        for (const row of records(MOUNTING(table, values))) {
          screws += each.get(row["Drawer"]!)! * num(row["Front screws"]);
          pulls +=
            each.get(row["Drawer"]!)! * [row["Pull from left"], row["Second pull"]].filter((x) => x !== "").length;
        }
        expect(total(list(table, values, /^Front screw$/), "Qty")).toBe(screws);
        expect(total(list(table, values, /^(Pull|Shop-made pull)$/), "Qty")).toBe(pulls);
        expect(total(list(table, values, /^Pull screw$/), "Qty")).toBe(2 * pulls);
      }),
    );
  });

  test("no screw or nail is longer than the stock that it goes through and ends in", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const rows = list(table, values, /screw|nail/);
        expect(rows.length).toBeGreaterThan(0);
        for (const row of rows) {
          const [item, note] = [String(row["Item"]), String(row["Note"])];
          expect(num(row["Size"]), `${item} ${note}`).toBeGreaterThan(0);
          expect(num(row["Size"]), `${item} ${note}`).toBeLessThanOrEqual(stockOf(item, note, values));
        }
      }),
    );
  });

  test("every quantity is above nothing, screws and pulls are whole, and no row stands twice", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const rows = records(HARDWARE(table, values));
        for (const row of rows) {
          expect(num(row["Qty"])).toBeGreaterThan(0);
          if (row["Unit"] === "pair" || row["Unit"] === "each") expect(Number.isInteger(row["Qty"])).toBe(true);
          else expect(row["Unit"]).toBe("foot");
        }
        const keys = rows.map((row) => [row["Item"], row["Size"], row["Note"]].join("|"));
        expect(new Set(keys).size).toBe(keys.length);
      }),
    );
  });

  test("an opening more never takes anything off the list", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const count = (rows: Table) => {
          const sums = new Map<string, number>();
          for (const row of records(HARDWARE(rows, values))) {
            const key = String(row["Item"]);
            sums.set(key, (sums.get(key) ?? 0) + num(row["Qty"]));
          }
          return sums;
        };
        const more = count([...table, ["OZ", 20, 30, 22.5, 2, "K9", 1, 22]]);
        for (const [item, before] of count(table)) expect(more.get(item)!, item).toBeGreaterThan(before);
      }),
    );
  });
});
