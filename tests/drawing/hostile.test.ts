import { describe, expect, test } from "vitest";
import { boxApart, elevation, spacerStack, storyStick, svgOf } from "../../src/drawing";
import { HOSTILE } from "./any-job";
import { clashes } from "./clashes";
import { plannedJob } from "./jobs";
import { readSvg } from "./read-svg";
import { sheetDrawings } from "./sheets";

const job = (name: string) => ({
  openings: [
    ["Opening", "Width", "Height", "Depth", "Drawers"],
    [name, 24, 26.25, 23.25, 3],
  ],
  standards: [],
});
const cutting = (name: string) => ({
  parts: [
    ["Part", "Drawer", "Length", "Width", "Qty"],
    [name, name, 24, 20, 2],
    [name, name, 3, 1, 3],
  ],
  stock: [
    ["Length", "Width", "Material"],
    [97, 49, name],
  ],
  effort: "quick",
});
const drawings = (name: string) => [
  ...plannedJob(job(name)).flatMap((planned) => [
    elevation([planned]),
    spacerStack(planned),
    boxApart(planned.drawers[0]!),
    ...storyStick(planned),
  ]),
  ...sheetDrawings(cutting(name)),
];

const ELEMENTS = new Set(["defs", "desc", "path", "pattern", "rect", "style", "svg", "text", "title", "tspan"]);
const ATTRIBUTES =
  /^(class|d|data-of|font-size|height|id|patternUnits|role|text-anchor|transform|viewBox|width|x|xmlns|y)$/;

describe("names that are no names", () => {
  test.each(HOSTILE)("%j is a text in its room and nothing else", (name) => {
    for (const drawing of drawings(name)) {
      expect(clashes(drawing)).toEqual([]);
      const svg = svgOf(drawing);
      const { names, texts, attributes } = readSvg(svg);
      for (const element of names) expect(ELEMENTS).toContain(element);
      for (const attribute of attributes) expect(attribute).toMatch(ATTRIBUTES);
      expect(texts).toEqual(
        drawing.labels.map(({ before, text, after }) => [before, text, after].filter(Boolean).join(" ")),
      );
      expect(svg).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u0000]/);
    }
  });

  test("a long name is cut short with a mark, and whole where the pointer rests", () => {
    const label = elevation(plannedJob(job("W".repeat(200)))).labels.find(({ text }) => text.startsWith("WW"))!;
    expect(label.text).toMatch(/^W{2,20}…$/);
    expect(label.whole).toBe(`${"W".repeat(200)}1`);
    expect(svgOf(elevation(plannedJob(job("W".repeat(200)))))).toContain(`<title>${"W".repeat(200)}1</title>`);
  });
});
