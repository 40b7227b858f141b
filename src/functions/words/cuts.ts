import { equal, showNumber, type Unit } from "../../core/length";
import type { PartToCut, SawCut, SawPiece, SheetStock } from "../../core/sheets";
import { letters } from "../cells";
import { cutCautions } from "./findings";

/** A cut of the saw in words: the piece in hand, and what comes of it, with what a careful person minds there. */
export function cutWords(
  { from, gives, caution, shaves }: SawCut,
  { parts, stock }: { parts: readonly PartToCut[]; stock: readonly SheetStock[] },
  unit: Unit,
): [from: string, gives: string] {
  const said = ({ is, piece, part, length, width }: SawPiece): string => {
    const isWhole = stock.some((sheet) => equal(sheet.length, length) && equal(sheet.width, width));
    const rest = is === "sheet" && !isWhole ? "rest of the sheet" : is;
    const what = part !== undefined ? labelOf(parts[part]!) : piece !== undefined ? `piece ${letters(piece)}` : rest;
    return `${what} ${showNumber(length, unit)} × ${showNumber(width, unit)}`;
  };
  return [said(from), [gives.map(said).join("; "), ...cutCautions({ caution, shaves }, unit)].join(". ")];
}

/** A part, with the drawers that it may go to. */
const labelOf = ({ name, drawer, labeled }: PartToCut): string => {
  const drawers = (drawer ?? "").split(", ");
  const some = drawers.slice(0, MOST).join(", ") + (drawers.length > MOST ? " …" : "");
  return labeled || !drawer ? name : `${name} (${some})`;
};

/** Drawers that are named in one cell. */
const MOST = 12;
