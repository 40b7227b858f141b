import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** A style sheet of ours behind the colors that all of them share. */
export const withColors = (css: string): string => `${readFileSync(COLORS, "utf8")}\n${css}`;

const COLORS = fileURLToPath(new URL("../taskpane/colors.css", import.meta.url));
