import type { Slide, Verdict } from "../../core/drawer";
import { abs, isNegative, isZero, parseLength, roundUp, type Rational, type Unit } from "../../core/length";
import { len } from "./wording";

/** A verdict in words: whether boxes fit their slides, by how much they may not, and what to measure or change. */
export function verdictWords(verdict: Verdict, slide: Slide, unit: Unit): string {
  const { kind } = verdict;
  if (kind === "always") return "Fits even at worst.";
  const sheet =
    slide === "undermount"
      ? " The slide's data sheet decides: it states the inside width and what that may err by."
      : "";
  if (kind === "likely")
    return `Fits in all likelihood; at worst ${missWords(verdict, unit)}: try the first box before the rest.${sheet}`;
  return `${STATES[kind]} ${missWords(verdict, unit)}. ${changeWords(verdict, unit)}${sheet}`;
}

const STATES = {
  binds: "May bind: up to",
  loose: "May be loose: up to",
  either: "May bind or be loose: up to",
};

/** By how much the side space misses what the slide allows, per side. */
export function missWords({ short, over }: Verdict, unit: Unit): string {
  const misses = [isZero(short) ? "" : `${fine(short, unit)} short`, isZero(over) ? "" : `${fine(over, unit)} over`];
  return `${misses.filter(Boolean).join(" or ")} a side`;
}

/** What to measure or change. */
export function changeWords({ narrower, spread, kind }: Verdict, unit: Unit): string {
  const measure = "easure closer: opening and stock vary more than the slide allows.";
  if (isZero(narrower)) return `M${measure}`;
  const by = len(abs(narrower), unit);
  const shim = "him the slides where they are loose";
  // A wider box would bind where the opening is narrowest.
  if (isNegative(narrower)) return spread ? `S${shim}, and m${measure}` : `Make the boxes ${by} wider, or s${shim}.`;
  const narrow = `Make the boxes ${by} narrower${kind === "either" ? `, s${shim}` : ""}`;
  return `${narrow}${spread ? `, and m${measure}` : "."}`;
}

/** Up to the next 64th, or tenth of a millimeter. */
const fine = (length: Rational, unit: Unit): string =>
  len(roundUp(length, parseLength(unit === "in" ? "1/64" : "0.1", unit)), unit);
