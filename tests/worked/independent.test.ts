import { describe, expect, test } from "vitest";
import * as functions from "../../src/functions";
import { ALTERNATES, FIT, GRADUATED, HARDWARE, MOUNTING, OPENINGS, PARTS, PIECES } from "../../src/functions";
import { PLAN, PRICE, QUOTE, SETUPS, SHEETS, WORKING } from "../../src/functions";
import { columns, near, numbers, settings, sums, type Table } from "./independent/compare";
import { expected, jobs, kept, python, standardOf } from "./independent/jobs";

/**
 * Eight invented jobs, every figure of which was worked again in another language, with exact fractions and none of this
 * project's code: independent/recalculate.py, from the documentation alone. Every number must agree to 1e-9.
 */

describe.each(jobs.map((job, i) => [job.name, job, expected[i]!] as const))("%s", (_, job, figures) => {
  const { openings, standards, stock, rates } = job;
  const unit = standardOf(job, "unit") === "mm" ? "mm" : "in";

  test.each([
    ["PLAN", () => PLAN(openings, standards)],
    ["PARTS", () => PARTS(openings, standards, false)],
    ["MOUNTING", () => MOUNTING(openings, standards)],
    ["FIT", () => FIT(openings, standards)],
  ])("%s gives every figure", (name, call) => {
    const wanted = figures[name]!;
    expect(columns(call(), wanted[0]!)).toEqual(near(wanted));
  });

  test("SETUPS gives every setting with its pieces, and no other", () => {
    expect(settings(SETUPS(openings, standards))).toEqual(near(figures.SETUPS!.slice(1)));
  });

  test("HARDWARE gives every item's number, and the sizes that are written down", () => {
    const wanted = figures.HARDWARE!.slice(1);
    const sized = new Set(wanted.filter(([, size]) => size !== "").map(([item]) => item));
    const rows = columns(HARDWARE(openings, standards), ["Item", "Size", "Qty"]).slice(1);
    expect(sums(rows.map(([item, size, many]) => [item, sized.has(item) ? size : "", many]))).toEqual(near(wanted));
  });

  test("QUOTE gives every quantity, rate and amount, and PRICE its total", () => {
    const quote = columns(QUOTE(openings, standards, stock, rates), ["Section", "Item", "Qty", "Rate", "Amount"]);
    const own = quote
      .slice(1)
      .filter(([section, item, , , amount]) => section !== "Price" && item !== "Subtotal" && Number(amount) !== 0)
      .map(([section, , ...cells]) => [section, ...cells]);
    const last = own.pop()!;
    const ordered = own.sort(([a, , , x], [b, , , y]) =>
      a === b ? Number(x) - Number(y) : String(a) < String(b) ? -1 : 1,
    );
    expect([...ordered, last]).toEqual(near(figures.QUOTE!.slice(1)));
    expect(PRICE(openings, standards, stock, rates)).toBe(last.at(-1));
  });

  test("QUOTE's subtotals, price and total are the sums of what stands above them", () => {
    const rows = columns(QUOTE(openings, standards, stock, rates), ["Section", "Item", "Amount"]).slice(1);
    const own = rows.filter(([section, item]) => item !== "Subtotal" && section !== "Price" && section !== "Total");
    const sum = (of: Table): number => of.reduce((all, [, , amount]) => all + Number(amount), 0);
    for (const [section, item, amount] of rows) {
      const above = own.filter(([one]) =>
        item === "Subtotal" ? one === section : section === "Total" || one !== "Tax",
      );
      if (item === "Subtotal" || section === "Price" || section === "Total")
        expect([section, item, amount]).toEqual([section, item, expect.closeTo(sum(above), 9)]);
    }
  });

  test("SHEETS lays out every part, and what its yield and cost say is so", () => {
    const parts = PARTS(openings, standards);
    const quick = [standardOf(job, "kerf"), undefined, "quick", standardOf(job, "unit")] as never[];
    const rows = (SHEETS as (...a: never[]) => Table)(parts as never, stock as never, ...quick).slice(1) as (
      string | number
    )[][];
    const laid = rows.filter(([, , sheet]) => !/foot/.test(String(sheet)));
    const wanted = figures.SHEETS!.slice(1);
    // Where the stock names no material, its parts do: of these jobs plywood alone.
    expect(laid.map(([material, thickness, , , , many]) => [material, thickness, many])).toEqual(
      near(wanted.map(([material, ...row]) => [material || "Plywood", ...row.slice(0, 2)])),
    );
    for (const [i, [material, thickness, , sheets, least, , yields, cost]] of laid.entries()) {
      const [header, ...kinds] = stock;
      const of = (row: unknown[], name: string) => row[header!.indexOf(name)];
      const sheet = kinds.find(
        (row) => (of(row, "Material") || "Plywood") === material && inches(of(row, "Thickness")) === thickness,
      )!;
      const area = Number(of(sheet, "Length")) * Number(of(sheet, "Width"));
      expect(yields).toBeCloseTo((numbers(wanted[i]![3]) as number) / area / Number(sheets), 9);
      expect(cost).toBeCloseTo(Number(of(sheet, "Price")) * Number(sheets), 9);
      expect(sheets).toBeGreaterThanOrEqual(Number(least));
    }
  });

  test("PIECES has a row and a label of its own for each piece, and SETUPS counts those that name its step", () => {
    const [header, ...rows] = PIECES(openings, standards) as Table;
    const cell = (row: unknown[], name: string): unknown => row[header!.indexOf(name)];
    const keys = ["Part", "Drawer", "Length", "Width", "Thickness", "Material", "Grain"];
    for (const [i, wanted] of figures.PIECES!.entries()) {
      const [many, ...size] = [wanted.at(-1), ...(numbers(wanted.slice(0, -1)) as unknown[])];
      const found = rows.filter((row) =>
        keys.every((name, k) =>
          typeof size[k] === "number"
            ? Math.abs(Number(cell(row, name)) - size[k]) < 1e-9
            : cell(row, name) === size[k],
        ),
      );
      expect([i, found.length]).toEqual([i, many]);
    }
    expect(rows.length).toBe(figures.PIECES!.reduce((sum, row) => sum + Number(row.at(-1)), 0));
    expect(new Set(rows.map((row) => cell(row, "Piece"))).size).toBe(rows.length);
    const steps = rows.flatMap((row) => String(cell(row, "Set-ups")).split(", "));
    const strips = new Set(figures.SETUPS!.slice(1).flatMap(([name]) => (name === "Set aside" ? ["strip"] : [])));
    for (const [step, operation, , , many] of SETUPS(openings, standards).slice(1)) {
      // Fronts of one grain are one strip at first, and pieces later.
      if (step === "" || (strips.size > 0 && /Set aside|Rip|Crosscut/.test(String(operation)))) continue;
      expect([step, steps.filter((one) => one === String(step)).length]).toEqual([step, many]);
    }
  });

  test("WORKING gives loads, weights, ratings, sag, movement and balance, to one in a million", () => {
    const [density, stiffness, cabinet] = standardOf(job, "unit") === "mm" ? [640, 7_000, 45] : [40, 1_000_000, 90];
    const own = [...standards, ["density", density], ["stiffness", stiffness], ["cabinet weight", cabinet]];
    const tables = new Map<unknown, Map<unknown, unknown>>();
    for (const [drawer, name, value] of figures.LOADS!) {
      if (!tables.has(drawer))
        tables.set(drawer, new Map(WORKING(openings, drawer, own).map((row) => [row[0], row[1]])));
      expect([drawer, name, Number(tables.get(drawer)!.get(name)) / Number(value)]).toEqual([
        drawer,
        name,
        expect.closeTo(1, 6),
      ]);
    }
  });

  test("ALTERNATES gives drawers, totals and room of two ways to build, and their differences", () => {
    const changed = [
      ["Standard", "Base", "Other"],
      ...standards.filter(([name]) => !["space above", "front gap"].includes(String(name))).map((row) => [...row, ""]),
      ...["space above", "front gap"].map((name, i) => [name, standardOf(job, name) ?? "", OTHER[unit][i]]),
    ];
    const names = ["Alternate", "Drawers", "Total", "Total against base", "Inside volume", "Volume against base"];
    expect(columns(ALTERNATES(openings, changed, stock, rates), names).slice(1)).toEqual(near(figures.ALTERNATES!));
  });

  test.each(figures.SCALARS!)("%s of the same boxes", (name, ...cells) => {
    const call = functions[name as keyof typeof functions] as (...args: unknown[]) => unknown;
    const result = call(...(numbers(cells.slice(0, -1)) as unknown[]));
    expect(name === "GROOVEPASSES" ? (result as Table).slice(1) : result).toEqual(near(cells.at(-1)));
  });
});

interface Cabinet {
  standards: Table;
  cabinet: unknown[];
  openings: Table;
}
test.each(expected.at(-1)!.CABINETS as unknown as Cabinet[])("OPENINGS of the cabinet $cabinet", (one) => {
  const heading = "Cabinet,Width,Height,Depth,Columns,Drawers,Toe kick,Back thickness,Back inset".split(",");
  const found = OPENINGS([heading, one.cabinet], one.standards) as Table;
  expect(columns(found, ["Width", "Height", "Depth"]).slice(1)).toEqual(near(one.openings));
});

test.each(expected.at(-1)!.GRADUATED!)("GRADUATED(%s, %s, %s, %s, %s, %s)", (...row) => {
  expect((GRADUATED as (...a: unknown[]) => unknown)(...row.slice(0, -1))).toEqual(near(row.at(-1)));
});

test("the kept figures are what the recalculation prints", () => {
  expect(python("recalculate.py")).toBe(kept("expected.json"));
});

const inches = (thickness: unknown): unknown => functions.LENGTH(thickness as never);

/** Space above and front gap of the other way to build. */
const OTHER = { in: ["1/2", "1/4"], mm: [12, 6] };
