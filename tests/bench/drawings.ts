import { safeSizes } from "../../src/core/length";
import { crossSection, elevation, section, sheetLayout, svgOf } from "../../src/drawing";
import { plannedJob } from "../drawing/jobs";
import { CUTTINGS, groupsOf } from "../drawing/sheets";

/** Drawings with their files' texts, from finished plans and layouts: milliseconds each. */
export function benchDrawings(): void {
  console.log("milliseconds a drawing with the text of its file (median, least, most):");
  const plan = plannedJob({
    openings: [
      ["Width", "Height", "Depth", "Drawers"],
      ...Array.from({ length: 200 }, (_, i) => [16 + (i % 20), 26.25, 23.25, 4]),
    ],
    standards: [],
  });
  const [first] = plan;
  const drawer = first!.drawers[3]!;
  print("front elevation of one bank of 200 openings, 800 fronts", () => svgOf(elevation(plan)));
  print("200 front elevations, one an opening", () => plan.map((planned) => svgOf(elevation([planned]))));
  print("both sections of a drawer", () =>
    [section(drawer, first!), crossSection(drawer, first!)].map((d) => svgOf(d)),
  );
  const [group] = groupsOf(CUTTINGS["bicycle parts bench"]!);
  print("a sheet of 26 pieces", () => svgOf(sheetLayout(group!, 1, 1, "in", safeSizes("in"))));
}

function print(name: string, work: () => unknown): void {
  const times = Array.from({ length: 12 }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  })
    .slice(3)
    .sort((a, b) => a - b);
  const [median, least, most] = [times[4]!, times[0]!, times[8]!].map((time) => time.toFixed(1));
  console.log(`  ${name.padEnd(58)} ${median}  ${least}  ${most}`);
}
