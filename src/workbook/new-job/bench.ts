import type { Unit } from "../../core/length/index";
import { DEFAULT_CHOICES, type Choices, type Filled } from "./choices";

/** A new job that shows the bench: the example. */
export const benchJob = (unit: Unit): Choices => ({ ...DEFAULT_CHOICES[unit], filled: BENCH[unit] });

/** A bicycle workshop's parts bench, invented: three openings side by side in one cabinet. */
export const BENCH: Record<Unit, Filled> = {
  in: {
    ...said("in inches"),
    openings: openings(["18", "24", "30"], "26 1/4", "23 1/4", "5 1/2; 1 part; 1 part", ["3/4", "1/2"]),
    standards: { "height step": "1/4", "sheet effort": "quick" },
    ...prices(
      [
        ["1/4", "96", "48", 34],
        ["1/2", "96", "48", 62],
        ["3/4", "96", "48", 79],
      ],
      "22",
    ),
    quote: quote("Q-104"),
  },
  // The same bench as it would be drawn in millimeters, in round figures; no size is one of the other's, converted. It
  // has what shops often add: fronts banded all round, and the upper drawers divided for small parts.
  mm: {
    ...said("in millimeters"),
    openings: divided(openings(["450", "600", "750"], "665", "590", "140; 1 part; 1 part", ["19", "12"]), [
      "3; none; none",
      "2; none; none",
      "",
    ]),
    standards: { "height step": "5", "sheet effort": "quick", "edge band": "1" },
    ...prices(
      [
        ["6", "2440", "1220", 34],
        ["12", "2440", "1220", 62],
        ["19", "2440", "1220", 79],
      ],
      "550",
    ),
    quote: quote("Q-105"),
  },
};

function said(unit: string): Pick<Filled, "title" | "words"> {
  return {
    title: "A bicycle workshop’s parts bench",
    words: `Three openings side by side in one cabinet, an invented job ${unit}. Change a framed cell: the other sheets follow at once.`,
  };
}

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

function divided(openings: Filled["openings"], dividers: readonly string[]): Filled["openings"] {
  return openings.map((opening, i) => ({ ...opening, Dividers: dividers[i]! }));
}

/** @param slide the length that the bench's slides have */
function prices(stock: Filled["stock"], slide: string): Pick<Filled, "stock" | "rates" | "moreRates"> {
  const rates = {
    ...{ "labor rate": 48, "slide price": 16.5, "pull price": 4.75, "screw price": 0.06 },
    ...{ overhead: 12, "extra delivery": 60, tax: 6.5 },
  };
  return { stock, rates, moreRates: [[`slide price ${slide}`, 18.5, "A pair of that length alone."]] };
}

function quote(number: string): Filled["quote"] {
  return {
    ...{ from: "An invented cabinet shop", client: "An invented bicycle workshop", number },
    ...{ job: "Drawers for the parts bench", place: "At the workshop" },
    ...{ date: "4th of May", until: "3rd of June" },
    extra: ["Fitted and adjusted at the bench"],
    terms: [
      "A third with the order, the rest when the drawers run.",
      "Changes after the order are quoted anew.",
      "The bench is to be fixed to the wall before the drawers go in.",
    ],
  };
}
