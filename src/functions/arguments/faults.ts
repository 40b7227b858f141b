import type { NoData } from "../../core/length";

declare module "../../core/length" {
  interface Faults {
    "zero.needed": { mark?: string };
    "length.mayBeDate": { received: unknown };
    "number.notAllowed": { received: unknown; allowed: readonly number[] };
    "flag.wrongType": { received: unknown };
    "measure.notPositive": { received: unknown };
    "moisture.free": { received: unknown; most: number };
    "slide.undermount": NoData;
    "drawer.notText": { received: unknown };
    "places.none": NoData;
    "places.unequal": { place: number };
    "units.mixed": { what: string; own: string; none: string };
  }
}
