import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";

let root: string;
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), "unused-"));
  cpSync(".knip.jsonc", join(root, ".knip.jsonc"));
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

/** What the linter says of a small project under our rules. */
function said(files: Record<string, string>): string {
  for (const [name, text] of Object.entries({ "package.json": '{ "type": "module" }', ...files })) {
    mkdirSync(dirname(join(root, name)), { recursive: true });
    writeFileSync(join(root, name), text);
  }
  const args = [resolve("node_modules/knip/bin/knip.js"), "--no-progress", "--no-config-hints"];
  try {
    return execFileSync(process.execPath, args, { cwd: root, encoding: "utf8", stdio: "pipe" });
  } catch (failed) {
    return (failed as { stdout: string }).stdout;
  }
}

const MAIN = "src/workbook/browser/main.ts";

test("where all is used the linter says nothing", () => {
  expect(said({ [MAIN]: 'import { it } from "../it";\nconsole.info(it);\n', "src/workbook/it.ts": USED })).toBe("");
});

test("what nobody imports is said: a file, an export, a type, a package", () => {
  const told = said({
    [MAIN]: 'import { it } from "../it";\nconsole.info(it);\n',
    "src/workbook/it.ts": `${USED}export const idle = 2;\nexport type Idle = string;\n`,
    "src/workbook/lonely.ts": USED,
    "package.json": '{ "type": "module", "devDependencies": { "left-behind": "1.0.0" } }',
  });
  for (const one of ["src/workbook/lonely.ts", "idle ", "Idle ", "left-behind"]) expect(told).toContain(one);
});

const USED = "export const it = 1;\n";
