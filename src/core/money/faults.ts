import type { Fault, Lengths, NoData, Rational } from "../length";
import type { RateName } from "./rates";

declare module "../length" {
  interface Faults {
    "rates.missing": { name: RateName };
    "rates.minutesMissing": NoData;
    "quote.belowZero": { price: number };
    "stock.priceMissing": { stock: string };
    "stock.thicknessUnknown": { part: string; stock: string };
  }
}

declare module "../drawer" {
  interface Findings {
    "stock.none": { parts: string[]; material: string; thickness: Rational | undefined };
    "stock.short": { material: string; thickness: Rational | undefined };
    "stock.uncut": { material: string; thickness: Rational | undefined; fault: Fault };
    "stock.roughUnknown": { material: string };
    "stock.roughThin": Lengths<"rough" | "thickness" | "left"> & { material: string };
  }
}
