import type { PageDefinition } from "../author/definition";
import type { Choices } from "./choices";

/** On the paper of the unit's countries, as wide as a page, its headings on every page. */
export const pageOf = ({ unit }: Choices, headings?: number): PageDefinition => ({
  orientation: "landscape",
  paper: unit === "in" ? "letter" : "A4",
  footer: "&L&A&CPage &P of &N",
  ...(headings === undefined ? {} : { repeated: headings }),
});
