import { Fault } from "../../core/length";
import { IncomingError } from "./incoming-error";
import { isInvocation } from "./invocation";
import type { Typed } from "./typed";

/** What a cell holds once the host's wrapping is off. */
export type Cell = Typed;

/**
 * Takes off what hosts put round a value: `[[v]]` for a reference to one cell, `{type, basicValue}` for a value with
 * a format. The host's own object is a blank. Errors in whatever shape are thrown as `IncomingError`.
 * @throws Fault `argument.range` for several cells, `argument.unsupported` for a picture, a data card or the like
 */
export function readCell(raw: unknown): Cell {
  if (Array.isArray(raw)) {
    const cells = raw.flat();
    if (cells.length > 1) throw new Fault("argument.range", { rows: raw.length, columns: width(raw) });
    return readCell(cells[0]);
  }
  const error = errorText(raw);
  if (error) throw new IncomingError(error);
  if (typeof raw !== "object" || raw === null) return { value: raw };
  if (isInvocation(raw)) return { value: null };
  if (raw instanceof Date) throw new Fault("argument.date", {});
  const { type, basicValue, numberFormat } = raw as Wrapped;
  if (type === "Empty") return { value: null };
  if (!BASIC.has(type) || typeof basicValue === "object") {
    throw new Fault("argument.unsupported", { type: typeof type === "string" ? type : "object" });
  }
  return typeof numberFormat === "string" ? { value: basicValue, format: numberFormat } : { value: basicValue };
}

/**
 * The cell error that a raw value is, as its text (`#N/A`), in any of the shapes that hosts use: the host's error
 * object, `{type: "Error"}`, or the bare text.
 */
export function errorText(raw: unknown): string | undefined {
  if (typeof raw === "string") return raw.startsWith("#") && ERRORS.test(raw) ? raw.toUpperCase() : undefined;
  if (typeof raw !== "object" || raw === null) return undefined;
  const { code, type, basicValue } = raw as Wrapped & { code?: unknown };
  if (typeof code === "string" && code.startsWith("#")) return code;
  if (type !== "Error") return undefined;
  return typeof basicValue === "string" && basicValue.startsWith("#") ? basicValue : "#VALUE!";
}

interface Wrapped {
  type?: unknown;
  basicValue?: unknown;
  numberFormat?: unknown;
}

const BASIC = new Set<unknown>(["Double", "String", "Boolean", "FormattedNumber"]);

const ERRORS =
  /^#(N\/A|VALUE!|REF!|NAME\?|NUM!|DIV\/0!|NULL!|SPILL!|CALC!|FIELD!|BLOCKED!|CONNECT!|BUSY!|UNKNOWN!|EXTERNAL!|PYTHON!|TIMEOUT!|GETTING_DATA)$/i;

const width = (rows: unknown[]): number => (Array.isArray(rows[0]) ? rows[0].length : 1);
