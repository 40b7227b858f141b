import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, rmSync, statSync, utimesSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** The folder of the built add-in, built anew where a source is younger than it. */
export function dist(): string {
  if (isStale()) oneAtATime(() => isStale() && build());
  return join(root, "dist");
}

/** Runs the production build of the project, into its dist/. */
function build(): void {
  execFileSync(process.execPath, [join(root, "node_modules/webpack/bin/webpack.js"), "--mode", "production"], {
    cwd: root,
    stdio: ["ignore", "pipe", "inherit"],
  });
  // A build leaves files that did not change untouched, with their old time.
  utimesSync(BUNDLE, new Date(), new Date());
}

const BUNDLE = join(root, "dist/functions.js");

const SOURCES = ["src/core", "src/functions", "src/drawing", "src/guide", "src/taskpane", "src/build", "manifest"]
  .concat("src/workbook/author", "src/workbook/formula", "src/workbook/new-job")
  .concat("webpack.config.js", "package.json")
  .map((path) => join(root, path));

const isStale = (): boolean => !existsSync(BUNDLE) || Math.max(...SOURCES.map(youngest)) > statSync(BUNDLE).mtimeMs;

/** The time of the youngest file at or below a path; of the folders too, for a file may have gone. */
function youngest(path: string): number {
  if (!existsSync(path)) return 0;
  const { mtimeMs } = statSync(path);
  if (!statSync(path).isDirectory()) return mtimeMs;
  return Math.max(mtimeMs, ...readdirSync(path).map((name) => youngest(join(path, name))));
}

const LOCK = join(root, "node_modules/.cache/groove-and-reveal-build");

/** Test files run side by side, and must not build into one folder at the same time. */
function oneAtATime(work: () => void): void {
  mkdirSync(dirname(LOCK), { recursive: true });
  while (!taken()) Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 100);
  try {
    work();
  } finally {
    rmSync(LOCK, { recursive: true, force: true });
  }
}

/** A lock that outlived any build by far was left behind by a run that was broken off. */
function taken(): boolean {
  try {
    mkdirSync(LOCK);
    return true;
  } catch {
    const left = statSync(LOCK, { throwIfNoEntry: false });
    if (left && Date.now() - left.mtimeMs > 120_000) rmSync(LOCK, { recursive: true, force: true });
    return false;
  }
}
