import type { Unit } from "../../core/length/index";
import type { Filled } from "./choices";

/** A bicycle workshop's parts bench, invented: three openings side by side in one cabinet. */
export const BENCH: Record<Unit, Filled> = {
  in: {
    openings: openings(["18", "24", "30"], "26 1/4", "23 1/4", "5 1/2; 1 part; 1 part", ["3/4", "1/2"]),
    standards: { "height step": "1/4" },
    ...prices([
      ["1/4", "96", "48", 34],
      ["1/2", "96", "48", 62],
      ["3/4", "96", "48", 79],
    ]),
    quote: quote("Q-104"),
  },
  // The same bench as it would be drawn in millimeters, in round figures; no size is one of the other's, converted.
  mm: {
    openings: openings(["450", "600", "750"], "665", "590", "140; 1 part; 1 part", ["19", "12"]),
    standards: { "height step": "5" },
    ...prices([
      ["6", "2440", "1220", 34],
      ["12", "2440", "1220", 62],
      ["19", "2440", "1220", 79],
    ]),
    quote: quote("Q-105"),
  },
};

/** The widest opening is for what is heavy: thicker sides, and a bottom under the back. */
function openings(
  [a, b, c]: [string, string, string],
  height: string,
  depth: string,
  first: string,
  [side, bottom]: [string, string],
): Filled["openings"] {
  const one = (name: string, width: string, drawers: string, more = {}): Record<string, string> => ({
    ...{ Opening: name, Width: width, Height: height, Depth: depth, Drawers: drawers },
    ...{ "Side thickness": "", "Bottom thickness": "", "Bottom fit": "" },
    ...more,
  });
  const heavy = { "Side thickness": side, "Bottom thickness": bottom, "Bottom fit": "under back" };
  return [one("A", a, first), one("B", b, "3"), one("C", c, "1 part; 2 parts", heavy)];
}

function prices(stock: Filled["stock"]): Pick<Filled, "stock" | "rates"> {
  const rates = {
    ...{ "labor rate": 48, "slide price": 16.5, "pull price": 4.75, "screw price": 0.06 },
    ...{ overhead: 12, "extra delivery": 60, tax: 6.5 },
  };
  return { stock, rates };
}

function quote(number: string): Filled["quote"] {
  return {
    ...{ from: "An invented cabinet shop", client: "An invented bicycle workshop", number },
    ...{ job: "Drawers for the parts bench", place: "At the workshop" },
    terms: [
      "A third with the order, the rest when the drawers run.",
      "The bench is to be fixed to the wall before the drawers go in.",
    ],
  };
}
