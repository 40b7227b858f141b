/**
 * Two invented jobs, worked by hand with exact fractions: a bicycle workshop's parts bench in inches, and a tea
 * merchant's sample chest in millimeters. Figures as texts are exact.
 */
export interface WorkedBox {
  drawer: string;
  opening: string;
  /** Height of the zone that the box stands in. */
  zone: string;
  step: number;
  depth: string;
  side: string;
  groove: string;
  fit: "grooved" | "under back";
  setback: number;
  box: { width: string; height: string; depth: string };
  ends: string;
  bottom: { width: string; depth: string };
}

const inch = { step: 0.25, depth: "23 1/4", side: "1/2", groove: "1/4", fit: "grooved", setback: 0 } as const;
const thick = { ...inch, side: "3/4", fit: "under back" } as const;
const mm = { step: 5, depth: "525", side: "12", groove: "6", fit: "under back", setback: 19 } as const;

/** The zones are the middles of the gaps between fronts; equal boxes take the least of their heights. */
export const BENCH: WorkedBox[] = [
  {
    ...inch,
    drawer: "A1",
    opening: "18",
    zone: "4 15/16",
    box: { width: "17", height: "4", depth: "22" },
    ends: "16",
    bottom: { width: "16 7/16", depth: "21 7/16" },
  },
  {
    ...inch,
    drawer: "A3",
    opening: "18",
    zone: "10 1/4",
    box: { width: "17", height: "9 1/2", depth: "22" },
    ends: "16",
    bottom: { width: "16 7/16", depth: "21 7/16" },
  },
  {
    ...inch,
    drawer: "B3",
    opening: "24",
    zone: "8 7/16",
    box: { width: "23", height: "7 1/2", depth: "22" },
    ends: "22",
    bottom: { width: "22 7/16", depth: "21 7/16" },
  },
  {
    ...thick,
    drawer: "C1",
    opening: "30",
    zone: "8 9/16",
    box: { width: "29", height: "7 3/4", depth: "22" },
    ends: "27 1/2",
    bottom: { width: "27 15/16", depth: "21 7/16" },
  },
  {
    ...thick,
    drawer: "C2",
    opening: "30",
    zone: "17 11/16",
    box: { width: "29", height: "16 3/4", depth: "22" },
    ends: "27 1/2",
    bottom: { width: "27 15/16", depth: "21 7/16" },
  },
];

export const CHEST: WorkedBox[] = [
  {
    ...mm,
    drawer: "7-1",
    opening: "412",
    zone: "141.5",
    box: { width: "386.6", height: "120", depth: "450" },
    ends: "362.6",
    bottom: { width: "373.1", depth: "442.5" },
  },
  {
    ...mm,
    drawer: "7-2",
    opening: "412",
    zone: "171 1/3",
    box: { width: "386.6", height: "150", depth: "450" },
    ends: "362.6",
    bottom: { width: "373.1", depth: "442.5" },
  },
  {
    ...mm,
    drawer: "7-3",
    opening: "412",
    zone: "338 1/6",
    box: { width: "386.6", height: "320", depth: "450" },
    ends: "362.6",
    bottom: { width: "373.1", depth: "442.5" },
  },
];
