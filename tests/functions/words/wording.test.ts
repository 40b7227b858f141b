import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import { doubtful } from "../../../src/core/drawer";
import { Fault, isZero, ratio, type Rational } from "../../../src/core/length";
import { catalog, catalogOfTwo, worded } from "../../../src/functions/words/wording";

const sources = (folder: string): ts.SourceFile[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => parsed(join(folder, name)));

const files = new Map<string, ts.SourceFile>();
function parsed(file: string): ts.SourceFile {
  const read = files.get(file) ?? ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.Latest, true);
  files.set(file, read);
  return read;
}

function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  node.forEachChild((child) => walk(child, visit));
}

/** The codes given to `new Fault`, or to `doubtful` and `wrong`. */
function given(files: readonly ts.SourceFile[], to: RegExp): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (!(ts.isNewExpression(node) || ts.isCallExpression(node))) return;
    if (!branches(node.expression).some((callee) => to.test(callee.getText()))) return;
    const [code] = node.arguments ?? [];
    if (code) found.push(...codesIn(code));
  };
  files.forEach((file) => walk(file, visit));
  return found;
}

const codesIn = (expression: ts.Expression): string[] =>
  branches(expression)
    .filter(ts.isStringLiteral)
    .map((code) => code.text);

/** What an expression may come to: both sides of a choice, or itself. */
function branches(expression: ts.Expression): ts.Expression[] {
  if (ts.isParenthesizedExpression(expression)) return branches(expression.expression);
  if (!ts.isConditionalExpression(expression)) return [expression];
  return [...branches(expression.whenTrue), ...branches(expression.whenFalse)];
}

/** The codes that the interface has in these files. */
function declared(files: readonly ts.SourceFile[], name: "Faults" | "Findings"): string[] {
  const found: string[] = [];
  files.forEach((file) =>
    walk(file, (node) => {
      if (!ts.isInterfaceDeclaration(node) || node.name.text !== name) return;
      found.push(...node.members.map((member) => (member.name as ts.StringLiteral).text));
    }),
  );
  return found;
}

const all = [...sources("src/core"), ...sources("src/functions")];
const faults = given(all, /^Fault$/);
const findings = given(all, /^(doubtful|wrong)$/);

test.each(declared(all, "Faults"))("somebody raises the fault %s", (code) => expect(faults).toContain(code));
test.each(declared(all, "Findings"))("somebody finds %s", (code) => expect(findings).toContain(code));

/** What each folder stands on. */
const BENEATH: Record<string, readonly string[]> = {
  "core/length": [],
  "core/wood": ["core/length"],
  "core/drawer": ["core/length", "core/wood"],
  "core/sheets": ["core/length"],
  "core/money": ["core/length", "core/drawer", "core/sheets"],
  "functions/cells": ["core/length"],
  "functions/arguments": ["core/length", "functions/cells"],
  "functions/tables": ["core/length", "functions/cells"],
  "functions/calls": ["core/length", "functions/cells", "functions/arguments", "functions/tables"],
};

test.each(Object.keys(BENEATH))("%s raises only what it declares, or a folder that it stands on", (folder) => {
  const own = sources(`src/${folder}`);
  const known = [folder, ...BENEATH[folder]!].flatMap((one) => sources(`src/${one}`));
  expect(declared(known, "Faults")).toEqual(expect.arrayContaining(given(own, /^Fault$/)));
  expect(declared(known, "Findings")).toEqual(expect.arrayContaining(given(own, /^(doubtful|wrong)$/)));
});

/** The compiler reads these; each line below a mark must fail there, or the mark does. */
describe("what does not compile", () => {
  type Two = { "box.deep": { depth: Rational }; "kerf.none": object };
  const none = "No blade cuts so thin.";

  test("a code without words, words for no code, a hole without data, data that are not there", () => {
    catalog<Two>()({ "box.deep": "It is {depth} deep.", "kerf.none": none });
    catalog<Two>()({
      "box.deep": ({ depth }) => (isZero(depth) ? "It is flat." : "It is {depth}."),
      "kerf.none": none,
    });
    // @ts-expect-error a code without words
    catalog<Two>()({ "box.deep": "It is {depth} deep." });
    // @ts-expect-error words for no code
    catalog<Two>()({ "box.deep": "It is {depth} deep.", "kerf.none": none, "kerf.thin": none });
    // @ts-expect-error a hole without data
    catalog<Two>()({ "box.deep": "It is {room} deep.", "kerf.none": none });
    // @ts-expect-error a hole without data, in words that depend on the data
    catalog<Two>()({ "box.deep": ({ depth }) => (isZero(depth) ? "Flat." : '{"Room"}'), "kerf.none": none });
    // @ts-expect-error data that are not there
    catalog<Two>()({ "box.deep": ({ room }) => `${String(room)} deep`, "kerf.none": none });
    // @ts-expect-error a remedy's hole without data
    catalogOfTwo<Two>()({ "box.deep": ["It is {depth} deep.", "Make it {room}."], "kerf.none": [none, none] });
  });

  test("a fault or a finding of no such code, or without its data", () => {
    const depth = ratio(1);
    expect(new Fault("box.deep", { depth, room: depth }).is("box.deep")).toBe(true);
    // @ts-expect-error no such code
    expect(new Fault("box.deeep", { depth, room: depth }).is("box.deep")).toBe(false);
    // @ts-expect-error data are missing
    expect(new Fault("box.deep", { depth }).data.depth).toBe(depth);
    // @ts-expect-error data of another kind
    expect(new Fault("box.deep", { depth: "1", room: depth }).data.room).toBe(depth);
    // @ts-expect-error data are missing
    expect(doubtful("box.rubs", { below: depth }).code).toBe("box.rubs");
  });
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
