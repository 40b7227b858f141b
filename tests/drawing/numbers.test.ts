import { describe, expect, test } from "vitest";
import { fromDouble, showLength, showNumber, type Unit } from "../../src/core/length";
import {
  backCorners,
  boxApart,
  crossSection,
  elevation,
  joints,
  section,
  spacerStack,
  storyStick,
  type Drawing,
} from "../../src/drawing";
import { CUTS, LAYOUT, MOUNTING, PARTS, PLAN, SETUPS, WORKING } from "../../src/functions";
import { JOBS, plannedJob, type TypedJob } from "./jobs";
import { CUTTINGS, sheetDrawings, type TypedCutting } from "./sheets";

const shown = (cell: unknown, unit: Unit): string => showLength(fromDouble(cell as number), unit);
const unitOf = ({ standards }: TypedJob): Unit => (standards.some(([, value]) => value === "mm") ? "mm" : "in");

/** Every size that the tables have of a job, by drawer or opening and heading. */
function sizesOf(job: TypedJob): Map<string, string> {
  const sizes = new Map<string, string>();
  const unit = unitOf(job);
  const put = (label: string, heading: string, cell: unknown): void => {
    if (typeof cell === "number") sizes.set(`${label} ${heading}`, shown(cell, unit));
  };
  for (const table of [PLAN(job.openings, job.standards), MOUNTING(job.openings, job.standards)]) {
    const [headings, ...rows] = table as [string[], ...unknown[][]];
    for (const row of rows) headings.forEach((heading, i) => put(String(row[0]), heading, row[i]));
  }
  for (const { drawers, opening } of plannedJob(job)) {
    for (const { label } of drawers) {
      for (const [name, value] of WORKING(job.openings, label, job.standards).slice(1)) {
        put(label, String(name), value);
        put(opening.label, String(name), value);
      }
    }
  }
  return sizes;
}

/** Texts that are no size: names, and what notes say. */
const NOTE = /^(Gap |Scale 1:\d+$)/;

function compared({ labels }: Drawing, sizes: Map<string, string>): number {
  let compared = 0;
  for (const { text, of } of labels) {
    if (of === undefined || NOTE.test(text)) continue;
    expect(text, of).toBe(sizes.get(of));
    compared++;
  }
  return compared;
}

describe("every number in an elevation is the table's", () => {
  test.each(Object.entries(JOBS))("%s", (_, job) => {
    const sizes = sizesOf(job);
    const openings = plannedJob(job);
    for (const planned of openings) {
      const drawing = elevation([planned]);
      // Heights of all fronts, width of the front, width and height of the opening, and its pulls.
      expect(compared(drawing, sizes)).toBe(planned.drawers.length + 4);
      const names = planned.drawers.map(({ label }) => label);
      const unnamed = drawing.labels.filter(({ of }) => of === undefined).map(({ text }) => text);
      expect(unnamed.sort()).toEqual(names.sort());
      const gap = drawing.labels.filter(({ of }) => of === "front gap").map(({ text }) => text);
      const usual = unitOf(job) === "in" ? "Gap 1/8 in" : "Gap 3 mm";
      expect(gap).toEqual(planned.drawers.length > 1 ? [usual] : []);
    }
    expect(compared(elevation(openings), sizes)).toBeGreaterThan(openings.length * 3);
  });
});

describe("every number in the sections of a drawer is the table's", () => {
  test.each(Object.entries(JOBS))("%s", (_, job) => {
    const sizes = sizesOf(job);
    for (const planned of plannedJob(job)) {
      for (const drawer of planned.drawers) {
        // Front, box and inside; under the box; slide, box and opening from front to back.
        expect(compared(section(drawer, planned), sizes)).toBe(7);
        // Box, centerline or under the box; inside, side space, box and opening across. Undermount slides stand in a recess.
        const isRecessed = sizes.has(`${drawer.label} Bottom recess`);
        const hasNoSpace = sizes.get(`${drawer.label} Side space`)?.startsWith("0");
        expect(compared(crossSection(drawer, planned), sizes)).toBe(6 + Number(isRecessed) - Number(hasNoSpace));
      }
    }
  });
});

describe("every height on a story stick is the table's, and none is missing", () => {
  const HEIGHTS = ["Front bottom", "Box bottom", "Slide spacer", "Slide centerline", "Pull height"];
  test.each(Object.entries(JOBS))("%s", (_, job) => {
    const sizes = sizesOf(job);
    const unit = unitOf(job);
    for (const planned of plannedJob(job)) {
      const shown = new Set<string>();
      for (const { text, of } of storyStick(planned).flatMap(({ labels }) => labels)) {
        if (of === undefined || of === "floor") continue;
        expect(`${text} ${unit}`, of).toBe(sizes.get(of));
        shown.add(of);
      }
      const wanted = planned.drawers
        .flatMap(({ label }) => HEIGHTS.map((heading) => `${label} ${heading}`))
        .filter((name) => sizes.has(name));
      expect([...shown].sort()).toEqual([...wanted, `${planned.opening.label} Opening height`].sort());
    }
  });
});

describe("every size of a drawer taken apart is that of PARTS, and every spacer that of MOUNTING", () => {
  test.each(Object.entries(JOBS))("%s", (_, job) => {
    const sizes = sizesOf(job);
    const rows = PARTS(job.openings, job.standards, false as never).slice(1);
    for (const [part, drawer, , ...three] of rows) {
      ["Length", "Width", "Thickness"].forEach((heading, i) =>
        sizes.set(`${drawer} ${part} ${heading}`, shown(three[i], unitOf(job))),
      );
    }
    for (const planned of plannedJob(job)) {
      expect(compared(spacerStack(planned), sizes)).toBe(planned.drawers.length + 1);
      for (const drawer of planned.drawers) {
        const own = rows.filter(([, label]) => label === drawer.label);
        expect(compared(boxApart(drawer), sizes)).toBe(3 * own.length);
      }
    }
  });
});

describe("every number of a corner at full size is that of the tables, and every drawer's corner is drawn once", () => {
  /** The numbers that SETUPS sets for some kinds of work. */
  const set = (job: TypedJob, operation: RegExp): string[] =>
    SETUPS(job.openings, job.standards)
      .filter(([, name]) => operation.test(String(name)))
      .map(([, , , value]) => shown(value, unitOf(job)));

  test.each(Object.entries(JOBS))("%s", (_, job) => {
    const plan = plannedJob(job);
    const sizes = sizesOf(job);
    const thick = new Map<string, string>();
    for (const [part, drawer, , , , thickness] of PARTS(job.openings, job.standards, false as never).slice(1))
      thick.set(`${drawer} ${part} Thickness`, shown(thickness, unitOf(job)));
    const [grooves, corners] = [set(job, /^Groove$/), set(job, /^(Rabbet|Dado|Half-blind dovetail|Front rabbet)$/)];
    const drawings = joints(plan);
    for (const { labels } of drawings) {
      let numbers = 0;
      for (const { text, of = "scale" } of labels) {
        if (of === "scale") continue;
        numbers++;
        if (sizes.has(of)) expect(text, of).toBe(sizes.get(of));
        else if (of.endsWith("Thickness")) expect(text, of).toBe(thick.get(of));
        else expect(of.includes("Groove") ? grooves : corners, of).toContain(text);
      }
      expect(numbers).toBeGreaterThanOrEqual(2);
    }
    const drawn = drawings.flatMap(({ about }) => /of the boxes (.*) at full size/.exec(about)![1]!.split(", "));
    expect(drawn.sort()).toEqual(plan.flatMap(({ drawers }) => drawers.map(({ label }) => label)).sort());
    for (const { labels } of backCorners(plan)) {
      const numbers = labels.filter(({ of }) => of !== undefined && sizes.has(of));
      expect(numbers).toHaveLength(4);
      for (const { text, of } of numbers) expect(text, of).toBe(sizes.get(of!));
      const bored = set(job, /^Hook holes$/);
      const note = labels.find(({ of }) => of === "hook hole")!.text;
      for (const text of note.match(/\d+\/\d+ in/g)!) expect(bored).toContain(text);
    }
    expect(backCorners(plan).length > 0).toBe(sizes.has(`${plan[0]!.drawers[0]!.label} Back notch height`));
  });
});

const tableOf = (call: unknown, { parts, stock, kerf, trim, effort, unit }: TypedCutting): unknown[][] =>
  (call as (...raw: unknown[]) => unknown[][])(parts, stock, kerf, trim, effort, unit).slice(1);

describe("every number in a sheet's layout is the table's", () => {
  test.each(Object.entries(CUTTINGS))("%s", (_, cutting) => {
    const { unit = "in" } = cutting;
    const number = (cell: unknown): string => showNumber(fromDouble(cell as number), unit);
    const [layout, cuts] = [tableOf(LAYOUT, cutting), tableOf(CUTS, cutting)];
    sheetDrawings(cutting).forEach(({ labels }, i) => {
      const sheet = i + 1;
      const pieces = layout.filter(([of]) => of === sheet);
      const sizes = new Map(
        pieces.map((row, n) => [`Sheet ${sheet} piece ${n + 1}`, `${number(row[7])} × ${number(row[8])}`]),
      );
      const steps = cuts.filter(([of]) => of === sheet);
      const given = steps.map((row) => String(row[7])).join("; ");
      let sized = 0;
      for (const { text, of } of labels) {
        if (sizes.has(of ?? "")) expect(text, of).toBe(sizes.get(of!));
        if (sizes.has(of ?? "")) sized++;
        if (of === `Sheet ${sheet} offcut`) expect(given).toContain(`offcut ${text}`);
      }
      expect(sized).toBeGreaterThan(0);
      const ringed = labels.filter(({ of }) => of === "cut").map(({ text }) => text);
      const unringed = labels.filter(({ of }) => of === "cuts").flatMap(({ text }) => text.match(/\d+/g) ?? []);
      const all = [...ringed, ...unringed].sort((a, b) => Number(a) - Number(b));
      expect(all).toEqual(steps.map((row) => String(row[3])));
    });
  });
});
