import { describe, expect, test } from "vitest";
import { readKept } from "../../../src/workbook/browser/kept";

const work = {
  name: "parts-bench.xlsx",
  bytes: new Uint8Array([80, 75]),
  edits: [
    { sheet: 0, row: 4, column: 1, content: 0.07, format: "0%" },
    { sheet: 0, row: 5, column: 1, content: { formula: "=B5+1" } },
    { sheet: 0, row: 6, column: 1, content: null },
  ],
  saved: [],
};

describe("readKept(stored)", () => {
  test("gives back work as it was kept", () => expect(readKept(structuredClone(work))).toEqual(work));

  test("gives what an older version kept as typed fractions their number format", () => {
    const cell = { sheet: 0, row: 4, column: 1, content: 18.0625 };
    const lost = [{ ...cell, sheet: "sheet-1", isFraction: true }];
    const edits = [
      { kind: "delete", id: "sheet-1", lost },
      { ...cell, isFraction: true },
      { ...cell, row: 5, isFraction: false },
      { ...cell, row: 6, isFraction: undefined },
    ];
    expect(readKept({ ...work, edits, saved: edits.slice(1, 2) })).toStrictEqual({
      ...work,
      edits: [
        { kind: "delete", id: "sheet-1", lost: [{ ...cell, sheet: "sheet-1", format: "# ??/??" }] },
        { ...cell, format: "# ??/??" },
        { ...cell, row: 5 },
        { ...cell, row: 6 },
      ],
      saved: [{ ...cell, format: "# ??/??" }],
    });
  });

  test.each([
    ["nothing", undefined],
    ["no list of edits", { ...work, edits: undefined }],
    ["edits by address, as another version may keep them", { ...work, edits: [{ cell: "B5", content: 1 }] }],
    ["content of a kind that no cell has", { ...work, edits: [{ sheet: 0, row: 0, column: 0, content: [1] }] }],
    ["a file that is no bytes", { ...work, bytes: "PK" }],
  ])("takes %s for no work", (_, stored) => expect(readKept(stored)).toBeUndefined());
});
