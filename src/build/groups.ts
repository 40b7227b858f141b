/** The headings that the function list may have, in their order. A function names its own with `@group`. */
export const GROUPS: readonly string[] = ["Lengths", "Boxes", "Fronts", "Plan", "Sheets", "Money", "Wood and loads"];
