import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import * as exported from "../../src/functions";
import { version } from "../../package.json";
import { expectValueError } from "../cell";
import { dist } from "./dist";
import { loadBundle } from "./load-bundle";

const bundle = loadBundle();
const call = (id: string, ...args: unknown[]) => bundle.get(id)!(...args);
const metadata = JSON.parse(readFileSync(join(dist(), "functions.json"), "utf8"));
const described = (id: string) => metadata.functions.find((candidate: { id: string }) => candidate.id === id);

describe("the built functions.js, in a host with nothing but CustomFunctions", () => {
  test("associates every exported function, and functions.json describes the same ones", () => {
    const names = Object.keys(exported).sort();
    expect([...bundle.keys()].sort()).toEqual(names);
    expect(metadata.functions.map(({ id }: { id: string }) => id).sort()).toEqual(names);
  });

  test("calculates numbers, texts, columns and tables", () => {
    expect(call("BOXWIDTH", 24)).toBe(23);
    expect(call("BOXWIDTH", "18 1/16", "wood runner")).toBe(17.9375);
    expect(call("TAPE", 23.4375)).toBe(`23 7/16"`);
    expect(call("FRONTHEIGHTS", "27 5/8", [["5 1/2"], ["1 part"], ["1 part"]])).toEqual([[5.5], [10.9375], [10.9375]]);
    expect(call("GROOVEPASSES", 0.25, 0.125, 0.375, 0.25)).toEqual([
      ["Pass", "Fence", "Blade height"],
      [1, 0.375, 0.25],
      [2, 0.5, 0.25],
    ]);
    expect(call("VERSION")).toBe(version);
  });

  test("throws the host's own error, with its message", () => {
    const message =
      'joint is "glue". It can be "butt", "rabbet", "dado", "dovetail", "half-blind dovetail", "box joint".';
    expectValueError(() => call("ENDLENGTH", 17, 0.5, "glue"), message);
  });

  test("adds number formats once the pane has said that the host shows them", () => {
    const modern = loadBundle({ drawerHost: { showsNumberFormats: true } });
    expect(modern.get("BOXWIDTH")!(24)).toEqual({ type: "Double", basicValue: 23, numberFormat: "# ??/??" });
  });

  test("stays under 100 kB gzipped", () => {
    expect(gzipSync(readFileSync(join(dist(), "functions.js"))).length).toBeLessThan(100_000);
  });
});

describe("the built functions.json", () => {
  test("offers each list of words once, though every file repeats it", () => {
    const ids = metadata.enums.map(({ id }: { id: string }) => id);
    expect(ids).toContain("Unit");
    expect(ids).toEqual([...new Set(ids)]);
  });

  test("lets errors and formatted numbers reach the functions", () => {
    expect(metadata).toMatchObject({ allowErrorForDataTypeAny: true, allowCustomDataForDataTypeAny: true });
  });

  test("describes BOXWIDTH(opening_width, [slide], [unit]): any, any, and a text from the list Unit", () => {
    expect(described("BOXWIDTH")).toMatchObject({
      name: "BOXWIDTH",
      description: expect.stringMatching(/^Gives the box width [^\n@]*\.$/),
      parameters: [
        { name: "opening_width", type: "any", description: "Clear width of the opening, more than 0" },
        { name: "slide", type: "any", optional: true },
        { name: "unit", type: "string", optional: true, customEnumId: "Unit" },
      ],
    });
    expect(described("BOXWIDTH").parameters[0]).not.toHaveProperty("optional");
  });

  test("describes a list as a matrix that goes in, and a column as a matrix that comes out", () => {
    const { parameters, result } = described("FRONTHEIGHTS");
    expect(parameters[1]).toMatchObject({ name: "drawers", type: "any", dimensionality: "matrix" });
    expect(result).toMatchObject({ dimensionality: "matrix" });
  });

  test("makes no function volatile, streaming or dependent on its caller", () => {
    expect(metadata.functions.filter((candidate: object) => "options" in candidate)).toEqual([]);
  });
});
