import { expect, test } from "vitest";
import { readValues } from "../../src/taskpane/host/office-values";

/** A sheet of which blocks are read, each with what it tells; `asked` says what was loaded. */
function sheet(told: object) {
  const asked: string[] = [];
  const range = (rowIndex: number, columnIndex: number) => ({
    load: (names: string) => asked.push(names),
    ...{ rowIndex, columnIndex, ...told },
  });
  return { asked, sheet: { getRangeByIndexes: range } as unknown as Excel.Worksheet };
}
const context = { sync: async () => {} } as Excel.RequestContext;
const AREA = { top: 3, left: 1, bottom: 4, right: 2 };

const double = (basicValue: number, numberFormat?: string) => ({ type: "Double", basicValue, numberFormat });
const TOLD = {
  values: [
    [23.0625, "7/16"],
    [23, 4],
  ],
  numberFormat: [
    ["General", "General"],
    ["General", "0.00"],
  ],
  valuesAsJson: [
    [double(23.0625, "# ??/16"), { type: "String", basicValue: "7/16" }],
    [{ type: "FormattedNumber", basicValue: 23, numberFormat: "# ??/16" }, double(4, "# ??/16")],
  ],
};

test("a value keeps the number format that it brought, where its cell has none", async () => {
  const { sheet: one, asked } = sheet(TOLD);
  const { areas, formats } = await readValues(context, one, [AREA], true);
  expect(asked).toEqual(["values, rowIndex, columnIndex, valuesAsJson, numberFormat"]);
  expect(areas).toEqual([AREA]);
  expect([...formats]).toEqual([["# ??/16", [{ top: 3, left: 1, bottom: 4, right: 1 }]]]);
});

test("where values do not tell their formats they are copied alone", async () => {
  const { valuesAsJson: _, ...less } = TOLD;
  for (const tells of [true, false])
    expect((await readValues(context, sheet(less).sheet, [AREA], tells)).formats.size).toBe(0);
});

test("what is still being worked out is not frozen", async () => {
  const busy = sheet({ ...TOLD, values: [["#BUSY!"]] });
  await expect(readValues(context, busy.sheet, [AREA], false)).rejects.toMatchObject({ code: "working" });
});
