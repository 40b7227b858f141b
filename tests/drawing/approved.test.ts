import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import {
  backCorners,
  boxApart,
  checkRuler,
  crossSection,
  elevation,
  joints,
  section,
  spacerStack,
  storyStick,
  svgOf,
  type Drawing,
} from "../../src/drawing";
import { JOBS, plannedJob } from "./jobs";
import { CUTTINGS, sheetDrawings } from "./sheets";

const drawings: [name: string, drawing: () => Drawing][] = [
  ...Object.entries(JOBS).map(([name, job]): [string, () => Drawing] => [
    `${name}, elevation`,
    () => elevation(plannedJob(job)),
  ]),
  ...Object.entries(JOBS).flatMap(([name, job]): [string, () => Drawing][] => {
    const first = () => plannedJob(job)[0]!;
    const drawer = () => first().drawers[first().drawers.length - 1]!;
    return [
      [`${name}, section`, () => section(drawer(), first())],
      [`${name}, cross section`, () => crossSection(drawer(), first())],
      [`${name}, parts`, () => boxApart(drawer())],
      [`${name}, spacers`, () => spacerStack(first())],
    ];
  }),
  ...Object.entries(JOBS).map(([name, job]): [string, () => Drawing] => [
    `${name}, joint`,
    () => joints(plannedJob(job))[0]!,
  ]),
  ["glaze cabinet, back corner", () => backCorners(plannedJob(JOBS["glaze cabinet"]!))[0]!],
  ["check ruler", checkRuler],
  ["bicycle parts bench, story stick", () => storyStick(plannedJob(JOBS["bicycle parts bench"]!)[1]!)[0]!],
  ["metric plan chest, story stick", () => storyStick(plannedJob(JOBS["metric plan chest"]!)[0]!)[0]!],
  ...Object.entries(CUTTINGS).map(([name, cutting]): [string, () => Drawing] => [
    `${name}, first sheet`,
    () => sheetDrawings(cutting)[0]!,
  ]),
];

/** `APPROVE=1` writes them anew: look at each before it is committed. */
describe("drawings are as they were looked at", () => {
  test.each(drawings)("%s", (name, drawing) => {
    const file = new URL(`../../src/guide/pictures/${name.replace(/,? /g, "-")}.svg`, import.meta.url);
    const svg = svgOf(drawing());
    if (process.env.APPROVE) writeFileSync(file, svg);
    expect(existsSync(file), "no approved drawing of this name").toBe(true);
    expect(svg).toBe(readFileSync(file, "utf8"));
  });
});
