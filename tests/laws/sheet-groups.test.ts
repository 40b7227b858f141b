import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { add, equal, ratio, toDouble } from "../../src/core/length";
import { placements, solve, type Effort, type Part, type Placement, type Problem } from "../../src/core/sheets";
import { exactly, kerf, LENGTH, partOf, plain, problem, sheet } from "./sheet-problems";

/** A part of a grain group: as large as three of them and their kerfs leave room for in a row. */
const member = fc.record({
  along: fc.integer({ min: 1, max: 3 }),
  across: fc.integer({ min: 1, max: 8 }),
  grain: fc.constantFrom<Part["grain"]>("length", "width", "any"),
});
/** Members of one or two groups, mixed with parts of none, in any order of the table. */
const mixed = fc
  .tuple(
    fc.array(member, { minLength: 1, maxLength: 3 }),
    fc.array(member, { maxLength: 3 }),
    fc.array(plain, { maxLength: 8 }),
    fc.array(fc.nat(), { minLength: 14, maxLength: 14 }),
  )
  .map(([a, b, others, order]): Part[] => {
    const grouped = [a, b].flatMap((members, g) =>
      members.map(({ along, across, grain }) => {
        const [length, width] = grain === "width" ? [across, along] : [along, across];
        return partOf({ length, width, turns: false }, 0, { grain, grainGroup: "AB"[g]! });
      }),
    );
    const parts = [...grouped, ...others.map((part) => partOf(part, 0))];
    return parts
      .map((part, i) => ({ part, key: order[i]! }))
      .sort((x, y) => x.key - y.key)
      .map(({ part }, i) => ({ ...part, name: `${i + 1}` }));
  });

const asked = (parts: Part[], k: number, more: Partial<Problem> = {}): Problem => ({ ...problem([], k, more), parts });
const ungrouped = ({ grainGroup: _, ...part }: Part): Part => part;

describe.each<[Effort, number]>([
  ["quick", 40],
  ["standard", 8],
])("laws of grain groups, %s", (effort, numRuns) => {
  test("members lie in one row in the order of the table, the kerf between them", () => {
    fc.assert(
      fc.property(mixed, kerf, (parts, k) => {
        const placed = placements(solve(asked(parts, k), effort));
        for (const group of groupsOf(parts)) expect(isRow(membersOf(group, parts, placed), k, "fromLeft")).toBe(true);
      }),
      { numRuns },
    );
  });

  test("members of a stacked group lie one above another in the order of the table, as their own grain wants", () => {
    fc.assert(
      fc.property(mixed, kerf, fc.integer({ min: 1, max: 2 }), (parts, k, times) => {
        const stacked = parts.map((part) =>
          part.grainGroup ? { ...turnedOver(part), grainRow: "stacked" as const, quantity: times } : part,
        );
        const placed = placements(solve(asked(stacked, k, { stock: [sheet({ width: ratio(LENGTH) })] }), effort));
        for (const group of groupsOf(stacked)) {
          const members = membersOf(group, stacked, placed);
          const order = inTable(group, stacked);
          expect(members).toHaveLength(times * order.length);
          expect(rows(members, order, k, "fromBottom")).toBe(times);
          for (const { part, turned } of members) {
            const { grain, length, width } = stacked[part]!;
            if (order.length > 1 && !equal(length, width)) expect(turned).toBe(grain === "width");
          }
        }
      }),
      { numRuns },
    );
  });

  test("a group of several lines lies as one panel, line above line, its parts in the order of the table", () => {
    fc.assert(
      fc.property(mixed, kerf, fc.array(fc.nat({ max: 2 }), { minLength: 14, maxLength: 14 }), (parts, k, at) => {
        const lined = parts.map((part, i) =>
          part.grainGroup ? { ...part, grainLine: at[i]! + 1, lineGap: exactly(2 * k) } : part,
        );
        const placed = placements(solve(asked(lined, k, { stock: [sheet({ width: ratio(3 * LENGTH) })] }), effort));
        for (const group of groupsOf(lined)) {
          const members = membersOf(group, lined, placed);
          const lines = [1, 2, 3]
            .map((line) => members.filter(({ part }) => (lined[part] as Part).grainLine === line))
            .filter((line) => line.length > 0);
          let bottom = members.map(({ fromBottom }) => toDouble(fromBottom)).reduce((a, b) => Math.min(a, b));
          for (const line of lines) {
            expect(isRow(line, k, "fromLeft")).toBe(true);
            expect([toDouble(line[0]!.fromBottom), line[0]!.fromLeft]).toEqual([bottom, lines[0]![0]!.fromLeft]);
            bottom += Math.max(...line.map(({ width }) => toDouble(width))) + 2 * k;
          }
        }
      }),
      { numRuns },
    );
  });

  test("a group of which every part is wanted twice or three times lies in so many rows", () => {
    fc.assert(
      fc.property(mixed, kerf, fc.integer({ min: 2, max: 3 }), (parts, k, times) => {
        const copies = parts.map((part) => (part.grainGroup ? { ...part, quantity: times } : part));
        const placed = placements(solve(asked(copies, k), effort));
        for (const group of groupsOf(parts)) {
          const members = membersOf(group, parts, placed);
          expect(members.length).toBe(times * inTable(group, parts).length);
          expect(rows(members, inTable(group, parts), k)).toBe(times);
        }
      }),
      { numRuns },
    );
  });

  test("a group needs no fewer sheets than the same parts without it", () => {
    fc.assert(
      fc.property(mixed, kerf, (parts, k) => {
        const free = solve(asked(parts.map(ungrouped), k), effort).sheets.length;
        expect(free).toBeLessThanOrEqual(solve(asked(parts, k), effort).sheets.length);
      }),
      { numRuns },
    );
  });

  test("stock without grain costs no sheet more, and lays a group along or across, still in one row", () => {
    fc.assert(
      fc.property(mixed, kerf, (parts, k) => {
        const grainless = solve(asked(parts, k, { stock: [sheet({ grain: "none" })] }), effort);
        expect(grainless.sheets.length).toBeLessThanOrEqual(solve(asked(parts, k), effort).sheets.length);
        const placed = placements(grainless);
        for (const group of groupsOf(parts)) {
          const members = membersOf(group, parts, placed);
          expect(isRow(members, k, "fromLeft") || isRow(members, k, "fromBottom")).toBe(true);
        }
      }),
      { numRuns },
    );
  });
});

test("a grain group too long for the stock's grain lies across stock without grain", () => {
  const tall = [3, 3].map((along, i) =>
    partOf({ length: along, width: 10, turns: false }, i + 1, { grain: "length", grainGroup: "A" }),
  );
  expect(() => solve(asked(tall, 1), "quick")).toThrow(expect.objectContaining({ code: "sheets.groupTooLarge" }));
  const [a, b] = placements(solve(asked(tall, 1, { stock: [sheet({ grain: "none" })] }), "quick"));
  expect([a!.turned, b!.turned, a!.fromLeft, b!.fromLeft].map(Number)).toEqual([1, 1, 0, 0]);
  expect([a!.fromBottom, b!.fromBottom].map(toDouble).sort()).toEqual([0, 4]);
});

test("a group of one part is laid like any other, whatever its grain", () => {
  for (const grain of ["length", "width", "any"] as const) {
    for (const [length, width] of [
      [2, 1],
      [1, 2],
    ] as const) {
      const one = partOf({ length, width, turns: false }, 1, { grain, grainGroup: "A" });
      expect(solve(asked([one], 0), "quick").sheets).toHaveLength(1);
    }
  }
});

const turnedOver = (part: Part): Part => ({ ...part, length: part.width, width: part.length });

const groupsOf = (parts: readonly Part[]): string[] => [
  ...new Set(parts.flatMap(({ grainGroup }) => (grainGroup === undefined ? [] : [grainGroup]))),
];

const inTable = (group: string, parts: readonly Part[]): number[] =>
  parts.flatMap(({ grainGroup }, index) => (grainGroup === group ? [index] : []));

const membersOf = (group: string, parts: readonly Part[], placed: readonly Placement[]): Placement[] =>
  placed.filter(({ part }) => parts[part]!.grainGroup === group).sort((a, b) => a.part - b.part);

/** Pieces that, as they stand here, lie one kerf after another on one sheet, their edges in line. */
function isRow(pieces: readonly Placement[], k: number, along: "fromLeft" | "fromBottom"): boolean {
  const [side, size] = along === "fromLeft" ? (["fromBottom", "length"] as const) : (["fromLeft", "width"] as const);
  return pieces.every((piece, i) => {
    const last = pieces[i - 1];
    if (!last) return true;
    const next = add(add(last[along], last[size]), exactly(k));
    return piece.sheet === last.sheet && equal(piece[side], last[side]) && equal(piece[along], next);
  });
}

/** How many rows of these parts there are: each begins with the first part, and has every other where it must lie. */
const rows = (
  pieces: readonly Placement[],
  order: readonly number[],
  k: number,
  along: "fromLeft" | "fromBottom" = "fromLeft",
): number =>
  pieces.filter((first) => {
    if (first.part !== order[0]) return false;
    const row = [first];
    for (const part of order.slice(1)) {
      const next = pieces.find((piece) => piece.part === part && isRow([row[row.length - 1]!, piece], k, along));
      if (!next) return false;
      row.push(next);
    }
    return true;
  }).length;
