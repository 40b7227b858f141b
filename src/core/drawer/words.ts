/** Ways to hang a drawer of which the side space is common knowledge; undermount slides have data sheets of their own. */
export type Slide = "side-mount" | "center-mount" | "wood runner" | "undermount";

/** How box front and back meet the sides. */
export type CornerJoint = "butt" | "rabbet" | "dado" | "dovetail" | "half-blind dovetail" | "box joint";

/** How the bottom is held: grooved on four sides, slid in under the back, or nailed and glued on from below. */
export type BottomFit = "grooved" | "open back" | "applied";

/** How front heights grow downward. */
export type Progression = "equal" | "arithmetic" | "geometric";
