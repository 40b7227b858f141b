import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import { ratio } from "../../../src/core/length";
import { worded } from "../../../src/functions/words/wording";

const sources = (folder: string): ts.SourceFile[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => parsed(join(folder, name)));

const parsed = (file: string): ts.SourceFile =>
  ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.Latest, true);

function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  node.forEachChild((child) => walk(child, visit));
}

/** A place that gives a code, and the names of its data; no names where they are not written out there. */
interface Given {
  code: string;
  names?: string[];
}

/** The codes given to `new Fault`, or to `doubtful` and `wrong`. */
function given(files: readonly ts.SourceFile[], to: RegExp): Given[] {
  const found: Given[] = [];
  const visit = (node: ts.Node): void => {
    if (!(ts.isNewExpression(node) || ts.isCallExpression(node)) || !to.test(node.expression.getText())) return;
    const [code, data] = node.arguments ?? [];
    const written = data && ts.isObjectLiteralExpression(data) && !data.properties.some(ts.isSpreadAssignment);
    const names = !data ? [] : written ? data.properties.map((one) => one.name!.getText()) : undefined;
    if (code) for (const one of codesIn(code)) found.push({ code: one, ...(names && { names }) });
  };
  files.forEach((file) => walk(file, visit));
  return found;
}

function codesIn(expression: ts.Expression): string[] {
  if (ts.isConditionalExpression(expression))
    return [...codesIn(expression.whenTrue), ...codesIn(expression.whenFalse)];
  return ts.isStringLiteral(expression) ? [expression.text] : [];
}

/** Of each code of a catalog, the holes in its words. */
function catalog(file: string): Map<string, Set<string>> {
  const holes = new Map<string, Set<string>>();
  walk(parsed(`src/functions/words/${file}.ts`), (node) => {
    if (!ts.isPropertyAssignment(node) || !ts.isStringLiteral(node.name) || !/^\w+\.\w+$/.test(node.name.text)) return;
    const names = [...node.initializer.getText().matchAll(/(?<!\$)\{"?(\w+)"?\}/g)].map(([, name]) => name!);
    holes.set(node.name.text, new Set(names.map((name) => name[0]!.toLowerCase() + name.slice(1))));
  });
  return holes;
}

const all = [...sources("src/core"), ...sources("src/functions")];
const faults = given(all, /^Fault$/);
const findings = given(all, /^(doubtful|wrong)$/).filter(({ code }) => code !== "plan.fault");

describe.each([
  ["messages", faults, 50],
  ["findings", findings, 25],
] as const)("the catalog of %s", (file, places, least) => {
  const words = catalog(file);
  // What a fault is about is named on its way out.
  const added = file === "messages" ? ["argument"] : [];

  test("has codes to look for", () => expect(new Set(places.map(({ code }) => code)).size).toBeGreaterThan(least));

  test.each([...new Set(places.map(({ code }) => code))])("has words for %s", (code) =>
    expect(words.has(code)).toBe(true),
  );

  test.each([...words.keys()])("every hole in the words of %s is filled by all who give it", (code) => {
    for (const { names } of places.filter((place) => place.code === code && place.names))
      expect([...names!, ...added]).toEqual(expect.arrayContaining([...words.get(code)!]));
  });

  test.each([...words.keys()])("somebody gives %s", (code) =>
    expect(places.map((place) => place.code)).toContain(code),
  );
});

describe("worded(wording, data, unit)", () => {
  const data = { part: "Side", size: ratio(23, 2), typed: "tw{o}", list: [1, 2, 3], no: null };
  test.each([
    ["{part} of {size}", "Side of 11 1/2 in"],
    ['{"typed"} and {"no"}', '"tw{o}" and a blank'],
    ["{Part}, {list}", "Side, 1, 2, 3"],
  ])("%s: %s", (words, filled) => expect(worded(words, data, "in")).toBe(filled));

  test("a long list is cut after twelve", () => {
    expect(worded("{n}", { n: Array.from({ length: 14 }, (_, i) => i) }, "in")).toBe(
      "0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11 …",
    );
  });

  test("what a person typed is no hole, whatever it holds", () => {
    expect(worded("{typed}", data, "in")).toBe("tw{o}");
  });
});
