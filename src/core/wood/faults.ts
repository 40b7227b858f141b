import type { Lengths, NoData } from "../length";

declare module "../length" {
  interface Faults {
    "tipping.none": NoData;
    "species.several": { received: string; species: string[] };
    "species.panel": { received: string };
    "species.unknown": { received: string; nearest: string[] };
    "moisture.temperature": { degrees: number; scale: string; least: number; most: number };
    "sag.thick": Lengths<"thickness" | "short">;
    "sag.broken": Lengths<"short">;
  }
}
