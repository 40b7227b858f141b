import { describe, expect, test } from "vitest";
import { tidyMetadata, type Metadata } from "../../src/build/metadata";

const words = (id: string, ...values: string[]) => ({
  id,
  type: "string",
  values: values.map((stringValue) => ({ name: stringValue, stringValue, tooltip: "" })),
});

const cellFunction = (id: string, customEnumId?: string) => ({
  id,
  name: id,
  parameters: [{ name: "unit", customEnumId }],
  result: {},
});

const tidy = (part: Partial<Metadata>) =>
  tidyMetadata({ functions: [cellFunction("A")], ...part }, (name) => `help#${name}`);

describe("tidyMetadata", () => {
  test("keeps one of several equal enumerations", () => {
    const enums = [words("Unit", "in", "mm"), words("Joint", "butt"), words("Unit", "in", "mm")];
    const { metadata, problems } = tidy({ enums });
    expect(metadata.enums).toEqual([words("Unit", "in", "mm"), words("Joint", "butt")]);
    expect(problems).toEqual([]);
  });

  test("refuses two enumerations of one name that differ in words, order or tooltip", () => {
    const { problems } = tidy({ enums: [words("Unit", "in", "mm"), words("Unit", "mm", "in"), words("Unit", "in")] });
    expect(problems).toEqual([expect.stringContaining("Unit has different words in different files")]);
  });

  test("refuses a function id that stands in two files, in whatever case", () => {
    const { problems } = tidy({
      functions: [cellFunction("BOXWIDTH"), { ...cellFunction("BoxWidth"), name: "OTHER" }],
    });
    expect(problems).toEqual(["Two functions have the id BOXWIDTH. Every function needs its own."]);
  });

  test("refuses a function name that stands in two files", () => {
    const { problems } = tidy({ functions: [cellFunction("A"), { ...cellFunction("B"), name: "a" }] });
    expect(problems).toEqual(["Two functions have the name A. Every function needs its own."]);
  });

  test("refuses a parameter that offers the words of no enumeration", () => {
    const { problems } = tidy({ functions: [cellFunction("A", "Unit")], enums: [words("Joint", "butt")] });
    expect(problems).toEqual(["A offers the words of Unit, which is no enumeration."]);
  });

  test("lets errors and data types in, and leaves out an empty list of enumerations", () => {
    expect(tidy({}).metadata).toEqual({
      allowErrorForDataTypeAny: true,
      allowCustomDataForDataTypeAny: true,
      functions: [{ ...cellFunction("A"), helpUrl: "help#A" }],
    });
  });
});
