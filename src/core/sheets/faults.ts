import type { Lengths, NoData, Rational } from "../length";

/** A part as a person finds it: by its row where they typed it, by its drawer where it was planned. */
type OfPart = { part: string; drawer?: string | undefined };
/** Its place among the parts of the problem. */
type OfProblem = OfPart & { index: number };
type TooLarge = OfProblem & Lengths<"length" | "width" | "trim"> & { grain: string; stock: string[] };

declare module "../length" {
  interface Faults {
    "sheets.noStock": NoData;
    "sheets.noStockFor": OfPart & { material: string; thickness?: Rational | undefined };
    "sheets.noneAvailable": OfProblem;
    "sheets.partTooLarge": TooLarge;
    "sheets.groupTooLarge": TooLarge & { group: string | undefined; count: number };
    "sheets.outside": OfProblem & { sheet: number };
    "sheets.notCuttable": { sheet: number; parts: string[] };
    "sheets.stockExhausted": { parts: string[] };
    "sheets.quantityNotWhole": OfPart & { received: number };
    "sheets.availableNotWhole": { stock: string; received: number };
    "sheets.priceMissing": { stock: string };
    "sheets.priceNegative": Lengths<"received"> & { stock: string };
    "sheets.tooFine": { received?: Rational };
    "stock.severalMeasures": { name: string; first: number; second: number };
  }
}
