import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Fault, ratio, toDouble } from "../../src/core/length";
import { placements, solve, stockUses, type Effort, type Problem } from "../../src/core/sheets";
import type { Plain } from "../core/sheets/exhaustive";
import { cost, exactly, kerf, LENGTH, many, partOf, problem, sheet, WIDTH } from "./sheet-problems";

/**
 * A quick answer misses some of these laws in about one random problem of five hundred, for it need not be the least: the
 * problems are the same in every run, so that none fails by chance.
 */
const SEED = 1;

/** What must hold of the least answer must hold of ours too, or a person sees more freedom cost more. */
describe.each<[Effort, number]>([
  ["quick", 60],
  ["standard", 8],
])("laws of sheets, with a choice, %s, on %i problems", (effort, numRuns) => {
  const count = (asked: Problem): number => solve(asked, effort).sheets.length;
  const holds = <T extends [unknown, ...unknown[]]>(law: fc.IPropertyWithHooks<T>, runs = numRuns): void =>
    fc.assert(law, { numRuns: runs, seed: SEED });

  test("a kerf saves no sheet, nor does a wider one", () =>
    holds(
      fc.property(many, (parts) => {
        const [none, small, wide] = [0, 1 / 8, 1].map((k) => count(problem(parts, k)));
        expect(none).toBeLessThanOrEqual(small!);
        expect(small).toBeLessThanOrEqual(wide!);
      }),
    ));

  test("no kerf is the plain problem: parts and sheet that are all less by a kerf need as many sheets with it", () =>
    holds(
      fc.property(many, fc.constantFrom(1 / 8, 1 / 2), (parts, k) => {
        const stock = [sheet({ length: exactly(LENGTH - k), width: exactly(WIDTH - k) })];
        expect(count(problem(parts.map(less(k)), k, { stock }))).toBe(count(problem(parts, 0)));
      }),
    ));

  test("a kerf changes nothing where every part is less by as much and no sheet is filled any further", () =>
    holds(
      fc.property(many, (parts) => {
        expect(count(problem(parts.map(less(1 / 8)), 1 / 8))).toBe(count(problem(parts, 0)));
      }),
    ));

  test("freedom to turn costs no sheet, whether the parts have it or the stock has no grain", () =>
    holds(
      fc.property(many, kerf, (parts, k) => {
        const free = parts.map((part) => ({ ...part, turns: true }));
        expect(count(problem(free, k))).toBeLessThanOrEqual(count(problem(parts, k)));
        expect(count(problem(parts, k, { stock: [sheet({ grain: "none" })] }))).toBeLessThanOrEqual(
          count(problem(parts, k)),
        );
      }),
    ));

  test("a part that may turn can be written either way round", () =>
    holds(
      fc.property(many, kerf, (parts, k) => {
        const over = ({ length, width, turns }: Plain): Plain =>
          turns ? { length: width, width: length, turns } : { length, width, turns };
        expect(count(problem(parts.map(over), k))).toBe(count(problem(parts, k)));
      }),
    ));

  test("equal parts in one row or in several need as many sheets", () =>
    holds(
      fc.property(fc.array(fc.tuple(fc.nat(2), fc.nat(6)), { minLength: 1, maxLength: 4 }), kerf, (rows, k) => {
        const kinds: Plain[] = [
          { length: 5, width: 3, turns: true },
          { length: 4, width: 4, turns: false },
          { length: 7, width: 2, turns: false },
        ];
        const merged = rows.map(([kind, n], i) => partOf(kinds[kind]!, i + 1, { quantity: n }));
        const split = merged.flatMap((part) => Array.from({ length: part.quantity }, () => ({ ...part, quantity: 1 })));
        expect(count({ ...problem([], k), parts: split })).toBe(count({ ...problem([], k), parts: merged }));
      }),
    ));

  test("trim is a smaller sheet, and no part lies in it", () =>
    holds(
      fc.property(many, kerf, fc.constantFrom(1 / 8, 1 / 2, 1), (parts, k, trim) => {
        const [length, width] = [LENGTH + 2 * trim, WIDTH + 2 * trim];
        const stock = [sheet({ length: exactly(length), width: exactly(width) })];
        const trimmed = solve(problem(parts, k, { stock, trim: exactly(trim) }), effort);
        expect(trimmed.sheets.length).toBe(count(problem(parts, k)));
        for (const place of placements(trimmed)) {
          const [x, y, l, w] = [place.fromLeft, place.fromBottom, place.length, place.width].map(toDouble);
          expect(Math.min(x!, y!, length - x! - l!, width - y! - w!)).toBeGreaterThanOrEqual(trim);
        }
      }),
    ));

  test("a cheaper size, an offcut of one's own or more of either costs no more", () =>
    holds(
      fc.property(many, kerf, fc.nat(3), (parts, k, available) => {
        const of = (...more: Problem["stock"]) =>
          cost(solve(problem(parts, k, { stock: [sheet({ price: ratio(10) }), ...more] }), effort));
        const half = (price: number) => sheet({ name: "other", width: ratio(6), price: ratio(price), available });
        const offcut = sheet({ name: "offcut", length: ratio(8), available: 1 });
        const dear = of(half(9));
        expect(dear).toBeLessThanOrEqual(of());
        expect(of(half(6))).toBeLessThanOrEqual(dear);
        expect(of(half(9), offcut)).toBeLessThanOrEqual(dear);
        expect(of({ ...half(9), available: available + 1 })).toBeLessThanOrEqual(dear);
      }),
      Math.ceil(numRuns / 4),
    ));

  test("no more is cut of a size than there is of it, and where that suffices it costs as little", () =>
    holds(
      fc.property(many, kerf, fc.nat(3), fc.nat(2), (parts, k, first, second) => {
        const stock = [sheet({ available: first }), sheet({ name: "large", length: ratio(16), available: second })];
        const limited = attempt(() => solve(problem(parts, k, { stock }), effort));
        for (const use of limited ? stockUses(limited) : []) {
          expect(use.sheets).toBeLessThanOrEqual(stock[use.stock]!.available!);
        }
        const plain = count(problem(parts, k));
        expect(count(problem(parts, k, { stock: [sheet({ available: plain })] }))).toBe(plain);
      }),
    ));
});

/** A part that is smaller by so much each way. */
const less =
  (by: number) =>
  ({ length, width, turns }: Plain): Plain => ({ length: length - by, width: width - by, turns });

/** Nothing where the stock does not suffice, or no sheet is available that a part fits. */
function attempt<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch (thrown) {
    if (thrown instanceof Fault && ["sheets.stockExhausted", "sheets.noneAvailable"].includes(thrown.code))
      return undefined;
    throw thrown;
  }
}
