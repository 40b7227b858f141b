import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

const css = readFileSync("src/taskpane/colors.css", "utf8");

/** The colors of the page by name, as light and as dark. */
const [light, dark] = [...css.matchAll(/:root \{([^}]*)\}/g)].map(([, rules]) =>
  Object.fromEntries([...rules!.matchAll(/--([\w-]+): #([0-9a-f]{6});/g)].map(([, name, color]) => [name, color])),
);

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(color: string): number {
  const [r, g, b] = [0, 2, 4].map((i) => {
    const share = parseInt(color.slice(i, i + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

function contrast(one: string, other: string): number {
  const [high, low] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (high! + 0.05) / (low! + 0.05);
}

describe.each([
  ["light", light!],
  ["dark", dark!],
])("the pane's colors, %s", (_, colors) => {
  const pairs = ["ink", "soft", "accent", "done", "fault"].flatMap((text) => [
    [text, "ground"],
    [text, "front"],
  ]);
  test.each([...pairs, ["on-accent", "accent"]])("%s can be read on %s (4.5 to 1)", (text, ground) => {
    expect(contrast(colors[text!]!, colors[ground!]!)).toBeGreaterThanOrEqual(4.5);
  });

  test.each(["ground", "front"])("the edge of the search field and the arrows stand out from %s (3 to 1)", (ground) => {
    expect(contrast(colors["edge"]!, colors[ground]!)).toBeGreaterThanOrEqual(3);
  });
});
