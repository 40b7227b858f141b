/** Ways to hang a drawer of which the side space is common knowledge; undermount slides have data sheets of their own. */
export const SLIDES = ["side-mount", "center-mount", "wood runner", "undermount"] as const;
export type Slide = (typeof SLIDES)[number];

/** How box front and back meet the sides. */
export const CORNER_JOINTS = ["butt", "rabbet", "dado", "dovetail", "half-blind dovetail", "box joint"] as const;
export type CornerJoint = (typeof CORNER_JOINTS)[number];

/** How the bottom is held: grooved on four sides, slid in under the back, or nailed and glued on from below. */
export const BOTTOM_FITS = ["grooved", "open back", "applied"] as const;
export type BottomFit = (typeof BOTTOM_FITS)[number];

/** How front heights grow downward. */
export const PROGRESSIONS = ["equal", "arithmetic", "geometric"] as const;
export type Progression = (typeof PROGRESSIONS)[number];
