import { describe, expect, test } from "vitest";
import { TIPPING } from "../../src/functions";
import { expectValueError, shown } from "../cell";

describe("TIPPING(cabinet_weight, balance_depth, drawer_weights, drawer_reaches)", () => {
  test("is the moment that holds over the moment that tips (the law of the lever)", () => {
    expect(TIPPING(120, 11, [[40]], [[14]])).toBeCloseTo((120 * 11) / (40 * 14), 11);
    expect(TIPPING(120, 11, [[40], [40], [40]], [[14], [14], [14]])).toBeCloseTo((120 * 11) / (3 * 40 * 14), 11);
    expect(TIPPING(100, 10, [[50]], [[20]])).toBe(1);
  });

  test("a drawer whose weight is still behind the line holds, and one on it does neither", () => {
    expect(TIPPING(100, 10, [[50], [20]], [[20], [-5]])).toBe(1.1);
    expect(TIPPING(100, 10, [[50], [20]], [[20], ["none"]])).toBe(1);
    expect(TIPPING(100, 10, [[50], ["none"]], [[20], [30]])).toBe(1);
  });

  test("takes ranges of any shape, texts that list, and single cells; places blank in both are skipped", () => {
    const two = TIPPING(120, 11, [[40], [30]], [[14], [12]]);
    expect(TIPPING(120, 11, [[40, 30]], [[14, 12]])).toBe(two);
    expect(TIPPING(120, 11, "40; 30" as never, "14; 12" as never)).toBe(two);
    expect(TIPPING(120, 11, [[40], [0], [30], [null]], [[14], [""], [12], [0]])).toBe(two);
    expect(TIPPING(120, 11, 40 as never, 14 as never)).toBe(TIPPING(120, 11, [[40]], [[14]]));
  });

  test("is one in all units, as long as there is one for weights and one for lengths", () => {
    const plain = TIPPING(60, 280, [[20], [25]], [[360], [340]]);
    expect(TIPPING("60 kg", "280 mm", "20 kg; 25 kg" as never, "36 cm; 340 mm" as never)).toBeCloseTo(plain, 10);
    expect(TIPPING(60, "280 mm", [[20], [25]], [["360 mm"], ["340 mm"]])).toBeCloseTo(plain, 10);
    expectValueError(
      () => TIPPING(60, "280 mm", [[20]], [[360]]),
      "balance_depth has a unit of its own, and drawer_reaches has none. Give all lengths a unit, or none.",
    );
    expectValueError(
      () => TIPPING(60, 280, [[20], ["25 kg"]], [[360], [340]]),
      "drawer_weights has a unit of its own, and cabinet_weight has none. Give all weights a unit, or none.",
    );
  });

  test("refuses a weight without a reach, and a reach without a weight", () => {
    const place = (n: number) =>
      `Place ${n} of drawer_weights and of drawer_reaches: one has a number, the other none, and a 0 counts as blank (write none for zero).`;
    expectValueError(() => TIPPING(120, 11, [[40], [30]], [[14], [null]]), place(2));
    expectValueError(() => TIPPING(120, 11, [[40], [30]], [[14], [0]]), place(2));
    expectValueError(() => TIPPING(120, 11, [[0], [30]], [[14], [12]]), place(1));
    expectValueError(() => TIPPING(120, 11, [[40]], [[14], [12]]), place(2));
    expectValueError(
      () => TIPPING(120, 11, [[null]], [[14]]),
      "drawer_weights is blank. It needs a number for each open drawer.",
    );
  });

  test("gives #N/A where no drawer reaches in front of the line, for then nothing tips", () => {
    const nothing = "#N/A No open drawer reaches in front of the tipping line: nothing tips the cabinet.";
    expect(shown(() => TIPPING(120, 11, [[40]], [[-2]]))).toBe(nothing);
    expect(shown(() => TIPPING(120, 11, [[40]], [["none"]]))).toBe(nothing);
  });

  test("refuses a cabinet without weight or depth, and items that are none", () => {
    expectValueError(() => TIPPING(0, 11, [[40]], [[14]]), "cabinet_weight is 0. It needs a weight.");
    expectValueError(() => TIPPING("0 kg", 11, [[40]], [[14]]), `cabinet_weight is "0 kg". It must be more than 0.`);
    expectValueError(() => TIPPING(-5, 11, [[40]], [[14]]), "cabinet_weight is -5. It must be from 0 to 1,000,000.");
    expectValueError(() => TIPPING(120, -1, [[40]], [[14]]), "balance_depth is -1. It must be more than 0.");
    expectValueError(
      () => TIPPING(120, 11, [[40], ["much"]], [[14], [12]]),
      `drawer_weights, item 2 is "much". It takes a number, or a text of a number and its unit.`,
    );
  });
});
