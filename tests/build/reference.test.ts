import { execFileSync, spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import * as exported from "../../src/functions";
import { functionFiles } from "../../src/build/function-files";
import { readFunctionDocs } from "../../src/build/function-doc";
import { functionReference, grouped } from "../../src/build/function-reference";
import { functionHelpText } from "../../src/build/function-help";
import { functionList } from "../../src/build/function-list";
import { withPart } from "../../src/build/generated";
import type { FunctionGroup } from "../../src/taskpane/reference";
import { completeSource } from "./sources";

const docs = (...names: string[]) => names.flatMap((name) => readFunctionDocs(completeSource(name), `${name}.ts`));

describe("the function reference", () => {
  test("holds every exported function, with an example, in a shape that the pane reads", () => {
    const groups: FunctionGroup[] = functionReference(functionFiles("src/functions"));
    const entries = groups.flatMap(({ functions }) => functions);
    expect(entries.map(({ name }) => name).sort()).toEqual(Object.keys(exported).sort());
    for (const { name, examples } of entries) expect(examples[0]?.formula).toContain(`DRAWER.${name}(`);
  });

  test("says of a function what its doc comment says", () => {
    expect(grouped(docs("DOUBLE"))).toEqual([
      {
        name: "Boxes",
        functions: [
          {
            name: "DOUBLE",
            description: "Gives twice the width, as 1.5 in.",
            parameters: [
              { name: "width", optional: false, description: "The width" },
              { name: "unit", optional: true, description: "in (default)" },
            ],
            returns: "Twice the width",
            throws: ["#VALUE! where the width is none"],
            examples: [{ formula: "=DRAWER.DOUBLE(2)", result: "4" }],
            sources: ["arithmetic"],
          },
        ],
      },
    ]);
  });

  test("has its groups in their fixed order, and functions by name", () => {
    const lengths = docs("Z").map((doc) => ({ ...doc, group: ["Lengths"] }));
    const order = grouped([...docs("B", "A"), ...lengths]);
    expect(order.map(({ name, functions }) => [name, ...functions.map((entry) => entry.name)])).toEqual([
      ["Lengths", "Z"],
      ["Boxes", "A", "B"],
    ]);
  });
});

describe("withPart", () => {
  const readme = "# Title\n<!-- functions -->\nold\n<!-- /functions -->\nEnd\n";

  test("replaces what stands between the markers, and nothing else", () => {
    const written = withPart(readme, "functions", functionList(grouped(docs("DOUBLE"))));
    expect(written).toBe(
      "# Title\n<!-- functions -->\n### Boxes\n\n| Function | |\n|---|---|\n" +
        "| [`DOUBLE`](src/guide/pages/functions.md#double) | Gives twice the width, as 1.5 in. |\n" +
        "<!-- /functions -->\nEnd\n",
    );
    expect(withPart(written, "functions", functionList(grouped(docs("DOUBLE"))))).toBe(written);
  });

  test.each(["", "<!-- functions -->", "<!-- /functions --><!-- functions -->", `${readme}${readme}`])(
    "refuses a text without one pair of markers: %j",
    (text) => {
      expect(() => withPart(text, "functions", "")).toThrow(
        "between one <!-- functions --> and one <!-- /functions -->",
      );
    },
  );
});

describe("a function's help in the guide", () => {
  test("is its doc comment in full, under a heading that is its anchor", () => {
    const help = functionHelpText(grouped(docs("DOUBLE")));
    expect(help).toContain("\n### DOUBLE\n\nGives twice the width, as 1.5 in.\n");
    for (const part of [
      "=DRAWER.DOUBLE(width, [unit])",
      "| `[unit]` | in (default) |",
      "**Result.** Twice the width.",
      "**Error.** #VALUE! where the width is none.",
      "**Example**, which gives `4`:\n\n```\n=DRAWER.DOUBLE(2)\n```",
      "**Source.** arithmetic.",
    ])
      expect(help).toContain(part);
  });

  test("shows an example's table as a table, its first row as headings", () => {
    const [doc] = docs("DOUBLE");
    const example = '=DRAWER.DOUBLE(2) // => {"Pass","a|b";1,2}';
    expect(functionHelpText(grouped([{ ...doc!, examples: [example] }]))).toContain(
      "| Pass | a\\|b |\n|---|---|\n| 1 | 2 |\n",
    );
  });
});

describe("the script src/build/reference.ts", () => {
  test("fails with --check until all texts are written, and changes nothing then", () => {
    const folder = mkdtempSync(join(tmpdir(), "texts-"));
    mkdirSync(join(folder, "src/guide/pages"), { recursive: true });
    const empty = (name: string) => `<!-- ${name} -->\n<!-- /${name} -->\n`;
    const texts = { "README.md": "functions", "src/guide/pages/functions.md": "functions" };
    for (const [file, name] of Object.entries(texts)) writeFileSync(join(folder, file), empty(name));
    const standards = join(folder, "src/guide/pages/standards.md");
    writeFileSync(standards, empty("standards"));
    const script = ["--import", "tsx", "src/build/reference.ts", folder];

    const check = spawnSync(process.execPath, [...script, "--check"], { encoding: "utf8" });
    expect(check.status).toBe(1);
    expect(check.stderr).toContain("out of date: run npm run reference");
    expect(readFileSync(join(folder, "README.md"), "utf8")).toBe(empty("functions"));

    execFileSync(process.execPath, script);
    expect(readFileSync(join(folder, "README.md"), "utf8")).toContain(
      "| [`BOXWIDTH`](src/guide/pages/functions.md#boxwidth) |",
    );
    expect(readFileSync(join(folder, "src/guide/pages/functions.md"), "utf8")).toContain("\n### BOXWIDTH\n");
    expect(readFileSync(standards, "utf8")).toContain("| `front gap` | 1/8 \\| 3 | Between fronts. |");
    expect(spawnSync(process.execPath, [...script, "--check"]).status).toBe(0);
    writeFileSync(standards, empty("standards"));
    expect(spawnSync(process.execPath, [...script, "--check"]).status).toBe(1);
    rmSync(folder, { recursive: true });
  });
});
