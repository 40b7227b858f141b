import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { tokens } from "../../../src/workbook/formula/lexer";
import { nodesOf } from "../../../src/workbook/formula/nodes";
import { parseFormula } from "../../../src/workbook/formula/parse";

const told = (formula: string) => tokens(formula).map(({ kind, text }) => `${kind} ${text}`);

describe("tokens(formula)", () => {
  test.each<[formula: string, tokens: string[]]>([
    ["A1:$B$2*2", ["cell A1", "operator :", "cell $B$2", "operator *", "number 2"]],
    ["A:$C", ["columns A:$C"]],
    ["3:$4", ["rows 3:$4"]],
    ["'it''s'!A1#", ["sheet 'it''s'!", "cell A1", "operator #"]],
    ["Jan:Mar!B2", ["sheet Jan:Mar!", "cell B2"]],
    ["S1:S999!A1", ["sheet S1:S999!", "cell A1"]],
    ["A1:Bench!B2", ["cell A1", "operator :", "sheet Bench!", "cell B2"]],
    ["[1]Bench!Widths", ["sheet [1]Bench!", "name Widths"]],
    ["LOG10(XFE1)", ["call LOG10", "operator (", "name XFE1", "operator )"]],
    ["A1+$XFE1", ["cell A1", "operator +", "unknown $", "name XFE1"]],
    ["$9999999:1", ["unknown $", "number 9999999", "operator :", "number 1"]],
    ["Parts[[#All],[Size '[in']]]", ["name Parts", "brackets [[#All],[Size '[in']]]"]],
    ['"say ""A1"""&#N/A', ['text "say ""A1"""', "operator &", "error #N/A"]],
    ["1.5E3+.5", ["number 1.5E3", "operator +", "number .5"]],
    ["24x", ["number 24", "unknown x"]],
    ['A1&"open', ["cell A1", "operator &", 'unknown "open']],
    ["A1+'open!B1", ["cell A1", "operator +", "unknown 'open!B1"]],
    ["Parts[open", ["name Parts", "unknown [open"]],
  ])("%s", (formula, expected) => expect(told(formula)).toEqual(expected));

  const piece = fc.constantFrom(
    ..."A1 $B$2 A:B 1:2 $XFE1 $9999999:1 'a b'! S! [1]S! #REF! # \" ' [ ] ( ) : , ; { } LET( x 1.5 <> - \\".split(" "),
  );

  it("are the whole text, in order, whatever it is", () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(piece, fc.string({ maxLength: 3 }))), (pieces) => {
        const formula = pieces.join("");
        const all = tokens(formula);
        expect(all.map(({ text }) => text).join("")).toBe(formula);
        for (const { text, start, end } of all) expect(formula.slice(start, end)).toBe(text);
      }),
    );
  });
});

it("each node of a formula knows its place: its text alone reads as the same node", () => {
  const formula = 'LET(w,Bench!A1:B2,IF(w>2,-SUM(A:A)%,(Parts[Width]+1)*2)&"x"&INDEX({1,2;3,4},1,2)&A1#)';
  const bare = (text: string): string =>
    JSON.stringify(parseFormula(text), (key, value: unknown) => (key === "start" || key === "end" ? undefined : value));
  const all = nodesOf(parseFormula(formula));
  expect(all.length).toBeGreaterThan(25);
  for (const node of all) {
    const whole = JSON.stringify(node, (key, value: unknown) => (key === "start" || key === "end" ? undefined : value));
    expect(bare(formula.slice(node.start, node.end))).toBe(whole);
  }
});
