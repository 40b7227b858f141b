import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import MetadataPlugin from "custom-functions-metadata-plugin";
import webpack from "webpack";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { functionFiles } from "../../src/build/function-files";
import type { Metadata } from "../../src/build/metadata";
import { FunctionsJsonPlugin } from "../../src/build/functions-json-plugin";
import { changed, completeSource } from "./sources";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "functions-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** Builds a folder of cell functions with the plugins of the real build; gives the errors, and functions.json. */
async function build(files: Record<string, string>): Promise<{ errors: string[]; metadata: Metadata }> {
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  writeFileSync(
    join(folder, "index.ts"),
    Object.keys(files)
      .map((name) => `import "./${name}";`)
      .join("\n"),
  );
  const inputs = functionFiles(folder);
  const compiler = webpack({
    mode: "none",
    context: folder,
    entry: join(folder, "index.ts"),
    output: { path: join(folder, "dist") },
    module: { rules: [{ test: /\.ts$/, loader: createRequire(import.meta.url).resolve("esbuild-loader") }] },
    plugins: [
      new MetadataPlugin({ input: inputs, output: "functions.json" } as never),
      new FunctionsJsonPlugin(inputs, (name) => `https://example.org/help#${name}`),
    ],
  });
  const stats = await new Promise<webpack.Stats>((done, fail) =>
    compiler!.run((error, result) => (error ? fail(error) : done(result!))),
  );
  const errors = stats.compilation.errors.map(({ message }) => message);
  return { errors, metadata: JSON.parse(readFileSync(join(folder, "dist/functions.json"), "utf8")) };
}

describe("a build of cell functions", () => {
  test("succeeds where all is in order, and merges the enumeration that both files hold", async () => {
    const { errors, metadata } = await build({ "a.ts": completeSource("A"), "b.ts": completeSource("B") });
    expect(errors).toEqual([]);
    expect(metadata.functions.map(({ id }) => id)).toEqual(["A", "B"]);
    expect(metadata.functions.map(({ helpUrl }) => helpUrl)).toEqual([
      "https://example.org/help#A",
      "https://example.org/help#B",
    ]);
    expect(metadata.enums).toHaveLength(1);
    expect(metadata.allowErrorForDataTypeAny).toBe(true);
  });

  test("fails where two files have unequal enumerations of one name", async () => {
    const other = completeSource("B").replace('"in"', '"inch"');
    const { errors } = await build({ "a.ts": completeSource("A"), "b.ts": other });
    expect(errors).toEqual([expect.stringContaining("The enumeration Unit has different words")]);
  });

  test("fails where two files hold a function of one name", async () => {
    const { errors } = await build({ "a.ts": completeSource("A"), "b.ts": completeSource("A") });
    expect(errors).toEqual([
      "Two functions have the id A. Every function needs its own.",
      "Two functions have the name A. Every function needs its own.",
    ]);
  });

  test("fails where a doc comment lacks a part, and names file and function", async () => {
    const { errors } = await build({ "double.ts": changed("@throws") });
    expect(errors).toEqual([
      `${join(folder, "double.ts")}: DOUBLE needs a @throws with its text (@throws nothing, if so)`,
    ]);
  });

  test("fails where a file holds no cell function", async () => {
    const { errors } = await build({ "a.ts": completeSource("A"), "shared.ts": "export const shared = 1;" });
    expect(errors).toEqual([`${join(folder, "shared.ts")}: holds no function marked @customfunction`]);
  });
});
