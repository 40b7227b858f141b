import type { ErrorCode } from "./error-codes";
import type { Node, Operator } from "./nodes";
import { reference } from "./parse-reference";
import { excerpt, PATTERN, Scanner } from "./scanner";
import { readTableReference } from "./table-reference";

/**
 * Reads a formula as a file stores it, without its equals sign.
 * @throws SyntaxError where it is none
 */
export function parseFormula(text: string): Node {
  if (text.length > LONGEST_FORMULA) throw new SyntaxError(`It is longer than ${LONGEST_FORMULA} characters`);
  const scanner = new Scanner(text.startsWith("=") ? text.slice(1) : text);
  const node = comparison(scanner);
  scanner.skipSpace();
  if (!scanner.atEnd) throw scanner.fault(`“${excerpt(scanner.text.slice(scanner.position))}” cannot be read`);
  return node;
}

/** The spreadsheet program takes 8,192 characters; a file's prefixes come on top of them. */
const LONGEST_FORMULA = 65_536;

function comparison(scanner: Scanner): Node {
  return leftToRight(scanner, concatenation, () => scanner.take(PATTERN.comparison)?.[0]);
}

function concatenation(scanner: Scanner): Node {
  return leftToRight(scanner, sum, () => oneOf(scanner, "&"));
}

function sum(scanner: Scanner): Node {
  return leftToRight(scanner, product, () => oneOf(scanner, "+-"));
}

function product(scanner: Scanner): Node {
  return leftToRight(scanner, power, () => oneOf(scanner, "*/"));
}

/** A sign binds tighter than the power, and powers go from left to right: -2^2 is 4, 2^3^2 is 64. */
function power(scanner: Scanner): Node {
  return leftToRight(scanner, signed, () => oneOf(scanner, "^"));
}

function leftToRight(scanner: Scanner, operand: (scanner: Scanner) => Node, operator: () => string | undefined): Node {
  let left = operand(scanner);
  for (;;) {
    scanner.skipSpace();
    const found = operator();
    if (found === undefined) return left;
    left = { kind: "binary", operator: found as Operator, left, right: operand(scanner) };
  }
}

function oneOf(scanner: Scanner, characters: string): string | undefined {
  const character = scanner.text[scanner.position];
  if (character === undefined || !characters.includes(character)) return undefined;
  scanner.position++;
  return character;
}

function signed(scanner: Scanner): Node {
  scanner.skipSpace();
  const sign = oneOf(scanner, "+-@");
  if (sign) return { kind: "unary", operator: sign as "+" | "-" | "@", operand: scanner.inside(() => signed(scanner)) };
  let node = intersection(scanner);
  for (;;) {
    scanner.skipSpace();
    if (!oneOf(scanner, "%")) return node;
    node = { kind: "unary", operator: "%", operand: node };
  }
}

/** A space between two references is an operator; elsewhere it is nothing. */
function intersection(scanner: Scanner): Node {
  let left = span(scanner);
  for (;;) {
    const before = scanner.position;
    if (!scanner.skipSpace() || !isReference(left) || !scanner.sees(/[$\p{L}_\\'[(\d]/uy)) {
      scanner.position = before;
      return left;
    }
    left = { kind: "join", operator: " ", left, right: span(scanner) };
  }
}

function span(scanner: Scanner): Node {
  let left = postfixed(scanner);
  while (scanner.sees(/\s*:/y) && isReference(left)) {
    scanner.expect(":");
    scanner.skipSpace();
    left = { kind: "join", operator: ":", left, right: postfixed(scanner) };
  }
  return left;
}

function isReference(node: Node): boolean {
  return ["reference", "name", "table", "call", "join", "unary", "external", "error"].includes(node.kind);
}

function postfixed(scanner: Scanner): Node {
  let node = operand(scanner);
  for (;;) {
    if (scanner.takeText("#")) node = { kind: "unary", operator: "#", operand: node };
    else if (scanner.takeText("(")) node = { kind: "invoke", callee: node, args: callArguments(scanner) };
    else return node;
  }
}

function operand(scanner: Scanner): Node {
  scanner.skipSpace();
  const text = scanner.take(PATTERN.text);
  if (text) return { kind: "text", value: text[1]!.replaceAll('""', '"') };
  if (scanner.takeText("(")) return parenthesized(scanner);
  if (scanner.takeText("{")) return arrayConstant(scanner);
  const error = scanner.take(PATTERN.error);
  if (error) return lost(scanner, error[0].toUpperCase() as ErrorCode);
  const quoted = scanner.take(PATTERN.quotedSheet);
  if (quoted) return onSheet(scanner, quoted[1]!.replaceAll("''", "'"));
  const plain = scanner.take(PATTERN.plainSheet);
  if (plain) return onSheet(scanner, plain[1]!);
  return reference(scanner) ?? constantOrName(scanner);
}

/** Behind the error that a deleted sheet leaves stands what was asked of it, which is lost too. */
function lost(scanner: Scanner, code: ErrorCode): Node {
  if (code === "#REF!") void (reference(scanner) ?? scanner.take(PATTERN.name));
  return { kind: "error", code };
}

function parenthesized(scanner: Scanner): Node {
  let node = scanner.inside(() => comparison(scanner));
  for (scanner.skipSpace(); scanner.takeText(","); scanner.skipSpace()) {
    node = { kind: "join", operator: ",", left: node, right: comparison(scanner) };
  }
  scanner.expect(")");
  return node;
}

function constantOrName(scanner: Scanner): Node {
  const boolean = scanner.take(PATTERN.boolean);
  if (boolean) return { kind: "boolean", value: boolean[1]!.toUpperCase() === "TRUE" };
  const number = scanner.take(PATTERN.number);
  if (number) return { kind: "number", value: Number(number[0]) };
  const name = scanner.take(PATTERN.name)?.[0];
  if (name === undefined) throw scanner.fault("A value is expected");
  if (scanner.takeText("(")) return { kind: "call", name: plainName(name).toUpperCase(), args: callArguments(scanner) };
  if (scanner.text[scanner.position] === "[") {
    const table = readTableReference(scanner.text, scanner.position, name);
    scanner.position = table.end;
    return table.node;
  }
  return { kind: "name", name: plainName(name) };
}

/** Newer functions and the names inside LAMBDA and LET are stored with prefixes that nobody types. */
function plainName(name: string): string {
  return name.replace(/^(?:_xlfn\.)?(?:_xlws\.)?(?:_xlpm\.|_xlop\.)?/i, "");
}

function callArguments(scanner: Scanner): Node[] {
  const args: Node[] = [];
  scanner.skipSpace();
  if (scanner.takeText(")")) return args;
  for (;;) {
    scanner.skipSpace();
    args.push(scanner.sees(/[,)]/y) ? { kind: "missing" } : scanner.inside(() => comparison(scanner)));
    scanner.skipSpace();
    if (scanner.takeText(")")) return args;
    scanner.expect(",");
  }
}

function arrayConstant(scanner: Scanner): Node {
  const rows: Node[][] = [[]];
  for (;;) {
    rows.at(-1)!.push(signed(scanner));
    scanner.skipSpace();
    if (scanner.takeText("}")) break;
    if (scanner.takeText(";")) rows.push([]);
    else scanner.expect(",");
  }
  if (rows.some((row) => row.length !== rows[0]!.length)) throw scanner.fault("An array's rows differ in length");
  return { kind: "array", rows };
}

/** What follows `Sheet1!`: a range, a name, or the error left by a deleted range. */
function onSheet(scanner: Scanner, sheet: string): Node {
  if (sheet.startsWith("[") || sheet.includes("]")) {
    const rest = scanner.take(/[$\p{L}\p{N}_.:\\]+|#REF!/uy)?.[0] ?? "";
    return { kind: "external", text: `${sheet}!${rest}` };
  }
  const found = reference(scanner);
  const [first, last] = sheet.split(":");
  if (found?.kind === "reference") return { ...found, sheet: first, ...(last ? { lastSheet: last } : {}) };
  const error = scanner.take(PATTERN.error);
  if (error) return { kind: "error", code: error[0].toUpperCase() as ErrorCode };
  const name = scanner.take(PATTERN.name)?.[0];
  if (name === undefined) throw scanner.fault("A range is expected");
  return { kind: "name", sheet, name };
}
