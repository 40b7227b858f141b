import { expect, test } from "vitest";
import { Forest } from "../../../src/core/sheets/algorithms/forest";
import { UPRIGHT, type Block, type Divided, type Model } from "../../../src/core/sheets/model";

const model: Model = {
  kinds: [{ w: 1, h: 1, count: 1 }],
  sizes: [{ w: 100, h: 100, weight: 1, cost: 1, available: 1 }],
  ways: Uint8Array.of(UPRIGHT),
  pieces: 1,
  kerf: 0,
};

/** A piece within so many blocks, each of them no larger than the one around it. */
function nested(blocks: number): Divided {
  let inner: Block = { w: 1, h: 1, kind: 0, turned: false };
  for (let n = 1; n < blocks; n++) inner = { w: n, h: n, axis: n % 2 === 0 ? "x" : "y", blocks: [inner] };
  return { w: 100, h: 100, axis: "x", blocks: [inner] };
}

test("a forest keeps what is loaded, and says so where it has no room rather than lose a piece", () => {
  const forest = new Forest(model);
  const draft = (blocks: number) => ({ weight: 1, waiting: 0, sheets: [{ size: 0, root: nested(blocks) }] });
  forest.load(draft(60));
  expect(forest.draft()).toEqual(draft(60));
  expect(() => forest.load(draft(90))).toThrow("The forest is full.");
});
