import { availableParallelism } from "node:os";
import { defineConfig, type TestProjectInlineConfiguration } from "vitest/config";

/** Tests of plain values: they leave nothing behind, so that files share their modules, which takes a third of the time. */
const SHARED = { isolate: false, pool: "threads" } as const;

/** They run programs that a machine may lack. */
const WITH_PROGRAMS = { globalSetup: ["tests/setup/system.ts"] };

/** After all others and one file at a time, for a browser keeps the machine busy by itself. */
const IN_A_BROWSER = { ...WITH_PROGRAMS, maxWorkers: 1, sequence: { groupOrder: 1 } };

const project = (
  name: string,
  folders: readonly string[],
  more: TestProjectInlineConfiguration["test"] = {},
): TestProjectInlineConfiguration => ({
  test: {
    root: new URL("..", import.meta.url).pathname,
    name,
    include: folders.map((folder) => `tests/${folder}/**/*.test.ts`),
    setupFiles: ["tests/host.ts", "tests/setup/seed.ts"],
    testTimeout: 60_000,
    hookTimeout: 300_000,
    // Two at least: where there are two cores, the runner would leave one idle.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    ...more,
  },
});

export default defineConfig({
  test: {
    root: new URL("..", import.meta.url).pathname,
    coverage: {
      include: ["src/core/**"],
      reporter: ["text"],
      thresholds: { branches: 100 },
      reportsDirectory: "node_modules/.cache/coverage",
    },
    projects: [
      project("unit", ["core", "drawing", "functions", "guide", "handbook", "shop-pages"], SHARED),
      project("jobs", ["worked", "limits"], { ...WITH_PROGRAMS, ...SHARED }),
      project("laws", ["laws"], SHARED),
      project("workbook", ["workbook"], WITH_PROGRAMS),
      project("build", ["build", "lint", "manifest", "taskpane"], WITH_PROGRAMS),
      project("twins", ["twins"], WITH_PROGRAMS),
      project("office", ["office"], IN_A_BROWSER),
      project("browser", ["browser"], {
        ...IN_A_BROWSER,
        globalSetup: ["tests/setup/system.ts", "tests/setup/pages.ts"],
      }),
    ],
  },
});
