import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type axe from "axe-core";
import type { Frame, Page } from "playwright-core";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/**
 * What axe-core finds in a page or in a frame of one.
 * @param besides parts of the page that are not ours
 */
export async function violations(where: Page | Frame, besides: readonly string[] = []): Promise<string[]> {
  await where.evaluate(AXE);
  return where.evaluate(
    async (besides) => {
      const { axe: checker } = globalThis as unknown as { axe: typeof axe };
      const found = await checker.run({ exclude: besides.map((one) => [one]) });
      return found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
    },
    [...besides],
  );
}

/** The grid is its library's, and the pane is looked at by itself. */
export const NOT_OURS = ["#grid", "iframe", "[id^='univer']"];

export const paneFrame = (page: Page): Frame => page.frames().find((frame) => frame.url().endsWith("pane.html"))!;
