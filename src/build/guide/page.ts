import { GUIDE_PAGES, type GuidePage } from "../../guide/index";
import { fill } from "../fill";
import { htmlOf } from "./markdown";

/**
 * A page of the guide as it is served: its text, and the way to the other pages.
 * @param template guide.html
 */
export function guidePage({ name, title }: GuidePage, markdown: string, template: string): string {
  const links = GUIDE_PAGES.map(
    (page) => `<a href="${page.name}.html"${page.name === name ? ' aria-current="page"' : ""}>${page.title}</a>`,
  );
  // Filled first, for a page's own text may hold anything.
  return fill(template, { title })
    .replace("<!-- pages -->", () => links.join("\n"))
    .replace("<!-- text -->", () => htmlOf(markdown));
}
