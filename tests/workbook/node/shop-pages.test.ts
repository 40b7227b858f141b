import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { partsBenchDraft } from "../support/parts-bench";
import { EditedWorkbook } from "../../../src/workbook/edit";
import { run } from "../../../src/workbook/node/shop-pages/run";
import { bookText } from "../../../src/workbook/shop";
import { readSvg } from "../../drawing/read-svg";
import { oneSheet } from "../support/handmade";

let folder: string;
let bench: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "shop-pages-"));
  bench = join(folder, "bench.xlsx");
  writeFileSync(bench, partsBenchDraft());
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function command(...words: string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const code = await run(words, { out: (line) => out.push(line), err: (line) => err.push(line) });
  return { code, out: out.join("\n"), err: err.join("\n") };
}

/** Poppler's reading of one page's lines, in millimeters: the place of each line's ends. */
function linesOf(pdf: string, page: number): [number, number, number, number][] {
  const { stdout } = spawnSync("pdftocairo", ["-svg", "-f", String(page), "-l", String(page), pdf, "-"], {
    encoding: "utf8",
    maxBuffer: 1 << 28,
  });
  const paths = stdout.matchAll(/ d="([^"]+)" transform="matrix\(([-\d.]+),0,0,([-\d.]+),([-\d.]+),([-\d.]+)\)"/g);
  return [...paths].flatMap(([, data, ...matrix]) => {
    const [a, d, e, f] = matrix.map(Number) as [number, number, number, number];
    const ends = [...data!.matchAll(/M ([-\d.]+) ([-\d.]+) L ([-\d.]+) ([-\d.]+) /g)];
    return ends.map((found) => {
      const [x1, y1, x2, y2] = found.slice(1).map(Number) as [number, number, number, number];
      const points = [a * x1 + e, d * y1 + f, a * x2 + e, d * y2 + f];
      return points.map((point) => (point / 72) * 25.4) as [number, number, number, number];
    });
  });
}

describe("npm run shop-pages", () => {
  test.each([
    ["letter", [215.9, 279.4]],
    ["a4", [210, 297]],
  ] as const)(
    "prints on %s; check ruler and story stick are true to 0.2 mm, as Poppler reads the PDF",
    async (paper, [width, height]) => {
      const pdf = join(folder, `${paper}.pdf`);
      const { code, out, err } = await command(bench, "-o", pdf, "--paper", paper);
      expect([code, err]).toEqual([0, ""]);
      expect(out).toContain("Print it at 100 %");
      const info = spawnSync("pdfinfo", [pdf], { encoding: "utf8" }).stdout;
      const [, w, h] = /Page size: +([\d.]+) x ([\d.]+) pts/.exec(info)!;
      // Browsers round the paper to whole points.
      expect(Math.abs((Number(w) / 72) * 25.4 - width)).toBeLessThan(0.5);
      expect(Math.abs((Number(h) / 72) * 25.4 - height)).toBeLessThan(0.5);
      const pages = Number(/Pages: +(\d+)/.exec(info)![1]);
      const texts = Array.from(
        { length: pages },
        (_, i) =>
          spawnSync("pdftotext", ["-f", String(i + 1), "-l", String(i + 1), pdf, "-"], { encoding: "utf8" }).stdout,
      );
      expect(texts.filter((text) => text.trim() === "")).toEqual([]);
      const page = 1 + texts.findIndex((text) => text.startsWith("Opening B"));
      const lines = linesOf(pdf, page);
      const across = lines.filter(([, y1, , y2]) => Math.abs(y1 - y2) < 0.01);
      const ruler = across.map(([x1, , x2]) => x2 - x1).reduce((a, b) => Math.max(a, b));
      expect(Math.abs(ruler - 101.6)).toBeLessThan(0.2);

      // Heights on the stick: its marks begin at its left edge, 6 mm long; all sections together reach from top to bottom.
      const isMark = (long: number): boolean => Math.abs(long - 6) < 0.1;
      const edges = lines.filter(([x1, y1, x2, y2]) => Math.abs(x1 - x2) < 0.01 && Math.abs(y1 - y2) > 30);
      const sticks = [...new Map(edges.map((edge) => [edge[0].toFixed(0), edge])).values()];
      const left = sticks.filter(([x]) => across.some(([from, , to]) => Math.abs(from - x) < 0.1 && isMark(to - from)));
      left.sort(([a], [b]) => a - b);
      const wanted = heightsOf("B");
      let from = wanted[0]!;
      const found = left.flatMap(([x, y1, , y2]) => {
        const [low, long] = [Math.max(y1, y2), Math.abs(y1 - y2)];
        const marks = across.filter(([a, , b]) => Math.abs(a - x) < 0.1 && isMark(b - a));
        const heights = marks.map(([, y]) => from + (low - y));
        from += long;
        return heights;
      });
      expect(left).toHaveLength(4);
      const missed = (some: readonly number[], others: readonly number[]): number[] =>
        some.filter((one) => !others.some((other) => Math.abs(one - other) < 0.2));
      expect(missed(wanted, found)).toEqual([]);
      expect(missed(found, wanted)).toEqual([]);

      // The corner of the boxes: what its dimension lines span is as large as PARTS and the standards have it.
      const begin = 1 + texts.findIndex((text) => text.startsWith("Joints at full size"));
      const end = texts.findIndex((text) => text.startsWith("Labels"));
      expect(end).toBeGreaterThanOrEqual(begin);
      const full = Array.from({ length: end - begin + 1 }, (_, i) => linesOf(pdf, begin + i)).flat();
      const long = (kind: "across" | "up"): number[] =>
        full.flatMap(([x1, y1, x2, y2]) => (kind === "across" ? [Math.abs(x2 - x1)] : [Math.abs(y2 - y1)]));
      expect(
        missed(
          [1 / 2, 1 / 4, 4].map((size) => size * 25.4),
          long("across"),
        ),
      ).toEqual([]);
      expect(
        missed(
          [1 / 2, 1 / 4, 3 / 8].map((size) => size * 25.4),
          long("up"),
        ),
      ).toEqual([]);
    },
  );

  test("writes the pages for a phone without a browser, and every drawing as a file that can be read", async () => {
    const [page, svgs] = [join(folder, "pages.html"), join(folder, "svg")];
    const { code, out } = await command(bench, "-o", page, "--svg", svgs);
    expect(code).toBe(0);
    expect(readFileSync(page, "utf8")).toMatch(/^<!doctype html>.*<title>Shop pages: bench<\/title>/s);
    const files = readdirSync(svgs);
    expect(out).toContain(`${files.length} drawings are written`);
    expect(files.filter((file) => /Layout of sheet \d+\.svg$/.test(file)).length).toBeGreaterThan(2);
    for (const file of files) expect(readSvg(readFileSync(join(svgs, file), "utf8")).names).toContain("path");
  });

  test.each([
    [[], /Which workbook/],
    [["a.xlsx"], /Where to/],
    [["a.xlsx", "-o", "a.doc"], /\.pdf or as \.html/],
    [["a.xlsx", "-o", "a.pdf", "--paper", "a3"], /letter or a4, not “a3”/],
    [["a.xlsx", "b.xlsx", "-o", "a.pdf"], /One workbook/],
    [["/nowhere/a.xlsx", "-o", "/tmp/a.pdf"], /not there/],
    [["a.xlsx", "--poster"], /--poster/],
  ])("%j is refused in one sentence", async (words, why) => {
    const { code, err } = await command(...words);
    expect(code).toBe(2);
    expect(err).toMatch(why);
    expect(err.split("\n")).toHaveLength(1);
  });

  test("says which browser is lacking, and what a workbook lacks", async () => {
    const before = process.env["CHROMIUM"];
    process.env["CHROMIUM"] = "/nowhere/browser";
    const { code, err } = await command(bench, "-o", join(folder, "none.pdf"));
    if (before === undefined) delete process.env["CHROMIUM"];
    else process.env["CHROMIUM"] = before;
    expect([code, err]).toEqual([2, expect.stringContaining("No browser that could print was found.")]);
    const bare = join(folder, "bare.xlsx");
    writeFileSync(bare, oneSheet('<row r="1"><c r="A1"><v>20</v></c></row>'));
    expect((await command(bare, "-o", join(folder, "none.pdf"))).err).toContain("plans drawers");
    expect(readdirSync(folder)).not.toContain("none.pdf");
  });
});

/** What the workbook's own tables say of an opening's heights, in millimeters. */
function heightsOf(opening: string): number[] {
  const text = bookText(new EditedWorkbook(partsBenchDraft()));
  const table = (name: string): unknown[][] => {
    const { sheet } = text.formulas.find(({ formula }) => formula.startsWith(`=DRAWER.${name}(`))!;
    return text.values({ sheet, address: "A1:Z60", isSpilled: false })!;
  };
  const columns = (name: string, wanted: readonly string[]): number[] => {
    const rows = table(name);
    const header = rows.findIndex((row) => row[0] === "Drawer");
    const places = wanted.map((heading) => rows[header]!.indexOf(heading));
    const own = rows.slice(header + 1).filter(([drawer]) => String(drawer).match(new RegExp(`^${opening}\\d$`)));
    return own.flatMap((row) => places.map((place) => Number(row[place])));
  };
  const inches = [
    0,
    26.25,
    ...columns("MOUNTING", ["Slide spacer", "Slide centerline", "Front bottom", "Pull height"]),
    ...columns("PLAN", ["Box bottom"]),
  ];
  return [...new Set(inches)].sort((a, b) => a - b).map((size) => size * 25.4);
}
