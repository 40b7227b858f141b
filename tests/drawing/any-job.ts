import fc from "fast-check";
import type { TypedJob } from "./jobs";
import type { TypedCutting } from "./sheets";

/** Names that a cell may hold and a picture must not stumble over. */
export const HOSTILE = [
  "<script>alert(1)</script>",
  "W".repeat(200),
  'a"onload="x',
  "]]>&amp;<!--",
  "مقعد الدراجات",
  "\u202eevil\u202c",
  "👩‍🔧🚲",
  "line\nbreak\u0000",
  "\ud800",
  "抽屉",
];

const label = fc.oneof(
  { weight: 3, arbitrary: fc.string({ minLength: 1, maxLength: 12 }).filter((name) => name.trim() !== "") },
  { weight: 3, arbitrary: fc.constantFrom("A", "B", "Press", "Truing stand") },
  { weight: 1, arbitrary: fc.constantFrom(...HOSTILE) },
);
const eighths = (min: number, max: number) => fc.integer({ min: min * 8, max: max * 8 }).map((n) => n / 8);

/** Jobs of one cabinet that can mostly be planned. */
export const anyJob: fc.Arbitrary<TypedJob> = fc
  .record({
    labels: fc.uniqueArray(label, { minLength: 1, maxLength: 5, selector: (name) => name.trim().toUpperCase() }),
    widths: fc.array(
      fc.integer({ min: 5 * 32, max: 44 * 32 }).map((n) => n / 32),
      { minLength: 5, maxLength: 5 },
    ),
    counts: fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 5, maxLength: 5 }),
    height: eighths(4, 60),
    style: fc.constantFrom("overlay", "inset", "integral", "lipped"),
    construction: fc.constantFrom("frameless", "face frame"),
    slide: fc.constantFrom("side-mount", "center-mount", "wood runner", "undermount"),
    runner: fc.constantFrom("under", "side groove"),
    bottom: fc.constantFrom("grooved", "under back", "applied"),
    pull: fc.constantFrom("bought", "shop-made"),
    spacing: fc.constantFrom("none", "96 mm"),
    gap: fc.constantFrom("none", "1/8", "1/2"),
    step: fc.constantFrom("none", "1/16", "1/32"),
    joint: fc.constantFrom("butt", "rabbet", "dado", "dovetail", "half-blind dovetail", "box joint"),
    notch: fc.constantFrom("none", "1/4", "1 3/8"),
    hook: fc.constantFrom("none", "1/8", "1/4"),
    up: fc.constantFrom("1/16", "7/16", "1 1/2"),
  })
  .map(
    ({
      labels,
      widths,
      counts,
      height,
      style,
      construction,
      slide,
      runner,
      bottom,
      pull,
      spacing,
      gap,
      step,
      joint,
      notch,
      hook,
      up,
    }) => ({
      openings: [
        ["Opening", "Width", "Height", "Depth", "Drawers"],
        ...labels.map((name, i) => [name, widths[i], height, 23.25, Math.min(counts[i]!, Math.floor(height / 3) || 1)]),
      ],
      standards: [
        ["front style", style],
        ["construction", construction],
        ["slide", slide],
        ["runner", runner],
        ["undermount deduction", "1 5/8"],
        ["bottom fit", bottom],
        ["corner joint", joint],
        ["joint depth", "1/4"],
        ["undermount notch width", notch],
        ["undermount notch height", "1/2"],
        ["undermount hook hole", hook],
        ["undermount hook inset", "9/32"],
        ["undermount hook height", up],
        ["pull kind", pull],
        ["pull spacing", spacing],
        ["front gap", gap],
        ["front step", step],
        ["end reveal", "1/16"],
      ],
    }),
  );

/** Cuttings that the stock takes. */
export const anyCutting: fc.Arbitrary<TypedCutting> = fc
  .record({
    rows: fc.array(
      fc.record({
        name: label,
        drawer: label,
        length: eighths(3, 44),
        width: eighths(1, 44),
        quantity: fc.integer({ min: 1, max: 8 }),
        grain: fc.constantFrom("length", "width", "any"),
      }),
      { minLength: 1, maxLength: 9 },
    ),
    trim: fc.constantFrom("none", "1/2"),
    grain: fc.constantFrom("length", "none"),
  })
  .map(({ rows, trim, grain }) => ({
    parts: [
      ["Part", "Drawer", "Length", "Width", "Qty", "Grain"],
      ...rows.map(({ name, drawer, length, width, quantity, grain }) => [name, drawer, length, width, quantity, grain]),
    ],
    stock: [
      ["Length", "Width", "Grain"],
      [97, 49, grain],
    ],
    trim,
    effort: "quick",
  }));
