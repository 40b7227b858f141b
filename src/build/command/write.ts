import { execFileSync } from "node:child_process";
import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { writeWorkbook } from "../../workbook/author/index";
import { benchJob, newJob } from "../../workbook/new-job/index";
import { buildCommand } from "./build";
import { COMPILED, ENTRY, SCRIPT } from "./compiled";

/** Writes the command into a folder, its script compiled as well. */
export async function writeCommand(folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of await buildCommand()) writeFileSync(join(folder, name), text);
  chmodSync(join(folder, ENTRY), 0o755);
  compileCommand(join(folder, SCRIPT), join(folder, COMPILED));
}

/** What V8 compiles of a script while it works out the example: it compiles no function before its first call. */
export function compileCommand(script: string, target: string): void {
  rmSync(target, { force: true });
  const folder = mkdtempSync(join(tmpdir(), "compile-"));
  try {
    const input = join(folder, "in.xlsx");
    writeFileSync(input, writeWorkbook(newJob(benchJob("in"))));
    const warm = fileURLToPath(new URL("warm.ts", import.meta.url));
    const words = ["--import", "tsx", warm, script, target, input, "-o", join(folder, "out.xlsx"), "--quiet"];
    // What V8 makes is refused by a Node with other flags, and those of this machine are nobody else's.
    execFileSync(process.execPath, words, { env: { ...process.env, NODE_OPTIONS: "" } });
  } finally {
    rmSync(folder, { recursive: true });
  }
}
