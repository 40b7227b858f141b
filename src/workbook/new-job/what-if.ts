import type { SheetDefinition } from "../author/definition";
import { cell, gap, row, tall } from "./cells";
import type { Choices } from "./choices";
import { byUnit, jobPlaces, type JobPlaces } from "./job-places";
import { pageOf } from "./page";
import { openingsOf, PLAN } from "./sheet-tables";
import type { Style } from "./styles";

const COUNTS = [2, 3, 4, 5, 6, 7];
const LETTERS = ["B", "C", "D", "E", "F", "G"];
const TALLER = { in: "3/4", mm: "20" } as const;
const HEIGHTS = { in: ["24", "27", "30", "33"], mm: ["600", "700", "750", "850"] } as const;

/** The heading rows of the two grids; the first has room for so many fronts. */
const TOP = 10;
const ROOM = 8;
const EQUAL_TOP = TOP + ROOM + 3;

const columns = (title: string, contents: readonly number[]) =>
  tall(27, cell("section", title), ...contents.map((content) => cell("inputCount", content)));

/** What the fronts of an opening like the job's first would be with another count of drawers, or in another height. */
export function whatIf(choices: Choices): SheetDefinition<Style> {
  const places = jobPlaces(choices);
  const { unit } = places;
  const heights = [OWN, ...HEIGHTS[choices.unit]];
  return {
    name: "What if",
    widths: [28, 12, 12, 12, 12, 12, 12, 4],
    selected: `B${TOP}`,
    merged: [
      "A1:G1",
      "A2:G2",
      ...[4, 5, 6, 7, 8].map((r) => `C${r}:G${r}`),
      `A${EQUAL_TOP + heights.length + 1}:G${EQUAL_TOP + heights.length + 1}`,
    ],
    page: { ...pageOf(choices), onePage: true },
    lists: [{ area: "B7", words: ["equal", "arithmetic", "geometric"] }],
    rows: [
      tall(36, cell("title", "What if there were more?")),
      row(
        cell(
          "subtitle",
          "Heights of the fronts in one opening, for other counts of drawers. The counts can be changed too.",
        ),
      ),
      gap(),
      row(
        cell("label", "Opening height"),
        cell("inputResult", firstHeight(choices)),
        note("Of the first opening; or type another over it."),
      ),
      row(
        cell("label", "Face height"),
        cell("result", faceHeight(choices)),
        note("What its fronts and their gaps fill."),
      ),
      row(
        cell("label", "Gap between fronts"),
        cell("inputResult", frontGap(places)),
        note("By the standards; or type another over it."),
      ),
      row(cell("label", "Growing downward"), cell("input", "arithmetic"), note("equal, arithmetic or geometric.")),
      row(
        cell("label", "Each taller by"),
        cell("input", TALLER[choices.unit]),
        note("A length; for geometric a factor, such as 1.2."),
      ),
      gap(),
      columns("Drawers", COUNTS),
      ...Array.from({ length: ROOM }, (_, i) =>
        row(
          cell("label", i === 0 ? "Front 1, at the top" : `Front ${i + 1}`),
          ...LETTERS.map((letter) =>
            cell("result", i === 0 ? `=DRAWER.GRADUATED($B$5,${letter}${TOP},$B$7,$B$8,$B$6,${unit})` : null),
          ),
        ),
      ),
      row(
        cell("key", "Top front, on the tape"),
        ...LETTERS.map((letter) => cell("resultWord", `=DRAWER.TAPE(INDEX(${letter}${TOP + 1}#,1),,"down",${unit})`)),
      ),
      gap(),
      columns("Equal, by opening height", COUNTS),
      ...heights.map((height, i) =>
        row(
          cell(height === OWN ? "inputResult" : "input", height),
          ...LETTERS.map((letter) => cell("resultWord", equalFront(letter, EQUAL_TOP + 1 + i, unit))),
        ),
      ),
      row(
        cell(
          "subtitle",
          byUnit(
            "As the tape reads, to the nearest 1/16; the heights above are exact.",
            "As the tape reads, to the nearest millimeter; the heights above are exact.",
            unit,
          ),
        ),
      ),
    ],
  };
}

const note = (text: string) => cell("note", text);

/** The height that is typed above, to begin with. */
const OWN = "=$B$4";

/** A size of the plan's first drawer, in a formula that has its workings as `sizes`. */
const sizeOf = (name: string): string => `INDEX(sizes,MATCH("${name}",INDEX(sizes,0,1),0),2)`;

const withSizes = (choices: Choices, sum: string): string =>
  `=LET(sizes,DRAWER.WORKING(${openingsOf(choices)},INDEX(${PLAN},2,1),${jobPlaces(choices).standards}),${sum})`;

const firstHeight = (choices: Choices): string => withSizes(choices, sizeOf("Opening height"));

/** A face is higher than its opening by what the plan says, whatever the opening's height. */
const faceHeight = (choices: Choices): string => {
  const { unit } = jobPlaces(choices);
  const face = `DRAWER.LENGTH($B$4,${unit})+${sizeOf("Face height")}-${sizeOf("Opening height")}`;
  return withSizes(choices, `DRAWER.LENGTH(${face},${unit})`);
};

/** A gap of nothing is said by its word. */
const frontGap = ({ rowOf, unit }: JobPlaces): string => {
  const [own, usual] = ["B", "C"].map((letter) => `Job!$${letter}$${rowOf("front gap")}`);
  return `=LET(gap,DRAWER.LENGTH(IF(${own}="",${usual},${own}),${unit}),IF(gap=0,"none",gap))`;
};

const equalFront = (letter: string, r: number, unit: string): string =>
  `=DRAWER.TAPE(DRAWER.FRONTHEIGHT(DRAWER.LENGTH($A${r},${unit})-DRAWER.LENGTH($B$4,${unit})+$B$5,` +
  `${letter}$${EQUAL_TOP},$B$6,,,${unit}),,,${unit})`;
