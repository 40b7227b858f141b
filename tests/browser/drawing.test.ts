import { readFileSync } from "node:fs";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { svgOf } from "../../src/drawing";
import { Paper } from "../../src/drawing/paper";
import { WIDTH } from "./bench";
import { openDesk, type Desk, type Visit } from "./desk";

let desk: Desk;
let visit: Visit;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());
afterEach(async () => {
  expect(visit.faults).toEqual([]);
  expect(visit.elsewhere).toEqual([]);
  await visit.close();
});

const section = () => visit.pane.locator("#drawing");
const drawn = (title: string) => section().getByRole("img", { name: title, exact: true });
/** What a drawing shows for a size of the tables. */
const sizeOf = (name: string) => section().locator(`[data-of="${name}"]`).first().textContent();

describe("the pane's drawing", () => {
  test("follows the selected row of the plan, and says what to select where there is none", async () => {
    visit = await desk.visit();
    await section().getByText("Select a cell of a table that PLAN").waitFor();
    await visit.sheet("Plan");
    await visit.goTo("C8");
    await drawn("Front elevation of A").waitFor();
    await visit.goTo("A12");
    await drawn("Front elevation of C").waitFor();
    const height = (await visit.at("D12")).value as number;
    expect(await sizeOf("C1 Front height")).toBe(`${Math.trunc(height)} ${(height % 1) * 8}/8 in`);
    await visit.goTo("A25");
    await section().getByText("Select a cell of a table that PLAN").waitFor();
  });

  test("is of the openings as they are now", async () => {
    visit = await desk.visit();
    await visit.sheet("Plan");
    await visit.goTo("C6");
    await drawn("Front elevation of A").waitFor();
    const before = await sizeOf("A Opening width");
    await visit.sheet("Job");
    await visit.enter(WIDTH, "20");
    await visit.sheet("Plan");
    await visit.goTo("C6");
    await section().locator('[data-of="A Opening width"]').getByText("20 in").waitFor();
    expect(before).not.toBe("20 in");
  });

  test("has sizes read from left to right beside a name that reads from right to left", async () => {
    visit = await desk.visit();
    const paper = new Paper();
    paper.label("22 × 4", 0, 0, { before: "مقعد الدراجات:" });
    await visit.page.evaluate((svg) => document.body.insertAdjacentHTML("beforeend", svg), svgOf(paper.finish("", "")));
    const places = await visit.page.locator("body > svg.drawing text").evaluate((text: SVGTextElement) => {
      const start = text.textContent.indexOf("22 × 4");
      return [0, 1, 3, 5].map((i) => text.getStartPositionOfChar(start + i).x);
    });
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  test("shows the sheet of a row of the layout, and of a cut", async () => {
    visit = await desk.visit();
    await visit.sheet("Layout");
    await visit.goTo("D6");
    await drawn("Layout of sheet 1").waitFor();
    await visit.sheet("Sheets");
    await visit.goTo("A6");
    await drawn("Layout of sheet 1").waitFor();
    await visit.goTo("A7");
    await drawn("Layout of sheet 2").waitFor();
    await visit.sheet("Cuts");
    await visit.goTo("A6");
    await drawn("Layout of sheet 1").waitFor();
  });

  test("no text takes more room than it was given, in the letters of this machine", async () => {
    visit = await desk.visit();
    for (const [sheet, cell] of [
      ["Layout", "D6"],
      ["Plan", "A6"],
    ] as const) {
      await visit.sheet(sheet);
      await visit.goTo(cell);
      await drawn(sheet === "Plan" ? "Front elevation of A" : "Layout of sheet 1").waitFor();
      const out = await section()
        .locator("svg")
        .first()
        .evaluate((svg) => {
          const boxes = [...svg.querySelectorAll("text")].map((text) => ({
            text: text.textContent,
            box: text.getBoundingClientRect(),
          }));
          const paper = svg.getBoundingClientRect();
          const apart = (a: DOMRect, b: DOMRect): boolean =>
            a.right <= b.left + 0.5 || b.right <= a.left + 0.5 || a.bottom <= b.top + 0.5 || b.bottom <= a.top + 0.5;
          const clashes = boxes.flatMap(({ text, box }, i) =>
            boxes.slice(i + 1).flatMap((other) => (apart(box, other.box) ? [] : [`${text} on ${other.text}`])),
          );
          const left = boxes.filter(({ box }) => box.left < paper.left - 0.5 || box.right > paper.right + 0.5);
          return { clashes, left: left.map(({ text }) => text), count: boxes.length };
        });
      expect(out).toMatchObject({ clashes: [], left: [] });
      expect(out.count).toBeGreaterThan(8);
    }
  });

  test("is saved as a file of its own, and as a picture black on white at 300 points to the inch", async () => {
    visit = await desk.visit({ colorScheme: "dark" });
    await visit.sheet("Plan");
    await visit.goTo("C6");
    await drawn("Front elevation of A").waitFor();
    const save = async (kind: string): Promise<Buffer> => {
      const [download] = await Promise.all([
        visit.page.waitForEvent("download"),
        section()
          .getByRole("button", { name: `Save as ${kind}: Front elevation of A` })
          .click(),
      ]);
      expect(download.suggestedFilename()).toBe(`Front elevation of A.${kind.toLowerCase()}`);
      return readFileSync(await download.path());
    };
    const svg = (await save("SVG")).toString("utf8");
    expect(svg).toContain("<title>Front elevation of A</title>");
    expect(svg).not.toContain("prefers-color-scheme");
    const [, width] = /width="([\d.]+)mm"/.exec(svg)!;
    const png = await save("PNG");
    expect(png.subarray(1, 4).toString()).toBe("PNG");
    expect(png.readUInt32BE(16)).toBe(Math.round((Number(width) * 300) / 25.4));
    const corner = await visit.page.evaluate(
      async (bytes) => {
        const bitmap = await createImageBitmap(new Blob([new Uint8Array(bytes)], { type: "image/png" }));
        const canvas = new OffscreenCanvas(1, 1).getContext("2d")!;
        canvas.drawImage(bitmap, 0, 0);
        return [...canvas.getImageData(0, 0, 1, 1).data];
      },
      [...png],
    );
    expect(corner).toEqual([255, 255, 255, 255]);
  });

  test("on a phone of 320 px its letters are at least 9 px high, and nothing is wider than the pane", async () => {
    visit = await desk.visit({ viewport: { width: 320, height: 640 } });
    await visit.sheet("Plan");
    await visit.goTo("A6");
    await visit.page.click("#functions");
    await drawn("Front elevation of A").waitFor();
    const { letters, wide } = await section().evaluate((place) => {
      const svg = place.querySelector("svg")!;
      const text = svg.querySelector("text")!;
      const scale = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
      return { letters: Number(text.getAttribute("font-size")) * scale, wide: place.scrollWidth - place.clientWidth };
    });
    expect(letters).toBeGreaterThan(9);
    expect(wide).toBe(0);
  });
});
