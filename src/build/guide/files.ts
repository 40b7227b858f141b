import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { GUIDE_PAGES, pageAddress } from "../../guide/index";
import { withColors } from "../styles";
import { guidePage } from "./page";

/** The guide as it is served, by the names of its files: pages, pictures, and one style sheet. */
export function guideFiles(): ReadonlyMap<string, Buffer> {
  const template = read("guide.html");
  const pages = GUIDE_PAGES.map((page): [string, Buffer] => [
    pageAddress(page.name),
    Buffer.from(guidePage(page, read(`pages/${page.name}.md`), template)),
  ]);
  const pictures = readdirSync(here("pictures")).map((name): [string, Buffer] => [
    `guide/pictures/${name}`,
    readFileSync(here(`pictures/${name}`)),
  ]);
  const icon = readFileSync(here("../../manifest/icon.svg"));
  return new Map([
    ...pages,
    ...pictures,
    ["guide/icon.svg", icon],
    ["guide/guide.css", Buffer.from(withColors(read("guide.css")))],
  ]);
}

/** Every file of the guide's source, so that a build that watches knows of it. */
export const guideFolder = (): string => here("");

const read = (path: string): string => readFileSync(here(path), "utf8");
const here = (path: string): string => fileURLToPath(new URL(`../../guide/${path}`, import.meta.url));
