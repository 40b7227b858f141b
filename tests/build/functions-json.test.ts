import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { dist } from "./dist";

interface Parameter {
  name: string;
  description: string;
  type: string;
  dimensionality?: string;
  optional?: boolean;
  customEnumId?: string;
}

interface BuiltFunction {
  id: string;
  name: string;
  description: string;
  parameters: Parameter[];
  result: { type?: string; dimensionality?: string };
}

const built = JSON.parse(readFileSync(`${dist()}/functions.json`, "utf8")) as {
  functions: BuiltFunction[];
  enums: { id: string; type: string; values: { name: string; stringValue: string; tooltip: string }[] }[];
};
const enums = new Map(built.enums.map((one) => [one.id, one]));

/** The rules are the makers' schema of custom functions' metadata, from memory. */
describe.each(built.functions)("what the host reads of $name", ({ id, name, description, parameters, result }) => {
  test("has an id and a name that a cell can call, and says what it gives", () => {
    expect(id).toMatch(/^[A-Za-z0-9._]{1,128}$/);
    expect(name).toMatch(/^\p{L}[\p{L}\p{N}._]{2,127}$/u);
    expect(description).toMatch(/^.{1,256}$/);
  });

  test("describes each parameter in at most 128 characters, as older hosts ask", () => {
    expect(parameters.filter((one) => !/^.{1,128}$/.test(one.description))).toEqual([]);
  });

  test("names no parameter twice, and takes none that must be given after an optional one", () => {
    const names = parameters.map((one) => one.name);
    expect(names).toEqual([...new Set(names)]);
    expect(names.filter((one) => !/^[a-z][a-z_]{0,63}$/.test(one))).toEqual([]);
    const isOptional = parameters.map(({ optional = false }) => optional);
    expect(isOptional).toEqual([...isOptional].sort((a, b) => Number(a) - Number(b)));
  });

  test("gives parameters and result types and dimensions that hosts know", () => {
    for (const { type = "any", dimensionality = "scalar" } of [...parameters, result]) {
      expect(["boolean", "number", "string", "any"]).toContain(type);
      expect(["scalar", "matrix"]).toContain(dimensionality);
    }
  });

  test("offers words of its lists for texts alone", () => {
    for (const { customEnumId, type } of parameters) {
      if (customEnumId !== undefined)
        expect([customEnumId, enums.get(customEnumId)?.type]).toEqual([customEnumId, type]);
    }
  });
});

describe.each(built.enums)("the list of words $id", ({ id, type, values }) => {
  test("is used, and offers each word once, with what it means", () => {
    const users = built.functions.filter(({ parameters }) => parameters.some((one) => one.customEnumId === id));
    expect(users.length).toBeGreaterThan(0);
    expect(type).toBe("string");
    const words = values.map(({ stringValue }) => stringValue);
    expect(words.length).toBeGreaterThan(1);
    expect(words).toEqual([...new Set(words)]);
    expect(values.filter((one) => !/^\w+$/.test(one.name) || !/^.{1,128}$/.test(one.tooltip))).toEqual([]);
  });
});

test("ids, names and lists are each there once", () => {
  const once = (list: string[]) => expect(list).toEqual([...new Set(list)]);
  once(built.functions.map(({ id }) => id.toUpperCase()));
  once(built.functions.map(({ name }) => name.toUpperCase()));
  once(built.enums.map(({ id }) => id));
});
