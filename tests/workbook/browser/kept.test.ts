import { describe, expect, test } from "vitest";
import { readKept } from "../../../src/workbook/browser/kept";

const work = {
  name: "parts-bench.xlsx",
  bytes: new Uint8Array([80, 75]),
  edits: [
    { sheet: 0, row: 4, column: 1, content: "18 1/16", isFraction: true },
    { sheet: 0, row: 5, column: 1, content: { formula: "=B5+1" } },
    { sheet: 0, row: 6, column: 1, content: null },
  ],
  saved: [],
};

describe("readKept(stored)", () => {
  test("gives back work as it was kept", () => expect(readKept(structuredClone(work))).toEqual(work));

  test.each([
    ["nothing", undefined],
    ["no list of edits", { ...work, edits: undefined }],
    ["edits by address, as another version may keep them", { ...work, edits: [{ cell: "B5", content: 1 }] }],
    ["content of a kind that no cell has", { ...work, edits: [{ sheet: 0, row: 0, column: 0, content: [1] }] }],
    ["a file that is no bytes", { ...work, bytes: "PK" }],
  ])("takes %s for no work", (_, stored) => expect(readKept(stored)).toBeUndefined());
});
