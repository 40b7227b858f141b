import "../host";
import { CUTS } from "../../src/functions/cuts";
import { PARTS } from "../../src/functions/parts";
import { SHEETS } from "../../src/functions/sheets";

const JOBS = 60;
const EFFORTS = ["quick", "standard"];

/** What a job's sheets ask of the saw: cuts, settings of the fence, and the largest offcut, on jobs of 8 to 40 drawers. */
export function benchCuts(): void {
  for (const effort of EFFORTS) {
    let [sheets, cuts, settings, offcut] = [0, 0, 0, 0];
    for (let i = 0; i < JOBS; i++) {
      const parts = PARTS(...job(i)) as never[][];
      const rest = [STOCK as never[][], "1/8", "", effort as never] as const;
      const [head, ...rows] = CUTS(parts, ...rest) as unknown[][];
      const [sheet, cut, setting] = ["Sheet", "Cut", "Setting"].map((name) => head!.indexOf(name));
      const saw = rows.map((row) => [row[sheet!], row[cut!], plain(row[setting!])].join(" "));
      cuts += saw.length;
      settings += saw.filter((one, r) => one !== saw[r - 1]).length;
      const [names, ...used] = SHEETS(parts, ...rest) as unknown[][];
      sheets += used.reduce((sum, row) => sum + Number(plain(row[names!.indexOf("Sheets")])), 0);
      offcut += used.reduce((most, row) => Math.max(most, area(String(row[names!.indexOf("Largest offcut")]))), 0);
    }
    console.log(
      `${effort}: ${JOBS} jobs, ${sheets} sheets, ${cuts} cuts, ${settings} settings, ` +
        `${(cuts / JOBS).toFixed(1)} and ${(settings / JOBS).toFixed(1)} a job; largest offcuts ${offcut.toFixed(0)} sq in`,
    );
  }
}

const plain = (cell: unknown): unknown => (cell as { basicValue?: unknown })?.basicValue ?? cell;

/** Of a text like `96 × 31 1/2`. */
function area(size: string): number {
  const [length = 0, width = 0] = size
    .split("×")
    .map((side) => side.split(" ").reduce((sum, one) => sum + (one.includes("/") ? ratioOf(one) : Number(one)), 0));
  return length * width;
}

const ratioOf = (text: string): number => Number(text.split("/")[0]) / Number(text.split("/")[1]);

/** Openings of a bench and of a kitchen, some rows alike, of a few heights and materials. */
function job(i: number): [never[][], never[][]] {
  const openings = Array.from({ length: 2 + (i % 7) }, (_, k) => [
    12 + ((i * 5 + Math.floor(k / 2) * 7) % 18) + (i % 4) / 16,
    24 + (i % 3) * 3,
    23.25,
    ["4", "5 1/2; 1 part; 1 part", "3", "4; 1 part; 1.5 parts; 2 parts", "5"][(i + (i % 2 ? k : 0)) % 5],
  ]);
  return [
    [["Width", "Height", "Depth", "Drawers"], ...openings] as never[][],
    [
      ["side thickness", i % 2 ? "1/2" : "5/8"],
      ["corner joint", i % 3 ? "rabbet" : "butt"],
      ["joint depth", i % 3 ? "1/4" : ""],
      ["front grain", i % 5 ? "horizontal" : "vertical"],
      ["front material", "Maple plywood"],
    ] as never[][],
  ];
}

const STOCK = [
  ["Material", "Length", "Width", "Thickness"],
  ["Plywood", 96, 48, "1/2"],
  ["Plywood", 60, 60, "5/8"],
  ["Plywood", 96, 48, "1/4"],
  ["Maple plywood", 96, 48, "3/4"],
];
