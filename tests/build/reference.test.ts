import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import * as exported from "../../src/functions";
import { functionFiles } from "../../src/build/function-files";
import { readFunctionDocs } from "../../src/build/function-doc";
import { functionReference, grouped } from "../../src/build/function-reference";
import { withFunctionList } from "../../src/build/readme-list";
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

describe("withFunctionList", () => {
  const readme = "# Title\n<!-- functions -->\nold\n<!-- /functions -->\nEnd\n";

  test("replaces what stands between the markers, and nothing else", () => {
    const written = withFunctionList(readme, grouped(docs("DOUBLE")));
    expect(written).toBe(
      "# Title\n<!-- functions -->\n### Boxes\n\n| Function | |\n|---|---|\n" +
        "| `DOUBLE(width, [unit])` | Gives twice the width, as 1.5 in. |\n<!-- /functions -->\nEnd\n",
    );
    expect(withFunctionList(written, grouped(docs("DOUBLE")))).toBe(written);
  });

  test.each(["", "<!-- functions -->", "<!-- /functions --><!-- functions -->", `${readme}${readme}`])(
    "refuses a text without one pair of markers: %j",
    (text) => {
      expect(() => withFunctionList(text, [])).toThrow("between one <!-- functions --> and one <!-- /functions -->");
    },
  );
});

describe("the script src/build/reference.ts", () => {
  test("fails with --check until the list is written, and changes nothing then", () => {
    const folder = mkdtempSync(join(tmpdir(), "readme-"));
    const file = join(folder, "README.md");
    const script = ["--import", "tsx", "src/build/reference.ts", file];
    writeFileSync(file, "<!-- functions -->\n<!-- /functions -->\n");

    const check = spawnSync(process.execPath, [...script, "--check"], { encoding: "utf8" });
    expect(check.status).toBe(1);
    expect(check.stderr).toContain("out of date: run npm run reference");
    expect(readFileSync(file, "utf8")).toBe("<!-- functions -->\n<!-- /functions -->\n");

    execFileSync(process.execPath, script);
    expect(readFileSync(file, "utf8")).toContain("| `BOXWIDTH(opening_width, [slide], [unit])` |");
    expect(spawnSync(process.execPath, [...script, "--check"]).status).toBe(0);
    rmSync(folder, { recursive: true });
  });
});
