import { Cursor, excerpt } from "./cursor";
import type { ErrorCode } from "./error-codes";
import type { TokenKind } from "./lexer";
import type { Node, Operator } from "./nodes";
import { takeReference } from "./parse-reference";
import { sheetsOf } from "./sheet-prefix";
import { NOT_CLOSED, readTableReference } from "./table-reference";

/**
 * Reads a formula as a file stores it, without its equals sign.
 * @returns its tree; places are counted in the text without the sign
 * @throws SyntaxError where it is none
 */
export function parseFormula(text: string): Node {
  if (text.length > LONGEST_FORMULA) throw new SyntaxError(`It is longer than ${LONGEST_FORMULA} characters`);
  const cursor = new Cursor(text.startsWith("=") ? text.slice(1) : text);
  const node = comparison(cursor);
  cursor.skipSpace();
  if (cursor.token) throw cursor.fault(`“${excerpt(cursor.text.slice(cursor.position))}” cannot be read`);
  return node;
}

/** The spreadsheet program takes 8,192 characters; a file's prefixes come on top of them. */
const LONGEST_FORMULA = 65_536;

type Read = (cursor: Cursor) => Node;

/** A sign binds tighter than the power, and powers go from left to right: -2^2 is 4, 2^3^2 is 64. */
const power = leftToRight(signed, "^");
const product = leftToRight(power, "*", "/");
const sum = leftToRight(product, "+", "-");
const concatenation = leftToRight(sum, "&");
const comparison = leftToRight(concatenation, "<>", "<=", ">=", "=", "<", ">");

function leftToRight(operand: Read, ...operators: Operator[]): Read {
  return (cursor) => {
    let left = operand(cursor);
    for (;;) {
      cursor.skipSpace();
      const found = cursor.takeOperator(...operators);
      if (!found) return left;
      const right = operand(cursor);
      const { start } = left;
      left = { kind: "binary", operator: found.text as Operator, left, right, start, end: right.end };
    }
  };
}

function signed(cursor: Cursor): Node {
  cursor.skipSpace();
  const sign = cursor.takeOperator("+", "-", "@");
  if (sign) {
    const operand = cursor.inside(() => signed(cursor));
    return { kind: "unary", operator: sign.text as "+" | "-" | "@", operand, start: sign.start, end: operand.end };
  }
  let node = intersection(cursor);
  for (;;) {
    cursor.skipSpace();
    const percent = cursor.takeOperator("%");
    if (!percent) return node;
    node = { kind: "unary", operator: "%", operand: node, start: node.start, end: percent.end };
  }
}

/** A space between two references is an operator; elsewhere it is nothing. */
function intersection(cursor: Cursor): Node {
  let left = span(cursor);
  while (cursor.token?.kind === "space" && isReference(left) && beginsReference(cursor)) {
    cursor.skipSpace();
    const right = span(cursor);
    left = { kind: "join", operator: " ", left, right, start: left.start, end: right.end };
  }
  return left;
}

const REFERENCES: readonly TokenKind[] = ["sheet", "columns", "rows", "cell", "call", "name", "brackets", "number"];

function beginsReference({ ahead }: Cursor): boolean {
  return ahead !== undefined && (REFERENCES.includes(ahead.kind) || ahead.text === "(");
}

function span(cursor: Cursor): Node {
  let left = postfixed(cursor);
  while (cursor.ahead?.text === ":" && isReference(left)) {
    cursor.expect(":");
    cursor.skipSpace();
    const right = postfixed(cursor);
    left = { kind: "join", operator: ":", left, right, start: left.start, end: right.end };
  }
  return left;
}

function isReference(node: Node): boolean {
  return ["reference", "name", "table", "call", "join", "unary", "external", "error"].includes(node.kind);
}

function postfixed(cursor: Cursor): Node {
  let node = operand(cursor);
  for (;;) {
    const { start } = node;
    const mark = cursor.takeOperator("#");
    if (mark) node = { kind: "unary", operator: "#", operand: node, start, end: mark.end };
    else if (cursor.takeOperator("("))
      node = { kind: "invoke", callee: node, args: callArguments(cursor), start, end: cursor.end };
    else return node;
  }
}

function operand(cursor: Cursor): Node {
  cursor.skipSpace();
  const token = cursor.take("text", "number", "error", "sheet");
  if (!token) return opened(cursor) ?? takeReference(cursor) ?? named(cursor);
  const { kind, text, start, end } = token;
  if (kind === "text") return { kind, value: text.slice(1, -1).replace(/""/g, '"'), start, end };
  if (kind === "number") return { kind, value: Number(text), start, end };
  if (kind === "sheet") return onSheet(cursor, sheetsOf(text), start);
  // Behind the error that a deleted sheet leaves stands what was asked of it, which is lost too.
  if (text.toUpperCase() === "#REF!") void (takeReference(cursor) ?? cursor.take("name"));
  return { kind: "error", code: text.toUpperCase() as ErrorCode, start, end: cursor.end };
}

/** What stands in parentheses or braces. */
function opened(cursor: Cursor): Node | undefined {
  const bracket = cursor.takeOperator("(", "{");
  if (!bracket) return undefined;
  if (bracket.text === "{") return arrayConstant(cursor, bracket.start);
  let node = cursor.inside(() => comparison(cursor));
  for (cursor.skipSpace(); cursor.takeOperator(","); cursor.skipSpace()) {
    const right = comparison(cursor);
    node = { kind: "join", operator: ",", left: node, right, start: node.start, end: right.end };
  }
  cursor.expect(")");
  return { ...node, start: bracket.start, end: cursor.end };
}

function named(cursor: Cursor): Node {
  const token = cursor.take("call", "name");
  if (!token) throw cursor.fault("A value is expected");
  const { kind, text, start, end } = token;
  if (kind === "call") {
    cursor.expect("(");
    return { kind, name: plainName(text).toUpperCase(), args: callArguments(cursor), start, end: cursor.end };
  }
  const brackets = cursor.take("brackets");
  if (brackets) return { ...readTableReference(text, brackets.text), start, end: brackets.end };
  if (cursor.token?.text.startsWith("[")) throw new SyntaxError(NOT_CLOSED);
  if (/^(?:true|false)$/i.test(text)) return { kind: "boolean", value: text.toUpperCase() === "TRUE", start, end };
  return { kind: "name", name: plainName(text), start, end };
}

/** Newer functions and the names inside LAMBDA and LET are stored with prefixes that nobody types. */
function plainName(name: string): string {
  return name.replace(/^(?:_xlfn\.)?(?:_xlws\.)?(?:_xlpm\.|_xlop\.)?/i, "");
}

function callArguments(cursor: Cursor): Node[] {
  const args: Node[] = [];
  cursor.skipSpace();
  if (cursor.takeOperator(")")) return args;
  for (;;) {
    cursor.skipSpace();
    const { position, token } = cursor;
    const isMissing = token?.text === "," || token?.text === ")";
    args.push(
      isMissing ? { kind: "missing", start: position, end: position } : cursor.inside(() => comparison(cursor)),
    );
    cursor.skipSpace();
    if (cursor.takeOperator(")")) return args;
    cursor.expect(",");
  }
}

function arrayConstant(cursor: Cursor, start: number): Node {
  const rows: Node[][] = [[]];
  for (;;) {
    rows[rows.length - 1]!.push(signed(cursor));
    cursor.skipSpace();
    if (cursor.takeOperator("}")) break;
    if (cursor.takeOperator(";")) rows.push([]);
    else cursor.expect(",");
  }
  if (rows.some((row) => row.length !== rows[0]!.length)) throw cursor.fault("An array's rows differ in length");
  return { kind: "array", rows, start, end: cursor.end };
}

/** What follows `Sheet1!`: a range, a name, or the error left by a deleted range. */
function onSheet(cursor: Cursor, sheets: ReturnType<typeof sheetsOf>, start: number): Node {
  const found = takeReference(cursor);
  if (!sheets) {
    if (!found) void cursor.take("call", "name", "error");
    return { kind: "external", text: cursor.text.slice(start, cursor.end), start, end: cursor.end };
  }
  if (found) return { ...found, sheet: sheets.first, ...(sheets.last ? { lastSheet: sheets.last } : {}), start };
  const token = cursor.take("error", "call", "name");
  if (!token) throw cursor.fault("A range is expected");
  const { kind, text, end } = token;
  if (kind === "error") return { kind, code: text.toUpperCase() as ErrorCode, start, end };
  return { kind: "name", sheet: sheets.first, name: text, start, end };
}
