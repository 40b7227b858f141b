import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Came } from "./came";
import { HOSTILE } from "./cases";
import { HOSTILE_FILES } from "./files";

/** For one file, of the processor's time, which other work on the machine hardly lengthens; and of memory. */
const LIMITS = { seconds: 20, megabytes: 512 };
/** A process works out files until they have taken so many seconds together, and the next one goes on. */
const SHARE = 5;

/** Marks that a terminal obeys, or that turn what it shows around. */
const UNSEEN = /[^\n\P{Cc}]|[\u200e\u200f\u202a-\u202e\u2066-\u2069]/u;

let folder: string;
const came = new Map<number, Came | { died: string }>();
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "hostile-"));
  const script = join(folder, "child.mjs");
  await build({
    entryPoints: [new URL("child.ts", import.meta.url).pathname],
    outfile: script,
    bundle: true,
    platform: "node",
    format: "esm",
    external: ["fast-check"],
    logLevel: "warning",
  });
  while (came.size < HOSTILE.length) await workOut(script, came.size);
}, 900_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** One process, for as many files as it lasts: what ends it is known by its number. */
function workOut(script: string, first: number): Promise<void> {
  const { seconds, megabytes } = LIMITS;
  const limit = `ulimit -t ${SHARE + seconds}; exec node --max-old-space-size=${megabytes} ${script}`;
  const child = spawn("sh", ["-c", limit]);
  let said = "";
  let used = 0;
  let next = first;
  child.stderr.on("data", (data: Buffer) => (said += data.toString()));
  const ask = () => child.stdin.write(`${next}\n`);
  createInterface({ input: child.stdout }).on("line", (line) => {
    const answer = JSON.parse(line) as Came;
    came.set(next++, answer);
    used += answer.whole;
    if (next >= HOSTILE.length || used > SHARE) child.stdin.end();
    else ask();
  });
  ask();
  return new Promise((resolve) =>
    child.on("close", (code, signal) => {
      if (code !== 0) came.set(next, { died: `${signal ?? code}: ${said.slice(-500)}` });
      resolve();
    }),
  );
}

describe("a hostile file is worked out rightly, keeps what it holds and lists it, or is refused in words:", () => {
  test.each(HOSTILE.map(({ title, expect }, i) => [title, i, expect] as const))("%s", (_, i, expected) => {
    const found = came.get(i)!;
    expect(found).not.toHaveProperty("died");
    const { cells, refused, broken, falsehoods = [], said = "", seconds, megabytes } = found as Came;
    expect(broken).toBeUndefined();
    expect(falsehoods).toEqual([]);
    expect(`${said} ${refused} ${JSON.stringify(cells)}`).not.toMatch(
      /Maximum call stack|RangeError|cannot be worked out \(/,
    );
    expect(said).not.toMatch(UNSEEN);
    expect(seconds).toBeLessThan(LIMITS.seconds);
    expect(megabytes).toBeLessThan(2 * LIMITS.megabytes);
    const { refused: wanted, ...values } = expected as { refused?: RegExp };
    if (wanted) return expect(refused).toMatch(wanted);
    expect(refused).toBeUndefined();
    for (const [cell, value] of Object.entries(values as Record<string, unknown>)) {
      if (value instanceof RegExp) expect(String(cells![cell]), cell).toMatch(value);
      else expect(cells![cell], cell).toBe(value);
    }
  });
});

test("there are at least 80 such formulas and 40 such files, and what is printed of each stays short", () => {
  expect(HOSTILE.length - HOSTILE_FILES.length).toBeGreaterThanOrEqual(80);
  expect(HOSTILE_FILES.length).toBeGreaterThanOrEqual(40);
  expect(new Set(HOSTILE.map(({ title }) => title)).size).toBe(HOSTILE.length);
  for (const [i, found] of came) if ("length" in found) expect(found.length, HOSTILE[i]!.title).toBeLessThan(700_000);
});
