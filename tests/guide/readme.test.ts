import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import * as functions from "../../src/functions/index";

const readme = readFileSync("README.md", "utf8");
const WORDS = 1500;

/** What a reader takes in: no list of functions, no markup's own signs. */
const read = readme.replace(/<!-- functions -->.*<!-- \/functions -->/s, "");

test(`the README has fewer than ${WORDS} words, its list of functions aside`, () => {
  expect(read.split(/\s+/).length).toBeLessThan(WORDS);
});

/** What a newcomer writes: a function of the name `name`. */
const TO_BE_WRITTEN = ["tests/functions/name.test.ts", "src/functions/name.ts"];

describe.each([
  ["README.md", 0],
  ["DEVELOPERS.md", 20],
])("%s", (file, least) => {
  const text = readFileSync(file, "utf8");

  test("names files and folders that exist", () => {
    const named = [...text.matchAll(/\b(?:src|tests|manifest)\/[\w./-]*\w/g)].map(([path]) => path);
    expect(named.filter((path) => !existsSync(path) && !TO_BE_WRITTEN.includes(path))).toEqual([]);
    expect(named.length).toBeGreaterThan(least);
  });

  test("names no file by its name alone that is nowhere in src", () => {
    const named = [...text.matchAll(/`([\w-]+\.ts)`/g)].map(([, name]) => name!);
    const all = new Set(
      readdirSync("src", { recursive: true, encoding: "utf8" }).map((path) => path.split("/").at(-1)),
    );
    expect(named.filter((name) => !all.has(name))).toEqual([]);
  });

  test("links to files that exist, and to headings in them", () => {
    const links = [...text.matchAll(/\]\(([^)\s]+)\)/g)].map(([, link]) => link!);
    for (const link of links.filter((one) => !/^https?:/.test(one))) {
      const [path, anchor] = link.split("#");
      expect(existsSync(path!), link).toBe(true);
      if (anchor) expect(readFileSync(path!, "utf8").toLowerCase(), link).toMatch(new RegExp(`^#+ ${anchor}$`, "m"));
    }
  });
});

test("DEVELOPERS.md says of every word of the code where it is declared", () => {
  const rows = [...readFileSync("DEVELOPERS.md", "utf8").matchAll(/^\| (`\w+`[^|]*) \| [^|]+ \| `(src\/[^`]+)` \|$/gm)];
  expect(rows.length).toBeGreaterThan(10);
  for (const [, words, file] of rows)
    for (const [, word] of words!.matchAll(/`(\w+)`/g))
      expect(readFileSync(file!, "utf8"), `${word} in ${file}`).toMatch(
        new RegExp(`export (class|interface|type) ${word}\\b`),
      );
});

describe("the README's job", () => {
  const [, example] = /<!-- example -->(.*)<!-- \/example -->/s.exec(readme)!;
  /** Each table by what stands in code before it: a name, or a formula. */
  const tables = new Map(
    [...example!.matchAll(/`([^`\n]+)`\n\n((?:\|.*\n)+)/g)].map(([, name, rows]) => [name!, cells(rows!)]),
  );
  const given: Record<string, unknown> = {
    openings: tables.get("openings"),
    standards: tables.get("standards")!.slice(1),
    TRUE: true,
    stock: [
      ["Material", "Thickness", "Length", "Width", "Price"],
      ["Plywood", "15/32", 96, 48, 62],
      ["Plywood", "1/4", 96, 48, 38],
      ["Plywood", "3/4", 96, 48, 92],
    ],
    rates: [
      ["labor rate", 48],
      ["box minutes", 30],
      ["front minutes", 12],
      ["fitting minutes", 20],
      ["slide price", 22],
      ["pull price", 6.5],
      ["screw price", 0.05],
      ["overhead", "12 %"],
      ["margin", "25 %"],
      ["tax", "7 %"],
    ],
  };
  const formulas = [...tables.keys()].filter((name) => name.startsWith("="));

  test("goes from checks to plan, parts and quote", () => {
    expect(formulas.map((formula) => /DRAWER\.(\w+)/.exec(formula)![1])).toEqual(["CHECKS", "PLAN", "PARTS", "QUOTE"]);
  });

  test.each(formulas)("%s gives what it shows, of rows and columns what it picks", (formula) => {
    const [, name, list] = /^=DRAWER\.(\w+)\((.*)\)$/.exec(formula)!;
    const call = functions[name as keyof typeof functions] as (...args: unknown[]) => unknown;
    const result = (call(...list!.split(", ").map((argument) => given[argument])) as unknown[][]).map((row) =>
      row.map(plain),
    );
    const shown = tables.get(formula)!;
    const columns = shown[0]!.map((heading) => result[0]!.indexOf(heading));
    expect(columns, "headings").not.toContain(-1);
    expect(columns).toEqual([...columns].sort((a, b) => a - b));
    const picked = result.slice(1).map((row) => columns.map((column) => row[column]));
    const places = shown.slice(1).map((row) => {
      const wanted = row.map((text, i) => valueOf(text, shown[0]![i]!));
      return picked.findIndex((one) => JSON.stringify(one) === JSON.stringify(wanted));
    });
    expect(places, JSON.stringify(picked)).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    // Plan and parts are shown whole.
    if (/PLAN|PARTS/.test(formula)) expect(places).toEqual(picked.map((_, i) => i));
  });
});

/** The cells of a Markdown table, without the line under its head. */
function cells(rows: string): string[][] {
  const lines = rows.trim().split("\n");
  return lines
    .filter((_, i) => i !== 1)
    .map((line) =>
      line
        .slice(1, -1)
        .split("|")
        .map((cell) => cell.trim()),
    );
}

/** What a host shows of a cell: without the number format that may come with it. */
const plain = (value: unknown): unknown =>
  typeof value === "object" && value !== null ? (value as { basicValue: unknown }).basicValue : value;

/** A cell of words, or the number that is written there as a fraction or a decimal. */
const valueOf = (text: string, heading: string): unknown =>
  /^[\d.]/.test(text) && !["Item", "Drawer"].includes(heading) ? functions.LENGTH(text) : text;
