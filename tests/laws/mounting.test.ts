import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { MOUNTING, PLAN } from "../../src/functions";
import { num, of, openings, records, size, standards } from "./jobs";

const close = (a: number, b: number) => Math.abs(a - b) < 1e-9;

describe("laws of mounting", () => {
  test("spacers and boxes stack up from the floor, and the last box ends below the opening's top", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const plan = records(PLAN(table, values));
        const mounted = records(MOUNTING(table, values));
        expect(mounted.map((row) => row["Drawer"])).toEqual(plan.map((row) => row["Drawer"]));
        for (const opening of records(table)) {
          const stacked = plan
            .map((row, i) => ({ ...row, ...mounted[i]! }))
            .filter((row) => row["Opening"] === opening["Opening"])
            .reverse();
          let top = 0;
          for (const row of stacked) {
            top += num(row["Box spacer"]);
            expect(close(top, num(row["Box bottom"]))).toBe(true);
            top += num(row["Box height"]);
          }
          expect(top).toBeLessThanOrEqual(num(opening["Height"]) + 1e-9);
        }
      }),
    );
  });

  test("the front is as wide as its box and what it reaches past it on both sides", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        const plan = records(PLAN(table, values));
        records(MOUNTING(table, values)).forEach((row, i) => {
          const past = num(row["Front past box left"]) + num(row["Front past box right"]);
          expect(close(num(plan[i]!["Front width"]), num(plan[i]!["Box width"]) + past)).toBe(true);
          expect(close(num(row["Front bottom"]) + num(row["Front below box"]), num(plan[i]!["Box bottom"]))).toBe(true);
        });
      }),
    );
  });

  test("a slide that stands on its spacer has its centerline where the plan has it", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        fc.pre(of(values, "slide") === "side-mount");
        for (const row of records(MOUNTING(table, values)))
          expect(close(num(row["Slide spacer"]) + 1.75 / 2, num(row["Slide centerline"]))).toBe(true);
      }),
    );
  });

  test("a runner that stands on its spacer ends where its box begins, and neither has a centerline", () => {
    fc.assert(
      fc.property(openings, standards, (table, values) => {
        fc.pre(of(values, "slide") === "wood runner");
        const plan = records(PLAN(table, values));
        records(MOUNTING(table, values)).forEach((row, i) => {
          const top = num(row["Slide spacer"]) + size(of(values, "side thickness"));
          expect(close(top, num(plan[i]!["Box bottom"]))).toBe(true);
          expect([row["Slide centerline"], plan[i]!["Slide centerline"]]).toEqual(["", ""]);
        });
      }),
    );
  });

  test("pulls stand alike from both ends of their front, and on a line they stand over one another", () => {
    fc.assert(
      fc.property(openings, standards, eighthsOf(2, 100), (table, values, line) => {
        const widths = records(PLAN(table, values)).map((row) => num(row["Front width"]));
        records(MOUNTING(table, values)).forEach((row, i) => {
          const [first, second] = [row["Pull from left"], row["Second pull"]];
          if (first === "") return expect(second).toBe("");
          expect(close(num(first), widths[i]! - num(second === "" ? first : second))).toBe(true);
        });
        if (of(values, "construction") === "face frame" || of(values, "front style") !== "overlay") return;
        const lined = records(MOUNTING(table, [...values, ["pull line", line]]));
        for (const cabinet of ["K1", "K2", "K3"]) {
          // Past the left end reveal the fronts of a cabinet stand side by side, 1/8 apart.
          let left = 1 / 16;
          for (const opening of records(table).filter((row) => row["Cabinet"] === cabinet)) {
            const own = lined
              .map((row, i) => ({ row, width: widths[i]! }))
              .filter(({ row }) => String(row["Drawer"]).startsWith(String(opening["Opening"])));
            for (const { row, width } of own) {
              const falls = line > left && line < left + width && of(values, "pulls per front") !== "none";
              if (falls) expect(close(left + num(row["Pull from left"]), line)).toBe(true);
              else expect(row["Pull from left"]).toBe("");
            }
            left += own[0]!.width + 1 / 8;
          }
        }
      }),
    );
  });
});

function eighthsOf(min: number, max: number) {
  return fc.integer({ min: min * 8, max: max * 8 }).map((n) => n / 8 + 1 / 32);
}
