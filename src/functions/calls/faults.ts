import type { NoData } from "../../core/length";

declare module "../../core/length" {
  interface Faults {
    "alternates.unit": NoData;
    "alternates.many": { drawers: number; alternates: number; most: number };
  }
}
