import { Window } from "happy-dom";
import { describe, expect, test } from "vitest";
import { fromDouble, showLength, type Unit } from "../../src/core/length";
import { CUTS, HARDWARE, PARTS, PIECES, SETUPS } from "../../src/functions";
import { readShopJob, shopPages } from "../../src/shop-pages";
import { HOSTILE } from "../drawing/any-job";
import { JOBS } from "../drawing/jobs";
import { bookOf, shopJob, type TypedBook } from "./typed-book";

const STOCK = [
  ["Material", "Thickness", "Length", "Width"],
  ["Plywood", "1/2", 97, 49],
  ["Plywood", "1/4", 97, 49],
  ["Plywood", "3/4", 97, 49],
  ["Plywood", "3/8", 97, 49],
  ["Plywood", "7/32", 97, 49],
  ["Plywood", "15/32", 97, 49],
  ["Plywood", "23/32", 97, 49],
  ["Maple", "5/8", 97, 49],
  ["Walnut plywood", "3/4", 97, 49],
];
const METRIC = [
  ["Material", "Length", "Width"],
  ["Plywood", 2500, 1250],
];
const unitOf = ({ standards }: TypedBook): Unit => (standards.some(([, value]) => value === "mm") ? "mm" : "in");
const books = Object.entries(JOBS).map(([name, job]): [string, TypedBook] => [
  name,
  { ...job, stock: unitOf(job) === "mm" ? METRIC : STOCK },
]);

function opened(book: TypedBook, title = "Bench") {
  const { document } = new Window({ settings: { disableJavaScriptEvaluation: true } });
  document.write(shopPages(shopJob(book), title));
  const text = (of: { textContent: string }): string => of.textContent.replace(/\s+/g, " ").trim();
  const all = (selector: string): string[] => [...document.querySelectorAll(selector)].map(text);
  return { document, all };
}

describe.each(books)("the shop pages of the %s", (_, book) => {
  const { openings, standards, stock } = book;
  const unit = unitOf(book);
  const shown = (cell: unknown): string => showLength(fromDouble(cell as number), unit);
  const { all } = opened(book);

  test("hold every set-up of SETUPS once, in its order, and a box for each drawer whose pieces go through it", () => {
    const rows = SETUPS(openings, standards).slice(1);
    const steps = rows.filter(([step]) => step !== "");
    expect(all(".step h3")).toEqual(
      steps.map(([step, operation, setting, value]) => `${step}. ${operation}: ${setting} ${shown(value)}`),
    );
    const drawers = steps.flatMap(([, , , , , parts]) =>
      String(parts)
        .split("; ")
        .flatMap((part) => part.split(", ")),
    );
    expect(all(".step .ticks .tick")).toHaveLength(drawers.length);
    for (const [step, , words] of rows) {
      if (step === "") expect(all("#set-ups > p").join(" ")).toContain(String(words));
    }
  });

  test("hold a label for every piece of PIECES, with its sizes and set-ups", () => {
    const pieces = PIECES(openings, standards).slice(1);
    expect(all(".label b")).toEqual(pieces.map(([piece]) => piece));
    const sizes = pieces.map(([, , , ...row]) => row.slice(0, 3).map((size) => shown(size).replace(` ${unit}`, "")));
    expect(all(".label .size")).toEqual(sizes.map((three) => `${three.join(" × ")} ${unit}`));
    expect(all(".label span:last-child")).toEqual(pieces.map((row) => `Set-ups ${row[9]}`));
  });

  test("hold every cut of CUTS under the picture of its sheet", () => {
    const cuts = CUTS(PARTS(openings, standards), stock!, undefined, undefined, "quick" as never, unit as never);
    expect(all(".cuts li")).toEqual(
      cuts
        .slice(1)
        .map(
          ([, , , step, cut, setting, from, gives]) =>
            `${step}. ${cut}, keep ${shown(setting)}, from ${from}: ${gives}`,
        ),
    );
    expect(all(".sheet svg > title")).toEqual(
      [...new Set(cuts.slice(1).map(([sheet]) => sheet))].map((sheet) => `Layout of sheet ${sheet}`),
    );
  });

  test("hold every row of HARDWARE, a bin each", () => {
    const rows = HARDWARE(openings, standards).slice(1);
    expect(all(".bins li")).toEqual(
      rows.map(([item, size, quantity, measure, note], i) =>
        `Bin ${i + 1}: ${item}${size === "" ? "" : `, ${shown(size)}`} ${quantity} ${measure} ${note}`.trim(),
      ),
    );
  });
});

test("each part of the pages begins with its caution", () => {
  const { document } = opened(books[0]![1]);
  const sections = [...document.querySelectorAll("main > section")];
  expect(sections.map(({ id }) => id)).toEqual([
    "set-ups",
    "sheets",
    "stick",
    "joints",
    "labels",
    "hardware",
    "drawings",
  ]);
  for (const section of sections) {
    expect(section.children[1]!.className).toBe("caution");
    expect(section.children[1]!.textContent.trim()).toMatch(/^Caution\. .{30}/s);
  }
});

test.each(HOSTILE)("a name %j is a text and nothing else", (name) => {
  const openings = [
    ["Opening", "Width", "Height", "Depth", "Drawers"],
    [name, 24, 26.25, 23.25, 2],
  ];
  const standards = [["side material", name]];
  const stock = [
    ["Length", "Width", "Material"],
    [97, 49, ""],
  ];
  const { document } = opened({ openings, standards, stock }, name);
  expect(document.querySelectorAll("script")).toHaveLength(1);
  for (const element of document.querySelectorAll("*")) {
    for (const { name: attribute } of element.attributes) expect(attribute).not.toMatch(/^on/i);
  }
  expect(shopPages(shopJob({ openings, standards, stock }), name)).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u0000]/);
});

describe("a workbook without a job says why", () => {
  const [, book] = books[0]!;
  test.each([
    [
      "nothing plans",
      { ...bookOf(book), formulas: [{ sheet: "A", formula: "=SUM(A1:A3)" }] },
      /^No cell of this workbook plans drawers/,
    ],
    [
      "its table is a formula",
      { ...bookOf(book), formulas: [{ sheet: "A", formula: "=DRAWER.PLAN(OFFSET(A1,0,0))" }] },
      /^The job stands in OFFSET\(A1,0,0\)/,
    ],
    ["its range is gone", { ...bookOf(book), values: () => undefined }, /^There is nothing to read in A1:Z99/],
    [
      "an opening cannot be built",
      bookOf({
        ...book,
        openings: [
          ["Opening", "Width", "Height", "Depth", "Drawers"],
          ["A", 18, 26, 5, 3],
        ],
      }),
      /No slide fits/,
    ],
    [
      "a cell holds an error",
      bookOf({ ...book, standards: [["kerf", "#REF!"]] }),
      /^A cell that the job reads holds an error\.$/,
    ],
  ])("where %s", (_, text, why) => {
    const job = readShopJob(text);
    expect("why" in job && job.why).toMatch(why);
  });
});

test("where no sheets can be laid out, the other pages are made and the reason stands in place of the layouts", () => {
  const [, book] = books[0]!;
  expect(opened({ openings: book.openings, standards: book.standards }).all("#sheets p").join()).toMatch(
    /^No cell of this workbook lays sheets out/,
  );
  const small = [
    ["Material", "Thickness", "Length", "Width"],
    ["Plywood", "1/2", 10, 10],
  ];
  const { all } = opened({ ...book, stock: small });
  expect(all("#sheets p").join()).toMatch(/stock|fits/);
  expect(all(".label").length).toBeGreaterThan(0);
});
