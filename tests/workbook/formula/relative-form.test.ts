import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { nodesOf, type Node } from "../../../src/workbook/formula/nodes";
import { parseFormula } from "../../../src/workbook/formula/parse";
import { relativeForm } from "../../../src/workbook/formula/relative-form";
import { shifted } from "../../../src/workbook/formula/typed-text";

describe("relativeForm(text, row, column)", () => {
  test.each<[what: string, above: string, below: string]>([
    ["cells move along", "A1+B7*2", "A2+B8*2"],
    ["what is absolute stays", "$A$1+A1", "$A$1+A2"],
    ["a range moves along", "SUM(A$1:A1)", "SUM(A$1:A2)"],
    ["a text holds no cells", '"A1"&A1', '"A1"&A2'],
    ["nor does a sheet's name", "'A1'!A1+A1!B1", "'A1'!A2+A1!B2"],
    ["nor a function's", "LOG10(A10)", "LOG10(A11)"],
    ["nor an error", "IFERROR(A1,#DIV/0!)", "IFERROR(A2,#DIV/0!)"],
    ["what spills is marked", "A1#", "A2#"],
  ])("%s: %s becomes %s one row below", (_, above, below) => {
    expect(relativeForm(above, 0, 3)).toBeDefined();
    expect(relativeForm(above, 0, 3)).toBe(relativeForm(below, 1, 3));
    expect(relativeForm(below, 0, 3)).not.toBe(relativeForm(above, 0, 3));
  });

  test.each([
    ["whole columns", "SUM(A:A)"],
    ["whole rows", "SUM(1:1)"],
    ["sheets from one to another", "SUM(S1:S9!A1)"],
    ["a table", "SUM(Parts[Width])"],
    ["another workbook", "[1]Bench!A1"],
    ["a cell beyond the grid", "XFE1+A1048577"],
    ["a name in another alphabet", "Höhe+A1"],
    ["quotes that are not closed", 'A1&"open'],
    ["cells without a sign between them", "A1$B2"],
  ])("is not told of %s: %s", (_, text) => expect(relativeForm(text, 0, 0)).toBeUndefined());

  const piece = fc.constantFrom(
    ..."A1 B$2 $C3 $D$4 a1 XFD1 XFE1 A:B $A:B 1:2 $1:2 'a b'! 'A1'! S! S1! S1:S2! #REF! #N/A # \" ' [ ] ( ) { } : , ; ! $ . 1 1.5 1E+5 E5 + - * <> ? _ \\ é SUM( LOG10( rate".split(
      " ",
    ),
    " ",
    '"A1"',
    '"',
  );
  const formula = fc.array(piece, { maxLength: 7 }).map((pieces) => pieces.join(""));
  const treeOf = (text: string): Node | undefined => {
    try {
      return parseFormula(text);
    } catch {
      return undefined;
    }
  };
  /** Without the places in the text. */
  const told = (node: Node): string =>
    JSON.stringify(node, (key, value: unknown) => (key === "start" || key === "end" ? undefined : value));

  it("is that of the formula filled down and across", () => {
    const onGrid = formula.filter((text) => treeOf(text) !== undefined);
    fc.assert(
      fc.property(onGrid, fc.nat(9), fc.nat(9), (text, down, across) => {
        const form = relativeForm(text, 4, 5);
        const moved = shifted(text, down, across);
        // What comes in again on the grid's other side has moved otherwise.
        fc.pre(form !== undefined && !/XFD/i.test(text));
        expect(relativeForm(moved, 4 + down, 5 + across)).toBe(form);
      }),
      { numRuns: 2000 },
    );
  });

  it("is one for two formulas only where one is the other, moved", () => {
    const places = fc.tuple(fc.nat(3), fc.nat(3));
    fc.assert(
      fc.property(formula, formula, places, places, (text, other, [row, column], [otherRow, otherColumn]) => {
        for (const second of [other, text, shifted(text, otherRow - row, otherColumn - column)]) {
          const form = relativeForm(text, row, column);
          if (form === undefined || form !== relativeForm(second, otherRow, otherColumn)) continue;
          const [first, there] = [treeOf(shifted(text, otherRow - row, otherColumn - column)), treeOf(second)];
          expect(there && told(there)).toBe(first && told(first));
        }
      }),
      { numRuns: 5000 },
    );
  });

  it("tells cells as they are read: as many stand in the form as in the tree", () => {
    fc.assert(
      fc.property(formula, (text) => {
        const [form, tree] = [relativeForm(text, 0, 0), treeOf(text)];
        // What stands behind the error of a deleted sheet is part of it.
        if (form === undefined || tree === undefined || text.includes("#REF!")) return;
        const corners = nodesOf(tree).flatMap((node) =>
          node.kind === "reference" ? (node.from === node.to ? [node.from] : [node.from, node.to]) : [],
        );
        expect(form.split("\u0001").length - 1).toBe(2 * corners.length);
      }),
      { numRuns: 5000 },
    );
  });
});
