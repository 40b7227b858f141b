import { execFileSync } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { COMPILED } from "../../src/build/command/compiled";
import { writeCommand } from "../../src/build/command/write";
import { partsBenchDraft, partsBenchFile } from "../workbook/support/parts-bench";

let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "installed-"));
  mkdirSync(join(folder, "package/dist/bin"), { recursive: true });
  mkdirSync(join(folder, "empty"));
  for (const name of ["package.json", "README.md", "LICENSE"]) cpSync(name, join(folder, "package", name));
  await writeCommand(join(folder, "package/dist/bin"));
  const npm = (cwd: string, ...words: string[]) =>
    execFileSync("npm", [...words, "--offline", "--no-audit", "--no-fund"], { cwd: join(folder, cwd), stdio: "pipe" });
  npm("package", "pack", "--ignore-scripts", "--pack-destination", folder);
  writeFileSync(join(folder, "empty/package.json"), "{}");
  npm(
    "empty",
    "install",
    "--omit=dev",
    join(
      folder,
      readdirSync(folder).find((name) => name.endsWith(".tgz"))!,
    ),
  );
});
afterAll(() => rmSync(folder, { recursive: true }));

describe("the package, installed in an empty folder", () => {
  test("recalculates a workbook, with no other package beside it", () => {
    expect(existsSync(join(folder, "empty/node_modules/groove-and-reveal/dist/bin", COMPILED))).toBe(true);
    const [input, output] = [join(folder, "in.xlsx"), join(folder, "out.xlsx")];
    writeFileSync(input, partsBenchDraft());
    const said = execFileSync(join(folder, "empty/node_modules/.bin/recalculate"), [input, "-o", output]).toString();
    expect(said).toMatch(/^\d+ formulas recalculated, \d+ cells changed\.\n/);
    expect(Buffer.compare(readFileSync(output), partsBenchFile())).toBe(0);
    expect(readdirSync(join(folder, "empty/node_modules")).filter((name) => !name.startsWith("."))).toEqual([
      "groove-and-reveal",
    ]);
  });

  test("takes less than 5 MB", () => {
    const files = readdirSync(join(folder, "empty"), { recursive: true }).map((name) =>
      join(folder, "empty", String(name)),
    );
    const bytes = files.reduce((sum, file) => sum + statSync(file).size, 0);
    expect(bytes).toBeGreaterThan(1e6);
    expect(bytes).toBeLessThan(5e6);
  });
});
