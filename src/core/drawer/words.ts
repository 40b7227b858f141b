/** Ways to hang a drawer of which the side space is common knowledge; undermount slides have data sheets of their own. */
export const SLIDES = ["side-mount", "center-mount", "wood runner", "undermount"] as const;
export type Slide = (typeof SLIDES)[number];

/** Where the strips of wood runners are: the box slides on them, or they run in grooves of its sides. */
export const RUNNERS = ["under", "side groove"] as const;
export type Runner = (typeof RUNNERS)[number];

/** How box front and back meet the sides. */
export const CORNER_JOINTS = ["butt", "rabbet", "dado", "dovetail", "half-blind dovetail", "box joint"] as const;
export type CornerJoint = (typeof CORNER_JOINTS)[number];
/** What the British trade calls them. */
export const CORNER_JOINTS_READ = { "finger joint": "box joint" } as const;

/** How the bottom is held: grooved on four sides, slid in under the back, or nailed and glued on from below. */
export const BOTTOM_FITS = ["grooved", "under back", "applied"] as const;
export type BottomFit = (typeof BOTTOM_FITS)[number];
/** The back, which ends above the bottom, is called open there. */
export const BOTTOM_FITS_READ = { "open back": "under back" } as const;

/** How front heights grow downward. */
export const PROGRESSIONS = ["equal", "arithmetic", "geometric"] as const;
export type Progression = (typeof PROGRESSIONS)[number];

/** How fronts stand to the carcase; the last two are their boxes' own fronts. */
export const FRONT_STYLES = ["overlay", "inset", "integral", "lipped"] as const;

/** How the sides meet a front that is its box's own. */
export const FRONT_JOINTS = ["half-blind dovetail", "dovetail", "box joint", "rabbet"] as const;
