/** The namespace that people type before the functions' names. */
export const NAMESPACE = "DRAWER";
